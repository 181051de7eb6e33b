"""How long a packet takes to draw. Run by hand: python tests/benchmarks/paper.py

Prints the time of a fresh process that draws one packet (interpreter, imports of the whole packet
package and typefaces included) and the median of later drawings, for a packet of about thirteen pages:
worksheets with boxes to tick and tables that run over pages, and one attachment. The targets are
200 ms for the page engine alone and 60 ms warm on two quiet cores.
"""

import subprocess
import sys
import time
from datetime import date
from io import BytesIO
from statistics import median

ROWS = 26
ROUNDS = 21

_ROW = (
    "<tr><th>{n}</th><td><tick marked></tick> Petitioner</td><td>You told us that you moved to the county"
    " on March 3, 2019. The law asks for three months before you file, and {n} more is fine.</td></tr>"
)
_REMARK = (
    '<div class="note"><p><strong>Good to know.</strong> You can change an answer until you file.</p></div>'
)


def worksheet(number: int) -> str:
    """About four pages: boxes to tick, remarks and a table of many rows."""
    boxes = "".join(f"<li><tick></tick> Choice {n}, in words that take one line</li>" for n in range(14))
    rows = "".join(_ROW.format(n=n) for n in range(1, ROWS + 1))
    return (
        f"<h1>Worksheet {number}</h1><p>Keep the blank form beside you. Work from the top to the bottom, and"
        f" leave a line blank when you are not sure.</p><h2>What to mark</h2><ul>{boxes}</ul>{_REMARK}"
        '<h2>What to write</h2><table widths="10 28 62">'
        f"<thead><tr><th>Item</th><th>Mark</th><th>Why</th></tr></thead><tbody>{rows}</tbody></table>"
        "<p>Case number: <line></line></p>"
    )


def attachment() -> str:
    """About one page and a half of numbered paragraphs."""
    items = "".join(
        f"<li>The asset with number {n}, at the place described in the list.</li>" for n in range(30)
    )
    return f"<h1>Attachment 9b to Petition</h1><p>Petitioner asks the court to confirm:</p><ol>{items}</ol>"


def draw_packet() -> bytes:
    """The packet that is timed."""
    from firstpaper.packet.paper import SheetSource, draw  # noqa: PLC0415 (its import is timed too)

    sheets = [SheetSource(f"Worksheet {n}", worksheet(n), running=f"Worksheet {n}") for n in range(1, 4)]
    sheets.append(SheetSource("Attachment 9b", attachment(), style="attachment"))
    return draw(sheets, title="Petition packet", on=date(2026, 1, 5))


def milliseconds(rounds: int) -> list[float]:
    """The time of each of `rounds` drawings."""
    times = []
    for _ in range(rounds):
        start = time.perf_counter()
        draw_packet()
        times.append((time.perf_counter() - start) * 1000)
    return times


def cold_milliseconds() -> float:
    """The time of a whole process that draws the packet once."""
    start = time.perf_counter()
    subprocess.run([sys.executable, __file__, "once"], check=True)
    return (time.perf_counter() - start) * 1000


def main() -> None:
    """Print the times."""
    from pypdf import PdfReader  # noqa: PLC0415 (must not count as part of a cold start)

    cold = median(cold_milliseconds() for _ in range(5))
    warm = median(milliseconds(ROUNDS)[1:])

    pages = len(PdfReader(BytesIO(draw_packet())).pages)
    print(f"{pages} pages: cold process {cold:.0f} ms, warm {warm:.1f} ms, {warm / pages:.2f} ms a page")


if __name__ == "__main__":
    if sys.argv[1:] == ["once"]:
        draw_packet()
    else:
        main()
