"""The one thing to do next, for where a case stands on a day. Pure: a case and a day in, one step out.

The steps stand in the order in which a case goes. The first that is not done is the next.
"""

from collections.abc import Callable
from datetime import date
from typing import NamedTuple

from firstpaper.counting import short_date, spell_date
from firstpaper.facts import Case
from firstpaper.facts.choices import ServiceMethod
from firstpaper.forms.open_answers import item_numbers
from firstpaper.forms.open_points import open_points
from firstpaper.intake import asked, standing
from firstpaper.intake.events import events
from firstpaper.intake.fact_names import named
from firstpaper.law.agenda import Entry, State, agenda
from firstpaper.law.finding import FIRST_COURT_DAY, Finding, Weight
from firstpaper.law.measures.fees import after_denial
from firstpaper.law.measures.record import (
    answered_first,
    appeared_on,
    filed_on,
    happened,
    is_filed,
    responded,
    took_part,
)
from firstpaper.law.measures.response import can_ask_for_default
from firstpaper.law.measures.service import (
    Serving,
    acknowledgment_back_by,
    goes_as_a_later_paper,
    method,
    needs_an_order,
    server_age,
    serves_again,
    service_complete,
    serving,
)
from firstpaper.law.register import findings
from firstpaper.law.words import spaced, target_day
from firstpaper.locale import _, _n
from firstpaper.locale.rows import in_a_row
from firstpaper.packet.proof import proof_step
from firstpaper.packet.service_day import day_step

MOST_CHANGED = 3
"""How many answers a command to change them names at most, so that it can be typed."""


class NextStep(NamedTuple):
    """What to do, and the command for it: its name, what follows the case, what comes before the case."""

    words: str
    command: str
    more: tuple[str, ...] = ()
    about: tuple[str, ...] = ()


def next_step(told: Case, on: date) -> NextStep:
    """The next step of a case on the day `on`."""
    case = standing(told)
    steps = _AFTER_FILING if is_filed(case) and filed_on(case, on) else _BEFORE_FILING
    return next(step for find in steps if (step := find(case, on)))


# --- up to the filing -------------------------------------------------------------------------------------


def _answer(case: Case, _on: date) -> NextStep | None:
    left = sum(case.fact(one.key) is None for one in asked(case))
    words = _n("answer the question that is left.", "answer the {count} questions that are left.", left)
    return NextStep(words.format(count=left), "ask") if left else None


def _mend(case: Case, on: date) -> NextStep | None:
    """What mends a stop: answers given again, or a person who can help, or time. In this order."""
    stops = [one for one in findings(case, on) if one.weight is Weight.STOP]
    if not stops:
        return None
    for one in stops:
        if keys := _to_tell_again(case, one):
            return _tell_again(case, one.title, keys, len(stops))
    if first := next((one for one in stops if FIRST_COURT_DAY not in one.dates), None):
        return _get_help(first, len(stops))
    return _wait(stops[0])


def _to_tell_again(case: Case, stop: Finding) -> tuple[str, ...]:
    """The answers that mend it, of those that are asked for now."""
    return tuple(key for key in stop.mended_by if key in _open_to_change(case) or events().find(key))


def _open_to_change(case: Case) -> set[str]:
    """The answers that can be given again: what is asked for now."""
    return {one.key for one in asked(case)}


def _tell_again(case: Case, title: str, keys: tuple[str, ...], count: int) -> NextStep:
    words = _n(
        "mend what stops a filing (“{title}”). Tell us again: {answers}.",
        "mend the {count} things that stop a filing, one by one. The first is “{title}”. Tell us again: "
        "{answers}.",
        count,
    )
    answers = in_a_row([named(key, case) for key in keys])
    said = words.format(count=count, title=title, answers=answers)
    happened = {found[0].name for key in keys if (found := events().find(key))}
    if not happened:
        return NextStep(said, "change", keys)
    return NextStep(said, "record", tuple(happened) if len(happened) == 1 else ())


