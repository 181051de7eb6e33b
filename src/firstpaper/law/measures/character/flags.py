"""What else there is to know about a thing or a debt, whatever its code: each point with its authority."""

from collections.abc import Callable
from datetime import date

from firstpaper.counting import anniversary
from firstpaper.facts.choices import Acquired, AssetKind, DebtKind, MoneySource, TitleForm, Who
from firstpaper.law.figure import figure
from firstpaper.law.measures.character.looks import PLANS, AssetLook, DebtLook
from firstpaper.law.measures.character.outcome import Code, Flag, Point, separate_of
from firstpaper.law.measures.character.times import Time
from firstpaper.locale import _

AssetCheck = Callable[[AssetLook, Code, date], Flag | None]
DebtCheck = Callable[[DebtLook, Code, date], Flag | None]
OWN_SOURCES = (
    MoneySource.PETITIONER_SEPARATE,
    MoneySource.RESPONDENT_SEPARATE,
    MoneySource.PART_SEPARATE,
)


def asset_flags(look: AssetLook, code: Code, on: date) -> tuple[Flag, ...]:
    """Every point that a thing of this code raises. What is not known raises none."""
    return tuple(flag for check in _ASSET_CHECKS if (flag := check(look, code, on)))


def debt_flags(look: DebtLook, code: Code, on: date) -> tuple[Flag, ...]:
    """Every point that a debt of this code raises."""
    return tuple(flag for check in _DEBT_CHECKS if (flag := check(look, code, on)))


def _plan_must_be_joined(look: AssetLook, code: Code, _on: date) -> Flag | None:
    if look.kind not in PLANS or code.separate:
        return None
    return Flag(
        Point.PLAN_MUST_BE_JOINED,
        _("No order binds most plans until the plan is made part of the case. That has forms of its own."),
        ("Fam. Code 2060(b)", "Fam. Code 2610(a)"),
    )


def _separate_money_back(look: AssetLook, code: Code, _on: date) -> Flag | None:
    put_in = look.peek("source") in OWN_SOURCES or bool(look.contributions)
    was_own = look.peek("title") is TitleForm.JOINT and _was_own(look)
    if not code.shared or not (put_in or was_own):
        return None
    return Flag(
        Point.SEPARATE_MONEY_BACK,
        _(
            "Separate money that went into it can be asked back: down payment, improvements and loan "
            "principal. It must be traced. There is no interest, and no more than what the thing is worth."
        ),
        ("Fam. Code 2640(a)-(b)",),
    )


def _money_in_the_others_property(look: AssetLook, code: Code, _on: date) -> Flag | None:
    from_the_other = [one for one in look.contributions if separate_of(one.by) not in (code, Code.UNKNOWN)]
    if not code.separate or not from_the_other:
        return None
    return Flag(
        Point.MONEY_IN_THE_OTHERS_PROPERTY,
        _(
            "One of you put separate money into what belongs to the other. It can be asked back, unless a "
            "writing says otherwise."
        ),
        ("Fam. Code 2640(c)",),
    )


def _injury_money(look: AssetLook, code: Code, _on: date) -> Flag | None:
    if look.how is not Acquired.INJURY or not code.shared:
        return None
    if look.peek("mixed"):
        return Flag(
            Point.INJURY_MONEY_MIXED,
            _("It was mixed with other money of you both, so the special rule for injury money may be lost."),
            ("Fam. Code 2603(a)",),
        )
    return Flag(
        Point.INJURY_MONEY,
        _("It goes to the one who was hurt, unless fairness asks for more than that; never less than half."),
        ("Fam. Code 2603(b)",),
    )


def _injury_costs(look: AssetLook, code: Code, _on: date) -> Flag | None:
    if look.how is not Acquired.INJURY or not code.separate or look.peek("hurt_by_spouse"):
        return None
    return Flag(
        Point.INJURY_COSTS,
        _("If the other spouse or the two of you paid costs of the injury, they are paid back out of it."),
        ("Fam. Code 781(b)",),
    )


