"""Text files that a person names: read no further than needed, and refused in words."""

from codecs import BOM_UTF16_BE, BOM_UTF16_LE
from collections.abc import Callable
from pathlib import Path

from firstpaper.errors import UserError
from firstpaper.locale import _


def plain_text(path: Path, most: int, unreadable: Callable[..., UserError]) -> str:
    """The text of a file, at most `most` characters of it: UTF-8, or UTF-16 where the file says so itself.

    Raises what `unreadable` makes of `path` and `reason` where there is no such text.
    """
    try:
        if path.exists() and not path.is_file():
            raise unreadable(path=path, reason=_("it is not a file"))
        with path.open(encoding=_encoding(path)) as file:
            return file.read(most)
    except UnicodeError as error:
        raise unreadable(path=path, reason=_not_utf8()) from error
    except OSError as error:
        raise unreadable(path=path, reason=error.strerror or type(error).__name__) from error


def _encoding(path: Path) -> str:
    with path.open("rb") as file:
        begins = file.read(2)
    return "utf-16" if begins in (BOM_UTF16_LE, BOM_UTF16_BE) else "utf-8-sig"


def _not_utf8() -> str:
    return _(
        "it is not plain text in UTF-8, so its letters cannot be told for sure. Save it again as UTF-8, in a "
        "spreadsheet as CSV UTF-8"
    )
