"""Which field takes which answer, on files that nobody tuned to: what is sure is right, in every family."""

from datetime import date

import pytest

from firstpaper.blanks.mapping import edition_of, map_of, recognised
from firstpaper.blanks.matching import Sure, matched
from firstpaper.blanks.reading import read_blank
from firstpaper.blanks.wanted import wanted
from firstpaper.forms.edition import all_editions, edition_for
from tests.blanks.drawn_blanks import Family, drawn

ON = date(2026, 12, 1)
FORMS = ("FL-100", "FL-105", "FL-110", "FL-160", "FL-311", "FW-001")


@pytest.mark.parametrize("family", Family)
@pytest.mark.parametrize("form", FORMS)
def test_what_is_sure_is_right(form: str, family: Family) -> None:
    edition = edition_for(form, ON)
    one = drawn(edition, family, seed=11)
    pairs = matched(read_blank(one.pdf, "blank"), wanted(edition))
    wrong = [
        pair.wanted.key
        for pair in pairs
        if pair.sure is Sure.SURE and one.truth[pair.spot.key] != pair.wanted.key
    ]
    assert wrong == []


@pytest.mark.parametrize(
    ("family", "share"),
    [(Family.FULL, 0.98), (Family.SHORT, 0.96), (Family.NAMED, 0.9), (Family.BARE, 0.7), (Family.MIXED, 0.8)],
)
def test_most_of_every_form_is_sure(family: Family, share: float) -> None:
    fields = sure = 0
    for form in FORMS:
        edition = edition_for(form, ON)
        one = drawn(edition, family, seed=5)
        pairs = matched(read_blank(one.pdf, "blank"), wanted(edition))
        sure += sum(pair.sure is Sure.SURE for pair in pairs)
        fields += sum(key is not None for key in one.truth.values())
    assert sure >= share * fields


def test_tooltips_that_keep_lying_leave_nothing_sure() -> None:
    edition = edition_for("FL-100", ON)
    one = drawn(edition, Family.MISLEADING, seed=2)
    pairs = matched(read_blank(one.pdf, "blank"), wanted(edition))
    assert pairs
    assert not any(pair.sure is Sure.SURE for pair in pairs)


def test_the_same_file_gives_the_same_pairs() -> None:
    edition = edition_for("FL-110", ON)
    one = drawn(edition, Family.BARE, seed=1)
    assert matched(read_blank(one.pdf, "a"), wanted(edition)) == matched(
        read_blank(one.pdf, "a"), wanted(edition)
    )


@pytest.mark.parametrize("edition", [one for one in all_editions() if one.printed], ids=lambda one: one.form)
def test_form_and_edition_are_read_off_the_first_page(edition: object) -> None:
    one = drawn(edition, Family.FULL, seed=1)  # type: ignore[arg-type]
    blank = read_blank(one.pdf, "blank")
    assert recognised(blank) == (edition.form, edition.printed)  # type: ignore[attr-defined]


def test_an_edition_that_we_do_not_know_leaves_every_field_to_be_confirmed() -> None:
    one = drawn(edition_for("FL-100", ON), Family.FULL, seed=1)
    found = map_of(read_blank(one.pdf, "blank"), "FL-100", "January 1, 2031")
    assert edition_of("FL-100", "January 1, 2031")[1] is False
    assert {line.sure for line in found.lines if line.takes} == {Sure.DOUBTFUL}
