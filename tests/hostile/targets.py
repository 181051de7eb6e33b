"""What is fed with input from strangers, and what must hold whatever comes.

Each target takes bytes and returns how the input was met ("taken" or "refused"). Anything else than that is a
fault of the program: another exception, a value that does not come back the same, a character that a terminal
would obey, or an input that takes longer than `SLOWEST`.
"""

import json
import time
from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from functools import cache
from pathlib import Path
from typing import Any

from firstpaper.blanks.blank import Blank
from firstpaper.blanks.checking import values
from firstpaper.blanks.errors import MapNotReadable
from firstpaper.blanks.filling import Entry, Filling, filled_copy
from firstpaper.blanks.mapping import Map, map_of, read_map, recognised, written
from firstpaper.blanks.proof import proof
from firstpaper.blanks.reading import MOST_FIELDS, MOST_PAGES, read_blank
from firstpaper.casefile import CaseFile
from firstpaper.casefile.passphrase import Strength, strength
from firstpaper.casefile.reading import is_sealed
from firstpaper.casefile.sealing import check_whole
from firstpaper.cli.terminal import wrapped
from firstpaper.errors import UserError
from firstpaper.facts import Case, Day
from firstpaper.forms import filled_forms
from firstpaper.forms.answer import ItemAnswer
from firstpaper.intake import (
    AnswerRefused,
    Asked,
    Bank,
    asked,
    asking,
    bank,
    echo,
    facts_from,
    progress,
    put,
    read_answer,
)
from firstpaper.intake.events import events, with_detail
from firstpaper.intake.listing import GROUPS, with_told
from firstpaper.intake.loading import listing
from firstpaper.intake.reading.dates import EARLIEST_YEAR, YEARS_AHEAD, read_day
from firstpaper.intake.tables import facts_from_table, table_of
from firstpaper.packet.brief import Brief, brief
from firstpaper.packet.own_sheets import OwnSheetRefused, own_sheet
from firstpaper.packet.paper import markup_errors

TODAY = date(2026, 11, 30)
SLOWEST = 2.0
"""Seconds of work for one input. The time that a busy machine lets it wait is not counted."""

HERE = Path("home.case")
FOUND = Path(__file__).parent / "found"
HOUSEHOLDS = Path(__file__).parents[2] / "demo" / "households"
_JOINERS = "\u200c\u200d"

Met = str
TAKEN, REFUSED = "taken", "refused"


@dataclass(frozen=True)
class Target:
    """One reader, with inputs that reach far into it to start from."""

    feed: Callable[[bytes], Met]
    seeds: Callable[[], list[bytes]]


def fed(name: str, data: bytes) -> Met:
    """Feed one input to a target, and hold it to the time."""
    began = time.process_time()
    met = TARGETS[name].feed(data)
    assert met in (TAKEN, REFUSED)
    assert time.process_time() - began < SLOWEST, "too slow"
    return met


# --- typed at a question ------------------------------------------------------------------------------


def _date(data: bytes) -> Met:
    try:
        day = read_day(_text(data), TODAY)
    except AnswerRefused as refused:
        return _in_words(refused)
    assert EARLIEST_YEAR <= day.year <= TODAY.year + YEARS_AHEAD
    assert Day.parse(str(day)) == day
    assert day.earliest <= day.latest
    return TAKEN


def _answer(data: bytes) -> Met:
    """What is told in the interview. The first two bytes pick the question."""
    return _told(_questions(), put, data)


def _thing(data: bytes) -> Met:
    """What is told of things, debts and incomes. The first two bytes pick the question."""
    return _told(_listed(), with_told, data)


def _event(data: bytes) -> Met:
    """What is told of events after the filing. The first two bytes pick the question."""
    return _told(_recorded(), with_detail, data)


def _told(questions: list[Asked], tell: Callable[[Case, str, Any], Case], data: bytes) -> Met:
    one = questions[int.from_bytes(data[:2]) % len(questions)]
    try:
        case = tell(Case.nothing(), one.key, read_answer(one, _text(data[2:]), TODAY))
    except AnswerRefused as refused:
        return _in_words(refused)
    _comes_back(CaseFile(case))
    if (value := case.fact(one.key)) is not None:
        _harmless(echo(one, value))
    return TAKEN


@cache
def _questions() -> list[Asked]:
    return _asked(bank())


