"""Why a question is asked, and what a rule says: the pages behind the word "why"."""

import re
from collections.abc import Iterator, Sequence
from datetime import date

from firstpaper.cli.hints import command
from firstpaper.cli.words.findings import finding_words
from firstpaper.cli.words.sources import law_words, source_data
from firstpaper.cli.words.why_item import item_paragraphs, place_words
from firstpaper.counting import short_date, spell_date
from firstpaper.facts import Case
from firstpaper.former_names import Named, formerly
from firstpaper.forms.edition import Edition, Item, NoEditionError, edition_for
from firstpaper.forms.explained_names import entries_fed_by
from firstpaper.intake import Asked, echo
from firstpaper.intake.events import asking_anything
from firstpaper.law.authority import Certainty
from firstpaper.law.finding import Finding
from firstpaper.law.register import Rule, named_rule
from firstpaper.locale import _


def question_page(asked: Asked, on: date) -> str:
    """Why a question is asked, and what it feeds: rules by title, form items by number and label."""
    return "\n\n".join([asked.why, *_feeds(asked, on)])


def why_pages(asked: Asked, on: date) -> Sequence[str]:
    """Why a question is asked, then each item that its answer feeds, explained; every page names the next."""
    fed = entries_fed_by(asked.question.key, asked.question.feeds.items)
    pages = [question_page(asked, on), *("\n\n".join(item_paragraphs(one, on)) for one in fed)]
    return [
        "\n\n".join([page, _("Type why again to read about {place}").format(place=place_words(entry))])
        if entry
        else page
        for page, entry in zip(pages, [*fed, None], strict=True)
    ]


def question_data(asked: Asked, on: date) -> dict[str, object]:
    """The same for programs."""
    feeds = asked.question.feeds
    return {
        "kind": "question",
        "key": asked.key,
        "formerly": list(formerly(Named.FACT, asked.question.key)),
        "ask": asked.ask,
        "why": asked.why,
        "rules": [{"id": rule.id, "title": _(rule.title)} for rule in _rules(feeds.rules)],
        "items": [{"concept": concept, "words": words} for concept, words in _items(feeds.items, on)],
        "sheets": list(feeds.sheets),
        "measures": list(feeds.measures),
    }


def rule_page(rule: Rule) -> str:
    """A rule explained in plain words, with what it leaves out and the words of the law it rests on."""
    page = _other_page().sub(_by_title, rule.page)
    return "\n\n".join([_(rule.title), page, "\n".join(_about(rule)), *law_words(rule.authority)])


def _other_page() -> re.Pattern[str]:
    """Where a page names another one, with the words before the name in the reader's language."""
    before = "|".join(map(re.escape, (_("The page"), _("the page"), _("rule"))))
    return re.compile(rf"\b(?:({before}) )?([a-z]\w*\.[a-z]\w*)")


def _by_title(found: re.Match[str]) -> str:
    """Another page, named in a page: by its title, and by the command that shows it."""
    other = named_rule(found[2])
    if other is None:
        return found[0]
    words = (
        _("The page “{title}” ({command})")
        if found[1] == _("The page")
        else _("the page “{title}” ({command})")
    )
    return words.format(title=_(other.title), command=command("why", other.id))


def rule_data(rule: Rule) -> dict[str, object]:
    """The same for programs."""
    return {
        "kind": "rule",
        "id": rule.id,
        "formerly": list(formerly(Named.RULE, rule.id)),
        "title": _(rule.title),
        "statement": rule.statement,
        "page": rule.page,
        "authority": list(rule.authority),
        "sources": [source_data(one) for one in rule.sources],
        "certainty": rule.certainty,
        "checked_on": rule.checked_on,
        "since": rule.since,
        "until": rule.until,
        "not_modelled": _(rule.not_modelled),
    }


def in_this_case(case: Case, found: Sequence[Finding], on: date) -> str:
    """What a rule says of a case as it stands on the day `on`: its findings, each with its answers."""
    head = _("IN THIS CASE, worked out for {date}").format(date=spell_date(on))
    if not found:
        silent = _(
            "The rule says nothing here. It may not apply, or all may be well, or it may wait for an answer "
            "that is still missing."
        )
        return f"{head}\n\n{silent}"
    return "\n\n".join([head, *("\n".join([finding_words(one), *_rests_on(case, one)]) for one in found)])


