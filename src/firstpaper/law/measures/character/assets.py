"""The table for things owned: each row a named test with its authority, read from the top.

What holds in spite of everything comes first; then what work, injury or training brought; then things
somebody else may own; then what one of the two had, was given or was left; last what was bought. The
last row is for what no row knows.
"""

from firstpaper.facts.choices import Acquired, AssetKind, MoneySource, TitleForm, Who
from firstpaper.law.measures.character.looks import ACCOUNTS, DEPOSITS, PERSONAL, PLANS, AssetLook
from firstpaper.law.measures.character.outcome import Code, Confidence, Table, Verdict, separate_of
from firstpaper.law.measures.character.times import Earned, Time
from firstpaper.locale import _

ASSETS: Table[AssetLook] = Table()
OWN_MONEY = {
    MoneySource.PETITIONER_SEPARATE: Who.PETITIONER,
    MoneySource.RESPONDENT_SEPARATE: Who.RESPONDENT,
}
IN_NAME_OF = {TitleForm.PETITIONER: Who.PETITIONER, TitleForm.RESPONDENT: Who.RESPONDENT}
GIVEN = (Acquired.GIFT, Acquired.INHERITED)


# What holds in spite of everything


@ASSETS.row("Fam. Code 2251(a)", "Fam. Code 2252")
def marriage_was_not_valid(look: AssetLook) -> Verdict | None:
    """In a nullity nothing is divided unless a putative spouse asks for it."""
    if not look.nullity:
        return None
    return _unknown(
        _("In a nullity there was no marriage. Nothing is community property just so."),
        _(
            "If one of you honestly believed that the marriage was good, and asks for it, the judge can "
            "divide what you got as if you had been married."
        ),
    )


@ASSETS.row("Fam. Code 1500", "Fam. Code 1611-1615", "Fam. Code 850-852")
def paper_speaks_of_it(look: AssetLook) -> Verdict | None:
    """A premarital, marital or settlement agreement comes before the law's own rules."""
    if not look.agreement:
        return None
    return _unknown(
        _("A paper that you two signed speaks about it. What the paper says comes first."),
        _("A judge decides whether the paper is good and what it means. Show it to a lawyer."),
    )


@ASSETS.row("Fam. Code 2641(a)-(c)")
def training_is_no_property(look: AssetLook) -> Verdict | None:
    """A degree or licence is not divided; what the community paid for it may be repaid."""
    if look.how is not Acquired.TRAINING:
        return None
    return Verdict(
        Code.NOT_DIVIDED,
        Confidence.RULE,
        _("A degree, licence or training is not property that a court divides."),
        _(
            "If community money paid for it and it raised what that person can earn, a judge can order the "
            "community to be repaid. The judge can lower that if it would be unfair."
        ),
    )


# What work brought


@ASSETS.row("Fam. Code 771(a)", "In re Marriage of Nelson (1986) 177 Cal.App.3d 150")
def option_granted_after(look: AssetLook) -> Verdict | None:
    """An option granted after the separation is the worker's own."""
    if look.how is not Acquired.STOCK_OPTION or look.when is not Time.AFTER:
        return None
    return _separate(
        look.by,
        Confidence.PRESUMPTION,
        _("It was granted after you separated."),
        _("If it was promised or earned before that, the judge may see a community part in it."),
    )


@ASSETS.row("Fam. Code 760", "In re Marriage of Nelson (1986) 177 Cal.App.3d 150")
def option_granted_and_usable_within(look: AssetLook) -> Verdict | None:
    """An option granted in the marriage that could be used before the separation is community."""
    if look.how is not Acquired.STOCK_OPTION or (look.when, look.usable) != (Time.DURING, Time.DURING):
        return None
    return _shared(
        look,
        Confidence.PRESUMPTION,
        _("It was granted in the marriage and could be used before you separated."),
        _("A judge may still look at what work it was meant to pay for."),
    )


