"""Everything the sheets draw on, computed once for one case and one day."""

from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass, field
from datetime import date
from typing import TYPE_CHECKING, NamedTuple

from firstpaper.facts import Case, known
from firstpaper.facts.choices import Danger, Kind, SafeHere, Union
from firstpaper.facts.kinds import kind_of
from firstpaper.forms.answer import ItemAnswer
from firstpaper.forms.attachments import Attachment, LedgerLine, attachments, ledger
from firstpaper.forms.filing import Filing, filled_forms
from firstpaper.forms.filled import FilledForm
from firstpaper.forms.fl100 import FORM as PETITION
from firstpaper.forms.needed import FormNeeded, forms_needed
from firstpaper.forms.open_answers import item_numbers, open_items
from firstpaper.intake import Asked, asked, standing
from firstpaper.intake.predicates.grounds import files_for_one_of_the_two
from firstpaper.law.finding import Finding, Outcome, Weight, presses, safety_first, waits
from firstpaper.law.measures.emergency import emergency_number
from firstpaper.law.measures.marriage import told_each_other
from firstpaper.law.measures.record import begins_on, day, judged_on
from firstpaper.law.measures.residence import needless_keys
from firstpaper.law.register import findings
from firstpaper.locale import _
from firstpaper.locale.rows import in_a_row

if TYPE_CHECKING:
    from firstpaper.blanks.filling import Filling


class Earlier(NamedTuple):
    """The petition that an amended one replaces, as it was filed.

    It is worked out for its own filing day. `filed_on` is None where that was not recorded: then it is
    worked out for the day of the new one.
    """

    items: tuple[ItemAnswer, ...]
    attachments: tuple[Attachment, ...]
    filed_on: date | None = None


@dataclass(frozen=True, slots=True)
class Brief:
    """One household's standing facts, and all that follows from them for a filing on one day.

    `joint` holds the forms of a joint petition, where one is open to the two; `earlier` the petition that
    this one replaces, where one was named. `on_blanks` says what went into copies of the court's own forms,
    by form and use.
    """

    case: Case
    on: date
    findings: tuple[Finding, ...]
    filled: tuple[FilledForm, ...]
    attachments: tuple[Attachment, ...]
    ledger: tuple[LedgerLine, ...]
    forms: tuple[FormNeeded, ...]
    open_questions: tuple[Asked, ...]
    joint: tuple[FilledForm, ...] = ()
    earlier: Earlier | None = None
    on_blanks: "Mapping[tuple[str, str], Filling]" = field(default_factory=dict)

    @property
    def items(self) -> tuple[ItemAnswer, ...]:
        """What to do with every item of the petition."""
        return _items(self.filled, PETITION)

    def of_weight(self, weight: Weight) -> tuple[Finding, ...]:
        """The findings of one weight."""
        return tuple(one for one in self.findings if one.weight is weight)

    @property
    def waits(self) -> tuple[Finding, ...]:
        """The findings that say to wait until a day, without stopping the filing flatly."""
        return tuple(filter(waits, self.findings))

    @property
    def pressing(self) -> tuple[Finding, ...]:
        """The findings that say that a last day to file is near, or needs a judge's permission now."""
        return tuple(filter(presses, self.findings))

    @property
    def advice(self) -> tuple[Finding, ...]:
        """What to get advice on before filing, but for what only says to wait or to make haste."""
        apart = (*self.waits, *self.pressing)
        return tuple(one for one in self.of_weight(Weight.GET_ADVICE) if one not in apart)

    @property
    def safety(self) -> tuple[Finding, ...]:
        """The advice that is about somebody's safety. It stands before all other."""
        return tuple(filter(safety_first, self.advice))

    @property
    def begins(self) -> date:
        """The day planned for a filing: `on`, or the first one after it that is right for it."""
        return max(self.on, begins_on(self.case, self.on) or self.on)

    @property
    def open_items(self) -> tuple[ItemAnswer, ...]:
        """The items to hand in that wait for a fact which none of the open questions asks for."""
        asked_still = {one.key for one in self.open_questions}
        return tuple(one for _form, items in self._open_by_form(asked_still) for one in items)

    @property
    def unfinished(self) -> str:
        """All items to hand in that wait for a fact, as in "FL-100: 3a(1), 3a(2)"; empty where none does."""
        found = self._open_by_form()
        return "; ".join(f"{form}: {item_numbers(items)}" for form, items in found)

    def _open_by_form(
        self, asked_still: Collection[str] = ()
    ) -> Iterator[tuple[str, tuple[ItemAnswer, ...]]]:
        """The forms of the first filing with items that wait for a fact, and those items."""
        handed_in = {form.form for form in self.forms if not form.later}
        needless = needless_keys(self.case, self.on) | set(asked_still)
        for number in dict.fromkeys(form.form for form in self.filled if form.form in handed_in):
            every = (one for form in self.filled if form.form == number for one in form.items)
            if found := open_items(every, needless):
                yield number, found

    @property
    def kind(self) -> str:
        """The kind of case in plain words."""
        kind = kind_of(self.case)
        return kind_words(kind) if kind else _("kind of case not chosen yet")

    @property
    def couple(self) -> str:
        """What the papers call the case, such as "Marriage of A and B"."""
        filer = known(self.case.petitioner.name) or _("(your name)")
        if not files_for_one_of_the_two(self.case):
            return self._union_of(filer)
        spouse = known(self.case.grounds.filed_for) or _("(the one you file for)")
        return _("{couple}, filed by {filer}").format(couple=self._union_of(spouse), filer=filer)

    @property
    def spoken_of(self) -> str:
        """Whom the pages mean by "you two" where somebody files for one of the two; else empty."""
        if not files_for_one_of_the_two(self.case):
            return ""
        spouse = known(self.case.grounds.filed_for) or _("the one you file for")
        words = _(
            "You file for {name}. Where these pages say “you two” or “both of you”, they mean {couple}."
        )
        respondent = known(self.case.respondent.name) or _("the other side")
        return words.format(name=spouse, couple=in_a_row([spouse, respondent]))

    def _union_of(self, petitioner: str) -> str:
        unions = known(self.case.matter.unions) or ()
        partners_only = bool(unions) and Union.MARRIAGE not in unions
        words = _("Domestic partnership of {couple}") if partners_only else _("Marriage of {couple}")
        respondent = known(self.case.respondent.name) or _("(the other side's name)")
        return words.format(couple=in_a_row([petitioner, respondent]))

    @property
    def in_danger(self) -> bool:
        """Whether any sign of danger from the other side was told."""
        return bool(known(self.case.safety.dangers))

    @property
    def emergency(self) -> str:
        """Whom the filer calls in danger."""
        return emergency_number(known(self.case.residence.petitioner.lives), self.on)

    @property
    def others_look(self) -> bool:
        """Whether a paper left lying could be found by somebody who must not read it."""
        return self.in_danger or known(self.case.safety.here) is SafeHere.SHARED_COMPUTER

    @property
    def hides_address(self) -> bool:
        """Whether the other side must not learn where the filer lives."""
        return Danger.HIDE_ADDRESS in (known(self.case.safety.dangers) or ())