def _rests_on(case: Case, one: Finding) -> Iterator[str]:
    behind = [(key, asking_anything(key, case)) for key in dict.fromkeys(one.facts)]
    told = [(asked, case.fact(key)) for key, asked in behind if asked]
    if told:
        yield "    " + _("It rests on these answers:")
    yield from (f"      - {asked.ask} {echo(asked, value)}" for asked, value in told)


def _about(rule: Rule) -> Iterator[str]:
    yield _how_sure(rule.certainty)
    if rule.until:
        yield _("In force from {since} to {until}").format(
            since=short_date(rule.since), until=short_date(rule.until)
        )
    else:
        yield _("In force since {since} or earlier").format(since=short_date(rule.since))
    yield _("Last checked on {day}").format(day=short_date(rule.checked_on))
    if rule.not_modelled:
        words = _other_page().sub(_by_title, _(rule.not_modelled))
        yield _("What we do not check: {words}").format(words=words)


def _how_sure(certainty: Certainty) -> str:
    return {
        Certainty.STATUTE: _("We have read these words in the law itself."),
        Certainty.COURT: _("We have read this in a court rule, in a ruling, or on a court's own page."),
        Certainty.SECONDARY: _(
            "We have only read about this, and have not confirmed it in the law itself. Ask the self-help "
            "center."
        ),
        Certainty.UNCONFIRMED: _("We have not confirmed this in the law itself. Ask the self-help center."),
    }[certainty]


def _feeds(asked: Asked, on: date) -> Iterator[str]:
    rules = list(_rules(asked.question.feeds.rules))
    if rules:
        more = _("More: {command}")
        lines = (f"  - {_(rule.title)}. {more.format(command=command('why', rule.id))}" for rule in rules)
        yield "\n".join([_("With your answer, we check:"), *lines])
    items = dict.fromkeys(words for _concept, words in _items(asked.question.feeds.items, on))
    if items:
        yield "\n".join([_("Your answer goes here on the petition:"), *(f"  - {words}" for words in items)])
    sheets = asked.question.feeds.sheets
    if sheets:
        yield "\n".join([_("Your answer also goes here:"), *(f"  - {_sheet(name)}" for name in sheets)])
    measures = asked.question.feeds.measures
    if measures:
        yield "\n".join(
            [_("With your answer, we work out:"), *(f"  - {measure_words()[name]}" for name in measures)]
        )


def _sheet(name: str) -> str:
    ours = {
        "hand-off": _("the sheet for a lawyer or helper"),
        "schedule": _("your own list of what you own and owe"),
    }
    return ours.get(name) or _("form {form}").format(form=name)


def measure_words() -> dict[str, str]:
    """What is worked out from answers, in words, by its name in the questions."""
    return {
        "character": _("whose it may be, and why"),
        "sums": _("the sums of what you own and owe"),
        "child_support": _("a private picture of child support"),
        "spousal_support": _("a private picture of support for a spouse"),
        "estimates.house": _("the shares in a house from before the wedding"),
        "estimates.pension": _("the part of a pension that is from the marriage"),
        "estimates.options": _("the part of stock options that is from the marriage"),
        "estimates.after_separation": _("what may be paid back for the time since you parted"),
    }


def _rules(ids: tuple[str, ...]) -> Iterator[Rule]:
    return filter(None, map(named_rule, ids))


def _items(concepts: tuple[str, ...], on: date) -> Iterator[tuple[str, str]]:
    edition = _edition(on)
    for concept in concepts:
        item = edition and next((one for one in edition.items if one.concept == concept), None)
        if item:
            yield concept, f"{_place(item)}: {item.words}"


def _place(item: Item) -> str:
    number = item.item or ""
    if number[:1].isdigit():
        return _("item {item}").format(item=number)
    return _("page {page}, {part}").format(page=item.page, part=number)


def _edition(on: date) -> Edition | None:
    try:
        return edition_for("FL-100", on)
    except NoEditionError:
        return None
