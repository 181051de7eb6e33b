"""Citations are read as lawyers write them, and everything the program cites is there to be looked up.

The short names of codes are those of the California Style Manual (4th ed. 2000), sections 2:5 and 2:8, as
far as we know it, without the section sign; three-letter codes in addresses are those of the legislature's
site (from memory).
"""

import ast
import re
from collections.abc import Iterator
from contextlib import suppress
from functools import cache
from pathlib import Path
from typing import Any

import pytest
import yaml

import firstpaper
from firstpaper.law.authority import weakest
from firstpaper.law.citation import CitationError, Reference, references
from firstpaper.law.figure import all_figures
from firstpaper.law.register import all_rules
from firstpaper.law.source import all_codes, all_sources, cited

SOURCE = Path(firstpaper.__file__).parent
TEMPLATES = SOURCE.parents[1] / "templates"
FAM, RULES = "Fam. Code", "Cal. Rules of Court, rule"
SMALL = re.compile(r"<small>([^<{]+)</small>")
OF_A_CODE = re.compile(
    r"(?:[A-Z][a-z]+\. |& )*Code |Code Civ\. Proc\. |Cal\. Rules|[0-9]+ U\.S\.C\. |In re |Common practice"
)


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ("Fam. Code 2320", [Reference(FAM, "2320")]),
        ("Fam. Code 2320(b)(2)", [Reference(FAM, "2320", None, "(b)(2)")]),
        (
            "Fam. Code 2211(a)(1), (d)",
            [Reference(FAM, "2211", None, "(a)(1)"), Reference(FAM, "2211", None, "(d)")],
        ),
        ("Fam. Code 850-852", [Reference(FAM, "850", "852")]),
        ("Fam. Code 299(a)-(c)", [Reference(FAM, "299", None, "(a)", "(c)")]),
        ("Fam. Code 299.2, 2330.1", [Reference(FAM, "299.2"), Reference(FAM, "2330.1")]),
        (
            "Fam. Code 2211(g) (Stats. 2025, ch. 633)",
            [Reference(FAM, "2211", None, "(g)", "", "Stats. 2025, ch. 633")],
        ),
        (
            "Fam. Code 70; Cal. Rules of Court, rule 5.52(a)",
            [Reference(FAM, "70"), Reference(RULES, "5.52", None, "(a)")],
        ),
        ("In re Brace (2020) 9 Cal.5th 903", [Reference("In re Brace (2020) 9 Cal.5th 903")]),
    ],
)
def test_a_citation_is_taken_apart(text: str, expected: list[Reference]) -> None:
    assert list(references(text, [FAM, RULES])) == expected


@pytest.mark.parametrize(
    "text", ["Fam. Code", "Fam. Code (a)", "Fam. Code 70 and 771", "Fam. Code 70, 771 ff.", "Fam. Code 70(a"]
)
def test_what_is_not_written_as_citations_are_is_refused(text: str) -> None:
    with pytest.raises(CitationError):
        cited(text)


@pytest.mark.parametrize(
    "text", ["Fam. Code 9999", "Fam. Code 2320(z)", "Family Code 2320", "Fam. Code 70 (Stats. 1999, ch. 1)"]
)
def test_what_our_authorities_do_not_have_is_refused(text: str) -> None:
    with pytest.raises(CitationError):
        cited(text)


def test_a_run_of_sections_and_a_run_of_paragraphs_take_in_what_lies_between() -> None:
    assert [one.source.cite for one in cited("Fam. Code 850-852")] == [
        "Fam. Code 850",
        "Fam. Code 851",
        "Fam. Code 852",
    ]
    (run,) = cited("Fam. Code 2330(b)(1)-(3)")
    assert [paragraph for paragraph, _words in run.quotes] == ["(b)(1)", "(b)(2)", "(b)(3)"]


@cache
def in_code() -> tuple[tuple[str, str], ...]:
    """Every text in the source that begins as a citation does. Docstrings are prose and left out."""
    return tuple(_in_code())


def _in_code() -> Iterator[tuple[str, str]]:
    for path in SOURCE.rglob("*.py"):
        tree = ast.parse(path.read_text("utf-8"))
        prose = {id(node.value) for node in ast.walk(tree) if isinstance(node, ast.Expr)}
        named = {id(each) for node in ast.walk(tree) for each in _cites(node)}
        texts = (node for node in ast.walk(tree) if isinstance(node, ast.Constant) and id(node) not in prose)
        for node in texts:
            if isinstance(node.value, str) and (id(node) in named or _cites_a_law(node.value)):
                yield f"{path.name}:{node.lineno}", node.value


def _cites_a_law(text: str) -> bool:
    """Whether a text begins as a citation does, and is no pattern to find one by."""
    return "\\" not in text and OF_A_CODE.match(text) is not None