def kind_words(kind: Kind) -> str:
    """A kind of case in plain words."""
    return {
        Kind.DISSOLUTION: _("divorce (dissolution)"),
        Kind.LEGAL_SEPARATION: _("legal separation"),
        Kind.NULLITY: _("nullity (annulment)"),
    }[kind]


def brief(case: Case, on: date, amends: Case | None = None) -> Brief:
    """Work out everything the sheets need, for a filing on the day `on` or the next one the court is open.

    `amends` is the case of the earlier petition, where this one replaces it.
    """
    facts = standing(case)
    found = findings(facts, on)
    on = judged_on(facts, on)
    filled, pages = filled_forms(facts, on), attachments(facts, on)
    return Brief(
        case=facts,
        on=on,
        findings=found,
        filled=filled,
        attachments=pages,
        ledger=ledger(filled, pages),
        forms=forms_needed(facts, on),
        open_questions=tuple(_open(facts, on)),
        joint=filled_forms(facts, on, Filing.JOINT) if _may_file_together(found) else (),
        earlier=_earlier(standing(amends), on) if amends else None,
    )


def forms_of(brief: Brief) -> tuple[FilledForm, ...]:
    """Every form of the case: those of the petition, those about service, and those of filing together."""
    return tuple(form for forms in forms_by_filing(brief).values() for form in forms)


def forms_by_filing(brief: Brief) -> Mapping[Filing, tuple[FilledForm, ...]]:
    """The forms of the case by what is filed together; none for a filing that is not open to it."""
    service = filled_forms(brief.case, brief.on, Filing.SERVICE)
    return {Filing.PETITION: brief.filled, Filing.SERVICE: service, Filing.JOINT: brief.joint}


def _earlier(facts: Case, on: date) -> Earlier:
    recorded = facts.record.amended_on if known(facts.matter.amended) else facts.record.filed_on
    filed = day(recorded)
    then = filed or on
    behind = (page for page in attachments(facts, then) if page.form == PETITION)
    return Earlier(_items(filled_forms(facts, then), PETITION), tuple(behind), filed)


def _items(forms: tuple[FilledForm, ...], number: str) -> tuple[ItemAnswer, ...]:
    return next(form.items for form in forms if form.form == number)


def _may_file_together(found: tuple[Finding, ...]) -> bool:
    """Whether the rule on one petition for both says that nothing stands in the way."""
    return any(one.id == "joint.screen" and one.outcome is Outcome.MET for one in found)


def _open(facts: Case, on: date) -> Iterator[Asked]:
    needless = needless_keys(facts, on)
    if not told_each_other(facts):  # then there is no such day, and nobody is sent to the other side for one
        needless |= {"dates.separation_told_on"}
    return (one for one in asked(facts) if known(facts.fact(one.key)) is None and one.key not in needless)
