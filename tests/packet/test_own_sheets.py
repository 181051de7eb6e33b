"""A sheet that a clinic brings: what it can show, and that it can do nothing else."""

from datetime import date

import pytest

from firstpaper.facts import Case
from firstpaper.packet import Stage, build
from firstpaper.packet.own_sheets import DEEPEST, LONGEST, OwnSheetRefused, own_sheet
from tests.cli.every_command import everything_put_in
from tests.cli.person import facts_of

ON = date(2026, 11, 30)
LETTER = """<h1>From the Elm Street clinic</h1>
{# A remark that is not printed. #}
<p>Dear {{ petitioner }}, your {{ kind }} is ready to file in {{ county }} County.</p>
{% if stops %}
<p>First this:</p>
<ul>
{% for one in stops %}
<li>{{ one }}</li>
{% endfor %}
</ul>
{% else %}
<p>Nothing stops it.</p>
{% endif %}
"""


@pytest.fixture(scope="module")
def plain() -> Case:
    return facts_of("plain-childless-divorce")


def refused(text: str, case: Case) -> list[str]:
    with pytest.raises(OwnSheetRefused) as caught:
        own_sheet("letter.html", text, build(case, ON).brief)
    assert "letter.html" in caught.value.message
    return caught.value.faults


def test_a_letter_is_filled_in_and_stands_in_both_packets_and_on_the_checklist(plain: Case) -> None:
    packet = build(plain, ON, own={"letter.html": LETTER})
    assert "From the Elm Street clinic" in [sheet.title for sheet in packet.sheets]
    later = build(plain, ON, stages=[Stage.LATER], own={"letter.html": LETTER})
    assert later.sheets[-1].title == "From the Elm Street clinic"
    html = packet.html()
    assert "Dear Dana Marie Okafor, your divorce (dissolution) is ready to file in Fresno County." in html
    assert "Nothing stops it." in html
    assert "A remark that is not printed" not in html
    assert html.count("From the Elm Street clinic") >= 3
    assert packet.pdf().startswith(b"%PDF-")


def test_every_word_and_list_can_be_put_in_and_none_is_an_address(plain: Case) -> None:
    shown = str(
        own_sheet("all.html", "<h1>All</h1>" + everything_put_in(), build(plain, ON).brief).values["filled"]
    )
    assert "Dana Marie Okafor" in shown
    assert "November 30, 2026" in shown
    assert "FL-100" in shown
    for key in ("petitioner.mailing", "respondent.mailing", "court.address"):
        address = plain.fact(key)
        assert getattr(address, "street", "no street told") not in shown
    hidden = build(facts_of("address-must-stay-hidden"), ON)
    shown = str(own_sheet("all.html", "<h1>All</h1>" + everything_put_in(), hidden.brief).values["filled"])
    assert "Elena Markova" in shown
    assert "Box 1846" not in shown


def test_what_a_person_typed_is_words_in_it(plain: Case) -> None:
    case = plain.with_fact("petitioner.name", "<script>x</script> {{ 7*7 }} {% for")
    shown = str(own_sheet("letter.html", LETTER, build(case, ON).brief).values["filled"])
    assert "&lt;script&gt;x&lt;/script&gt; {{ 7*7 }} {% for" in shown


