"""Every command of the page on listing things is run in its order, with the files that the page shows."""

from pathlib import Path

from firstpaper.casefile import CaseFile
from tests.cli.person import flat, written
from tests.docs.page import DOCS, blocks, check_shown, command_in, run

PAGE = DOCS / "how-to" / "list-what-you-own-and-owe.md"


def test_the_page_does_what_it_says(tmp_path: Path) -> None:
    home = written(tmp_path, "plain-childless-divorce")
    ran = 0
    for kind, text in blocks(PAGE):
        if kind != "console":
            name = {"yaml": "facts.yaml", "csv": "debts.csv"}[kind]
            (tmp_path / name).write_text(text, "utf-8")
            continue
        command, shown = command_in(text)
        done = run(command, tmp_path)
        assert done.exit == 0, done.err
        check_shown(command, shown, flat(done.out + done.err))
        ran += 1
    case = CaseFile.load(home).case
    assert ran == 7
    assert [one.words for one in case.asset] == ["House on Elm Street, Fresno", "School district pension"]
    assert [(one.kind, one.owed) for one in case.debt] == [
        ("credit_card", 3200),
        ("student_loan", 18_000),
        ("tax", 900),
    ]
    assert case.asset[0].house.price == 240_000
    assert case.income.petitioner_net == 2450
