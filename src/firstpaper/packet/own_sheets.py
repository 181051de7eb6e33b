"""Sheets that a clinic brings: a page of its own, with places that a case fills in.

Such a file is text from a stranger. It is written in the sheet markup, and what Jinja would do beyond putting
in words is refused before anything runs: no calls, filters, attributes or sums, no other files. So a sheet
can show what is in `WORDS` and `LISTS`, and nothing else of a case. No address is among them.
"""

import re
from collections.abc import Callable, Iterator, Mapping, Sequence
from html import unescape
from typing import TYPE_CHECKING

from firstpaper.counting import spell_date
from firstpaper.errors import UserError
from firstpaper.facts import known
from firstpaper.law.finding import Weight
from firstpaper.law.measures.children import listed_children
from firstpaper.locale import _
from firstpaper.packet.brief import Brief
from firstpaper.packet.views.sheet import Sheet

if TYPE_CHECKING:
    from jinja2.nodes import Node, Template

LONGEST = 20_000
"""Characters in the file; about eight pages."""
LONGEST_FILLED = 200_000
"""Characters once it is filled in."""
DEEPEST = 4
"""How deep "if" and "for" may stand inside each other."""
MOST_FAULTS = 10

WORDS: Mapping[str, Callable[[Brief], str]] = {
    "petitioner": lambda brief: known(brief.case.petitioner.name) or "",
    "respondent": lambda brief: known(brief.case.respondent.name) or "",
    "kind": lambda brief: brief.kind,
    "county": lambda brief: known(brief.case.court.county) or "",
    "case_number": lambda brief: known(brief.case.record.case_number) or "",
    "interpreter": lambda brief: known(brief.case.people.language) or "",
    "filing_day": lambda brief: spell_date(brief.on),
}
"""What a sheet may put in, as `{{ petitioner }}`; empty where nobody has told it."""

LISTS: Mapping[str, Callable[[Brief], list[str]]] = {
    "children": lambda brief: [one.name for one in listed_children(brief.case, brief.on) if one.name],
    "stops": lambda brief: [one.title for one in brief.of_weight(Weight.STOP)],
    "advice": lambda brief: [one.title for one in brief.of_weight(Weight.GET_ADVICE)],
    "forms": lambda brief: [f"{one.form} {one.title}".strip() for one in brief.forms],
    "open_questions": lambda brief: [one.ask for one in brief.open_questions],
}
"""What a sheet may go through, as `{% for one in stops %}`."""

_NOT_SHOWN = re.compile(r"[^\S\n]")
_HEADING = re.compile(r"<h1>(.*?)</h1>", re.DOTALL)
_TAG = re.compile(r"<[^>]*>")


class OwnSheetRefused(UserError):
    """The sheet {name} cannot be used, so nothing was drafted.

    Please correct what is named here, and try again. The page "Sheet markup" says what a sheet may hold.
    """

    code = "own_sheet_refused"

    def __init__(self, name: str, faults: list[str]) -> None:
        super().__init__(name=name)
        self.faults = faults[:MOST_FAULTS]

    @property
    def message(self) -> str:
        """The message, and every fault with its line."""
        return "\n".join([super().message, *(f"  - {fault}" for fault in self.faults)])


def own_sheet(name: str, text: str, brief: Brief) -> Sheet:
    """The sheet written in `text`, filled in for one household. `name` is what its file is called.

    Raises OwnSheetRefused, with every fault that was found.
    """
    from markupsafe import Markup  # noqa: PLC0415  (slow to import, and only for a sheet of one's own)

    from firstpaper.packet.paper import markup_errors  # noqa: PLC0415

    filled = _filled(name, _printable(text), brief)
    faults = [*_strange(filled), *markup_errors(filled)]
    if not faults and not _HEADING.search(filled):
        faults = [_("It has no heading <h1>. The packet needs one to name the sheet.")]
    if faults:
        raise OwnSheetRefused(name, faults)
    return Sheet(
        template="own.html",
        title=_title(filled),
        running=_title(filled),
        purpose=_("A sheet of the place that helps you."),
        values={"filled": Markup(filled)},  # noqa: S704  (only tags of the sheet markup are left in it)
    )


