"""A case file held open for writing: locked, loaded or begun, and saved after every change."""

from pathlib import Path
from types import TracebackType
from typing import Self

from firstpaper.casefile.document import CaseFile
from firstpaper.casefile.lock import Lock
from firstpaper.casefile.saving import sweep
from firstpaper.facts import Case


class OpenCase:
    """The case file at `path`, for one writer, inside a `with` block.

    With `begin`, a file that is not there yet is begun; it appears on disk with the first `keep`.
    `new` says that it was not there, `recovered` that the last writer did not end well.
    """

    def __init__(self, path: Path, *, begin: bool = False) -> None:
        self.path = path
        self.file = CaseFile()
        self.new = False
        self._begin = begin
        self._lock = Lock(path)

    def __enter__(self) -> Self:
        self._lock.__enter__()
        try:
            sweep(self.path)
            self.new = self._begin and not self.path.exists()
            if not self.new:
                self.file = CaseFile.load(self.path)
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

    def keep(self, file: CaseFile) -> None:
        """Save `file` and go on with it. Where saving fails, the file on disk and here stay as they were."""
        self._lock.check()
        file.save(self.path)
        self.file = file

    def forget(self) -> None:
        """Remove a file that this writer began; one that was there before is left as it was."""
        if self.new:
            self._lock.check()
            self.path.unlink(missing_ok=True)
            self.file = CaseFile()
