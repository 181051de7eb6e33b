"""A case file held open for writing: locked, loaded or begun, and saved after every change."""

from collections.abc import Iterable, Iterator
from contextlib import contextmanager, nullcontext, suppress
from dataclasses import replace
from pathlib import Path
from types import TracebackType
from typing import TYPE_CHECKING, Self

from firstpaper.casefile.belongings import finish_removing, kept_from_others, set_aside
from firstpaper.casefile.beside import held_against_its_copies, strays
from firstpaper.casefile.copies import Copies
from firstpaper.casefile.document import CaseFile, Mark
from firstpaper.casefile.erasing import wipe, wiping_what_is_replaced
from firstpaper.casefile.errors import (
    CaseFileDamaged,
    CaseFileMissing,
    ChangedMeanwhile,
    CopiesStay,
    CopyKept,
    NotACaseFile,
)
from firstpaper.casefile.lock import Lock
from firstpaper.casefile.reading import content_of, is_sealed, read_case_file
from firstpaper.casefile.saving import explained, real, replacement, rests, save, sweep
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
    finish_removing(path)
    with _pointing_to_copies(path):
        content, seal = content_of(path, passphrases)
        file = CaseFile.parsed(path, content)
        _check_against_its_copies(path, file, seal)
    if seal and (rests(path) or strays(path, file, seal)):
        with suppress(UserError), Lock(path):  # where somebody is at work with it, theirs is to do
            tidied(path, file, seal)
    return file, seal


def tidied(path: Path, file: CaseFile, seal: "Seal") -> int:
    """Wipe what lies beside a sealed file and does not open with its key: how many copies that were.

    A lock that was begun and cut off, or somebody else, may have left them. Called with the lock held.
    """
    sweep(path)
    copies = Copies(path)
    copies.sweep()
    others = strays(path, file, seal)
    copies.wipe(others)
    return len(others)


class OpenCase:
    """The case file at `path`, for one writer, inside a `with` block.

    With `begin`, a file that is not there yet is begun; it appears on disk with the first `keep`.
    `passphrases` are tried in turn where the file is sealed. `new` says that it was not there,
    `recovered` that the last writer did not end well, `tidied` how many copies were wiped on opening because
    they did not open with the key of the file.
    """

    def __init__(self, path: Path, *, begin: bool = False, passphrases: Iterable[str] = ()) -> None:
        self.path = path
        self.file = CaseFile()
        self.new = False
        self.tidied = 0
        self._saved = False
        self._on_disk: bytes | None = None
        self._begin = begin
        self._passphrases = passphrases
        self._seal: Seal | None = None
        self._lock = Lock(path)
        self._copies = Copies(path)

    def __enter__(self) -> Self:
        self._lock.__enter__()
        try:
            finish_removing(self.path)
            sweep(self.path)
            self._copies.sweep()
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
    def alone(self) -> bool:
        """Whether the folder knows no locks, so that only the lock file keeps two windows apart."""
        return self._lock.alone

    @property
    def copies(self) -> Path | None:
        """The folder with the copies of the last saves, where there is one."""
        there = self._copies.newest_first()
        return self.path.with_name(there[0].parent.name) if there else None

    @property
    def sealed(self) -> bool:
        """Whether the next save is sealed."""
        return self._seal is not None

    @property
    def seal(self) -> "Seal | None":
        """What the file is sealed with, to give it to another; None where it is plain."""
        return self._seal

    def keep(self, file: CaseFile) -> None:
        """Save `file` and go on with it. Where saving fails, the file on disk and here stay as they were.

        Raises ChangedMeanwhile where another program changed or removed the file; then both are kept.
        """
        self._lock.check()
        if not self._saved:
            self._copies.include(self.path)
        file = self._marked(file)
        data = self._written(file)
        self._check_unchanged(data)
        save(self.path, data)
        self._copies.add(data)
        self.file, self._saved, self._on_disk = file, True, data

    def seal_with(self, seal: "Seal | None") -> None:
        """Seal the file from now on, or with None keep it plain, and let nothing of the other kind stay.

        A file that is not on disk yet gets its first save sealed. The copies go before the file changes, when
        the new one is on the disk already: at no moment is there a sealed file with an open copy beside it.
        """
        before, self._seal = (self._seal, self.file), seal
        if not self.path.exists():
            return
        try:
            self._lock.check()
            self.file = self._marked(self.file)
            data = self._written(self.file)
            self._check_unchanged(data)
            with wiping_what_is_replaced(real(self.path)) if seal else nullcontext():
                self._replace_with_copies(data)
        except BaseException:
            self._seal, self.file = before
            raise
        self._copies.add(data)
        self._on_disk = data

    def undo(self) -> CaseFile | None:
        """Go back to the newest save that differs from the file now; None where there is none."""
        self._lock.check()
        newer: list[Path] = []
        for copy in self._copies.newest_first():
            earlier = self._readable(copy)
            if earlier and earlier != self.file:
                earlier = self._marked(earlier)
                data = self._written(earlier)
                self._check_unchanged(data)
                save(self.path, data)
                self._copies.drop(newer)
                self.file, self._on_disk = earlier, data
                return earlier
            newer.append(copy)
        return None

    def forget(self) -> None:
        """Remove a file that this writer began; one that was there before is left as it was."""
        if self.new:
            self._lock.check()
            with suppress(FileNotFoundError):
                wipe(self.path)
            self._copies.clear()
            self.file, self._on_disk = CaseFile(), None

    def _load(self) -> None:
        if self._begin and not self.path.exists() and not self._copies.newest_first():
            self.new = True
            return
        content, self._seal = content_of(self.path, self._passphrases)
        self.file = CaseFile.parsed(self.path, content)
        self._on_disk = read_case_file(self.path)
        _check_against_its_copies(self.path, self.file, self._seal)
        if self._seal:
            self.tidied = tidied(self.path, self.file, self._seal)

    def _marked(self, file: CaseFile) -> CaseFile:
        """The file with the mark of the next save; only a sealed one has any."""
        mark = (self.file.mark or Mark.new()).next if self._seal else None
        return replace(file, mark=mark)

    def _written(self, file: CaseFile) -> bytes:
        content = file.to_json().encode()
        return self._seal.close(content) if self._seal else content

    def _replace_with_copies(self, data: bytes) -> None:
        with replacement(self.path, data) as take_its_place:
            if self._copies.clear():
                raise CopiesStay(path=self.path, folder=self._copies.folder)
            take_its_place()

    def _check_unchanged(self, data: bytes) -> None:
        """Keep both where the file is not as this writer last saw it; `data` is what was to be saved."""
        if _bytes_of(self.path) != self._on_disk:
            mine = next(one for one in kept_from_others(self.path) if not one.exists())
            save(mine, data)
            raise ChangedMeanwhile(path=self.path, mine=self.path.with_name(mine.name))

    def _readable(self, copy: Path) -> CaseFile | None:
        with suppress(UserError, OSError):
            data = self._copies.read(copy)
            if self._seal and self._seal.opens(data):
                earlier = CaseFile.parsed(copy, self._seal.open(copy, data))
                same = not self.file.mark or not earlier.mark or earlier.mark.word == self.file.mark.word
                return earlier if same else None
            if not self._seal and not is_sealed(data):
                return CaseFile.parsed(copy, data)
        return None