def _filled(name: str, text: str, brief: Brief) -> str:
    from jinja2 import StrictUndefined, TemplateSyntaxError  # noqa: PLC0415  (slow to import)
    from jinja2.sandbox import ImmutableSandboxedEnvironment  # noqa: PLC0415

    environment = ImmutableSandboxedEnvironment(
        autoescape=True, undefined=StrictUndefined, trim_blocks=True, lstrip_blocks=True
    )
    for more in (environment.globals, environment.filters, environment.tests):
        more.clear()
    if len(text) > LONGEST:
        raise OwnSheetRefused(name, [_("It is longer than {count} characters.").format(count=LONGEST)])
    try:
        faults = list(_beyond_words(environment.parse(text)))
    except TemplateSyntaxError as error:
        faults = [_("Line {line}: this cannot be read.").format(line=error.lineno)]
    except (RecursionError, ValueError):
        faults = [_("It is not built like a sheet.")]
    if faults:
        raise OwnSheetRefused(name, faults)
    values = {key: find(brief) for key, find in (*WORDS.items(), *LISTS.items())}
    filled = environment.from_string(text).render(values)
    if len(filled) > LONGEST_FILLED:
        raise OwnSheetRefused(name, [_("Once filled in, it is too long.")])
    return filled


def _beyond_words(template: "Template") -> Iterator[str]:
    """What in a template is more than putting in words, choosing by one, or going through a list."""
    yield from _faults_of(template.body, set(WORDS), depth=0)


def _faults_of(nodes: "Sequence[Node]", names: set[str], depth: int) -> Iterator[str]:
    from jinja2 import nodes as kinds  # noqa: PLC0415  (slow to import)

    for node in nodes:
        match node:
            case kinds.TemplateData():
                pass
            case kinds.Output():
                yield from _faults_of(node.nodes, names, depth)
            case kinds.Name(name=name) if name in names:
                pass
            case kinds.Name(name=name):
                yield _("Line {line}: there is no word called {name} to put in.").format(
                    line=node.lineno, name=name[:40]
                )
            case _ if depth == DEEPEST:
                yield _("Line {line}: this stands too deep.").format(line=_line(node))
            case kinds.If(test=kinds.Name() as test, elif_=[]):
                yield from _faults_of([test], names | set(LISTS), depth)
                yield from _faults_of([*node.body, *node.else_], names, depth + 1)
            case kinds.For(iter=kinds.Name() as listed, target=kinds.Name() as one) if _is_plain(node):
                yield from _faults_of([listed], set(LISTS), depth)
                yield from _faults_of(node.body, names | {one.name}, depth + 1)
            case _:
                yield _("Line {line}: a sheet can only put in words, with if and for.").format(
                    line=_line(node)
                )


def _line(node: "Node") -> int:
    """The line of a node, or of the first thing in it: some have none of their own."""
    from jinja2.nodes import Node  # noqa: PLC0415  (slow to import)

    return node.lineno or next((inner.lineno for inner in node.find_all(Node) if inner.lineno), 1)


def _is_plain(loop: "Node") -> bool:
    """Whether a "for" only goes through its list, and stands in no other "for"."""
    from jinja2 import nodes as kinds  # noqa: PLC0415  (slow to import)

    assert isinstance(loop, kinds.For)
    return not (loop.test or loop.else_ or loop.recursive or list(loop.find_all(kinds.For)))


def _strange(filled: str) -> Iterator[str]:
    """What the sheet markup allows and a sheet of a stranger may not have.

    A browser and our reader could see different ends of a comment; a picture must come with its sheet.
    """
    for sign in ("<!", "<?", "<figure", "<done", "<page "):
        if sign in filled:
            yield _("It has {sign} in it.").format(sign=sign)


def _printable(text: str) -> str:
    """The text without characters that are obeyed or hidden."""
    lines = text.removeprefix("\ufeff").replace("\r\n", "\n").replace("\r", "\n")
    return "".join(c for c in _NOT_SHOWN.sub(" ", lines) if c.isprintable() or c == "\n")


def _title(filled: str) -> str:
    """What its heading says, for the outline and the cover checklist."""
    heading = _HEADING.search(filled)
    return " ".join(unescape(_TAG.sub("", heading[1] if heading else "")).split())
