"""What the interview was told to own and owe, until it stands on the list too."""

from firstpaper.facts import Case
from firstpaper.intake.kinds import Row
from firstpaper.intake.listing import with_told
from firstpaper.intake.not_listed import named_not_listed, with_named

TOLD = (
    Case()
    .with_fact("property.community_how", "list")
    .with_fact("property.community_items", ("2019 Honda Civic", "Visa card, ending 2210"))
    .with_fact("property.separate_petitioner", ("Grandmother's ring",))
)


def test_what_was_named_is_offered_in_order_and_once_only() -> None:
    assert named_not_listed(TOLD) == ("2019 Honda Civic", "Visa card, ending 2210")
    assert named_not_listed(Case()) == ()


def test_an_answer_that_does_not_stand_is_not_offered() -> None:
    both = TOLD.with_fact("property.separate_how", "list")
    assert "Grandmother's ring" in named_not_listed(both)
    assert "Grandmother's ring" not in named_not_listed(TOLD)


def test_a_row_takes_the_name_and_the_last_digits_of_the_account() -> None:
    case = with_told(with_named(TOLD, Row("debt", 1), "Visa card, ending 2210"), "debt.1.kind", "credit_card")
    assert case.debt[0].words == "Visa card"
    assert case.debt[0].last_four == "2210"
    assert named_not_listed(case) == ("2019 Honda Civic",)


def test_digits_of_something_that_has_no_account_do_not_stay() -> None:
    case = with_told(with_named(TOLD, Row("asset", 1), "Car, ending 2210"), "asset.1.kind", "vehicle")
    assert case.asset[0].last_four is None
