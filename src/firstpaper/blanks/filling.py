"""Filling a blank: each answer into the field confirmed for it, with a look that every viewer shows."""

from collections.abc import Iterator, Mapping, Sequence
from io import BytesIO
from typing import TYPE_CHECKING, Any, NamedTuple

from firstpaper.blanks.blank import Blank, Spot
from firstpaper.blanks.lettering import Lettering, TooLong, look
from firstpaper.blanks.mapping import Map
from firstpaper.blanks.reading import full_name, inherited, lineage, on_state, opened, read_as_data, widgets
from firstpaper.forms.answer import Action, ItemAnswer
from firstpaper.forms.filled import FilledForm
from firstpaper.locale import _

if TYPE_CHECKING:
    from pypdf import PdfReader, PdfWriter

Key = tuple[str, str]


class Entry(NamedTuple):
    """What goes into one field: text, or a mark; and the item that it answers."""

    key: Key
    text: str
    marked: bool
    item: ItemAnswer


class Left(NamedTuple):
    """One answer that is left to be done by hand, and why."""

    item: ItemAnswer
    why: str


class Filling(NamedTuple):
    """What is to be filled in, and what is left."""

    entries: tuple[Entry, ...]
    left: tuple[Left, ...]


def filling(form: FilledForm, one: Map, blank: Blank) -> Filling:
    """What of the answers goes into which field of the blank. `one` was confirmed here."""
    entries: dict[Key, Entry] = {}
    left: list[Left] = []
    for item in form.items:
        if item.action in (Action.SIGN, Action.FILL, Action.OTHERS) or item.open_key:
            left.append(Left(item, _by_hand(item)))
        if item.action not in (Action.MARK, Action.WRITE):
            continue
        if item.concept.endswith("signing.date"):
            continue
        put, why = _put(item, one, blank)
        if why:
            left.append(Left(item, why))
            continue
        entries.update({entry.key: entry for entry in put})
    return Filling(tuple(entries.values()), tuple(left))


def _by_hand(item: ItemAnswer) -> str:
    if item.action is Action.SIGN:
        return _("Sign or date it by hand, on the day you sign.")
    return _("Fill it in yourself.") if item.action is Action.FILL else item.because


def _put(item: ItemAnswer, one: Map, blank: Blank) -> tuple[list[Entry], str]:
    """The fields for one answer, or why it is copied by hand. All of an answer goes in, or none."""
    put: list[Entry] = []
    for key, text in _pieces(item, one):
        lines = one.taking(key)
        if not lines:
            return [], _("No field of the blank was confirmed for it.")
        for line in lines:
            spot = blank.by_key.get(line.key)
            why = _why_not(spot, text)
            if spot is None or why:
                return [], why or _("The blank has no such field.")
            put.append(Entry(spot.key, text, item.action is Action.MARK, item))
    return put, ""


def _pieces(item: ItemAnswer, one: Map) -> Iterator[tuple[str, str]]:
    """Each piece of an answer with its key in maps; the whole where one field takes the whole."""
    if not item.cells or one.taking(item.concept):
        yield item.concept, item.value
        return
    rows = item.rows
    places = max(
        (int(line.takes.split("/")[1]) for line in one.lines if line.takes.startswith(f"{item.concept}/")),
        default=1,
    )
    if places == 1 and len(rows) > 1:
        rows = ({column: "\n".join(row[column] for row in rows) for column in item.columns},)
    for number, row in enumerate(rows, 1):
        yield from (
            (f"{item.concept}/{number}/{column}", text) for column, text in row.items() if text.strip()
        )


def _why_not(spot: Spot | None, text: str) -> str:
    if spot is None:
        return _("The blank has no such field.")
    if spot.locked:
        return _("The blank does not let this field be changed.")
    if spot.rich:
        return _("The field holds formatted text, which we do not write.")
    if text and spot.longest is not None and len(text) > spot.longest:
        return _("It is too long for its field, which takes {most} letters.").format(most=spot.longest)
    return ""


def filled_copy(data: bytes, name: str, what: Filling, *, flat: bool = False) -> tuple[bytes, Filling]:
    """The blank filled in, and what went in: an answer that does not fit its field is left out whole."""
    with read_as_data(name):
        reader = opened(data, name)
        what = _that_fit(reader, what)
        return _filled(reader, what, flat=flat), what


def _filled(reader: "PdfReader", what: Filling, *, flat: bool) -> bytes:
    from pypdf import PdfWriter  # noqa: PLC0415 - slow to import

    writer = PdfWriter(clone_from=reader)
    _leave_out(writer)
    entries = {entry.key: entry for entry in what.entries}
    for page in writer.pages:
        for widget in list(widgets(page)):
            _fill(writer, widget, entries)
        if flat:
            _flatten(writer, page)
    if flat:
        del writer.root_object["/AcroForm"]
    out = BytesIO()
    writer.write(out)
    return out.getvalue()