def _cites(node: ast.AST) -> Iterator[ast.AST]:
    """What is given as a citation by the place it stands in: `cite=...`, and the rows of the tables."""
    if isinstance(node, ast.keyword) and node.arg == "cite":
        yield from ast.walk(node.value)
    if isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute) and node.func.attr == "row":
        yield from node.args


def in_data() -> Iterator[tuple[str, str]]:
    """The authority of every entry of every data file."""
    for name, shape in data():
        yield from ((name, text) for text in _authorities(shape))


@cache
def data() -> tuple[tuple[str, Any], ...]:
    """What every data file holds, by its name."""
    return tuple((path.name, _read(path.read_text("utf-8"))) for path in SOURCE.rglob("*.yaml"))


def _read(text: str) -> Any:
    return yaml.load(text, yaml.CSafeLoader if yaml.__with_libyaml__ else yaml.SafeLoader)


def _authorities(shape: Any) -> Iterator[str]:
    if isinstance(shape, dict):
        yield from ([shape["authority"]] if "authority" in shape else [])
        yield from (text for each in shape.values() for text in _authorities(each))
    elif isinstance(shape, list):
        yield from (text for each in shape for text in _authorities(each))


def in_templates() -> Iterator[tuple[str, str]]:
    for path in TEMPLATES.glob("*.html"):
        found = SMALL.findall(path.read_text("utf-8"))
        yield from ((path.name, text) for text in found if OF_A_CODE.match(text))


@pytest.mark.parametrize("find", [in_code, in_data, in_templates], ids=lambda one: one.__name__)
def test_everything_cited_is_there(find: Any) -> None:
    found = list(find())
    lost = []
    for place, text in found:
        try:
            cited(text)
        except CitationError as error:
            lost.append(f"{place}: {error}")

    assert len(found) > 20
    assert not lost, "\n".join(lost)


def test_every_rule_is_as_sure_as_its_weakest_source_and_as_fresh_as_its_oldest() -> None:
    for rule in all_rules().values():
        sources = [one.source for one in rule.sources]
        assert rule.certainty is weakest((rule.narrowed, *(one.certainty for one in sources))), rule.id
        assert rule.checked_on == min(one.checked_on for one in sources), rule.id


def test_no_figure_is_surer_than_its_sources() -> None:
    for value in (value for figure in all_figures() for value in figure.values):
        sources = weakest(one.source.certainty for one in cited(value.authority))
        assert weakest((sources, value.certainty)) is value.certainty, (value.name, value.since)


def test_a_law_is_cited_in_one_way_only() -> None:
    spelled = {re.sub(r"\W", "", source.cite).lower() for source in all_sources()}

    assert len(spelled) == len(all_sources())
    assert not [text for _place, text in in_code() if re.match(r"Cal\. Rules of Court [0-9]", text)]


ADDRESS_CODES = {
    "Fam. Code": "FAM",
    "Code Civ. Proc.": "CCP",
    "Gov. Code": "GOV",
    "Prob. Code": "PROB",
    "Welf. & Inst. Code": "WIC",
    "Civ. Code": "CIV",
    "Pen. Code": "PEN",
    "Lab. Code": "LAB",
    "Rev. & Tax. Code": "RTC",
}


def test_every_code_of_the_state_leads_to_its_official_text() -> None:
    codes = {code.cite: code for code in all_codes() if "leginfo" in code.address}

    assert codes.keys() == ADDRESS_CODES.keys()
    for cite, letters in ADDRESS_CODES.items():
        for section in codes[cite].entries:
            number = section.partition(" (")[0]
            assert codes[cite].source(section).address.endswith(f"lawCode={letters}&sectionNum={number}.")


def _every_citation() -> Iterator[str]:
    """All texts that cite, those of the explanations among them, which name several at once."""
    for find in (in_code, in_data, in_templates):
        yield from (text for _place, text in find())
    for _name, shape in data():
        yield from _listed(shape)


def _listed(shape: Any) -> Iterator[str]:
    if isinstance(shape, dict):
        for name, value in shape.items():
            if name in ("cites", "cite"):
                yield from [value] if isinstance(value, str) else value
            yield from _listed(value)
    elif isinstance(shape, list):
        for each in shape:
            yield from _listed(each)


def _cited(texts: Iterator[str]) -> Iterator[str]:
    for text in texts:
        with suppress(CitationError):  # the name of a code at the head of its file is no citation
            yield from (one.source.cite for one in cited(text))


def test_every_authority_is_cited_somewhere_and_an_opinion_may_be_named_in_a_sentence() -> None:
    used = set(_cited(_every_citation()))
    said = " ".join(" ".join(path.read_text("utf-8").split()) for path in SOURCE.rglob("*.py"))

    unused = [one.cite for one in all_sources() if one.cite not in used]
    assert [cite for cite in unused if not (" v. " in cite or "In re " in cite)] == []
    assert [cite for cite in unused if cite.partition(" (")[0] not in said] == []
