"""Files as they come: what is odd in them is left out or refused in words, and nothing crashes."""

from collections.abc import Callable
from dataclasses import replace
from datetime import date
from io import BytesIO
from random import Random

import pytest
from pypdf import PdfReader, PdfWriter
from pypdf.constants import UserAccessPermissions
from pypdf.generic import (
    ArrayObject,
    ByteStringObject,
    DictionaryObject,
    FloatObject,
    NameObject,
    NumberObject,
    TextStringObject,
)
from reportlab.pdfgen.canvas import Canvas

from firstpaper.blanks import errors, reading
from firstpaper.blanks.blank import FieldKind
from firstpaper.blanks.checking import differences, values
from firstpaper.blanks.mapping import map_of, recognised
from firstpaper.blanks.matching import matched
from firstpaper.blanks.reading import read_blank, widgets
from firstpaper.blanks.wanted import wanted
from firstpaper.errors import UserError
from firstpaper.forms import filled_forms
from firstpaper.forms.edition import edition_for
from firstpaper.intake import standing
from tests.blanks.drawn_blanks import Drawn, Family, drawn
from tests.blanks.worked import Worked, filled_on
from tests.packet.drawn import household

EDITION = edition_for("FL-110", date(2026, 12, 1))
DRAWN = drawn(EDITION, Family.SHORT, seed=4)
HOUSEHOLD = household("plain-childless-divorce")
FORMS = {form.form: form for form in filled_forms(standing(HOUSEHOLD.case), HOUSEHOLD.on)}
PLAIN = read_blank(DRAWN.pdf, "blank")
Change = Callable[[PdfWriter], None]


def changed(change: Change, pdf: bytes = DRAWN.pdf) -> bytes:
    """The drawn blank with one thing in it made odd."""
    writer = PdfWriter(clone_from=BytesIO(pdf))
    change(writer)
    out = BytesIO()
    writer.write(out)
    return out.getvalue()


def odd_copy(data: bytes, paper: Drawn, form: str = "FL-110") -> Worked:
    """The household's answers on an odd file whose fields mean what they mean on that paper."""
    return filled_on(replace(paper, pdf=data), FORMS[form])


def fields(writer: PdfWriter) -> list[DictionaryObject]:
    return [widget for page in writer.pages for widget in widgets(page)]


def acro_form(writer: PdfWriter) -> DictionaryObject:
    return writer.root_object["/AcroForm"].get_object()  # type: ignore[return-value]


def add_xfa(writer: PdfWriter) -> None:
    acro_form(writer)[NameObject("/XFA")] = ByteStringObject(b"<xdp/>")


def add_scripts(writer: PdfWriter) -> None:
    script = DictionaryObject(
        {NameObject("/S"): NameObject("/JavaScript"), NameObject("/JS"): TextStringObject("x")}
    )
    writer.root_object[NameObject("/OpenAction")] = script
    named = DictionaryObject({NameObject("/Names"): ArrayObject([TextStringObject("all"), script])})
    writer.root_object[NameObject("/Names")] = DictionaryObject({NameObject("/JavaScript"): named})
    for widget in fields(writer):
        widget[NameObject("/AA")] = DictionaryObject({NameObject("/C"): script, NameObject("/F"): script})
        widget[NameObject("/A")] = script


def lock(**how: object) -> Change:
    return lambda writer: writer.encrypt(algorithm="AES-128", **how)  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("change", "says"),
    [
        (add_xfa, "second copy of its fields (XFA)"),
        (add_scripts, "small programs in it"),
        (lock(user_password="", owner_password="owner"), "locked without a password"),
    ],
    ids=["xfa", "scripts", "locked"],
)
def test_what_is_left_out_is_said_and_left_out(change: Change, says: str) -> None:
    data = changed(change)
    blank = read_blank(data, "odd.pdf")
    assert any(says in one for one in blank.oddities)
    assert [spot.key for spot in blank.spots] == [spot.key for spot in PLAIN.spots]
    done = odd_copy(data, DRAWN)
    assert differences(data, done.pdf, done.what, blank) == ()
    copy = PdfReader(BytesIO(done.pdf))
    assert not copy.is_encrypted
    assert done.what.entries
    for gone in (b"/XFA", b"/OpenAction", b"JavaScript", b"/AA"):
        assert gone not in _plain(copy)