@cache
def _listed() -> list[Asked]:
    return _asked(listing())


@cache
def _recorded() -> list[Asked]:
    return [
        Asked(question, question.key, topic, None, Case.nothing())
        for topic in events().topics
        for question in topic.questions
    ]


def _asked(questions: Bank) -> list[Asked]:
    keys = [question.key.replace("*", "1") for topic in questions.topics for question in topic.questions]
    return [one for key in keys if (one := asking(key, Case.nothing()))]


def _passphrase(data: bytes) -> Met:
    text = _text(data)
    assert strength(text, {"Dana"}) in Strength
    assert (
        strength(text, {text}) is Strength.WEAK
        or len(text.split()) > 1
        or not (text.isascii() and text.isalpha())
    )
    return TAKEN


# --- files from strangers -----------------------------------------------------------------------------


def _facts(data: bytes) -> Met:
    case, problems = facts_from(_text(data), TODAY)
    if problems:
        assert case == Case()
        for one in problems:
            _harmless(wrapped(one.message, 80))
        return REFUSED
    _comes_back(CaseFile(case))
    return TAKEN


def _table(data: bytes) -> Met:
    """A table that is taken can be written as a table, and that one says the same."""
    case, problems = facts_from_table(_text(data), TODAY)
    if problems:
        assert case == Case.nothing()
        for one in problems:
            _harmless(wrapped(one.message, 80))
        return REFUSED
    _comes_back(CaseFile(case))
    for group in GROUPS:
        again, problems = facts_from_table(table_of(case, group), TODAY)
        assert again.fact(group) == case.fact(group)
        assert not problems
    return TAKEN


def _case_file(data: bytes) -> Met:
    try:
        file = CaseFile.parsed(HERE, data)
    except UserError as refused:
        return _in_words(refused)
    _comes_back(file)
    progress(file.case)
    for one in asked(file.case):
        _harmless(echo(one, file.case.fact(one.key)))
    return TAKEN


def _sealed(data: bytes) -> Met:
    assert is_sealed(data) or not data.startswith(b'{"sealed":')
    try:
        check_whole(HERE, data)
    except UserError as refused:
        return _in_words(refused)
    return TAKEN


def _markup(data: bytes) -> Met:
    """A sheet is drawn only when its markup has no fault; the faults repeat nothing of the sheet."""
    faults = markup_errors(_text(data))
    return REFUSED if faults else TAKEN


def _own_sheet(data: bytes) -> Met:
    """What is left of a sheet that a stranger wrote is sheet markup with no faults, and harmless to show."""
    try:
        sheet = own_sheet("letter.html", _text(data), _brief())
    except OwnSheetRefused as refused:
        return _in_words(refused)
    filled = str(sheet.values["filled"])
    assert not markup_errors(filled)
    _harmless(filled + sheet.title)
    return TAKEN


def _blank_looked_at(data: bytes) -> Met:
    """A blank that is taken has a map that is harmless to show."""
    try:
        _mapped(data)
    except UserError as refused:
        return _in_words(refused)
    return TAKEN


def _mapped(data: bytes) -> tuple[Blank, Map]:
    blank = read_blank(data, "FL-110.pdf")
    assert 0 < blank.pages <= MOST_PAGES
    assert 0 < len(blank.spots) <= MOST_FIELDS
    one = map_of(blank, "FL-110", recognised(blank)[1])
    _harmless(wrapped(written(one) + "\n".join(blank.oddities), 80))
    return blank, one


def _blank(data: bytes) -> Met:
    """A blank that is taken has a map, a proof, and copies that can be filled and read."""
    try:
        blank, one = _mapped(data)
        entries = (Entry(spot.key, "Dana Okafor", spot.is_box, _item()) for spot in blank.spots)
        for flat in (False, True):
            copy, _what = filled_copy(data, "FL-110.pdf", Filling(tuple(entries), ()), flat=flat)
            values(copy, "FL-110.pdf")
        assert proof(data, "FL-110.pdf", one).startswith(b"%PDF-")
    except UserError as refused:
        return _in_words(refused)
    return TAKEN


def _map(data: bytes) -> Met:
    """A map that is taken says the same when it is written and read again."""
    try:
        one = read_map(_text(data), "FL-110.map.yaml")
    except MapNotReadable as refused:
        return _in_words(refused)
    assert read_map(written(one), "FL-110.map.yaml") == one
    return TAKEN


