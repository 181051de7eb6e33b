"""Text files that a person names: read no further than needed, and refused in words."""

from collections.abc import Callable
from pathlib import Path

from firstpaper.errors import UserError
from firstpaper.locale import _


def plain_text(path: Path, most: int, unreadable: Callable[..., UserError]) -> str:
    """The text of a file, at most `most` characters of it.

    Raises what `unreadable` makes of `path` and `reason` where there is no such text.
    """
    try:
        if path.exists() and not path.is_file():
            raise unreadable(path=path, reason=_("it is not a file"))
        with path.open(encoding="utf-8-sig") as file:
            return file.read(most)
    except UnicodeDecodeError as error:
        raise unreadable(path=path, reason=_("it is not plain text in UTF-8")) from error
    except OSError as error:
        raise unreadable(path=path, reason=error.strerror or type(error).__name__) from error
