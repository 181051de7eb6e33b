"""Filled copies: each answer in the field it is for, nothing in any other, and read back first."""

from dataclasses import replace
from functools import cache
from io import BytesIO
from random import Random

import pypdfium2
import pytest
from pypdf import PdfReader, PdfWriter
from pypdf.generic import NameObject, TextStringObject

from firstpaper.blanks.checking import differences, values
from firstpaper.blanks.comparing import How, compared
from firstpaper.blanks.filling import Entry, filled_copy, filling
from firstpaper.blanks.mapping import map_of
from firstpaper.blanks.reading import full_name, lineage, widgets
from firstpaper.forms import filled_forms
from firstpaper.forms.answer import Action
from firstpaper.forms.filled import FilledForm
from firstpaper.intake import standing
from tests.blanks.drawn_blanks import Family
from tests.blanks.worked import worked
from tests.packet.drawn import household


@cache
def forms(name: str) -> tuple[FilledForm, ...]:
    one = household(name)
    return filled_forms(standing(one.case), one.on)


HOUSEHOLDS = ("plain-childless-divorce", "two-children-moved-county", "lists-on-the-courts-own-form")
COPIES = [(name, at, form.form) for name in HOUSEHOLDS for at, form in enumerate(forms(name))]


@pytest.mark.parametrize("flat", [False, True])
@pytest.mark.parametrize(("name", "at", "number"), COPIES)
def test_each_answer_stands_in_its_field_and_no_other_is_touched(
    name: str, at: int, number: str, flat: bool
) -> None:
    form = forms(name)[at]
    done = worked(form, Family.SHORT, seed=at, flat=flat)
    assert differences(done.drawn.pdf, done.pdf, done.what, done.blank, flat=flat) == ()
    if flat:
        assert not [one for page in PdfReader(BytesIO(done.pdf)).pages for one in widgets(page)]
        return
    held = {key: text for key, text in values(done.pdf, "filled").items() if text}
    assert held.keys() == {entry.key for entry in done.what.entries}
    answers = {answer.concept: answer for answer in form.items}
    for key in held:
        concept = str(done.drawn.truth[key]).split("/")[0]
        assert answers[concept].action in (Action.MARK, Action.WRITE)
    assert not any(
        "signature" in str(done.drawn.truth[key]) or "signing.date" in str(done.drawn.truth[key])
        for key in held
    )


def test_nothing_goes_into_a_field_that_nobody_confirmed() -> None:
    form = forms("plain-childless-divorce")[0]
    done = worked(form)
    empty = replace(done.map, lines=tuple(replace(line, takes="") for line in done.map.lines))
    what = filling(form, empty, done.blank)
    assert what.entries == ()
    assert "No field of the blank was confirmed for it." in {left.why for left in what.left}


def test_what_is_too_long_for_its_field_is_left_out_and_said() -> None:
    form = forms("plain-childless-divorce")[0]
    long = tuple(
        replace(item, value="Maximiliana " * 8) if item.concept == "cap.name" else item for item in form.items
    )
    done = worked(replace(form, items=long))
    assert [left.why for left in done.what.left if left.item.concept == "cap.name"] == [
        "It is too long for its field on the blank."
    ]
    assert all(entry.item.concept != "cap.name" for entry in done.what.entries)


def test_letters_that_the_font_lacks_are_left_to_be_written_by_hand() -> None:
    form = forms("plain-childless-divorce")[0]
    other = tuple(
        replace(item, value="Łucja 日本") if item.concept == "cap.name" else item for item in form.items
    )
    done = worked(replace(form, items=other))
    assert "The font of the blank has not all of its letters." in {left.why for left in done.what.left}


@pytest.mark.parametrize("harm", ["value", "look", "extra"])
def test_a_copy_that_is_not_as_it_should_be_is_found_when_it_is_read_back(harm: str) -> None:
    done = worked(forms("plain-childless-divorce")[0])
    harmed = _harmed(done.pdf, harm)
    assert differences(done.drawn.pdf, harmed, done.what, done.blank) != ()


