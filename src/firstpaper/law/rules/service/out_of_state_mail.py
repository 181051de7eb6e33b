"""Papers mailed to somebody outside California."""

from collections.abc import Iterator
from datetime import date

from firstpaper.facts import Case, known
from firstpaper.facts.choices import IN_CALIFORNIA, Lives, ServiceMethod
from firstpaper.law.figure import figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.record import day, happened
from firstpaper.law.measures.service import method, service_open, waits_for_receipt
from firstpaper.law.register import rule
from firstpaper.law.rules.service._words import METHOD, completed, need_day
from firstpaper.locale import _

LIVES, MAILED = "residence.respondent.lives", "record.service.mailed_on"


@rule(
    "Papers mailed out of the state",
    cite=("Code Civ. Proc. 415.40", "Code Civ. Proc. 417.20(a)", "Code Civ. Proc. 413.20"),
    since=date(1983, 1, 1),
    not_modelled="What else a court takes as proof that the papers came to the person.",
)
def out_of_state_mail(case: Case, on: date) -> list[Found]:
    """Papers can be mailed to somebody outside California, with a return receipt.

    What the law asks. Somebody other than you mails the papers first class, postage paid, and asks for a
    return receipt. Service is complete on the 10th day after mailing. The proof must show that the
    papers really came to the person: best, a receipt that the other side signed.

    An example. Mailed to Nevada on Monday, November 2, 2026: complete on Thursday, November 12. Thirty
    days later is Saturday, December 12, so the other side has until Monday, December 14.

    Who it is for. Somebody who lives outside California. For another country, see the page
    service.abroad first: a treaty may forbid mail.

    What to do. Ask the post office for a receipt that only the other side can sign. If it comes back
    signed by somebody else, ask the self-help center.
    """
    return list(_each(case, on))


def _each(case: Case, on: date) -> Iterator[Found]:
    lives = known(case.residence.respondent.lives)
    if method(case) is ServiceMethod.OUT_OF_STATE_MAIL:
        yield _complete(case, on)
        if lives in IN_CALIFORNIA:
            yield _not_outside()
    elif method(case) is None and lives is Lives.OTHER_STATE and service_open(case, on):
        yield Found(
            Outcome.MET,
            Weight.GOOD_TO_KNOW,
            _(
                "The other side lives outside California. The papers can be mailed there with a return "
                "receipt."
            ),
            _("It works only if you can show that the papers came to them. In person is surer."),
            facts=(LIVES, METHOD),
        )


def _complete(case: Case, on: date) -> Found:
    mailed = day(happened(case, on).service.mailed_on)
    if mailed is None:
        return need_day(MAILED, _("the day the papers were mailed"))
    found = completed(
        case,
        on,
        _says(case, on),
        _("You must show that the papers came to the other side, as with a receipt that they signed."),
        weight=Weight.LOOK_AGAIN,
        days=figure("service.complete_days.out_of_state_mail", mailed).value,
    )
    return found or need_day(MAILED, _("the day the papers were mailed"))


def _says(case: Case, on: date) -> str:
    if waits_for_receipt(case, on):
        return _(
            "Service counts from {day}, the {days}th day after the mailing, if a signed receipt comes back."
        )
    return _("Service is complete on {day}. It is the {days}th day after the mailing.")


def _not_outside() -> Found:
    return Found(
        Outcome.NOT_MET,
        Weight.GET_ADVICE,
        _(
            "This way of mailing is for somebody outside California. You told us that the other side lives "
            "here."
        ),
        _("Have the papers handed over in person, or mailed with form FL-117 to sign and send back."),
        facts=(LIVES, METHOD),
    )
