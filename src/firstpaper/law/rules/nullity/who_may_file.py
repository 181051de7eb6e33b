"""Who may start a nullity."""

from collections.abc import Iterator
from datetime import date

from firstpaper.counting import anniversary
from firstpaper.facts import DONT_KNOW, Case, known
from firstpaper.facts.choices import NullityFiler, NullityGround, Who
from firstpaper.law.figure import figure
from firstpaper.law.finding import Found, Outcome, Weight
from firstpaper.law.measures.nullity import concerned_key, filer_may, grounds
from firstpaper.law.register import rule
from firstpaper.law.rules.nullity._ways import stays_open, without
from firstpaper.law.words import ground_words, help_first
from firstpaper.locale import _
from firstpaper.locale.rows import in_a_row

FILER, FILED_FOR = "grounds.filer", "grounds.filed_for"


@rule(
    "Who may start a nullity",
    cite=("Fam. Code 2211(a)-(f)", "Cal. Rules of Court, rule 5.16(b)(3)"),
    since=date(2026, 1, 1),
    not_modelled="Who may file on a void ground besides a spouse; the changed caption itself.",
)
def who_may_file(case: Case, on: date) -> list[Found]:
    """For each voidable ground, the law names who may file.

    Under age: the spouse who was under age, or, while that spouse is still a minor, a parent,
    guardian, conservator or other person in charge. An earlier spouse thought dead or long gone:
    either spouse, or the earlier spouse. Unsound mind: "the party injured", or a relative or
    conservator of the person of unsound mind. Fraud: the one who was deceived. Force: the one who was
    forced. Physical incapacity: "the injured party".

    Example: a husband lied to his wife to make her marry him. She may file on the ground of fraud. He
    may not.

    The law does not say who "the party injured" is. Many read it as the spouse who can complain of
    the matter. Others read it as covering either spouse. Where your case turns on that, ask a lawyer.

    The law sets no list for the two void grounds. A spouse may file on them. If somebody else wants
    to, a lawyer should look at it.

    Where somebody other than a spouse files, the top of the petition (the caption) must be changed to
    show it. This program writes captions for two spouses only, so it sends such a filer to get help and
    leaves the petitioner's name open.

    A person under 18 who is a party appears through a guardian, a conservator, or a guardian ad litem, whom
    the judge names for the case (Code Civ. Proc. 372). A valid marriage makes a minor free to sue alone
    (Fam. Code 7002, 7050). Whether that holds where the marriage itself is attacked, the law does not say.
    """
    if not grounds(case):
        return []
    if known(case.grounds.filer) is None:
        return [_filer_not_told(case)]
    return list(_each(case, on))


def _each(case: Case, on: date) -> Iterator[Found]:
    filer, chosen = known(case.grounds.filer), grounds(case)
    if filer is not NullityFiler.SPOUSE:
        yield Found(
            Outcome.FOR_A_LAWYER,
            Weight.GET_ADVICE,
            _instead_of_a_spouse(case),
            _(
                "This program does not write that caption: it leaves the petitioner's name open. {help}"
            ).format(help=help_first()),
            facts=(FILER, FILED_FOR),
            cite=("Code Civ. Proc. 372(a)(1)",),
        )
    elif _filer_is_a_minor(case, on):
        yield _minor_files(on)
    for ground in chosen:
        if filer_may(case, ground) is not True:
            yield _not_allowed(case, ground, on) if filer_may(case, ground) is False else _open(case, ground)
    allowed = [ground for ground in chosen if filer_may(case, ground)]
    if allowed:
        yield Found(
            Outcome.MET,
            Weight.GOOD_TO_KNOW,
            _("You are one of those who may file on this ground: {grounds}.").format(
                grounds=in_a_row([ground_words(ground) for ground in allowed])
            ),
            facts=(FILER, *(key for ground in allowed for key in _concerned(ground))),
            values={"nullity.may_file_on": [str(ground) for ground in allowed]},
        )


def _instead_of_a_spouse(case: Case) -> str:
    name = known(case.grounds.filed_for)
    if name is None:
        return _("You file for, or instead of, one of the spouses. The top of the petition must show that.")
    return _(
        "You file for {name}. The top of the petition must name {name} and show who acts: a parent or "
        "guardian, or somebody whom the judge names for the case (a guardian ad litem)."
    ).format(name=name)


