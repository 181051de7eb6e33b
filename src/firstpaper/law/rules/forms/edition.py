"""The edition of the petition."""

from datetime import date

from firstpaper.counting import month_name
from firstpaper.facts import Case
from firstpaper.law.figure import FigureValue, figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.register import rule
from firstpaper.locale import _


@rule(
    "The edition of the petition",
    cite=("Cal. Rules of Court, rule 5.7(a)", "Cal. Rules of Court, rule 1.42(9)"),
    since=date(2020, 1, 1),
    not_modelled="The editions of the other forms in the packet; look at the corner of each.",
)
def edition(case: Case, on: date) -> Found | None:
    """The item numbers on our sheets fit one edition of form FL-100, so look at the corner of your blank
    form.

    The court changes its forms from time to time. The date of the edition stands in the lower left
    corner of the first page, as in "Rev. January 1, 2020". If your blank form shows another date, an
    item may have moved, and our sheets may point at the wrong line.

    A court must not turn a form away only because it is not the latest edition. Still, use the latest
    one: an old one may lack a box that you need.

    How sure we are. We know the edition from lists of the court's forms, not from the form itself, so we
    ask you to look. A new edition on January 1, 2027 is likely, because the law on nullity for force
    changes that day. It was not published when this was written.

    An example. The corner says "Rev. January 1, 2027". Then do not trust the item numbers on our sheets.
    Go by the words.

    What to do. Get the blank form from the court's own site on the day you fill it in.
    """
    value = figure("form_edition.FL-100", on)
    known_edition = value.value["edition"]
    verified = value.value["verified_against_pdf"] and value.certainty.confirmed
    return Found(
        Outcome.MET if verified else Outcome.NEED_TO_KNOW,
        Weight.GOOD_TO_KNOW if verified else Weight.LOOK_AGAIN,
        _says(value, known_edition),
        _(
            "Look at the lower left corner of the first page of your blank form. If it shows another date, "
            "do not trust the item numbers on our sheets. Go by the words."
        ),
        values={"forms.edition": known_edition.isoformat() if known_edition else None},
        certainty=value.certainty,
    )


def _says(value: FigureValue, known_edition: date | None) -> str:
    if known_edition is None:
        return (
            _("We do not know the edition of form FL-100 for your filing day. {note}")
            .format(note=_(value.note))
            .strip()
        )
    says = _("As far as we know, form FL-100 is the edition of {month} {day}, {year}.").format(
        month=month_name(known_edition), day=known_edition.day, year=known_edition.year
    )
    return _("{says} {note}").format(says=says, note=_(value.note)).strip()
