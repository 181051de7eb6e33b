"""Every command of the tutorial is run, and prints what the page shows."""

from pathlib import Path

from tests.docs.page import DOCS, blocks, check_shown, command_in, run

PAGE = DOCS / "tutorial" / "first-packet.md"
MENDED = ("June 31 2017", "June 30 2017")


def test_the_tutorial_does_what_it_says(tmp_path: Path) -> None:
    facts = tmp_path / "facts.yaml"
    ran = 0
    for kind, text in blocks(PAGE):
        if kind == "yaml":
            facts.write_text(text, "utf-8")
            continue
        command, shown = command_in(text)
        done = run(command, tmp_path)
        check_shown(command, shown, done.out + done.err)
        if "cannot be used" in done.out + done.err:
            facts.write_text(facts.read_text("utf-8").replace(*MENDED), "utf-8")
        ran += 1
    assert ran == 7
    assert (tmp_path / "rosa.pdf").read_bytes().startswith(b"%PDF")
