"""The files around a blank form: its map, its proof, and the filled copies, read and written safely."""

from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import TYPE_CHECKING, NamedTuple

from firstpaper.errors import UserError
from firstpaper.locale import _

if TYPE_CHECKING:
    from firstpaper.blanks.blank import Blank
    from firstpaper.blanks.filling import Filling
    from firstpaper.blanks.mapping import Map
    from firstpaper.forms import FilledForm

MAP, PROOF = ".map.yaml", ".proof.pdf"
MAP_BEGINS = b"# Which field"
MOST = 20_000_001


class FileUnreadable(UserError):
    """{path} could not be read: {reason}. Nothing was changed.

    Check the name and the folder, and try again.
    """

    code = "blank_file_unreadable"


class NotReadBack(UserError):
    """The filled {form} did not read back as it should, so no file was made of it.

    These fields differ: {fields}. Copy the worksheet by hand, or look at the map of the blank and its proof
    again.
    """

    code = "filled_file_differs"


class NoBlank(UserError):
    """{path} has no blank form with its map. So nothing was filled in.

    Download the form from the court's own site into that folder, and begin with: firstpaper blank FL-100.pdf
    """

    code = "no_blank"


class Learned(NamedTuple):
    """A blank with its map, and whether the map was confirmed here."""

    path: Path
    data: bytes
    blank: "Blank"
    map: "Map"
    confirmed: bool


class FilledFile(NamedTuple):
    """A filled copy that read back as it should."""

    path: Path
    form: str
    use: str
    data: bytes
    what: "Filling"
    oddities: tuple[str, ...]


def read_bytes(path: Path) -> bytes:
    """The bytes of a file that somebody brings; never more than a form can have."""
    try:
        with path.open("rb") as file:
            return file.read(MOST)
    except OSError as error:
        raise FileUnreadable(path=path, reason=error.strerror or type(error).__name__) from error


def read_text(path: Path) -> str:
    """The text of a map."""
    try:
        return read_bytes(path).decode("utf-8")
    except UnicodeDecodeError as error:
        raise FileUnreadable(path=path, reason=_("it is no text")) from error


def map_beside(pdf: Path) -> Path:
    """Where the map of a blank lies."""
    return pdf.with_name(pdf.stem + MAP)


def blank_beside(path: Path) -> Path:
    """Where the blank of a map lies."""
    return path.with_name(path.name.removesuffix(MAP) + ".pdf")


def proof_beside(pdf: Path) -> Path:
    """Where the proof of a blank lies."""
    return pdf.with_name(pdf.stem + PROOF)


def write_map(path: Path, one: "Map") -> None:
    """Put the map beside its blank."""
    from firstpaper.blanks.mapping import written
    from firstpaper.cli.files.output import write_output

    write_output(path, written(one).encode(), MAP_BEGINS)


def write_proof(pdf: Path, data: bytes, one: "Map") -> Path:
    """Put the proof beside its blank."""
    from firstpaper.blanks.proof import proof
    from firstpaper.cli.files.output import PDF, write_output

    write_output(proof_beside(pdf), proof(data, pdf.name, one), PDF)
    return proof_beside(pdf)


def learned(path: Path) -> Learned:
    """The blank of a map, read and held against it."""
    from firstpaper.blanks.here import is_confirmed_here
    from firstpaper.blanks.mapping import read_map, refuse_another
    from firstpaper.blanks.reading import read_blank

    pdf = blank_beside(path)
    one, data = read_map(read_text(path), path.name), read_bytes(pdf)
    blank = read_blank(data, pdf.name)
    refuse_another(one, blank, path.name)
    return Learned(pdf, data, blank, one, bool(one.who) and is_confirmed_here(path))


@contextmanager
def as_measured(blanks: Iterable[Learned]) -> Iterator[None]:
    """While this lasts, what fits on these forms is what fits on the blanks that were confirmed here."""
    from firstpaper.blanks.room import measured_edition
    from firstpaper.forms.edition import measured

    editions = [measured_edition(one.map, one.blank) for one in blanks if one.confirmed]
    with measured(edition for edition in editions if edition):
        yield


def to_confirm(folder: Path) -> tuple[Path, ...]:
    """The maps of a folder that nobody has confirmed in it, or that changed since."""
    from firstpaper.blanks.here import is_confirmed_here

    return tuple(path for path in sorted(folder.glob(f"*{MAP}")) if not is_confirmed_here(path))


def all_learned(folder: Path) -> tuple[Learned, ...]:
    """Every blank of a folder that has a map; NoBlank where there is none."""
    found = tuple(learned(path) for path in sorted(folder.glob(f"*{MAP}")))
    if not found:
        raise NoBlank(path=folder)
    return found


def filled_files(
    forms: tuple["FilledForm", ...], blanks: tuple[Learned, ...], case: Path, *, flat: bool
) -> Iterator[FilledFile]:
    """A filled copy of each form that has a blank whose map was confirmed here, checked before it is kept."""
    ready = {one.map.form: one for one in blanks if one.confirmed}
    copies: dict[str, int] = {}
    for form in forms:
        if form.form in ready:
            copies[form.form] = copies.get(form.form, 0) + 1
            yield _filled_file(form, ready[form.form], case, copies[form.form], flat=flat)


def _filled_file(form: "FilledForm", one: Learned, case: Path, copy: int, *, flat: bool) -> FilledFile:
    from firstpaper.blanks.checking import differences
    from firstpaper.blanks.filling import filled_copy, filling
    from firstpaper.cli.files.output import beside

    data, what = filled_copy(one.data, one.path.name, filling(form, one.map, one.blank), flat=flat)
    wrong = differences(one.data, data, what, one.blank, flat=flat)
    if wrong:
        raise NotReadBack(form=form.form, fields=", ".join(wrong[:5]))
    ending = f"-{form.form}.pdf" if copy == 1 else f"-{form.form}-{copy}.pdf"
    return FilledFile(beside(case, ending), form.form, form.use, data, what, one.blank.oddities)


def write_filled(file: FilledFile, lock: Callable[[bytes], bytes] | None) -> None:
    """Put a filled copy beside the case file, locked where the packet is."""

    from firstpaper.cli.files.output import PDF, write_output

    write_output(file.path, lock(file.data) if lock else file.data, PDF)