@ASSETS.row(
    "Fam. Code 760",
    "In re Marriage of Hug (1984) 154 Cal.App.3d 780",
    "In re Marriage of Nelson (1986) 177 Cal.App.3d 150",
)
def option_earned_across(look: AssetLook) -> Verdict | None:
    """An option that work earns on both sides of the wedding or the separation is shared by time."""
    if look.how is not Acquired.STOCK_OPTION:
        return None
    if look.when is Time.BEFORE and look.usable is Time.BEFORE:
        return _separate(look.by, Confidence.RULE, _("It could be used before the wedding."), _tracing())
    return _mixed(
        _("It pays partly for work in the marriage and partly for work outside of it."),
        _("The judge chooses how to share it. Courts have used more than one formula."),
    )


@ASSETS.row("Fam. Code 781(c)")
def hurt_by_the_spouse(look: AssetLook) -> Verdict | None:
    """Money from one spouse for hurting the other belongs to the one who was hurt."""
    if look.how is not Acquired.INJURY or not look.yes("hurt_by_spouse"):
        return None
    return _separate(
        look.by, Confidence.RULE, _("It is money from one of you for hurting the other."), _tracing()
    )


@ASSETS.row("Fam. Code 770(a)(1)", "Fam. Code 781(a)(2)")
def hurt_outside_the_shared_life(look: AssetLook) -> Verdict | None:
    """Injury money is separate where the accident came before the wedding, or while they lived apart."""
    if look.how is not Acquired.INJURY:
        return None
    if look.when is Time.BEFORE:
        return _separate(look.by, Confidence.RULE, _("The injury came before the wedding."), _tracing())
    if not look.yes("living_apart"):
        return None
    return _separate(
        look.by,
        Confidence.RULE,
        _("The injury came while you two lived apart."),
        _("Living apart is not the same as the date of separation. A judge may look at where each lived."),
    )


@ASSETS.row("Fam. Code 780", "Fam. Code 2603")
def hurt_in_the_marriage(look: AssetLook) -> Verdict | None:
    """Injury money from the marriage is community, and goes to the injured spouse for at least half."""
    if look.how is not Acquired.INJURY or look.when is not Time.DURING:
        return None
    return _shared(
        look,
        Confidence.RULE,
        _("The injury came in the marriage, while you lived together, and somebody else was at fault."),
        _(
            "The judge gives it to the one who was hurt, unless fairness asks for something else. That "
            "person gets at least half."
        ),
    )


@ASSETS.row("Fam. Code 780", "Fam. Code 781(a)(2)")
def hurt_after_parting_in_one_home(look: AssetLook) -> Verdict | None:
    """After the separation, but under one roof, the two sections leave a gap."""
    if look.how is not Acquired.INJURY:
        return None
    return _unknown(
        _("The injury came after you separated, but while you still shared a home."),
        _("The law speaks of living apart, not of the date of separation. Ask a lawyer."),
    )


@ASSETS.row("Fam. Code 760", "Fam. Code 125")
def plan_or_pay_within(look: AssetLook) -> Verdict | None:
    """What work in the marriage earned is community, be it paid now or in twenty years."""
    if not _plan_or_pay(look) or look.earned is not Earned.WITHIN:
        return None
    return _shared(
        look, Confidence.RULE, _("All the work that earned it was done in the marriage."), _dates_may_move()
    )


@ASSETS.row("Fam. Code 770(a)(1)", "Fam. Code 771(a)")
def plan_or_pay_outside(look: AssetLook) -> Verdict | None:
    """What work before the wedding or after the separation earned is the worker's own."""
    if not _plan_or_pay(look) or look.earned is Earned.ACROSS:
        return None
    says = (
        _("All the work that earned it was done before the wedding.")
        if look.earned is Earned.BEFORE
        else _("All the work that earned it was done after you separated.")
    )
    return _separate(look.by, Confidence.RULE, says, _dates_may_move())