def _harmed(pdf: bytes, harm: str) -> bytes:
    writer = PdfWriter(clone_from=BytesIO(pdf))
    every = [widget for page in writer.pages for widget in widgets(page)]
    filled = next(one for one in every if one.get("/V") and one.get("/FT") == "/Tx")
    if harm == "value":
        filled[NameObject("/V")] = TextStringObject("Somebody Else")
    elif harm == "look":
        filled["/AP"]["/N"].set_data(b"")
    else:
        empty = next(one for one in every if not one.get("/V") and one.get("/FT") == "/Tx")
        empty[NameObject("/V")] = TextStringObject("planted")
    out = BytesIO()
    writer.write(out)
    return out.getvalue()


def test_every_planted_difference_is_found_and_no_other() -> None:
    form = forms("two-children-moved-county")[0]
    done = worked(form, seed=3)
    held = values(done.pdf, "filled")
    assert compared(form, done.map, done.blank, held) == ()
    random = Random(7)
    takes = {line.key: line.takes for line in done.map.lines if line.takes and "signing" not in line.takes}
    planted = 0
    for _turn in range(20):
        changed = dict(held)
        expected: dict[str, How] = {}
        for key in random.sample(sorted(_answered(done, takes)), 10):
            before = held[key]
            if key[1]:
                changed[key] = "" if before else "marked"
                expected[takes[key]] = How.MISSING if before else How.EXTRA
            else:
                changed[key] = random.choice(["", "Other words"]) if before else "Other words"
                expected[takes[key]] = (
                    How.EXTRA if not before else How.DIFFERENT if changed[key] else How.MISSING
                )
        planted += len(expected)
        found = {one.what.key: one.how for one in compared(form, done.map, done.blank, changed)}
        assert found == expected
    assert planted == 200


def _answered(done: object, takes: dict[tuple[str, str], str]) -> set[tuple[str, str]]:
    left = {one.item.concept for one in done.what.left}  # type: ignore[attr-defined]
    return {key for key, name in takes.items() if name.split("/")[0] not in left}


def test_a_hidden_address_appears_in_no_field() -> None:
    one = household("address-must-stay-hidden")
    told = one.case.model_dump(mode="json", exclude_unset=True)
    secret = {
        home["place"]
        for child in told.get("child", [])
        for home in child.get("homes") or []
        if isinstance(home, dict)
    }
    for form in filled_forms(standing(one.case), one.on):
        done = worked(form)
        allowed = "\n".join(item.value for item in form.items)
        for entry in done.what.entries:
            assert entry.text in allowed or all(piece in allowed for piece in entry.text.split())
            assert not any(place in entry.text and place not in allowed for place in secret)


def test_every_viewer_shows_what_was_filled_in() -> None:
    done = worked(forms("plain-childless-divorce")[0])
    document = pypdfium2.PdfDocument(done.pdf)
    document.init_forms()
    page = document[0]
    page.flatten()
    words = document[0].get_textpage().get_text_range()
    assert "Dana Marie Okafor" in words


def test_a_mark_is_set_in_one_state_alone() -> None:
    done = worked(forms("plain-childless-divorce")[0])
    marks = [entry for entry in done.what.entries if entry.marked]
    assert all(isinstance(entry, Entry) and entry.text == "" for entry in marks)
    for page in PdfReader(BytesIO(done.pdf)).pages:
        for widget in widgets(page):
            if widget.get("/AS") not in (None, "/Off"):
                assert full_name(lineage(widget)) in {entry.key[0] for entry in marks}


def test_a_blank_of_other_bytes_carries_over_what_fits_to_be_confirmed() -> None:
    done = worked(forms("plain-childless-divorce")[0])
    again = map_of(replace(done.blank, digest="0" * 64), done.map.form, done.map.edition, done.map)
    assert {line.sure for line in again.lines if line.takes} == {"doubtful"}
    assert [line.takes for line in again.lines] == [line.takes for line in done.map.lines]
    assert again.who == ""


def test_a_copy_filled_twice_is_the_same() -> None:
    form = forms("plain-childless-divorce")[0]
    done = worked(form)
    again, _what = filled_copy(done.drawn.pdf, "blank", filling(form, done.map, done.blank))
    assert values(again, "filled") == values(done.pdf, "filled")