def _bytes_of(path: Path) -> bytes | None:
    """What is on the disk; None where there is nothing that can be read as a case file."""
    with suppress(UserError):
        return read_case_file(path)
    return None


def bring_back(path: Path) -> None:
    """Put the newest whole copy in the place of a case file that is damaged or gone.

    The damaged file is kept beside it. Raises CaseFileMissing where there is no whole copy.
    """
    with Lock(path):
        copy = _whole_copy(path)
        if copy is None:
            raise CaseFileMissing(path=path)
        data = Copies(path).read(copy)
        target = real(path)
        try:
            if target.exists():
                target.replace(set_aside(path))
        except OSError as error:
            raise explained(error, path) from error
        save(path, data)


@contextmanager
def _pointing_to_copies(path: Path) -> Iterator[None]:
    try:
        yield
    except (CaseFileDamaged, CaseFileMissing, NotACaseFile) as error:
        copy = _whole_copy(path)
        if copy is None:
            raise
        raise _kept(path, _reason(error), copy) from error


def _check_against_its_copies(path: Path, file: CaseFile, seal: "Seal | None") -> None:
    """Raise CopyKept where the copies tell that this is another file, or an older one, put in its place."""
    if told := held_against_its_copies(path, file, seal):
        raise _kept(path, *told)


def _kept(path: Path, reason: str, copy: Path) -> CopyKept:
    return CopyKept(path=path, reason=reason, when=_when(copy), aside=set_aside(path).name)


def _whole_copy(path: Path) -> Path | None:
    return next((copy for copy in Copies(path).newest_first() if _is_whole(copy)), None)


def _is_whole(copy: Path) -> bool:
    """Whether a copy can be used; of a sealed one, all that can be told without its passphrase."""
    try:
        data = Copies.in_folder(copy.parent).read(copy)
        if is_sealed(data):
            from firstpaper.casefile.sealing import check_whole  # noqa: PLC0415

            check_whole(copy, data)
        else:
            CaseFile.parsed(copy, data)
    except (UserError, OSError):
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