@ASSETS.row(
    "Fam. Code 760",
    "Fam. Code 770(a)",
    "Fam. Code 771(a)",
    "In re Marriage of Lehman (1998) 18 Cal.4th 169",
    "In re Marriage of Gowan (1997) 54 Cal.App.4th 80",
)
def pension_across(look: AssetLook) -> Verdict | None:
    """A pension earned on both sides of the line is shared by the time rule."""
    if look.kind is not AssetKind.PENSION or not _plan_or_pay(look):
        return None
    return _mixed(
        _("Part of the work that earned it was done in the marriage, and part was not."),
        _(
            "Courts share a pension by time: the years in the marriage, of all the years that earned it. "
            "If the plan is an account with a balance of its own, they trace the money instead."
        ),
    )


@ASSETS.row(
    "Fam. Code 760", "Fam. Code 770(a)", "Fam. Code 771(a)", "In re Marriage of Poppe (1979) 97 Cal.App.3d 1"
)
def account_plan_across(look: AssetLook) -> Verdict | None:
    """An account plan paid into on both sides of the line is traced by its balances."""
    if look.kind is not AssetKind.RETIREMENT_ACCOUNT or not _plan_or_pay(look):
        return None
    return _mixed(
        _("Part of what was paid in came from work in the marriage, and part did not."),
        _("The money is traced. You need the balance on the wedding day and on the day you separated."),
    )


@ASSETS.row("Fam. Code 760", "Fam. Code 771(a)")
def late_pay_across(look: AssetLook) -> Verdict | None:
    """Pay that comes late is shared by when it was earned, or by the pay it stands for."""
    if not _plan_or_pay(look):
        return None
    return _mixed(
        _("It stands for pay from inside and from outside the marriage."),
        _("It is shared by when it was earned, or by the pay that it takes the place of."),
    )


# What somebody else may own


@ASSETS.row("Fam. Code 2021(a)", "Cal. Rules of Court, rule 5.24")
def held_by_somebody_else(look: AssetLook) -> Verdict | None:
    """A thing titled to a third person cannot be divided unless that person is in the case."""
    if look.title is not TitleForm.SOMEBODY_ELSE:
        return None
    return _unknown(
        _("Its paper names somebody else as the owner: a relative, a company or another trust."),
        _("List it as something you claim a share in. That person may have to be brought into the case."),
    )


@ASSETS.row("Fam. Code 761(a)-(b)")
def held_by_own_trust(look: AssetLook) -> Verdict | None:
    """Community property in the couple's own revocable trust stays community; more is not said."""
    if look.title is not TitleForm.OWN_TRUST:
        return None
    court = _("The words of the trust decide. Show them to a lawyer.")
    if not look.yes("changes_need_both"):
        return _unknown(
            _("It is in a trust that one of you can change alone, or that cannot be undone."), court
        )
    bare = look.supposing("title", TitleForm.NO_PAPER)
    before, _row = ASSETS.first(bare, after="held_by_own_trust")
    if not before.code.shared:
        return _unknown(_("It is in your own trust, and was not community property when it went in."), court)
    return Verdict(
        before.code,
        Confidence.PRESUMPTION,
        _(
            "It was community property, and stays so in your own trust: the trust can be undone, and "
            "changes need both of you."
        ),
        court,
    )


@ASSETS.row("Fam. Code 852(e)")
def old_gift_between_spouses(look: AssetLook) -> Verdict | None:
    """A gift between the two from before 1985 follows the law of its own time."""
    if look.how is not Acquired.FROM_SPOUSE or not look.fact("before_writing_rule"):
        return None
    return _unknown(
        _("It went from one of you to the other so long ago that older law decides."), _ask_a_lawyer()
    )


# Gifts between the two


@ASSETS.row("Fam. Code 770(a)(1)")
def from_the_other_before(look: AssetLook) -> Verdict | None:
    """A gift between the two from before the wedding is the receiver's own."""
    if look.how is not Acquired.FROM_SPOUSE or look.when is not Time.BEFORE:
        return None
    return _separate(
        look.by, Confidence.PRESUMPTION, _("One of you gave it to the other before the wedding."), _tracing()
    )