def _plain(reader: PdfReader) -> bytes:
    """The objects that can still be reached, as text."""
    writer = PdfWriter(clone_from=reader)
    return b" ".join(repr(one).encode() for one in writer._objects if one is not None)


def sign(writer: PdfWriter) -> None:
    widget = fields(writer)[-1]
    widget[NameObject("/FT")] = NameObject("/Sig")
    widget[NameObject("/V")] = DictionaryObject({NameObject("/Type"): NameObject("/Sig")})


def certify(writer: PdfWriter) -> None:
    writer.root_object[NameObject("/Perms")] = DictionaryObject()


def no_fields(writer: PdfWriter) -> None:
    for page in writer.pages:
        page.pop("/Annots", None)


def only_xfa(writer: PdfWriter) -> None:
    add_xfa(writer)
    no_fields(writer)


PRINT_ONLY = UserAccessPermissions.PRINT


@pytest.mark.parametrize(
    ("change", "refusal"),
    [
        (sign, errors.AlreadySigned),
        (certify, errors.AlreadySigned),
        (no_fields, errors.NoFields),
        (only_xfa, errors.OnlyXfa),
        (lock(user_password="secret"), errors.Locked),
        (lock(user_password="", owner_password="o", permissions_flag=PRINT_ONLY), errors.FillingForbidden),
    ],
    ids=["signed", "certified", "no fields", "only xfa", "password", "forbidden"],
)
def test_what_cannot_or_must_not_be_filled_is_refused(change: Change, refusal: type[UserError]) -> None:
    with pytest.raises(refusal) as said:
        read_blank(changed(change), "odd.pdf")
    assert "odd.pdf" in str(said.value)


def test_a_page_without_a_form_is_no_form() -> None:
    out = BytesIO()
    canvas = Canvas(out)
    canvas.drawString(100, 100, "A letter")
    canvas.save()
    with pytest.raises(errors.NoFields):
        read_blank(out.getvalue(), "letter.pdf")


@pytest.mark.parametrize("data", [b"", b"%PDF-", b"%PDF-1.7\n%%EOF", b"hello", b"\x89PNG\r\n", b"PK\x03\x04"])
def test_what_is_no_pdf_is_said_to_be_none(data: bytes) -> None:
    with pytest.raises(errors.NotAPdf):
        read_blank(data, "other.pdf")