@cache
def _item() -> ItemAnswer:
    return filled_forms(_brief().case, TODAY)[0].items[0]


@cache
def _brief() -> Brief:
    case, _problems = facts_from(_households()[0].decode(), TODAY)
    return brief(case, TODAY)


def _shown(data: bytes) -> Met:
    for width in (1, 7, 80):
        _harmless(wrapped(_text(data), width))
    return TAKEN


# --- what must hold -------------------------------------------------------------------------------------


def _text(data: bytes) -> str:
    return data.decode("utf-8", "replace")


def _in_words(refused: AnswerRefused | UserError) -> Met:
    assert refused.message
    _harmless(wrapped(refused.message, 80))
    return REFUSED


def _comes_back(file: CaseFile) -> None:
    written = file.to_json()
    assert CaseFile.parsed(HERE, written.encode()) == file
    _harmless("".join(_texts(json.loads(written))))


def _texts(value: object) -> list[str]:
    if isinstance(value, str):
        return [value]
    inner = value.values() if isinstance(value, dict) else value if isinstance(value, list) else ()
    return [text for one in inner for text in _texts(one)]


def _harmless(text: str) -> None:
    """Nothing in it that a terminal obeys, that is invisible, or that turns the direction of writing."""
    assert all(c.isprintable() or c in "\n" + _JOINERS for c in text)


# --- where to start -----------------------------------------------------------------------------------

DATES = (
    "3/14/2026", "March 14 2026", "2026-03-14", "about June 2016?", "14 de marzo de 2026",
    "Saturday, March 14, 2026",
    "since 2016", "12/31/9999", "2/30/2020", "today", "the 3rd of May, 1999", "13/4/2026", "06 2016 (?)",
)  # fmt: skip
LINES = (
    "yes", "1,3", "none", "don't know", "= back", "PO Box 118, Fresno, CA 93701", "$2,450.50",
    "1/1/2020 to 5/2021: work",
    "1/15/2020 to 5/31/2026, Visalia, CA, with both of us", "123-45-6789", "\u202egnp.exe", "\x1b[2J", "Ⅷ ﷽",
)  # fmt: skip
SHEETS = (
    '<h1>One</h1><p class="note">two <strong>three</strong></p>',
    '<table widths="60 40"><thead><tr><th>a</th></tr></thead><tr><td>b<br/></td></tr></table>',
    '<ul><li>x<ul><li>&lt;y&gt;</li></ul></li></ul><section class="keep"><tick marked/><line/></section>',
    "<pagebreak/><hr/><!-- c --><ol><li>{{ 7*7 }}</li></ol>",
)
OWN_SHEETS = (
    "<h1>Ours</h1>\n<p>Dear {{ petitioner }}, {% if stops %}wait{% else %}go{% endif %}.</p>",
    "<h1>{{ county }}</h1><ul>{% for one in forms %}<li>{{ one }}</li>{% endfor %}</ul>{# x #}",
    "<h1>x</h1><p>{{ kind.__class__ }}{{ 'a' * 9 }}{{ stops|join }}{% include 'a' %}</p>",
    "<h1>x</h1>{% set a = 1 %}{% raw %}{{{% endraw %}{% macro m(x) %}{% endmacro %}",
)


FORM = (
    "<</Type/Catalog/Pages 2 0 R/AcroForm<</Fields[4 0 R 5 0 R]/DA(/F1 9 Tf)/DR<</Font<</F1 6 0 R>>>>>>"
    "/Names<</JavaScript<<>>>>>>",
    "<</Type/Pages/Kids[3 0 R]/Count 1>>",
    "<</Type/Page/Parent 2 0 R/MediaBox[0 0 612 792]/Rotate 0/Annots[4 0 R 5 0 R]/Contents 7 0 R"
    "/Resources<</Font<</F1 6 0 R>>>>>>",
    "<</Type/Annot/Subtype/Widget/FT/Tx/T(Name)/TU(Your name)/MaxLen 40/Ff 4096/Rect[100 700 300 715]"
    "/F 4/P 3 0 R/MK<</R 0>>>>",
    "<</Type/Annot/Subtype/Widget/FT/Btn/T(Box)/AS/Off/AP<</N<</Yes 7 0 R/Off 7 0 R>>>>"
    "/AA<</C<</S/JavaScript/JS(1)>>>>/Rect[80 670 92 682]>>",
    "<</Type/Font/Subtype/Type1/BaseFont/Helvetica>>",
    "<</Length 66>>stream\nBT /F1 9 Tf 72 740 Td (FL-110 SUMMONS) Tj 0 -36 Td (Name) Tj ET    \nendstream",
)
"""The objects of a very small form: one page with a line and a box."""
ODD_FORMS = (
    ("/FT/Tx", "/FT/Tx"),
    ("/FT/Tx", "/FT/Sig"),
    ("/FT/Tx", "/FT/Ch/Opt[(a)(b)]"),
    ("/Rotate 0", "/Rotate 90"),
    ("/MK<</R 0", "/MK<</R 90"),
    ("/Fields", "/XFA[(a)7 0 R]/Fields"),
    ("/T(Name)", "/T(Name)/Parent 5 0 R"),
)