@ASSETS.row("Fam. Code 852(c)")
def small_personal_gift(look: AssetLook) -> Verdict | None:
    """Jewelry, clothes and the like are the receiver's, if used by that one and not substantial."""
    if look.how is not Acquired.FROM_SPOUSE or look.kind not in PERSONAL:
        return None
    if not look.yes("used_by_one") or look.yes("substantial"):
        return None
    return _separate(
        look.by,
        Confidence.PRESUMPTION,
        _("One of you gave it to the other, who alone uses it, and it was not a large gift for you two."),
        _("A judge decides whether the gift was large, looking at how you lived."),
    )


@ASSETS.row("Fam. Code 852(a), (c)")
def gift_without_a_writing(look: AssetLook) -> Verdict | None:
    """A large gift between spouses needs a writing; without one the thing stays what it was."""
    if look.how is not Acquired.FROM_SPOUSE:
        return None
    says = _(
        "A large gift from one of you to the other needs a signed writing. Without one it stays what it was."
    )
    court = _("A judge decides whether the gift was large, and whether a paper says enough.")
    if look.source is MoneySource.COMMUNITY:
        return _shared(look, Confidence.PRESUMPTION, says, court)
    return _unknown(says, court)


# What one of them had, was given or was left


@ASSETS.row("Fam. Code 770(a)(3)")
def growth_without_work(look: AssetLook) -> Verdict | None:
    """What separate property earns by itself is separate, while it is kept apart."""
    if look.how is not Acquired.GROWTH or look.yes("worked_in") or look.yes("mixed"):
        return None
    return _separate(
        look.by, Confidence.RULE, _("It is what separate property earned by itself."), _tracing()
    )


@ASSETS.row("Fam. Code 760", "Fam. Code 770(a)(3)", "Pereira and Van Camp opinions")
def grew_by_work(look: AssetLook) -> Verdict | None:
    """Where a spouse worked in a separate business or property, its growth is partly pay."""
    if look.how is Acquired.GROWTH:
        worked = look.yes("worked_in")
    else:
        worked = look.kind is AssetKind.BUSINESS and look.owned_alone_before and look.yes("worked_in")
    if not worked:
        return None
    return _mixed(
        _("It was one person's own, but one of you worked in it in the marriage, and it grew."),
        _("A judge chooses how to share the growth. Nobody can work that out from a form."),
    )


@ASSETS.row("Fam. Code 2581")
def given_to_both(look: AssetLook) -> Verdict | None:
    """A gift to both is community where the title is joint; otherwise the giver's words decide."""
    if look.how not in GIVEN or look.by is not Who.BOTH:
        return None
    joint = look.how is Acquired.GIFT and look.title is TitleForm.JOINT and look.when is Time.DURING
    if joint:
        return _joint(_("It was given to both of you, in both names."), _joint_form())
    return _unknown(
        _("It was given or left to both of you."),
        _("What the giver said or wrote decides, and whose names are on it."),
    )


@ASSETS.row("Fam. Code 770(a)(1)", "Fam. Code 2650")
def bought_together_before(look: AssetLook) -> Verdict | None:
    """What the two got together before the wedding is no community property, and may be shared."""
    if look.how in (*GIVEN, Acquired.GROWTH, Acquired.OTHER, None):
        return None
    if look.when is not Time.BEFORE or look.by is not Who.BOTH:
        return None
    return _unknown(
        _("You two got it together before the wedding. Each of you may own a share alone."),
        _("If one of you asks, a judge can divide what you hold together by title."),
    )