def _training_benefit(look: AssetLook, _code: Code, on: date) -> Flag | None:
    if look.how is not Acquired.TRAINING:
        return None
    line = anniversary(on, -figure("money.training_benefit_years", on).value)
    years = figure("money.training_benefit_years", on).value
    if look.came.last < line:
        says = _(
            "It was paid more than {years} years before filing. The law presumes that you both have had "
            "the good of it already, so the claim may be cut or denied."
        )
    elif look.came.first > line:
        says = _(
            "It was paid less than {years} years before filing. The law presumes that you both have not had "
            "the good of it yet."
        )
    else:
        says = _(
            "If it was paid more than {years} years before filing, the law presumes that you both have had "
            "the good of it already. If less, it presumes the opposite."
        )
    return Flag(Point.TRAINING_BENEFIT, says.format(years=years), ("Fam. Code 2641(c)(1)",))


def _pet(look: AssetLook, code: Code, _on: date) -> Flag | None:
    if look.kind is not AssetKind.PET or not code.shared:
        return None
    return Flag(
        Point.PET,
        _("If one of you asks, a judge can decide who keeps a pet by who has cared for it."),
        ("Fam. Code 2605",),
    )


def _power_of_the_court(look: AssetLook, code: Code, _on: date) -> Flag | None:
    if code is not Code.QUASI_COMMUNITY:
        return None
    return Flag(
        Point.POWER_OF_THE_COURT,
        _("If the other spouse has never lived in California, ask whether the court has power over this."),
        ("Fam. Code 125", "Fam. Code 2011", "Fam. Code 2660"),
    )


def _claimed_by_others(look: AssetLook, _code: Code, _on: date) -> Flag | None:
    if look.peek("title") is not TitleForm.SOMEBODY_ELSE:
        return None
    return Flag(
        Point.CLAIMED_BY_OTHERS,
        _("The person or company on the paper may have to be brought into the case before a judge decides."),
        ("Fam. Code 2021(a)", "Cal. Rules of Court, rule 5.24"),
    )


def _title_was_changed(look: AssetLook, _code: Code, _on: date) -> Flag | None:
    by, title = look.peek("by"), look.peek("title")
    others = {Who.PETITIONER: TitleForm.RESPONDENT, Who.RESPONDENT: TitleForm.PETITIONER}.get(by)
    if not _was_own(look) or title is None or title not in (TitleForm.JOINT, others):
        return None
    return Flag(
        Point.TITLE_WAS_CHANGED,
        _("Spouses owe each other full honesty. A judge may ask whether the change of names was fair."),
        ("Fam. Code 721(b)", "Fam. Code 852(a)"),
    )


def _lender_may_still_collect(look: DebtLook, code: Code, _on: date) -> Flag | None:
    if code.separate and look.peek("name") in (None, look.peek("by")):
        return None
    return Flag(
        Point.LENDER_MAY_STILL_COLLECT,
        _(
            "Whoever gets the debt from the judge, the one who took it on still owes the lender. If both "
            "signed, both do. What one pays of the other's share can be asked back."
        ),
        ("Fam. Code 916(a)-(b)",),
    )


def _tax_board(look: DebtLook, _code: Code, on: date) -> Flag | None:
    if look.kind is not DebtKind.TAX:
        return None
    line = figure("tax.joint_debt_clearance", on).value
    return Flag(
        Point.TAX_BOARD,
        _(
            "A judge can shift a joint California income tax debt only in part. Above ${income:,} of income "
            "on the return, or ${relief:,} of tax taken off one of you, the tax board must agree first."
        ).format(income=line["gross_income"], relief=line["relief"]),
        ("Fam. Code 2628", "Rev. & Tax. Code 19006(b)"),
    )


def _was_own(look: AssetLook) -> bool:
    """Whether it was one person's own when it came, as far as is known."""
    given = look.how in (Acquired.GIFT, Acquired.INHERITED)
    before = look.how is Acquired.OWNED_BEFORE or look.peek("when") is Time.BEFORE
    return (given or before) and look.peek("by") in (Who.PETITIONER, Who.RESPONDENT)


_ASSET_CHECKS: tuple[AssetCheck, ...] = (
    _plan_must_be_joined,
    _separate_money_back,
    _money_in_the_others_property,
    _injury_money,
    _injury_costs,
    _training_benefit,
    _pet,
    _power_of_the_court,
    _claimed_by_others,
    _title_was_changed,
)
_DEBT_CHECKS: tuple[DebtCheck, ...] = (
    _lender_may_still_collect,
    _tax_board,
)
