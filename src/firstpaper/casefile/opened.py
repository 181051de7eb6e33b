"""A case file held open for writing: locked, loaded or begun, and saved after every change."""

from collections.abc import Iterable, Iterator
from contextlib import contextmanager, nullcontext, suppress
from pathlib import Path
from types import TracebackType
from typing import TYPE_CHECKING, Self

from firstpaper.casefile.copies import Copies, drop
from firstpaper.casefile.document import CaseFile
from firstpaper.casefile.erasing import wiping_what_is_replaced
from firstpaper.casefile.errors import CaseFileDamaged, CaseFileMissing, CopyKept, NotACaseFile
from firstpaper.casefile.lock import Lock
from firstpaper.casefile.reading import content_of, is_sealed, read_case_file
from firstpaper.casefile.saving import explained, real, save, sweep
from firstpaper.errors import UserError
from firstpaper.facts import Case
from firstpaper.locale import _

if TYPE_CHECKING:
    from firstpaper.casefile.sealing import Seal


def load(path: Path, passphrases: Iterable[str] = ()) -> CaseFile:
    """Read the case file at `path`; where it is damaged or gone, point to a copy that is whole."""
    return load_with_seal(path, passphrases)[0]


def load_with_seal(path: Path, passphrases: Iterable[str] = ()) -> "tuple[CaseFile, Seal | None]":
    """The same, with the seal of a sealed file, to give it to another."""
    with _pointing_to_copies(path):
        content, seal = content_of(path, passphrases)
        return CaseFile.parsed(path, content), seal


class OpenCase:
    """The case file at `path`, for one writer, inside a `with` block.

    With `begin`, a file that is not there yet is begun; it appears on disk with the first `keep`.
    `passphrases` are tried in turn where the file is sealed. `new` says that it was not there,
    `recovered` that the last writer did not end well.
    """

    def __init__(self, path: Path, *, begin: bool = False, passphrases: Iterable[str] = ()) -> None:
        self.path = path
        self.file = CaseFile()
        self.new = False
        self._saved = False
        self._begin = begin
        self._passphrases = passphrases
        self._seal: Seal | None = None
        self._lock = Lock(path)
        self._copies = Copies(path)

    def __enter__(self) -> Self:
        self._lock.__enter__()
        try:
            sweep(self.path)
            with _pointing_to_copies(self.path):
                self._load()
        except BaseException:
            self._lock.__exit__(None, None, None)
            raise
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        self._lock.__exit__(kind, error, trace)

    @property
    def case(self) -> Case:
        """The facts as they are now."""
        return self.file.case

    @property
    def recovered(self) -> bool:
        """Whether a lock left behind by a crash was taken over."""
        return self._lock.recovered

    @property
    def copies(self) -> Path | None:
        """The folder with the copies of the last saves, where there is one."""
        there = self._copies.newest_first()
        return self.path.with_name(there[0].parent.name) if there else None

    @property
    def sealed(self) -> bool:
        """Whether the next save is sealed."""
        return self._seal is not None

    def keep(self, file: CaseFile) -> None:
        """Save `file` and go on with it. Where saving fails, the file on disk and here stay as they were."""
        self._lock.check()
        if not self._saved:
            self._copies.include(self.path)
        data = self._written(file)
        save(self.path, data)
        self._copies.add(data)
        self.file, self._saved = file, True

    def seal_with(self, seal: "Seal | None") -> None:
        """Seal the file from now on, or with None keep it plain, and let nothing of the other kind stay.

        A file that is not on disk yet gets its first save sealed.
        """
        before, self._seal = self._seal, seal
        if not self.path.exists():
            return
        try:
            with wiping_what_is_replaced(real(self.path)) if seal else nullcontext():
                self._lock.check()
                data = self._written(self.file)
                save(self.path, data)
        except BaseException:
            self._seal = before
            raise
        self._copies.clear()
        self._copies.add(data)

    def undo(self) -> CaseFile | None:
        """Go back to the newest save that differs from the file now; None where there is none."""
        self._lock.check()
        newer: list[Path] = []
        for copy in self._copies.newest_first():
            earlier = self._readable(copy)
            if earlier and earlier != self.file:
                save(self.path, self._written(earlier))
                drop(newer)
                self.file = earlier
                return earlier
            newer.append(copy)
        return None

    def forget(self) -> None:
        """Remove a file that this writer began; one that was there before is left as it was."""
        if self.new:
            self._lock.check()
            self.path.unlink(missing_ok=True)
            self._copies.clear()
            self.file = CaseFile()

    def _load(self) -> None:
        if self._begin and not self.path.exists() and not self._copies.newest_first():
            self.new = True
            return
        content, self._seal = content_of(self.path, self._passphrases)
        self.file = CaseFile.parsed(self.path, content)

    def _written(self, file: CaseFile) -> bytes:
        content = file.to_json().encode()
        return self._seal.close(content) if self._seal else content

    def _readable(self, copy: Path) -> CaseFile | None:
        with suppress(UserError):
            data = read_case_file(copy)
            if self._seal and self._seal.opens(data):
                return CaseFile.parsed(copy, self._seal.open(copy, data))
            if not self._seal and not is_sealed(data):
                return CaseFile.parsed(copy, data)
        return None


def bring_back(path: Path) -> None:
    """Put the newest whole copy in the place of a case file that is damaged or gone.

    The damaged file is kept beside it. Raises CaseFileMissing where there is no whole copy.
    """
    with Lock(path):
        copy = _whole_copy(path)
        if copy is None:
            raise CaseFileMissing(path=path)
        data = read_case_file(copy)
        target = real(path)
        try:
            if target.exists():
                target.replace(set_aside(path))
        except OSError as error:
            raise explained(error, path) from error
        save(path, data)


def set_aside(path: Path) -> Path:
    """Where a damaged case file is kept when a copy takes its place."""
    target = real(path)
    return target.with_name(target.name + ".damaged")


@contextmanager
def _pointing_to_copies(path: Path) -> Iterator[None]:
    try:
        yield
    except (CaseFileDamaged, CaseFileMissing, NotACaseFile) as error:
        copy = _whole_copy(path)
        if copy is None:
            raise
        raise CopyKept(
            path=path, reason=_reason(error), when=_when(copy), aside=set_aside(path).name
        ) from error


def _whole_copy(path: Path) -> Path | None:
    return next((copy for copy in Copies(path).newest_first() if _is_whole(copy)), None)


def _is_whole(copy: Path) -> bool:
    """Whether a copy can be used; of a sealed one, all that can be told without its passphrase."""
    try:
        data = read_case_file(copy)
        if is_sealed(data):
            from firstpaper.casefile.sealing import check_whole  # noqa: PLC0415

            check_whole(copy, data)
        else:
            CaseFile.parsed(copy, data)
    except UserError:
        return False
    return True


def _reason(error: UserError) -> str:
    if isinstance(error, CaseFileMissing):
        return _("it is not there any more")
    return str(error.details.get("reason", _("it is no case file any more")))


def _when(copy: Path) -> str:
    from datetime import datetime  # noqa: PLC0415  (only for a file that is damaged)

    from firstpaper.counting import spell_date  # noqa: PLC0415

    saved = datetime.fromtimestamp(copy.stat().st_mtime).astimezone()
    return _("at {time} on {date}").format(time=f"{saved:%H:%M}", date=spell_date(saved.date()))
