"""What is listed as owned and owed, in words for a terminal and as plain data."""

from collections.abc import Collection, Iterator, Sequence

from firstpaper.facts import Case, known
from firstpaper.facts.choices import AssetKind, DebtKind
from firstpaper.facts.money import in_dollars
from firstpaper.facts.schedule import Asset, Debt
from firstpaper.intake import Asked, echo
from firstpaper.intake.engine import asking, row_at
from firstpaper.intake.kinds import Row
from firstpaper.intake.listing import (
    GROUPS,
    Part,
    about,
    in_general,
    listed,
    rows,
)
from firstpaper.law.property_words import kind_words
from firstpaper.locale import _, _n

MOST_NAMED = 3
"""How many open questions are named at once, so that nobody is buried in them."""


def list_text(case: Case) -> str:
    """Everything that is listed, numbered."""
    parts = [
        "\n".join([_heading(group), *(f"  {row.number}. {line_about(case, row)}" for row in found)])
        for group in GROUPS
        if (found := [row for row in rows(case) if row.group == group])
    ]
    return "\n\n".join(parts) or _("Nothing is listed yet.")


def line_about(case: Case, row: Row) -> str:
    """One thing or debt with its kind, its worth and what is owed, as far as they are told."""
    told = row_at(case, row.group, row.number)
    assert isinstance(told, Asset | Debt)
    words, kind_said = known(told.words), _kind_said(told)
    name = words or kind_said or _("not named yet")
    head = f"{name} ({kind_said})" if words and kind_said else name
    amounts = ", ".join(_amounts(told))
    return f"{head}: {amounts}" if amounts else head


def _kind_said(told: Asset | Debt) -> str:
    kind = known(told.kind)
    return kind_words(kind) if isinstance(kind, AssetKind | DebtKind) else ""


def name_of(case: Case, row: Row) -> str:
    """A thing or debt by its number and its name."""
    words = {"asset": _("Thing {number}: {name}"), "debt": _("Debt {number}: {name}")}
    return words[row.group].format(number=row.number, name=line_about(case, row))


def taken_out(case: Case, row: Row) -> str:
    """That a thing or debt is off the list, and that others have another number now."""
    gone = _("Taken out: {name}.").format(name=line_about(case, row))
    moved = _("Those after it have moved up by one.")
    return f"{gone} {moved}" if row.number < len(case.fact(row.group)) else gone


def still_open(case: Case, part: Part) -> str:
    """One sentence on what is not told yet, the first few by name; empty where all is told."""
    left = [one.short for one in part.open(case)]
    if not left:
        return ""
    named = "; ".join(left[:MOST_NAMED])
    more = len(left) - MOST_NAMED
    if more <= 0:
        return _("Not told yet: {named}.").format(named=named)
    words = _n("Not told yet: {named}; and {count} more.", "Not told yet: {named}; and {count} more.", more)
    return words.format(named=named, count=more)


def left_out(before: Case, after: Case, taken_back: Collection[str] = ()) -> list[Asked]:
    """Facts that did not go with the rest any more, and went with it; not those that were taken back."""
    kept = listed(after)
    gone = (key for key in listed(before) if key not in kept and key not in taken_back)
    return [one for key in gone if (one := asking(key, before))]


def left_out_text(gone: Sequence[Asked], case: Case) -> str:
    """Those facts, with what was told; empty where there are none."""
    if not gone:
        return ""
    lines = (f"  - {one.short}: {echo(one, case.fact(one.key))}" for one in gone)
    return "\n".join([_("This does not go with it any more, and was taken out:"), *lines])


def list_data(case: Case) -> dict[str, object]:
    """Everything that is listed, for programs."""
    general, income = in_general()
    return {
        **{group: [_row_data(case, row) for row in rows(case) if row.group == group] for group in GROUPS},
        "schedule": case.schedule.model_dump(mode="json", exclude_none=True),
        "income": case.income.model_dump(mode="json", exclude_none=True),
        "open": [one.key for part in (general, income) for one in part.open(case)],
    }


def _row_data(case: Case, row: Row) -> dict[str, object]:
    told = row_at(case, row.group, row.number).model_dump(mode="json", exclude_none=True)
    facts = {name: value for name, value in told.items() if value != {}}
    return {
        "number": row.number,
        "facts": facts,
        "open": [one.key for one in about(row).open(case)],
    }


def _heading(group: str) -> str:
    return {"asset": _("What you own"), "debt": _("What you owe")}[group]


def _amounts(told: Asset | Debt) -> Iterator[str]:
    value, owed = known(told.value) if isinstance(told, Asset) else None, known(told.owed)
    if value is not None:
        yield in_dollars(value)
    if owed and isinstance(told, Asset):
        yield _("{amount} owed on it").format(amount=in_dollars(owed))
    elif owed is not None and isinstance(told, Debt):
        yield _("{amount} owed").format(amount=in_dollars(owed))


def changed(before: Case, after: Case) -> list[str]:
    """The keys of listed facts that are not as they were."""
    old, new = listed(before), listed(after)
    return sorted(key for key in {**old, **new} if old.get(key) != new.get(key))
