"""What fits on a sheet that somebody brought decides what goes to an attachment."""

from dataclasses import replace
from datetime import date
from functools import cache

import pytest

from firstpaper.blanks.blank import Blank
from firstpaper.blanks.mapping import Map, map_of, recognised
from firstpaper.blanks.reading import read_blank
from firstpaper.blanks.room import measured_edition
from firstpaper.forms.attachments import attachments
from firstpaper.forms.edition import edition_for, measured
from firstpaper.forms.filing import filled_forms
from firstpaper.intake import standing
from tests.blanks.drawn_blanks import Family, drawn
from tests.blanks.worked import corrected
from tests.packet.drawn import household

ON = date(2026, 12, 1)
EDITION = edition_for("FL-100", ON)


@cache
def learned() -> tuple[Blank, Map]:
    """A blank of the petition and its map."""
    paper = drawn(EDITION, Family.SHORT, seed=5)
    blank = read_blank(paper.pdf, "blank")
    return blank, corrected(map_of(blank, *recognised(blank)), paper)


def narrow(by: float) -> Blank:
    """The blank with every field so many times narrower."""
    blank, _map = learned()
    spots = tuple(
        replace(
            spot,
            boxes=tuple(replace(box, right=box.left + (box.right - box.left) / by) for box in spot.boxes),
        )
        for spot in blank.spots
    )
    return Blank(blank.digest, blank.pages, spots, blank.phrases)


def test_the_room_is_that_of_the_field_and_no_longer_our_estimate() -> None:
    blank, its_map = learned()
    measured_here = measured_edition(its_map, blank)
    assert measured_here
    spot = next(blank.by_key[line.key] for line in its_map.lines if line.takes == "requests.other.words")
    room = measured_here.item("requests.other.words")
    assert spot.size == 9.0
    assert room.fits == int((spot.place.width - 4) / (0.55 * 9))
    assert measured_edition(its_map, narrow(3)).item("cap.name").fits < measured_here.item("cap.name").fits  # type: ignore[union-attr,operator]


def test_of_an_edition_that_we_do_not_know_nothing_is_measured() -> None:
    blank, its_map = learned()
    assert measured_edition(replace(its_map, edition="January 1, 2031"), blank) is None


@pytest.mark.parametrize(("by", "pages"), [(1.0, 0), (8.0, 1)])
def test_what_does_not_fit_the_field_goes_to_an_attachment(by: float, pages: int) -> None:
    plain = household("plain-childless-divorce").case
    case = standing(plain.with_fact("requests.other", "Each keeps the dog in turn"))
    _blank, its_map = learned()
    edition = measured_edition(its_map, narrow(by))
    assert edition
    with measured([edition]):
        form = filled_forms(case, ON)[0]
        further = [page for page in attachments(case, ON) if "11c" in page.continues]
    words = next(item for item in form.items if item.concept == "requests.other.words")
    assert len(further) == pages
    assert ("Each keeps" in words.value) == (pages == 0)


def test_the_measure_ends_with_its_block() -> None:
    _blank, its_map = learned()
    edition = measured_edition(its_map, narrow(8))
    assert edition
    with measured([edition]):
        assert edition_for("FL-100", ON) is edition
    assert edition_for("FL-100", ON) is EDITION
