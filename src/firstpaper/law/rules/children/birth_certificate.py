"""A certified birth certificate before custody orders."""

from datetime import date

from firstpaper.facts import Case
from firstpaper.facts.choices import Kind, ServiceMethod
from firstpaper.facts.kinds import kind_of
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.children import has_minor_children
from firstpaper.law.measures.record import TAKING_PART, took_part
from firstpaper.law.measures.service import method
from firstpaper.law.register import rule
from firstpaper.locale import _

FACTS = ("matter.kind", "record.service.method", *TAKING_PART)


@rule(
    "A birth certificate before custody orders",
    cite="Fam. Code 3140",
    since=date(2000, 1, 1),
    not_modelled="A judge can do without it for a good reason. Orders made at once for safety are left out.",
)
def birth_certificate(case: Case, on: date) -> Found | None:
    """If the other parent stays away and was not served in person, the court needs a birth certificate.

    What the law asks. Before a custody order, where a parent has not taken part in the case, you hand in a
    certified copy of the child's birth certificate. The police check it against the list of missing
    children. In a divorce this is so only if there is no proof that the other parent was served in person.

    Papers that were left with somebody else, mailed, published or posted are not served in person.

    In a legal separation or a nullity the section does not say that service in person is enough. There we
    ask you to have the certificate ready as long as the other parent has not taken part.

    An example. The summons was printed in a newspaper and nobody answers. Order a certified copy for each
    child from the county where the child was born. It can take weeks.
    """
    how = method(case)
    if how is None or took_part(case, on) or not has_minor_children(case, on):
        return None
    divorce = kind_of(case) is Kind.DISSOLUTION
    in_person = how is ServiceMethod.PERSONAL
    if in_person and divorce:
        return None
    return Found(
        Outcome.CLOSE,
        Weight.GOOD_TO_KNOW if in_person else Weight.LOOK_AGAIN,
        _(
            "If the other parent does not take part, ask if the court wants birth certificates before "
            "custody orders."
        )
        if in_person
        else _(
            "If the other parent does not take part, the court needs certified birth certificates before "
            "custody orders."
        ),
        _("Order a certified copy for each child now. It can take weeks."),
        facts=FACTS,
    )