def test_a_file_far_bigger_than_a_form_is_not_opened(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(reading, "MOST_BYTES", len(DRAWN.pdf) - 1)
    with pytest.raises(errors.TooMuch):
        read_blank(DRAWN.pdf, "big.pdf")
    monkeypatch.setattr(reading, "MOST_BYTES", len(DRAWN.pdf))
    assert read_blank(DRAWN.pdf, "big.pdf").spots


def test_more_pages_than_a_form_has_are_not_read() -> None:
    def many(writer: PdfWriter) -> None:
        for _ in range(reading.MOST_PAGES):
            writer.add_blank_page()

    with pytest.raises(errors.TooMuch):
        read_blank(changed(many), "long.pdf")


@pytest.mark.parametrize("turn", [90, 180, 270])
def test_a_page_that_lies_on_its_side_is_read_as_it_is_seen(turn: int) -> None:
    """The words and fields are turned back first, then the page is shown turned: it looks as before."""
    data = changed(lambda writer: [page.rotate(turn) for page in writer.pages])  # type: ignore[func-returns-value]
    turned = read_blank(data, "turned.pdf")
    assert {spot.key for spot in turned.spots} == {spot.key for spot in PLAIN.spots}
    upright, lying = PLAIN.spots[0].place, next(s for s in turned.spots if s.key == PLAIN.spots[0].key).place
    sides = (upright.width, upright.height) if turn == 180 else (upright.height, upright.width)
    assert (lying.width, lying.height) == pytest.approx(sides)
    done = odd_copy(data, DRAWN)
    assert differences(data, done.pdf, done.what, turned) == ()


def test_the_order_in_which_fields_are_listed_does_not_matter() -> None:
    def shuffle(writer: PdfWriter) -> None:
        for page in writer.pages:
            listed = list(page["/Annots"])  # type: ignore[arg-type]
            Random(3).shuffle(listed)
            page[NameObject("/Annots")] = ArrayObject(listed)

    shuffled = matched(read_blank(changed(shuffle), "a"), wanted(EDITION))
    plain = matched(PLAIN, wanted(EDITION))
    assert [(pair.spot.key, pair.wanted.key) for pair in shuffled] == [
        (pair.spot.key, pair.wanted.key) for pair in plain
    ]


def first(writer: PdfWriter, kind: str) -> DictionaryObject:
    return next(widget for widget in fields(writer) if widget["/FT"] == kind)


def flag(bit: int) -> Change:
    def change(writer: PdfWriter) -> None:
        for widget in fields(writer):
            widget[NameObject("/Ff")] = NumberObject(int(widget.get("/Ff", 0)) | bit)

    return change


@pytest.mark.parametrize(
    ("change", "why"),
    [
        (flag(reading.READ_ONLY), "The blank does not let this field be changed."),
        (flag(reading.RICH), "The field holds formatted text, which we do not write."),
    ],
    ids=["read only", "formatted"],
)
def test_fields_that_we_do_not_fill_are_left_and_said(change: Change, why: str) -> None:
    data = changed(change)
    done = odd_copy(data, DRAWN)
    assert why in {left.why for left in done.what.left}
    held = values(done.pdf, "filled")
    texts = {spot.key for spot in PLAIN.spots if spot.kind is FieldKind.TEXT}
    assert not any(text for key, text in held.items() if key in texts)


def test_one_field_on_two_pages_shows_the_same_on_both() -> None:
    def twice(writer: PdfWriter) -> None:
        page = writer.add_blank_page(612, 792)
        text = first(writer, "/Tx")
        other = writer._add_object(DictionaryObject(text))
        parent = DictionaryObject({NameObject(key): text[key] for key in ("/T", "/FT", "/Ff", "/DA")})
        above, listed = writer._add_object(parent), acro_form(writer)["/Fields"]
        mine = text.indirect_reference
        parent[NameObject("/Kids")] = ArrayObject([mine, other])
        listed[listed.index(mine)] = above
        for one in (text, other.get_object()):
            one.pop("/T")
            one[NameObject("/Parent")] = above
        other.get_object()[NameObject("/P")] = page.indirect_reference
        page[NameObject("/Annots")] = ArrayObject([other])

    data = changed(twice)
    blank = read_blank(data, "twice.pdf")
    shared = [spot for spot in blank.spots if len(spot.boxes) == 2]
    assert [box.page for box in shared[0].boxes] == [1, len(PdfReader(BytesIO(data)).pages)]
    done = odd_copy(data, DRAWN)
    assert differences(data, done.pdf, done.what, blank) == ()
    assert shared[0].key in {entry.key for entry in done.what.entries}


@pytest.mark.parametrize("state", ["Yes", "1", "On", "Choice 2", "Sí", "0"])
def test_a_box_is_marked_by_whatever_its_mark_is_called(state: str) -> None:
    def rename(writer: PdfWriter) -> None:
        for widget in fields(writer):
            if widget["/FT"] == "/Btn":
                looks = widget["/AP"]["/N"]
                looks[NameObject(f"/{state}")] = looks.pop("/Yes")

    petition = drawn(edition_for("FL-100", date(2026, 12, 1)), Family.SHORT, seed=4)
    data = changed(rename, petition.pdf)
    renamed = {(name, state if mark else ""): key for (name, mark), key in petition.truth.items()}
    done = odd_copy(data, replace(petition, truth=renamed), "FL-100")
    marks = [entry for entry in done.what.entries if entry.marked]
    assert marks
    assert {entry.key[1] for entry in marks} == {state}
    assert differences(data, done.pdf, done.what, done.blank) == ()


def test_of_a_group_of_boxes_one_is_marked() -> None:
    def group(writer: PdfWriter) -> None:
        """All boxes of a form under one name, each with a mark of its own, as choices are grouped."""
        boxes = [widget for widget in fields(writer) if widget["/FT"] == "/Btn"][:3]
        parent = DictionaryObject(
            {
                NameObject("/T"): TextStringObject("choice"),
                NameObject("/FT"): NameObject("/Btn"),
                NameObject("/Ff"): NumberObject(reading.RADIO),
            }
        )
        above = writer._add_object(parent)
        for number, box in enumerate(boxes):
            box.pop("/T")
            looks = box["/AP"]["/N"]
            looks[NameObject(f"/{number}")] = looks.pop("/Yes")
            box[NameObject("/Parent")] = above

    petition = drawn(edition_for("FL-100", date(2026, 12, 1)), Family.SHORT, seed=4)
    data = changed(group, petition.pdf)
    order = [key for key in petition.truth if key[1]][:3]
    truth = {
        ("choice", str(order.index(key))) if key in order else key: what
        for key, what in petition.truth.items()
    }
    done = odd_copy(data, replace(petition, truth=truth), "FL-100")
    assert differences(data, done.pdf, done.what, done.blank) == ()
    assert {spot.key for spot in done.blank.spots if spot.name == "choice"} == {("choice", n) for n in "012"}


def loop(writer: PdfWriter) -> None:
    widget = fields(writer)[0]
    parent = writer._add_object(DictionaryObject({NameObject("/T"): TextStringObject("round")}))
    parent.get_object()[NameObject("/Parent")] = parent  # type: ignore[index]
    widget[NameObject("/Parent")] = parent


def strange_places(writer: PdfWriter) -> None:
    for number, widget in enumerate(fields(writer)):
        edges = [(0, 0, 0, 0), (500, 700, 100, 600), (-1e6, -1e6, 1e6, 1e6)][number % 3]
        widget[NameObject("/Rect")] = ArrayObject([FloatObject(edge) for edge in edges])


def no_looks(writer: PdfWriter) -> None:
    for widget in fields(writer):
        widget.pop("/AP", None)
        widget.pop("/DA", None)


@pytest.mark.parametrize("change", [loop, strange_places, no_looks])
def test_fields_that_are_badly_made_hurt_nobody(change: Change) -> None:
    data = changed(change)
    blank = read_blank(data, "odd.pdf")
    found = map_of(blank, *recognised(blank))
    assert len(found.lines) == len(blank.spots)
    known = {spot.key: DRAWN.truth.get(spot.key) for spot in blank.spots}
    odd_copy(data, replace(DRAWN, truth=known))


@pytest.mark.parametrize("seed", range(60))
def test_a_damaged_file_is_read_or_refused_and_never_crashes(seed: int) -> None:
    random = Random(seed)
    data = bytearray(DRAWN.pdf)
    if seed % 3 == 0:
        data = data[: random.randrange(len(data))]
    else:
        for _ in range(random.choice([1, 10, 200])):
            data[random.randrange(len(data))] = random.randrange(256)
    try:
        blank = read_blank(bytes(data), "damaged.pdf")
        matched(blank, wanted(EDITION))
    except UserError as said:
        told = str(said)
    else:
        told = "damaged.pdf"
    assert "damaged.pdf" in told
