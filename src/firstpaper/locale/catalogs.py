"""The message catalogs: a folder a language, with its parts as `.po` files.

A wheel carries them compiled, as `firstpaper.mo`, and only those that are whole. A checkout has the parts
alone; they are put together in memory, where they are needed.
"""

from functools import cache
from gettext import GNUTranslations, NullTranslations
from io import BytesIO
from pathlib import Path

ENGLISH = "en"
FOLDER = Path(__file__).parent
COMPILED = "firstpaper.mo"


@cache
def catalog(language: str) -> NullTranslations:
    """The messages of a language. Without a catalog the English words in the code are spoken."""
    if language == ENGLISH:
        return NullTranslations()
    whole = FOLDER / language / COMPILED
    if language.isalpha() and whole.is_file():
        return GNUTranslations(BytesIO(whole.read_bytes()))
    parts = catalog_parts(language)
    return _put_together(parts) if parts else NullTranslations()


def _put_together(parts: tuple[Path, ...]) -> GNUTranslations:
    from firstpaper.locale.po import compiled, messages  # noqa: PLC0415  (a wheel has no parts)

    return GNUTranslations(BytesIO(compiled(messages(parts))))


def catalog_parts(language: str) -> tuple[Path, ...]:
    """The `.po` files of a language in a checkout."""
    return tuple(sorted((FOLDER / language).rglob("*.po"))) if language.isalpha() else ()


@cache
def offered() -> tuple[str, ...]:
    """The languages a person may choose: English, and each whose catalog has no hole."""
    return (ENGLISH, *sorted(folder.name for folder in FOLDER.iterdir() if _is_whole(folder)))


def _is_whole(folder: Path) -> bool:
    if (folder / COMPILED).is_file():
        return True
    parts = catalog_parts(folder.name)
    if not parts:
        return False
    from firstpaper.locale.po import is_whole  # noqa: PLC0415  (a wheel has no parts)

    return is_whole(parts)
