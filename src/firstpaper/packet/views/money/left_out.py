"""What the money pages do not work out, and who can."""

from collections.abc import Iterator

from firstpaper.locale import _
from firstpaper.packet.reckoning import Reckoning
from firstpaper.packet.views.money.page import Trust, page
from firstpaper.packet.views.sheet import Sheet


def sheets(_found: Reckoning) -> Iterator[Sheet]:
    """One sheet, the same for everybody."""
    yield page(
        "left-out",
        _("What these pages leave out"),
        Trust.PRIVATE,
        _("And who can help with it."),
        {"left_out": tuple(_left_out())},
    )


def _left_out() -> Iterator[tuple[str, str]]:
    yield _("Net income from gross pay, and taxes"), _("A tax preparer, or the court's certified software.")
    yield _("What a thing is worth"), _("An appraiser. For a pension, an actuary: here it has no dollars.")
    yield (
        _("A business that grew in the marriage"),
        _("Courts share its growth in two ways, and a judge picks. Ask a lawyer and an accountant."),
    )
    yield (
        _("Spousal support in a judgment"),
        _("A judge weighs it. A court rule says that software is not right for it."),
    )
    yield _("Lawyer's fees"), _("A judge looks at what each of you needs and can pay.")
    yield (
        _("Interest on what was paid for training"),
        _("The law says there is some, but not here how much. Ask a lawyer."),
    )
    yield _("Whose credit a loan was"), _("It turns on what the lender looked at. Ask a lawyer.")
    yield (
        _("Money followed from one thing into another"),
        _("An accountant who works for courts can follow it through the papers."),
    )
    yield (
        _("A house with a new loan, changed names, or building on it"),
        _("The simple sum does not fit then. Ask a lawyer."),
    )
    yield (
        _("What a creditor can take"),
        _("A lender can still turn to the one who signed, whatever a judge orders between you two."),
    )
