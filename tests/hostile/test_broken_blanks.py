"""Blanks that are broken inside are refused in words, and what a library says of them is not heard."""

import re
from pathlib import Path

import pytest

from firstpaper.blanks.errors import NotAPdf
from firstpaper.blanks.reading import read_blank
from tests.cli.person import run_in
from tests.hostile.targets import forms

BROKEN = {
    "a field without corners": (b"/Rect[100 700 300 715]", b"/Rect[/a /b 1 2]      "),
    "a page without a size": (b"/MediaBox[0 0 612 792]", b"/MediaBox[0 0]        "),
    "flags that are a name": (b"/Ff 4096", b"/Ff /x  "),
    "fields that are a number": (b"/Annots[4 0 R 5 0 R]", b"/Annots 4           "),
    "a turn by no number": (b"/Rotate 0", b"/Rotate/a"),
}


@pytest.mark.parametrize("broken", BROKEN.values(), ids=BROKEN)
def test_a_form_broken_inside_is_refused_in_words(broken: tuple[bytes, bytes]) -> None:
    good = forms()[0]
    assert read_blank(good, "FL-110.pdf").spots
    with pytest.raises(NotAPdf):
        read_blank(good.replace(*broken), "FL-110.pdf")


def test_what_a_library_remarks_on_a_broken_file_is_not_heard(
    tmp_path: Path, caplog: pytest.LogCaptureFixture
) -> None:
    odd = re.sub(rb"startxref\n\d+", b"startxref\n1", forms()[0])
    read_blank(odd, "FL-110.pdf")
    assert caplog.records, "so that there is something to hear"
    (tmp_path / "FL-110.pdf").write_bytes(odd)
    ran = run_in(tmp_path, "blank", "FL-110.pdf")
    assert ran.exit == 0
    assert not ran.err
