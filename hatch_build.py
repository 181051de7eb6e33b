"""Puts into the wheel what its data files hold, taken apart, so that no command has to read YAML."""

import sys
from pathlib import Path
from tempfile import mkdtemp
from typing import Any

from hatchling.builders.hooks.plugin.interface import BuildHookInterface

AS_WRITTEN = "intake"
"""The package whose data files are words alone."""


class Prebuilt(BuildHookInterface[Any]):
    """Adds a prebuilt file beside each data file. A checkout that is installed to be worked on gets none."""

    PLUGIN_NAME = "custom"

    def initialize(self, version: str, build_data: dict[str, Any]) -> None:
        """Write the prebuilt files aside and name the place of each in the wheel."""
        if version == "editable":
            return
        source, self._aside = Path(self.root) / "src", Path(mkdtemp())
        sys.path.insert(0, str(source))
        from firstpaper.prebuilt import SUFFIX, prebuild  # noqa: PLC0415

        for number, path in enumerate(sorted(source.rglob("*.yaml"))):
            place = path.relative_to(source).with_suffix(SUFFIX)
            made = self._aside / str(number)
            made.write_bytes(prebuild(path.read_bytes(), AS_WRITTEN in place.parts))
            build_data["force_include"][str(made)] = str(place)