def _filer_is_a_minor(case: Case, on: date) -> bool:
    """Whether the spouse who files may still be under age on the filing day."""
    born, who = known(case.grounds.minor_born_on), known(case.grounds.under_age)
    if NullityGround.UNDER_AGE not in grounds(case) or born is None or who not in (Who.PETITIONER, Who.BOTH):
        return False
    return on < anniversary(born.latest, figure("nullity.age_of_consent", on).value)


def _minor_files(on: date) -> Found:
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.GET_ADVICE,
        _(
            "You are under {age} on the filing day. As a rule, a minor comes before a court through a "
            "guardian, or through somebody whom the judge names for the case (a guardian ad litem)."
        ).format(age=figure("nullity.age_of_consent", on).value),
        _(
            "A valid marriage lets a minor act alone, but here the marriage itself is in doubt. Ask the "
            "court who must sign. {help}"
        ).format(help=help_first()),
        facts=(FILER, "grounds.under_age", "grounds.minor_born_on"),
        cite=("Code Civ. Proc. 372(a)(1)", "Fam. Code 7002(a)", "Fam. Code 7050(e)(4)"),
    )


def _filer_not_told(case: Case) -> Found:
    unknown = case.grounds.filer is DONT_KNOW
    return Found(
        Outcome.NEED_TO_KNOW,
        Weight.GET_ADVICE if unknown else Weight.LOOK_AGAIN,
        _("We need to know who starts the nullity: a spouse, or somebody else."),
        help_first() if unknown else _("Answer the question about who starts the case."),
        facts=(FILER,),
    )


def _not_allowed(case: Case, ground: NullityGround, on: date) -> Found:
    return Found(
        Outcome.NOT_MET,
        Weight.STOP,
        _('By what you told us, the law does not let you file on the ground "{ground}".').format(
            ground=ground_words(ground)
        ),
        _("{who} Leave this ground out. {open} {help}").format(
            who=_who_may(ground), open=_left(case, ground, on), help=help_first()
        ),
        facts=(FILER, *_concerned(ground)),
        mended_by=without(case, ground, on),
    )


def _left(case: Case, ground: NullityGround, on: date) -> str:
    """What is left to a spouse. Somebody else cannot ask for a divorce."""
    spouse = known(case.grounds.filer) is NullityFiler.SPOUSE
    return stays_open(case, ground, on) if spouse else _("Only a spouse can ask for a divorce instead.")


def _open(case: Case, ground: NullityGround) -> Found:
    key = concerned_key(ground)
    if key and case.fact(key) is None:
        return Found(
            Outcome.NEED_TO_KNOW,
            Weight.LOOK_AGAIN,
            _('For the ground "{ground}" we need to know which of you it is about.').format(
                ground=ground_words(ground)
            ),
            _("Answer that question. Then we can say whether you may file on this ground."),
            facts=(FILER, key),
        )
    return Found(
        Outcome.FOR_A_LAWYER,
        Weight.GET_ADVICE,
        _('It is not clear that you may file on the ground "{ground}".').format(ground=ground_words(ground)),
        _("{who} {help}").format(who=_who_may(ground), help=help_first()),
        facts=(FILER, *_concerned(ground)),
    )


def _concerned(ground: NullityGround) -> tuple[str, ...]:
    key = concerned_key(ground)
    return (key,) if key else ()


def _who_may(ground: NullityGround) -> str:
    spouse = _("The law names no list of filers for this ground, but a spouse may file.")
    return {
        NullityGround.INCEST: spouse,
        NullityGround.BIGAMY: spouse,
        NullityGround.UNDER_AGE: _(
            "The spouse who was under age may file. While that spouse is a minor, a person in charge may "
            "file."
        ),
        NullityGround.PRIOR_SPOUSE: _("Either spouse may file, or the earlier spouse."),
        NullityGround.UNSOUND_MIND: _(
            'The law says "the party injured", or a relative or conservator of the person of unsound mind.'
        ),
        NullityGround.FRAUD: _("Only the spouse who was deceived may file."),
        NullityGround.FORCE: _("Only the spouse who was forced may file."),
        NullityGround.PHYSICAL_INCAPACITY: _('The law says "the injured party".'),
    }[ground]