def _get_help(first: Finding, count: int) -> NextStep:
    words = _n(
        "ask the self-help center or a lawyer about what stops a filing (“{title}”). To read why it does:",
        "ask the self-help center or a lawyer about the {count} things that stop a filing. The first is "
        "“{title}”. To read why it does:",
        count,
    )
    return NextStep(words.format(count=count, title=first.title), "why", about=(first.id,))


def _wait(first: Finding) -> NextStep:
    day = first.dates[FIRST_COURT_DAY]
    words = _(
        "wait until {day}. Until then the rule “{title}” stops a filing. If there is another way, the "
        "command check names it. For the papers of that day:"
    )
    said = words.format(day=spell_date(day), title=first.title)
    return NextStep(said, "packet", ("--on", day.isoformat()))


def _settle(case: Case, on: date) -> NextStep | None:
    items = open_points(case, on).items
    if not items:
        return None
    words = _("settle what is not finished in FL-100, or ask the self-help center about it: {items}.")
    said = words.format(items=item_numbers(items))
    can_change = _open_to_change(case)
    keys = tuple(dict.fromkeys(one.open_key for one in items if one.open_key in can_change))
    named_now = keys[:MOST_CHANGED]
    return NextStep(spaced((said, _rests_on(case, named_now, more=keys != named_now))), "change", named_now)


def _rests_on(case: Case, keys: tuple[str, ...], *, more: bool) -> str:
    """The answers behind the items that are not finished; empty where none of them can be given again."""
    if not keys:
        return ""
    words = _("It rests first of all on {answers}.") if more else _("It rests on {answers}.")
    return words.format(answers=in_a_row([named(key, case) for key in keys]))


def _file(case: Case, _on: date) -> NextStep:
    words = _("draft the packet, copy it onto the court's forms, and file them with the clerk.")
    return NextStep(words, "packet")


# --- after it ---------------------------------------------------------------------------------------------


def _closed(case: Case, on: date) -> NextStep | None:
    if agenda(case, on).ahead:
        return None
    return NextStep(_("see your dates. None is ahead of you now."), "dates")


def _pay(case: Case, on: date) -> NextStep | None:
    due = after_denial(case, on)
    if due is None:
        return None
    words = _("pay the court's fee, or ask for a hearing (form FW-006), by {day}. Then record it.")
    late = _("ask the clerk today if your petition still stands: the fee was not paid in time.")
    said = late if due.missed(on) else words.format(day=target_day(due, short_date))
    return NextStep(said, "record", ("fee",))


def _serve_again(case: Case, on: date) -> NextStep | None:
    if not serves_again(case) or serving(case, on) is not Serving.SERVE:
        return None
    by_hand = _(
        "have the amended petition served: somebody {age} or older, never you, hands it over. Then record it."
    )
    by_mail_too = _(
        "have the amended petition served: somebody {age} or older, never you, mails it or hands it over. "
        "Then record it."
    )
    words = (by_mail_too if goes_as_a_later_paper(case, on) else by_hand).format(age=server_age(on))
    maybe = responded(case, on) and not answered_first(case, on)
    answers_it = _(
        "a response came, perhaps to the amended petition. If that was served, record the day. If not:"
    )
    said = spaced((answers_it if maybe else "", words, _money_goes_along(case, on)))
    return NextStep(said, "record", ("amended-served",))


def _money_goes_along(case: Case, on: date) -> str:
    """That the filer's declaration is due too, which has a day where serving again has none."""
    owed = _disclosure(case, on)
    if owed is None:
        return ""
    words = _("Your papers about money (form FL-140) can go along: they are due by {day}.")
    late = _("Your papers about money (form FL-140) can go along: they were due by {day}.")
    said = late if owed.state is State.MISSED else words
    return said.format(day=owed.deadline.days(short_date))


