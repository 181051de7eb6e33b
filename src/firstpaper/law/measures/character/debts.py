"""The table for debts: each row a named test with its authority, read from the top.

What a judgment in this case changes (Fam. Code 2624) is left out: at the petition there is none.
"""

from firstpaper.facts.choices import DebtKind, DebtPurpose, Who
from firstpaper.law.measures.character.looks import DebtLook
from firstpaper.law.measures.character.outcome import Code, Confidence, Table, Verdict, separate_of
from firstpaper.law.measures.character.times import Time
from firstpaper.locale import _

DEBTS: Table[DebtLook] = Table()


@DEBTS.row("Fam. Code 2251(a)", "Fam. Code 2252")
def marriage_was_not_valid(look: DebtLook) -> Verdict | None:
    """In a nullity debts follow the property that is divided, if any is."""
    if not look.nullity:
        return None
    return _unknown(
        _("In a nullity there was no marriage. No debt is a debt of you both just so."),
        _("If property is divided because one of you believed in good faith, debts follow it."),
    )


@DEBTS.row("Fam. Code 1500", "Fam. Code 2550", "Fam. Code 2641(e)")
def paper_speaks_of_it(look: DebtLook) -> Verdict | None:
    """An agreement about debts comes before the law's own rules."""
    if not look.agreement:
        return None
    return _unknown(
        _("A paper that you two signed speaks about it. What the paper says comes first."),
        _("A judge decides whether the paper is good and what it means. Show it to a lawyer."),
    )


@DEBTS.row("Fam. Code 915(a)", "Fam. Code 2621", "Fam. Code 2625")
def support_of_another_family(look: DebtLook) -> Verdict | None:
    """Support owed from an earlier relationship is older than the marriage toward those it is owed to."""
    if look.kind is not DebtKind.SUPPORT_OWED:
        return None
    return _unknown(
        _(
            "Toward the one it is owed to, support from an earlier family counts as a debt from before the "
            "wedding. No section says the same for dividing debts."
        ),
        _("It often stays with the one who owes it. Ask a lawyer."),
    )


@DEBTS.row("Fam. Code 2627", "Fam. Code 1000(b)(2)")
def harm_by_one_alone(look: DebtLook) -> Verdict | None:
    """Damage one spouse did, not while acting for the family, is that spouse's debt."""
    if look.purpose is not DebtPurpose.HARM or look.yes("for_family"):
        return None
    return _own(
        look.by,
        Confidence.RULE,
        _("It is for harm that one of you did, and not while doing something for the family."),
        _("A judge may see the purpose in another light."),
    )


@DEBTS.row("Fam. Code 2627", "Fam. Code 2641(b)(2)")
def education_loan(look: DebtLook) -> Verdict | None:
    """A loan for training, taken in the marriage, goes to the one who was trained."""
    if not _for_education(look) or look.when is not Time.DURING:
        return None
    return _own(
        look.by,
        Confidence.PRESUMPTION,
        _("It is a loan for training, taken in the marriage. It goes to the one who was trained."),
        _("A judge can change that where it would be unfair, for instance if both lived better by it."),
    )


@DEBTS.row("Fam. Code 2621")
def before_the_wedding(look: DebtLook) -> Verdict | None:
    """A debt from before the wedding stays with the one who took it on."""
    if look.when is not Time.BEFORE:
        return None
    return _own(look.by, Confidence.RULE, _("It was taken on before the wedding."), _whose())


@DEBTS.row("Fam. Code 2625")
def not_for_the_family(look: DebtLook) -> Verdict | None:
    """A debt of the marriage that did not serve the community stays with the one who took it on."""
    if look.when is not Time.DURING or look.purpose is DebtPurpose.HOUSEHOLD or look.yes("for_family"):
        return None
    return _own(
        look.by,
        Confidence.PRESUMPTION,
        _("It was taken on in the marriage, but not for the good of the family."),
        _("The other side may say that the family had the good of it. A judge then decides."),
    )


@DEBTS.row("Fam. Code 2622(a)", "Fam. Code 2550")
def in_the_marriage(look: DebtLook) -> Verdict | None:
    """A debt of the marriage is divided like property, whoever signed."""
    if look.when is not Time.DURING:
        return None
    return Verdict(
        Code.COMMUNITY,
        Confidence.RULE,
        _("It was taken on in the marriage, before you separated. It does not matter who signed."),
        _("If you owe more together than you own, a judge shares the rest by what is fair."),
    )


@DEBTS.row("Fam. Code 2623(a)")
def needs_after_separation(look: DebtLook) -> Verdict | None:
    """What either spouse or the children needed to live after the separation goes by need and ability."""
    if look.purpose is not DebtPurpose.HOUSEHOLD:
        return None
    if look.yes("support_arranged"):
        return _unknown(
            _(
                "It paid for needs after you separated, and an order or agreement covers support or this "
                "debt."
            ),
            _("The order or agreement decides. Look at its words."),
        )
    return _unknown(
        _("It paid for needs after you separated, and no order or agreement covers support or this debt."),
        _("A judge gives it to either of you, by needs and by what each could pay then."),
    )


@DEBTS.row("Fam. Code 903(c)", "Fam. Code 2623(b)", "Fam. Code 2628")
def tax_after_separation(look: DebtLook) -> Verdict | None:
    """A tax debt dated after the separation may still be for income of the marriage."""
    if look.kind is not DebtKind.TAX:
        return None
    return _unknown(
        _("It is a tax debt from after you separated. It may still be for income of the marriage."),
        _("Which year's income it is about can decide. Ask a tax preparer or a lawyer."),
    )


@DEBTS.row("Fam. Code 2623(b)")
def own_after_separation(look: DebtLook) -> Verdict | None:
    """Any other debt from after the separation stays with the one who took it on."""
    return _own(
        look.by,
        Confidence.RULE,
        _("It was taken on after you separated, and not for needs of life."),
        _("The other side may say that it paid for needs. Needs are shared by what each can pay."),
    )


def _for_education(look: DebtLook) -> bool:
    return look.kind is DebtKind.STUDENT_LOAN or look.purpose is DebtPurpose.EDUCATION


def _own(who: Who, confidence: Confidence, says: str, court: str) -> Verdict:
    if who is Who.BOTH:
        return _unknown(says, _("You said that both of you took it on. Ask a lawyer whose it is."))
    return Verdict(separate_of(who), confidence, says, court)


def _unknown(says: str, court: str) -> Verdict:
    return Verdict(Code.UNKNOWN, Confidence.OPEN, says, court)


def _whose() -> str:
    return _("A judge looks at when the promise to pay was made, not at when it was paid.")