def forms() -> list[bytes]:
    """Very small forms, a plain one first."""
    return [_pdf([one.replace(old, new) for one in FORM]) for old, new in ODD_FORMS]


def _pdf(objects: list[str]) -> bytes:
    out, places = b"%PDF-1.7\n", []
    for number, one in enumerate(objects, 1):
        places.append(len(out))
        out += f"{number} 0 obj{one}endobj\n".encode()
    table = "".join(f"{place:010} 00000 n \n" for place in places)
    count = len(objects) + 1
    head = f"xref\n0 {count}\n0000000000 65535 f \n{table}trailer<</Root 1 0 R/Size {count}>>\n"
    return out + f"{head}startxref\n{len(out)}\n%%EOF\n".encode()


def found(name: str) -> list[tuple[bytes, Met]]:
    """What the guided fuzzer found for a reader, and how it is met. It is kept as JSON, byte by letter."""
    path = FOUND / f"{name.replace(' ', '-')}.json"
    kept = json.loads(path.read_text("utf-8")) if path.exists() else []
    return [(one["input"].encode("latin-1"), one["met"]) for one in kept]


def _maps() -> list[bytes]:
    blank = read_blank(forms()[0], "FL-110.pdf")
    return [written(map_of(blank, "FL-110", "")).encode()]


def _households() -> list[bytes]:
    return [path.read_bytes() for path in sorted(HOUSEHOLDS.glob("*.yaml"))]


def _case_files() -> list[bytes]:
    cases = (facts_from(text.decode(), TODAY)[0] for text in _households())
    return [CaseFile(case).to_json().encode() for case in cases]


def _heads() -> list[bytes]:
    head = (
        b'{"sealed": 1, "cipher": "AES-256-GCM", "kdf": "Argon2id", "memory_kib": 65536, "passes": 3, '
        b'"lanes": 4, '
        b'"salt": "' + b"0a" * 16 + b'", "check": "' + b"0b" * 16 + b'"}\n'
    )
    return [head + bytes(100), head]


def _tables() -> list[bytes]:
    cases = (facts_from(text.decode(), TODAY)[0] for text in _households())
    return [table_of(case, group).encode() for case in cases for group in GROUPS if case.fact(group)]


def _encoded(texts: tuple[str, ...]) -> Callable[[], list[bytes]]:
    return lambda: [text.encode() for text in texts]


def _each_question() -> list[bytes]:
    return [bytes([0, number]) + line.encode() for number in range(0, 250, 7) for line in (*LINES, *DATES)]


TARGETS = {
    "dates": Target(_date, _encoded(DATES)),
    "answers": Target(_answer, _each_question),
    "things": Target(_thing, _each_question),
    "events": Target(_event, _each_question),
    "facts": Target(_facts, _households),
    "tables": Target(_table, _tables),
    "case files": Target(_case_file, _case_files),
    "blanks": Target(_blank, forms),
    "blanks looked at": Target(_blank_looked_at, forms),
    "maps of blanks": Target(_map, _maps),
    "sealed files": Target(_sealed, _heads),
    "sheet markup": Target(_markup, _encoded(SHEETS)),
    "own sheets": Target(_own_sheet, _encoded(OWN_SHEETS)),
    "passphrases": Target(_passphrase, _encoded(("marble otter seven violins", "P@ss1", "aaaa 1234"))),
    "the screen": Target(_shown, _encoded((*LINES, "1. a\n  - b c\n\n" + "long " * 40))),
}
