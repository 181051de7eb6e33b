"""Findings in words for a terminal, and as plain data for programs."""

from collections.abc import Iterable, Iterator, Sequence
from itertools import groupby

from firstpaper.cli.hints import command
from firstpaper.former_names import Named, formerly
from firstpaper.law.finding import Finding, Weight, safety_first
from firstpaper.locale import _


def weight_words(weight: Weight) -> str:
    """What a weight means for the filer."""
    return {
        Weight.STOP: _("STOP: do not file like this"),
        Weight.GET_ADVICE: _("GET ADVICE before you file"),
        Weight.LOOK_AGAIN: _("LOOK AGAIN"),
        Weight.GOOD_TO_KNOW: _("GOOD TO KNOW"),
    }[weight]


def findings_text(findings: Sequence[Finding], *, steps: bool) -> str:
    """Findings under headings, safety first and then by weight, each with what to do."""
    parts = {lead.id: tuple(parts_of(lead, findings)) for lead in findings}
    leads = [one for one in findings if not is_part(one, findings)]
    return "\n\n".join(
        "\n\n".join([heading, *(finding_text(one, parts[one.id], steps=steps) for one in group)])
        for heading, group in groupby(leads, key=_heading)
    )


def is_part(one: Finding, findings: Sequence[Finding]) -> bool:
    """Whether a finding is read with another that weighs as much or more: a part of the same test."""
    return any(one in parts_of(lead, findings) for lead in findings)


def parts_of(lead: Finding, findings: Sequence[Finding]) -> Iterator[Finding]:
    """The findings that are read with another one."""
    order = lead.weight.order
    return (one for one in findings if one.part_of == lead.id and one.weight.order >= order)


def _heading(one: Finding) -> str:
    return _("YOUR SAFETY FIRST") if safety_first(one) else weight_words(one.weight)


def finding_text(one: Finding, parts: Sequence[Finding] = (), *, steps: bool) -> str:
    """One finding as an indented paragraph: what it says, its parts, what to do, the working, the source."""
    source = _("Source: {sources}. More: {command}").format(
        sources="; ".join(one.authority), command=command("why", one.id)
    )
    return f"{finding_words(one, parts, steps=steps)}\n    {source}"


def finding_words(one: Finding, parts: Sequence[Finding] = (), *, steps: bool = True) -> str:
    """One finding as an indented paragraph, without its source."""
    return "\n".join(f"  {line}" for line in _lines(one, parts, steps))


def _lines(one: Finding, parts: Sequence[Finding], steps: bool) -> Iterator[str]:
    yield f"- {one.title}"
    yield f"  {one.says}"
    if one.do:
        yield "  " + _("What to do: {words}").format(words=one.do)
    for part in parts:
        yield f"  - {part.title}: {part.says}"
        if steps:
            yield from (f"      {number}. {step}" for number, step in enumerate(part.steps, 1))
    if one.steps and steps:
        yield "  " + _("In detail:")  # most count; some list, as the orders of a summons
        yield from (f"    {number}. {step}" for number, step in enumerate(one.steps, 1))
    if not one.certainty.confirmed:
        yield "  " + _("We have not confirmed this in the law itself. Ask the self-help center.")


def finding_data(one: Finding) -> dict[str, object]:
    """One finding for programs."""
    return {
        "id": one.id,
        "formerly": list(formerly(Named.RULE, one.id)),
        "title": one.title,
        "outcome": one.outcome,
        "weight": one.weight,
        "says": one.says,
        "do": one.do,
        "dates": dict(one.dates),
        "steps": list(one.steps),
        "facts": list(one.facts),
        "authority": list(one.authority),
        "certainty": one.certainty,
    }


def computed_values(findings: Iterable[Finding]) -> dict[str, object]:
    """Every value that the rules worked out, by its name."""
    return {name: value for one in findings for name, value in one.values.items()}


def stops(findings: Iterable[Finding]) -> tuple[Finding, ...]:
    """The findings that stop a filing."""
    return tuple(one for one in findings if one.weight is Weight.STOP)