@ASSETS.row("Prob. Code 5305", "Fam. Code 760")
def own_money_in_a_joint_account(look: AssetLook) -> Verdict | None:
    """Money in a bank account of both is presumed community, unless it is traced."""
    if not _own(look) or look.kind not in DEPOSITS or look.title is not TitleForm.JOINT:
        return None
    if not look.yes("traced"):
        return _joint(
            _("It lies in a bank account of you both, and no papers show whose money it was."),
            _("The one whose money it was can still try to prove it, with records of the account."),
        )
    if look.yes("mixed"):
        return _mixed(_("Money of one of you and money of you both lie in one account."), _tracing())
    return _separate(
        look.by,
        Confidence.PRESUMPTION,
        _("It lies in a bank account of you both, but papers show that it was one person's own money."),
        _tracing(),
    )


@ASSETS.row("Fam. Code 2581", "Fam. Code 2640(b)", "In re Marriage of Walrath (1998) 17 Cal.4th 907")
def put_in_joint_form(look: AssetLook) -> Verdict | None:
    """One spouse's thing put in both names in the marriage is presumed community; the owner may be repaid."""
    if not _own(look) or look.title is not TitleForm.JOINT:
        return None
    return _joint(
        _("It was one person's own, and was then put in both your names."),
        _(
            "The first owner can ask to be repaid what was put in, unless that right was given up in "
            "writing. A judge also looks at how the change came about."
        ),
    )


@ASSETS.row("Fam. Code 852(a)", "Fam. Code 721(b)")
def put_in_the_others_name(look: AssetLook) -> Verdict | None:
    """A spouse's own thing that stands in the other's name: the paper that did that decides."""
    if not _own(look) or IN_NAME_OF.get(look.title, look.by) is look.by:
        return None
    return _unknown(
        _("It was one person's own, but its paper names the other."),
        _("The paper that changed the name decides, and how that came about. Show it to a lawyer."),
    )


@ASSETS.row("Fam. Code 770(a)(1)-(2)")
def own_and_kept_apart(look: AssetLook) -> Verdict | None:
    """What one had before, was given or was left, and kept apart, is separate."""
    if not _own(look) or look.yes("mixed"):
        return None
    says = (
        _("It was given or left to one of you, and was kept apart.")
        if look.how in GIVEN
        else _("One of you had it before the wedding, and it was kept apart.")
    )
    return _separate(look.by, Confidence.RULE, says, _tracing())


@ASSETS.row("Fam. Code 760", "Fam. Code 852(d)")
def mixed_account(look: AssetLook) -> Verdict | None:
    """A mixed account is presumed community; records can show a separate part."""
    if not _own(look) or look.kind not in ACCOUNTS:
        return None
    if look.yes("traced"):
        return _mixed(_("Money of one of you and money of you both lie together."), _tracing())
    return _shared(
        look,
        Confidence.PRESUMPTION,
        _("Money of one of you and money of you both lie together, and no papers tell them apart."),
        _("The one who claims a separate part must show it with records."),
    )


@ASSETS.row(
    "Fam. Code 760",
    "Fam. Code 770(a)",
    "In re Marriage of Moore (1980) 28 Cal.3d 366",
    "In re Marriage of Marsden (1982) 130 Cal.App.3d 426",
)
def own_but_community_paid(look: AssetLook) -> Verdict | None:
    """A spouse's own thing that community money paid down or improved is shared in proportion."""
    if not _own(look):
        return None
    return _mixed(
        _("It is one person's own, but money of you both paid on its loan or made it better."),
        _("The community gets a share in proportion. A lawyer or an accountant should work it out."),
    )


# What was bought, or earned and put away


@ASSETS.row("Fam. Code 760", "Fam. Code 125")
def pay_within(look: AssetLook) -> Verdict | None:
    """Pay from work in the marriage is community."""
    if look.how is not Acquired.EARNED or look.earned is not Earned.WITHIN:
        return None
    return _shared(look, Confidence.RULE, _("It is pay from work in the marriage."), _dates_may_move())


@ASSETS.row("Fam. Code 760", "Fam. Code 771(a)")
def pay_across(look: AssetLook) -> Verdict | None:
    """Pay from both sides of the line lies together."""
    if look.how is not Acquired.EARNED or look.earned is not Earned.ACROSS:
        return None
    return _mixed(_("It holds pay from the marriage and pay from outside of it."), _tracing())