def _serve(case: Case, on: date) -> NextStep | None:
    left = serving(case, on)
    over = service_complete(case, on) is not None or took_part(case, on)
    if serves_again(case) or left is Serving.PROVE or (left is Serving.NOTHING and over):
        return None
    back = acknowledgment_back_by(case, on)
    if method(case) is ServiceMethod.ACKNOWLEDGMENT and back:
        words = _("see that the other side signs form FL-117 and sends it back by {day}. Then record it.")
        return NextStep(words.format(day=target_day(back, short_date)), "record", ("acknowledged",))
    if _left_and_not_mailed(case, on):
        words = _(
            "have the server mail a second set to the place where the papers were left. Then record the day."
        )
        return NextStep(words, "record", ("served",))
    if method(case) is None and needs_an_order(case, on):
        words = _(
            "ask a judge to allow a newspaper or a posting, with forms FL-980 and FL-982. Write down first "
            "how you looked for the other side. Record the service when it is done."
        )
        return NextStep(words, "record", ("served",))
    owed = _disclosure(case, on)
    by = owed.deadline.target if owed and owed.state is State.AHEAD else None
    return NextStep(_have_served(by, on), "record", ("served",))


def _find_out_the_day(case: Case, on: date) -> NextStep | None:
    words = day_step(case, on)
    if not words:
        return None
    return NextStep(spaced((words, _("Then record that day."))), "record", ("served",))


def _left_and_not_mailed(case: Case, on: date) -> bool:
    """Whether papers left with somebody else still have to be mailed (Code Civ. Proc. 415.20(b))."""
    service = happened(case, on).service
    left = method(case) is ServiceMethod.SUBSTITUTED and service.served_on is not None
    return left and service.mailed_on is None


def _have_served(by: date | None, on: date) -> str:
    if by is None:
        words = _(
            "have the papers served: somebody {age} or older, never you, hands them over. Then record it."
        )
        return words.format(age=server_age(on))
    words = _(
        "have the papers served, best by {day}: somebody {age} or older, never you, hands them over. "
        "Then record it."
    )
    return words.format(day=short_date(by), age=server_age(on))


def _prove(case: Case, on: date) -> NextStep | None:
    words = proof_step(case, on)
    if not words:
        return None
    return NextStep(spaced((words, _("Then record it."))), "record", ("proof",))


def _tell_since_when(case: Case, on: date) -> NextStep | None:
    """The day on which the other side took part, where that is all we know of it."""
    if not took_part(case, on) or appeared_on(case, on):
        return None
    if not responded(case, on):
        words = _("find out on which day the other side first took part: ask the clerk. Then record it.")
        return NextStep(words, "record", ("appeared",))
    words = _(
        "find out on which day the response was filed: look for the court's stamp on it, or ask the clerk. "
        "Then record it, so that your dates can be counted."
    )
    return NextStep(words, "record", ("response",))


def _ask_for_default(case: Case, on: date) -> NextStep | None:
    if not can_ask_for_default(case, on):
        return None
    words = _(
        "no response came, so you can ask for a default: form FL-165, with a stamped envelope for the other "
        "side. Then record it."
    )
    return NextStep(words, "record", ("default",))


def _disclose(case: Case, on: date) -> NextStep | None:
    owed = _disclosure(case, on)
    if owed is None:
        return None
    words = _("have your papers about money (form FL-140) served on the other side by {day}. Then record it.")
    late = _("have your papers about money (form FL-140) served now: they were due by {day}. Then record it.")
    said = late if owed.state is State.MISSED else words
    return NextStep(said.format(day=owed.deadline.days(short_date)), "record", ("disclosure",))


def _watch(case: Case, on: date) -> NextStep:
    entry = agenda(case, on).ahead[0].deadline
    return NextStep(
        _("watch the day {day}: {title}.").format(day=entry.days(short_date), title=entry.title), "dates"
    )


def _disclosure(case: Case, on: date) -> Entry | None:
    """The day of the filer's own declaration, where it is still open."""
    ahead = agenda(case, on).ahead
    return next((one for one in ahead if one.deadline.key == "disclosure.petitioner"), None)


_BEFORE_FILING: tuple[Callable[[Case, date], NextStep | None], ...] = (
    _answer,
    _mend,
    _settle,
    _file,
)
_AFTER_FILING: tuple[Callable[[Case, date], NextStep | None], ...] = (
    _closed,
    _pay,
    _find_out_the_day,
    _serve_again,
    _serve,
    _prove,
    _tell_since_when,
    _ask_for_default,
    _disclose,
    _watch,
)
