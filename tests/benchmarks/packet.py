"""How long a packet takes: cold and warm, and against drawing the same words with a bare canvas.

    python tests/benchmarks/packet.py [HOUSEHOLD]

Prints medians in milliseconds; asserts nothing. The bare canvas sets each word run of the packet
where it stands, with the same fonts, and nothing else: no layout, no tags, no outline.
"""

import subprocess
import sys
import tempfile
import time
from collections.abc import Callable
from datetime import date
from io import BytesIO
from pathlib import Path
from statistics import median

import pdfplumber
from reportlab.pdfgen.canvas import Canvas

from firstpaper.intake import facts_from
from firstpaper.packet import build

ON = date(2026, 11, 30)
HOUSEHOLDS = Path(__file__).parents[2] / "demo" / "households"
ROUNDS = 15


def timed(work: Callable[[], object], rounds: int = ROUNDS) -> float:
    """The median time of `work`, in milliseconds."""
    times = []
    for _round in range(rounds):
        start = time.perf_counter()
        work()
        times.append((time.perf_counter() - start) * 1000)
    return median(times)


def bare(pages: list[list[tuple[float, float, float, str]]]) -> bytes:
    """The same words on a bare canvas."""
    target = BytesIO()
    canvas = Canvas(target, pagesize=(612, 792), pageCompression=1)
    for lines in pages:
        for left, top, size, text in lines:
            canvas.setFont("Helvetica", size)
            canvas.drawString(left, 792 - top, text)
        canvas.showPage()
    canvas.save()
    return target.getvalue()


def lines_of(pdf: bytes) -> list[list[tuple[float, float, float, str]]]:
    """The lines of text of each page, with their place and size."""
    with pdfplumber.open(BytesIO(pdf)) as opened:
        return [
            [
                (
                    line["x0"],
                    line["bottom"],
                    line["chars"][0]["size"],
                    line["text"].encode("latin-1", "replace").decode("latin-1"),
                )
                for line in page.extract_text_lines()
            ]
            for page in opened.pages
        ]


def main() -> None:
    """Print the figures."""
    name = sys.argv[1] if len(sys.argv) > 1 else "plain-childless-divorce"
    case, _problems = facts_from((HOUSEHOLDS / f"{name}.yaml").read_text("utf-8"), ON)
    assert case is not None
    pdf = build(case, ON).pdf()
    lines = lines_of(pdf)
    pages = len(lines)
    packet, floor = timed(lambda: build(case, ON).pdf()), timed(lambda: bare(lines))
    worked_out = timed(lambda: build(case, ON))
    with tempfile.TemporaryDirectory() as folder:
        command = [sys.executable, "-m", "firstpaper", "demo", name, "--on", ON.isoformat(), "-o"]
        numbers = iter(range(1000))
        cold = timed(
            lambda: subprocess.run(
                [*command, f"{folder}/{next(numbers)}.pdf"], check=True, capture_output=True
            ),
            5,
        )
    print(f"{name}: {pages} pages, {len(pdf) / 1000:.0f} kB")
    print(f"packet, cold process        {cold:7.0f} ms")
    print(f"packet, warm                {packet:7.1f} ms   {packet / pages:5.2f} ms a page")
    print(f"  of which worked out       {worked_out:7.1f} ms")
    print(f"same words, bare canvas     {floor:7.1f} ms   {floor / pages:5.2f} ms a page")
    print(f"at 13 pages                 {packet / pages * 13:7.1f} ms")


if __name__ == "__main__":
    main()