@pytest.mark.parametrize(
    "body",
    [
        "{{ petitioner.__class__.__mro__ }}",
        "{{ petitioner['x'] }}",
        "{{ petitioner | upper }}",
        "{{ petitioner.format(1) }}",
        "{{ ''.join(stops) }}",
        "{{ 'a' * 1000000000 }}",
        "{{ 10 ** 1000000 }}",
        "{{ 7 * 7 }}",
        "{{ [1] }}",
        "{{ stops }}",
        "{{ loop }}",
        "{{ self }}",
        "{{ cycler }}",
        "{{ range(1000000000) }}",
        "{% for one in range(1000000000) %}x{% endfor %}",
        "{% for one in stops %}{% for two in stops %}x{% endfor %}{% endfor %}",
        "{% for one in stops recursive %}x{% endfor %}",
        "{% for one in stops if one %}x{% endfor %}",
        "{% for one in stops %}x{% else %}y{% endfor %}",
        "{% for one, two in stops %}x{% endfor %}",
        "{% for one in petitioner %}x{% endfor %}",
        "{% if petitioner == 'x' %}y{% endif %}",
        "{% if petitioner is defined %}y{% endif %}",
        "{% if petitioner %}x{% elif respondent %}y{% endif %}",
        "{% set a = petitioner %}",
        "{% macro a() %}x{% endmacro %}",
        "{% block a %}x{% endblock %}",
        "{% filter upper %}x{% endfilter %}",
        "{% include 'cover.html' %}",
        "{% import 'cover.html' as a %}",
        "{% extends '../../etc/passwd' %}",
        "{% autoescape false %}{{ petitioner }}{% endautoescape %}",
        "{% with a = petitioner %}x{% endwith %}",
        "{{ address }}",
        "{{ case }}",
        "{{ brief }}",
    ],
)
def test_a_sheet_can_put_in_words_and_nothing_else(plain: Case, body: str) -> None:
    (fault, *_more) = refused(f"<h1>x</h1>\n<p>{body}</p>", plain)
    assert fault.startswith("Line 2:")


@pytest.mark.parametrize(
    "text",
    [
        "{% for",
        "{{ petitioner",
        "{{ " + "(" * 5000 + "petitioner" + ")" * 5000 + " }}",
        "{{ " + "9" * 10_000 + " }}",
        "{% if petitioner %}" * 900,
        "{% if petitioner %}" * (DEEPEST + 1) + "x" + "{% endif %}" * (DEEPEST + 1),
        "x" * (LONGEST + 1),
        "",
        "<p>No heading.</p>",
        "<h1>{{ case_number }}</h1>",
        "<h1>x</h1><script>alert(1)</script>",
        '<h1>x</h1><p onclick="x">y</p>',
        '<h1>x</h1><a href="https://example.org">y</a>',
        '<h1>x</h1><img src="file:///etc/passwd"/>',
        '<h1>x</h1><figure name="timeline"/>',
        "<h1>x</h1><!--><script>alert(1)</script>-->",
        "<h1>x</h1><?php x ?>",
        '<h1>x</h1><p class="{{ petitioner }}">y</p>',
    ],
    ids=lambda text: text[:40],
)
def test_a_sheet_that_is_a_trap_or_a_mistake_is_refused(plain: Case, text: str) -> None:
    case = plain.with_fact("petitioner.name", '"><script>')
    assert refused(text, case)


def test_a_long_list_cannot_blow_a_sheet_up(plain: Case) -> None:
    filler = "w" * (LONGEST - 200)
    text = f"<h1>x</h1><p>{{% for one in forms %}}{filler}{{% endfor %}}</p>"
    assert refused(text, plain) == ["Once filled in, it is too long."]


def test_what_is_obeyed_or_hidden_is_left_out(plain: Case) -> None:
    text = "\ufeff<h1>a\u202eb\x1b[2J</h1>\r\n<p>c\u200bd\x00</p>\r"
    shown = str(own_sheet("letter.html", text, build(plain, ON).brief).values["filled"])
    assert shown == "<h1>ab[2J</h1>\n<p>cd</p>\n" or shown == "<h1>ab[2J</h1>\n<p>cd</p>"


@pytest.mark.parametrize(
    "box", ["<tick/>", "<tick />", "<tick marked/>", "<tick marked />", '<tick marked=""/>']
)
def test_a_box_in_any_spelling_is_a_box_on_paper_and_on_a_screen(plain: Case, box: str) -> None:
    text = f'<h1>Ours</h1>\n<p>{box} One</p>\n<p>Name <line /> and <line width="30" /></p>'
    html = build(plain, ON, own={"ours.html": text}).html()
    ours = html[html.index("Ours</h2>") :].partition("</article>")[0]
    assert "<tick" not in ours
    assert "<line" not in ours
    assert ('class="tick marked"' in ours) == ("marked" in box)
    assert ours.count('class="line"') == 2
    assert 'style="width: 30%"' in ours