def _that_fit(reader: "PdfReader", what: Filling) -> Filling:
    """Without the answers of which some piece is too long for its box or has letters its font lacks."""
    why: dict[str, str] = {}
    entries = {entry.key: entry for entry in what.entries}
    for page in reader.pages:
        for widget in widgets(page):
            entry = _entry(widget, entries)
            if entry and not entry.marked:
                try:
                    look(Lettering.of(widget, reader.root_object), entry.text)
                except TooLong as long:
                    why[entry.item.concept] = long.why
    kept = tuple(entry for entry in what.entries if entry.item.concept not in why)
    left = {entry.item.concept: entry.item for entry in what.entries if entry.item.concept in why}
    return Filling(kept, (*what.left, *(Left(item, why[concept]) for concept, item in left.items())))


def _entry(widget: Any, entries: Mapping[Key, Entry]) -> Entry | None:
    line = lineage(widget)
    name = full_name(line)
    state = on_state(widget) if inherited(line, "/FT") == "/Btn" else ""
    return entries.get((name, state))


def _fill(writer: "PdfWriter", widget: Any, entries: Mapping[Key, Entry]) -> None:
    from pypdf.generic import NameObject, TextStringObject  # noqa: PLC0415

    line = lineage(widget)
    field = next((one for one in line if "/T" in one), widget)
    entry = _entry(widget, entries)
    if inherited(line, "/FT") == "/Btn":
        on = any(key[0] == full_name(line) for key in entries)
        if on:
            mine = NameObject(f"/{on_state(widget)}") if entry else NameObject("/Off")
            widget[NameObject("/AS")] = mine
            if entry:
                field[NameObject("/V")] = mine
        return
    if entry is None:
        return
    for one in line:  # a place that keeps a value of its own would hide that of its field
        one.pop("/V", None)
    field[NameObject("/V")] = TextStringObject(entry.text)
    stream = look(Lettering.of(widget, writer.root_object), entry.text)
    from pypdf.generic import DictionaryObject  # noqa: PLC0415

    widget[NameObject("/AP")] = DictionaryObject({NameObject("/N"): writer._add_object(stream)})


def _leave_out(writer: "PdfWriter") -> None:
    """Everything in the file that could run, and the second copy of its fields."""
    root = writer.root_object
    for name in ("/OpenAction", "/AA", "/Perms"):
        root.pop(name, None)
    names = root.get("/Names")
    if names is not None:
        scripts: Any = names.get_object()
        scripts.pop("/JavaScript", None)
    form: Any = root["/AcroForm"].get_object()
    for name in ("/XFA", "/CO", "/NeedAppearances"):
        form.pop(name, None)
    for page in writer.pages:
        page.pop("/AA", None)
        for widget in widgets(page):
            for one in lineage(widget):
                one.pop("/AA", None)
                one.pop("/A", None)


def _flatten(writer: "PdfWriter", page: Any) -> None:
    """Draw the looks of the fields into the page and take the fields away."""
    from pypdf.generic import ArrayObject, DecodedStreamObject, DictionaryObject, NameObject  # noqa: PLC0415

    drawn: list[str] = []
    shelf = page.setdefault(NameObject("/Resources"), DictionaryObject()).get_object()
    forms = shelf.setdefault(NameObject("/XObject"), DictionaryObject()).get_object()
    kept = ArrayObject()
    for number, reference in enumerate(page.get("/Annots") or ()):
        widget = reference.get_object()
        if widget.get("/Subtype") != "/Widget":
            kept.append(reference)
            continue
        normal = (widget.get("/AP") or {}).get("/N")
        shown: Any = normal.get_object() if normal is not None else None
        if isinstance(shown, dict) and "/BBox" not in shown:
            shown = shown.get(widget.get("/AS", "/Off"))
            normal = shown
            shown = shown.get_object() if shown is not None else None
        if shown is None:
            continue
        left, bottom = (float(edge) for edge in widget["/Rect"][:2])
        forms[NameObject(f"/Filled{number}")] = shown.indirect_reference or normal
        drawn.append(f"q 1 0 0 1 {left:.2f} {bottom:.2f} cm /Filled{number} Do Q")
    page[NameObject("/Annots")] = kept
    stream = DecodedStreamObject()
    stream.set_data(("\nQ\n" + "\n".join(drawn)).encode())
    before = DecodedStreamObject()
    before.set_data(b"q\n")
    old = page.get("/Contents")
    parts: Sequence[Any] = (
        ()
        if old is None
        else old.get_object()
        if isinstance(old.get_object(), list)
        else [page.raw_get("/Contents")]
    )
    page[NameObject("/Contents")] = ArrayObject(
        [writer._add_object(before), *parts, writer._add_object(stream)]
    )
