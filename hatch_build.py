"""Puts into the wheel what was read of its data files, and its catalogs and templates, compiled.

So no command has to read YAML, or the files of translators, or to compile a template. A catalog that has a
hole stays out.
"""

import sys
from pathlib import Path
from tempfile import mkdtemp
from typing import Any

from hatchling.builders.hooks.plugin.interface import BuildHookInterface

AS_WRITTEN = "intake"
"""The package whose data files are words alone."""


class Prebuilt(BuildHookInterface[Any]):
    """Adds the prebuilt files. A checkout that is installed to be worked on gets none."""

    PLUGIN_NAME = "custom"

    def initialize(self, version: str, build_data: dict[str, Any]) -> None:
        """Write the prebuilt files aside and name the place of each in the wheel."""
        if version == "editable":
            return
        source, self._aside = Path(self.root) / "src", Path(mkdtemp())
        sys.path.insert(0, str(source))
        self._add_data(build_data, source)
        self._add_catalogs(build_data)
        self._add_templates(build_data)

    def _add_data(self, build_data: dict[str, Any], source: Path) -> None:
        from firstpaper.intake.events import events  # noqa: PLC0415
        from firstpaper.intake.loading import bank, listing  # noqa: PLC0415
        from firstpaper.prebuilt import SUFFIX, Read, prebuild  # noqa: PLC0415
        from firstpaper.strict_yaml import content_of  # noqa: PLC0415

        banks = bank(), listing(), events()
        read = {path.resolve(): (Read.TOPIC, topic) for each in banks for path, topic in each.by_file.items()}
        for path in sorted(source.rglob("*.yaml")):
            content, place = path.read_bytes(), path.relative_to(source).with_suffix(SUFFIX)
            as_written = AS_WRITTEN in place.parts
            shape = Read.WORDS if as_written else Read.VALUES, content_of(content.decode(), as_written)
            self._add(build_data, place, prebuild(content, *read.get(path.resolve(), shape)))

    def _add_catalogs(self, build_data: dict[str, Any]) -> None:
        from firstpaper.locale.catalogs import COMPILED, catalog_parts, offered  # noqa: PLC0415
        from firstpaper.locale.po import compiled, messages  # noqa: PLC0415

        for language in offered():
            if parts := catalog_parts(language):
                place = Path("firstpaper/locale", language, COMPILED)
                self._add(build_data, place, compiled(messages(parts)))

    def _add_templates(self, build_data: dict[str, Any]) -> None:
        from firstpaper.sheet_code import compiled  # noqa: PLC0415

        for name, code in compiled(Path(self.root) / "templates"):
            self._add(build_data, Path("firstpaper/templates") / name, code)

    def _add(self, build_data: dict[str, Any], place: Path, content: bytes) -> None:
        made = self._aside / str(len(build_data["force_include"]))
        made.write_bytes(content)
        build_data["force_include"][str(made)] = str(place)