@ASSETS.row("Fam. Code 771(a)")
def pay_after(look: AssetLook) -> Verdict | None:
    """Pay from work after the separation is the earner's own, kept in the earner's name and apart."""
    if look.how is not Acquired.EARNED:
        return None
    if IN_NAME_OF.get(look.title, look.by) is not look.by or look.title is TitleForm.JOINT:
        return _unknown(
            _("It is pay from after you separated, but it does not stand in the earner's name alone."),
            _tracing(),
        )
    if look.yes("mixed"):
        return _mixed(_("Pay from after you separated lies together with money of you both."), _tracing())
    return _separate(
        look.by, Confidence.RULE, _("It is pay from work after you separated."), _dates_may_move()
    )


@ASSETS.row("Prob. Code 5305", "Fam. Code 760")
def bought_into_a_joint_account(look: AssetLook) -> Verdict | None:
    """A bank account of both is presumed community, unless separate money in it is traced."""
    if not _bought(look, Time.DURING) or look.title is not TitleForm.JOINT or look.kind not in DEPOSITS:
        return None
    if look.source is not MoneySource.COMMUNITY and look.yes("traced"):
        if look.source is MoneySource.PART_SEPARATE:
            return _mixed(_("Money of one of you and money of you both lie in one account."), _tracing())
        return _separate(
            OWN_MONEY[look.source],
            Confidence.PRESUMPTION,
            _("It lies in a bank account of you both, but papers show that it was one person's own money."),
            _tracing(),
        )
    return _joint(_("It lies in a bank account of you both."), _tracing())


@ASSETS.row("Fam. Code 2581", "Fam. Code 2640(b)")
def bought_in_joint_form(look: AssetLook) -> Verdict | None:
    """What the two bought in the marriage in both names is presumed community, whatever paid for it."""
    if not _bought(look, Time.DURING) or look.title is not TitleForm.JOINT:
        return None
    return _joint(
        _("You bought it in the marriage, in both your names. That counts more than whose money paid."),
        _joint_form(),
    )


@ASSETS.row("Fam. Code 760", "Fam. Code 125", "In re Brace (2020) 9 Cal.5th 903")
def bought_with_community_money(look: AssetLook) -> Verdict | None:
    """What community money bought is community, though the paper names one, and though it was later."""
    if look.how is not Acquired.BOUGHT or look.title is TitleForm.JOINT:
        return None
    if look.source is not MoneySource.COMMUNITY:
        return None
    says = (
        _(
            "It was bought in the marriage with money earned in it. One name on the paper does not change "
            "that."
        )
        if look.when is Time.DURING
        else _("It was bought after you separated, but with money from the marriage.")
    )
    return _shared(look, Confidence.PRESUMPTION, says, _tracing())


@ASSETS.row("Fam. Code 770(a)", "In re Marriage of Bonvino (2015) 241 Cal.App.4th 1411")
def bought_with_own_money(look: AssetLook) -> Verdict | None:
    """What one bought in their own name, all with separate money that is traced, is separate."""
    if look.how is not Acquired.BOUGHT or look.source not in OWN_MONEY or look.title is TitleForm.JOINT:
        return None
    owner = OWN_MONEY[look.source]
    if IN_NAME_OF.get(look.title, owner) is not owner:
        return None
    if look.yes("traced"):
        return _separate(
            owner,
            Confidence.PRESUMPTION,
            _("It was bought with one person's own money, and papers show where the money came from."),
            _tracing(),
        )
    if look.when is Time.AFTER:
        return _unknown(
            _("It was bought after you separated, and no papers show whose money paid."), _tracing()
        )
    return _shared(
        look,
        Confidence.PRESUMPTION,
        _("It was bought in the marriage, and no papers show that one person's own money paid for it."),
        _tracing(),
    )


