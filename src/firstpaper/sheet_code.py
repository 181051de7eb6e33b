"""The language of the sheet templates, and their code compiled when the package is built.

Beside each `name.html` an installed package has a `name.code`: what Jinja made of the template. Jinja sees
whether it was made of these very words and for this Python, and else compiles the template. A checkout has
none. Such a file is code, as every other file of the package is, and comes with it.
"""

from collections.abc import Iterator
from pathlib import Path

from jinja2 import BytecodeCache, Environment, FileSystemLoader, StrictUndefined
from jinja2.bccache import Bucket

from firstpaper.locale import _, _c, _n

SUFFIX = ".code"
FILTERS = ("day", "short_day", "in_a_row", "english")
"""The filters that templates name, beside those of Jinja."""


class _Built(BytecodeCache):
    """The compiled templates that came with the package."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder

    def get_cache_key(self, name: str, filename: str | None = None) -> str:
        return name

    def load_bytecode(self, bucket: Bucket) -> None:
        path = (self.folder / bucket.key).with_suffix(SUFFIX)
        if path.is_file():
            bucket.bytecode_from_string(path.read_bytes())

    def dump_bytecode(self, bucket: Bucket) -> None:
        """Nothing is kept that was compiled while the program runs: it writes in no folder of its own."""


def environment_of(folder: Path) -> Environment:
    """A Jinja environment for the templates in a folder, yet without its filters.

    Autoescape is on and an undefined name is an error. Words go through gettext.
    """
    environment = Environment(
        loader=FileSystemLoader(folder),
        bytecode_cache=_Built(folder),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        extensions=["jinja2.ext.i18n"],
    )
    environment.install_gettext_callables(_, _n, newstyle=True, pgettext=_c)  # type: ignore[attr-defined]
    return environment


def compiled(folder: Path) -> Iterator[tuple[Path, bytes]]:
    """The code of each template in a folder, and what it is called beside the template.

    The code holds the names of filters. The filters themselves come when it is run.

    Raises TemplateAssertionError where a template names a filter that is none.
    """
    environment = environment_of(folder)
    environment.filters.update(dict.fromkeys(FILTERS, _not_yet))
    for path in sorted(folder.rglob("*.html")):
        name, source = path.relative_to(folder), path.read_text("utf-8")
        bucket = _Built(folder).get_bucket(environment, name.as_posix(), None, source)
        bucket.code = environment.compile(source, name.as_posix(), name.as_posix())
        yield name.with_suffix(SUFFIX), bucket.bytecode_to_string()


def _not_yet(value: object) -> str:
    """Stands for each filter while templates are compiled; Jinja then leaves it to be worked out later."""
    raise NotImplementedError(value)
