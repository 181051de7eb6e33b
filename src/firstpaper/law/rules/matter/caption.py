"""The top of the petition."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import DONT_KNOW, Case, known
from firstpaper.facts.choices import Union
from firstpaper.facts.kinds import kind_of
from firstpaper.facts.text import in_latin_letters, in_one_case
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.register import rule
from firstpaper.law.words import help_first
from firstpaper.locale import _

KIND, UNIONS = "matter.kind", "matter.unions"
NAMES = ("petitioner.name", "respondent.name")


@rule(
    "The top of the petition",
    cite=("Fam. Code 2330(a)", "Fam. Code 2250(a)", "Fam. Code 299(d)", "Cal. Rules of Court, rule 5.60(a)"),
    since=date(2025, 1, 1),
    not_modelled="Asking for one kind of case or else for another (rule 5.60(b)).",
)
def caption(case: Case, on: date) -> list[Found]:
    """The top of the petition says who the two are, what joins them, and which kind of case is asked for.

    What the law says. The petition must state whether it asks for a dissolution (divorce), a legal
    separation or a nullity. It is headed "In re the marriage of" the two. The same holds for
    registered partners.

    What we check. Exactly one kind of case. The union at the top is the union in item 1, the dates and
    the grounds. Married couples mark marriage. Registered partners mark domestic partnership, and item
    1 asks whether California registered it or another place did. For one partnership only one of these
    two is right. Mark both only if you truly registered twice. A couple who are married and registered
    mark both unions.

    Names. Use your full legal names, spelled the same way on every form. Whoever files first is the
    petitioner, and stays the petitioner in every later paper, even years later.

    An example. Two people registered in Oregon in 2010 and never in California. They mark the box for a
    partnership that was not established in California, and not the other one.

    What to do. If you want one kind of case, "or else" another, it must be shown in the petition. Get
    help with that.
    """
    return list(_each(case))


def _each(case: Case) -> Iterator[Found]:
    yield from _unions(case)
    yield from _kind(case)
    yield from _names(case)
    yield from _letters(case)
    if kind_of(case) and known(case.matter.unions):
        yield Found(
            Outcome.MET,
            Weight.GOOD_TO_KNOW,
            _(
                "We know your kind of case and what joins you two, so the top of the petition can be filled "
                "in."
            ),
            _("You are the petitioner in this case for good, in every later paper too."),
            facts=(KIND, UNIONS),
            values={
                "caption.kind": str(kind_of(case)),
                "caption.unions": [str(union) for union in known(case.matter.unions) or ()],
            },
        )


def _unions(case: Case) -> Iterator[Found]:
    told = known(case.matter.unions)
    if told is None:
        unknown = case.matter.unions is DONT_KNOW
        yield _need(
            _("We need to know whether you are married, registered partners, or both."),
            _("A marriage certificate or the Secretary of State can tell. {help}").format(help=help_first())
            if unknown
            else _("Answer the question about what joins you two."),
            UNIONS,
            Weight.GET_ADVICE if unknown else Weight.LOOK_AGAIN,
        )
    elif not told:
        yield Found(
            Outcome.NOT_MET,
            Weight.STOP,
            _(
                "You told us that you are neither married nor registered partners. This petition is for "
                "those two."
            ),
            _("For children, money or safety there are other cases. Ask the court's self-help center which."),
            facts=(UNIONS,),
            mended_by=(UNIONS,),
        )
    elif {Union.PARTNERS_CALIFORNIA, Union.PARTNERS_ELSEWHERE} <= set(told):
        yield Found(
            Outcome.NOT_MET,
            Weight.LOOK_AGAIN,
            _("You marked a partnership from California and one from another place."),
            _("Keep both only if you truly registered twice. For one partnership, only one is right."),
            facts=(UNIONS,),
        )


def _kind(case: Case) -> Iterator[Found]:
    if kind_of(case) is None:
        unknown = case.matter.kind is DONT_KNOW
        yield _need(
            _("We need to know which kind of case you want: a divorce, a legal separation or a nullity."),
            _("You choose, not this program. {help}").format(help=help_first())
            if unknown
            else _("Answer the question about the kind of case."),
            KIND,
            Weight.GET_ADVICE if unknown else Weight.LOOK_AGAIN,
        )


def _names(case: Case) -> Iterator[Found]:
    petitioner, respondent = known(case.petitioner.name), known(case.respondent.name)
    for key, name in zip(NAMES, (petitioner, respondent), strict=True):
        if name is None:
            whose = _("your full legal name") if key == NAMES[0] else _("the other side's full legal name")
            yield _need(
                _("We need {whose}. It goes on every form.").format(whose=whose),
                _("Look at a passport, a license or the marriage certificate."),
                key,
                Weight.LOOK_AGAIN,
            )
    if petitioner and respondent and petitioner.casefold() == respondent.casefold():
        yield Found(
            Outcome.NOT_MET,
            Weight.LOOK_AGAIN,
            _("Both of you have the same name in your answers."),
            _("If it is not a slip, add what tells you apart, such as a middle name."),
            facts=NAMES,
        )


def _letters(case: Case) -> Iterator[Found]:
    """Names that look like a slip, or in letters that the court's forms do not take."""
    children = (f"child.{number}.name" for number in range(1, len(case.child) + 1))
    for key in (*NAMES, *children, "requests.former_name"):
        name = known(case.fact(key))
        if name and in_one_case(name):
            yield Found(
                Outcome.CLOSE,
                Weight.LOOK_AGAIN,
                _("This name is in small letters only, or in capitals only: {name}.").format(name=name),
                _("It is printed just as it was typed. Change it if it is not meant so."),
                facts=(key,),
            )
        if name and not in_latin_letters(name):
            yield Found(
                Outcome.NOT_MET,
                Weight.GET_ADVICE,
                _("The court reads names in Latin letters, and this one has others: {name}.").format(
                    name=name
                ),
                _("Write it as it stands in a passport or on an ID card of this country."),
                facts=(key,),
            )


def _need(says: str, do: str, key: str, weight: Weight) -> Found:
    return Found(Outcome.NEED_TO_KNOW, weight, says, do, facts=(key,))