@ASSETS.row("Fam. Code 852(a)", "Fam. Code 2640(c)")
def bought_in_the_others_name(look: AssetLook) -> Verdict | None:
    """What one paid for with separate money stands in the other's name."""
    if look.how is not Acquired.BOUGHT or look.source not in OWN_MONEY or look.title is TitleForm.JOINT:
        return None
    return _unknown(
        _("One of you paid with their own money, but the paper names the other."),
        _("It may be a gift, or the one who paid may be repaid. A writing decides."),
    )


@ASSETS.row("In re Marriage of Bonvino (2015) 241 Cal.App.4th 1411", "Fam. Code 760", "Fam. Code 771(a)")
def bought_with_both_kinds_of_money(look: AssetLook) -> Verdict | None:
    """What separate and community money, or a loan, bought in one name is shared in proportion."""
    if look.how is not Acquired.BOUGHT or look.title is TitleForm.JOINT:
        return None
    return _mixed(
        _("It was bought in one name with one person's own money and with money or credit of you both."),
        _("The shares follow the money. Whose credit a loan was is a hard question. Ask a lawyer."),
    )


@ASSETS.row("Fam. Code 2581", "Fam. Code 771(a)")
def bought_in_joint_form_after(look: AssetLook) -> Verdict | None:
    """What the two bought in both names after they separated: no section settles it."""
    if not _bought(look, Time.AFTER):
        return None
    return _unknown(_("You bought it after you separated, in both your names."), _ask_a_lawyer())


@ASSETS.row("Fam. Code 760", "Fam. Code 771(a)")
def not_in_the_table(look: AssetLook) -> Verdict | None:
    """What no row knows."""
    return _unknown(_("We have no rule for a thing that came in this way."), _ask_a_lawyer())


# What the rows share


def _plan_or_pay(look: AssetLook) -> bool:
    """A plan that work earns, or pay that comes late: title and money source say nothing about it."""
    plan = look.kind in PLANS and look.how is Acquired.EARNED
    return plan or look.how is Acquired.IN_PLACE_OF_PAY


def _own(look: AssetLook) -> bool:
    """Whether it was one person's own when it came."""
    return look.how in (*GIVEN, Acquired.GROWTH) or (
        look.how in (Acquired.OWNED_BEFORE, Acquired.BOUGHT, Acquired.EARNED) and look.when is Time.BEFORE
    )


def _bought(look: AssetLook, when: Time) -> bool:
    return look.how is Acquired.BOUGHT and look.when is when


def _separate(who: Who, confidence: Confidence, says: str, court: str) -> Verdict:
    if who is Who.BOTH:
        return _unknown(
            says, _("You said that it came to both of you. Say whose each part is, or list it twice.")
        )
    return Verdict(separate_of(who), confidence, says, court)


def _shared(look: AssetLook, confidence: Confidence, says: str, court: str) -> Verdict:
    code = look.shared_code
    if code is Code.QUASI_COMMUNITY:
        says = _("{says} The one who got it lived outside California then, so it is quasi-community.").format(
            says=says
        )
        return Verdict(code, Confidence.PRESUMPTION, says, court)
    return Verdict(code, confidence, says, court)


def _joint(says: str, court: str) -> Verdict:
    """Joint form makes a thing community wherever the two lived when they got it."""
    return Verdict(Code.COMMUNITY, Confidence.PRESUMPTION, says, court)


def _mixed(says: str, court: str) -> Verdict:
    return Verdict(Code.MIXED, Confidence.ESTIMATE, says, court)


def _unknown(says: str, court: str) -> Verdict:
    return Verdict(Code.UNKNOWN, Confidence.OPEN, says, court)


def _tracing() -> str:
    return _("The one who says that it is their own must show it, with a deed, a will, letters or records.")


def _dates_may_move() -> str:
    return _("A judge may find another date of separation than the one you told us.")


def _joint_form() -> str:
    return _(
        "One of you can still show that the deed itself, or a written agreement, says that it is separate. "
        "Separate money that went in can be asked back."
    )


def _ask_a_lawyer() -> str:
    return _("Ask a lawyer or the self-help center about it.")
