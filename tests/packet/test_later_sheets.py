"""The sheets for the dates, the children's homes, the service and the disclosure stage."""

from collections.abc import Callable, Iterator
from datetime import date
from io import BytesIO

import page as page_validation
import pdfplumber
import pytest

from firstpaper.facts import Case, Day
from firstpaper.facts.children import Home
from firstpaper.facts.people import Address
from firstpaper.facts.schedule import Asset, Debt
from firstpaper.packet.brief import Brief, brief
from firstpaper.packet.drawing import drawn
from firstpaper.packet.paper import markup_errors
from firstpaper.packet.screen import screen
from firstpaper.packet.templates import render
from firstpaper.packet.views import (
    after,
    child_homes,
    dates_ahead,
    dates_at_a_glance,
    disclosure,
    road,
    service,
)
from firstpaper.packet.views.sheet import Sheet
from tests.each import one_by_one
from tests.households.golden import blocks, households
from tests.packet.drawn import household
from tests.packet.read_back import words_of

D = Day.parse
ON = date(2026, 11, 25)
VIEWS: tuple[Callable[[Brief], Iterator[Sheet]], ...] = (
    dates_at_a_glance.before_the_filing,
    dates_at_a_glance.since_the_filing,
    child_homes.sheets,
    service.sheets,
    disclosure.sheets,
)


def case(name: str = "plain-childless-divorce", **changed: object) -> Case:
    told = household(name).case
    for key, value in {k.replace("__", "."): v for k, v in changed.items()}.items():
        told = told.with_fact(key, value)
    return told


def shown(view: Callable[[Brief], Iterator[Sheet]], told: Case, on: date = ON) -> tuple[Sheet, ...]:
    return tuple(view(brief(told, on)))


def words(sheets: tuple[Sheet, ...]) -> str:
    return " ".join(words_of(sheets, ON))


def of(template: str, told: Case, on: date = ON) -> str:
    """The words of one sheet of the service kit."""
    return words(tuple(sheet for sheet in shown(service.sheets, told, on) if sheet.template == template))


@one_by_one(households())
def test_all_of_them_are_in_the_markup_and_conform_to_pdf_ua_1(one: object) -> None:
    whole = brief(one.case, one.on)  # type: ignore[attr-defined]
    sheets = tuple(sheet for view in VIEWS for sheet in view(whole))
    for sheet in sheets:
        assert markup_errors(render(sheet.template, sheet.values)) == [], sheet.title
    report = page_validation.validate_pdf_bytes(drawn(sheets, "Sheets", ON), profile="ua1")
    assert [(fault.rule_id, fault.message) for fault in report.failures] == []


# --- the dates at a glance ---------------------------------------------------------------------


def test_a_case_whose_days_raise_no_question_has_no_sheet_of_dates() -> None:
    assert shown(dates_at_a_glance.before_the_filing, case()) == ()
    assert shown(dates_at_a_glance.since_the_filing, case()) == ()


@pytest.mark.parametrize(
    ("name", "pictures"),
    [("two-children-moved-county", {"residence", "timeline"}), ("nullity-for-force", {"timeline"})],
)
def test_the_dates_are_shown_where_there_is_something_to_see(name: str, pictures: set[str]) -> None:
    (sheet,) = shown(dates_at_a_glance.before_the_filing, case(name))
    assert set(sheet.pictures) == pictures


def test_recorded_events_are_something_to_see() -> None:
    (sheet,) = shown(dates_at_a_glance.since_the_filing, case(record__filed_on=D("2026-11-20")))
    assert set(sheet.pictures) == {"timeline"}
    assert "be done by the first" in words((sheet,))


def test_the_screen_shows_the_pictures_with_their_words() -> None:
    html = screen("Sheets", shown(dates_at_a_glance.before_the_filing, case("two-children-moved-county")))
    assert html.count('<svg class="picture" role="img" aria-label="This picture shows') == 2
    assert "<figure name=" not in html


# --- the children's homes ----------------------------------------------------------------------


def test_each_child_with_homes_has_a_picture() -> None:
    home = Home(start=D("2020-01-01"), place="Delano", state="CA")
    told = case("two-children-moved-county", uccjea__now=True, child__1__homes=(home,))
    (sheet,) = shown(child_homes.sheets, told.with_fact("child.2.same_homes", True))
    assert set(sheet.pictures) == {"child-1"}  # the same homes, one strip
    assert shown(child_homes.sheets, case("two-children-moved-county")) == ()


# --- the service kit ---------------------------------------------------------------------------


def test_the_kit_is_a_page_for_the_filer_two_to_give_away_and_two_forms() -> None:
    assert [sheet.template for sheet in shown(service.sheets, case())] == [
        "service.html",
        "service-server.html",
        "service-log.html",
        "worksheet.html",
        "worksheet.html",
    ]


@pytest.mark.parametrize(
    "changed",
    [{"record__joint": True, "record__filed_on": D("2026-11-20")}, {"record__appeared_on": D("2026-11-20")}],
)
def test_no_kit_where_nothing_is_to_be_served(changed: dict[str, object]) -> None:
    assert shown(service.sheets, case(**changed)) == ()


def test_no_kit_while_one_petition_for_both_is_open_and_nothing_is_filed() -> None:
    # Fam. Code 2331(b): a joint petition is not served
    both = case("both-file-together")
    assert shown(service.sheets, both) == ()
    alone = both.with_fact("record.filed_on", D("2026-11-20")).with_fact("record.joint", False)
    assert shown(service.sheets, alone)[0].template == "service.html"


SERVED = {
    "record__filed_on": D("2026-11-02"),
    "record__service__method": "personal",
    "record__service__served_on": D("2026-11-10"),
}


def test_once_the_papers_are_served_only_the_proof_is_left() -> None:
    # Code Civ. Proc. 417.30
    assert [sheet.title for sheet in shown(service.sheets, case(**SERVED))] == ["Worksheet for FL-115"]
    proved = case(**SERVED, record__service__proof_filed_on=D("2026-11-12"))
    assert shown(service.sheets, proved) == ()


def test_an_amended_petition_is_served_anew_and_nothing_of_the_first_service_is_filled_in() -> None:
    # Code Civ. Proc. 471.5(a), 1010; Cal. Rules of Court, rule 5.74(a)(2)
    proved = {**SERVED, "record__service__proof_filed_on": D("2026-11-12")}
    again = case(**proved, matter__amended=True, matter__case_number="26FL00001")
    assert [sheet.template for sheet in shown(service.sheets, again)][:3] == [
        "service.html",
        "service-server.html",
        "service-log.html",
    ]
    assert "FL-100 marked “amended”, a copy" in of("service-server.html", again)
    assert "11/10/2026" not in words(shown(service.sheets, again))
    done = again.with_fact("record.amended_on", D("2026-11-16")).with_fact(
        "record.amended_served_on", D("2026-11-20")
    )
    assert [sheet.title for sheet in shown(service.sheets, done)] == ["Worksheet for FL-115"]


def test_once_nobody_answered_in_time_the_first_page_names_the_default_and_the_proof_before_it() -> None:
    # Fam. Code 2020; Code Civ. Proc. 585, 587: served November 10, so the last day is December 10
    def first_page(told: Case, on: date) -> str:
        return words((after.sheet(brief(told, on), ()),))

    served = case(**SERVED)
    assert "FL-165" not in first_page(served, date(2026, 12, 10))
    assert "Once the proof is on file, you can ask for a default" in first_page(served, date(2026, 12, 11))
    proved = served.with_fact("record.service.proof_filed_on", D("2026-11-12"))
    assert "recorded. You can ask for a default (FL-165)" in first_page(proved, date(2026, 12, 11))
    asked = proved.with_fact("record.default_asked_on", D("2026-12-11"))
    assert "The time to answer is over" not in first_page(asked, date(2026, 12, 12))


AMENDED = {
    "matter__amended": True,
    "matter__case_number": "26FL00001",
    "matter__other_side_answered": True,
}


def test_an_amended_petition_goes_to_somebody_who_took_part_like_a_later_paper() -> None:
    # Code Civ. Proc. 471.5(a), 1013(a); Cal. Rules of Court, rules 5.66, 5.68(c), 5.74(c)(2)
    to_serve = case(**AMENDED)
    assert [sheet.template for sheet in shown(service.sheets, to_serve)] == [
        "service-later.html",
        "service-later-server.html",
    ]
    kit, given_away = (of(f"service-later{name}.html", to_serve) for name in ("", "-server"))
    for page in (kit, given_away):
        assert "FL-100 marked “amended”, a copy" in page
        assert "FL-120, blank" in page
        assert not any(form in page for form in ("FL-110", "FL-115", "FL-117"))
        assert "FL-335" in page
        assert "FL-330" in page
    assert "30 days from the day it was mailed" in kit
    assert "from California to California 5 days, from or to another state 10" in kit
    assert "there is no default on the amended petition" in kit
    assert "A response was on file before this petition" in kit
    assert "559-555-0134" not in given_away
    assert "418 Alder Court" not in given_away


def test_somebody_who_took_part_without_a_response_is_served_likewise_and_needs_no_permission() -> None:
    # Code Civ. Proc. 472(a): before the answer; 410.50(a): any general appearance
    appeared = case(
        **{**AMENDED, "matter__other_side_answered": False},
        record__filed_on=D("2026-11-02"),
        record__appeared_on=D("2026-11-14"),
    )
    kit = of("service-later.html", appeared)
    assert "no default" not in kit
    assert "A response was on file" not in kit


def test_a_first_petition_amended_in_its_own_file_puts_no_summons_into_the_envelope_either() -> None:
    answered = case(**SERVED, record__response_filed_on=D("2026-11-14"), record__amended_on=D("2026-11-20"))
    assert "FL-110" not in of("service-later-server.html", answered)


def test_the_address_of_somebody_in_danger_is_not_on_the_page_that_is_given_away() -> None:
    hidden = case("address-must-stay-hidden", **AMENDED)
    kit, given_away = (of(f"service-later{name}.html", hidden) for name in ("", "-server"))
    assert "The postmark can show" in kit
    assert "Your safety comes first" in kit
    assert "Your safety comes first" not in given_away


NEW = "at least 3 times"
OLD = "The law names no number of tries"
PHOTOGRAPH = "Take a photograph of the place each time"


@pytest.mark.parametrize(
    ("on", "old", "new"),
    [
        (date(2026, 3, 2), True, True),  # ten months before: it may be served after the change all the same
        (date(2026, 10, 30), True, True),
        (date(2026, 12, 31), True, True),
        (date(2027, 1, 1), False, True),
        (date(2027, 6, 1), False, True),
    ],
)
def test_the_server_reads_the_text_of_the_day_and_both_before_the_change(
    on: date, old: bool, new: bool
) -> None:
    # Code Civ. Proc. 415.20(b), 417.10, both texts (Stats. 2025, ch. 563), operative January 1, 2027
    told = of("service-server.html", case(), on)
    assert (OLD in told) is old
    assert (NEW in told) is new
    assert (PHOTOGRAPH in told) is new
    assert ("priority mail" in told) is new
    assert ("Before Friday, January 1, 2027" in told) is (old and new)


@pytest.mark.parametrize(
    ("served", "both"), [("2026-12-30", True), ("2027-01-01", False), ("2027-01-04", False)]
)
def test_the_day_of_service_decides_and_not_the_day_of_the_proof(served: str, both: bool) -> None:
    told = case(
        record__filed_on=D("2026-12-01"),
        record__service__method="substituted",  # left, and not mailed yet: the page is still needed
        record__service__served_on=D(served),
    )
    text = of("service-server.html", told, date(2027, 1, 10))
    assert (OLD in text) is both
    assert NEW in text


def test_the_new_edition_of_fl_115_is_announced_for_papers_that_may_be_served_later() -> None:
    def about(on: date) -> str:
        return " ".join(
            str(sheet.values["cautions"])
            for sheet in shown(service.sheets, case(), on)
            if "FL-115" in sheet.title
        )

    assert "New rules of proof apply from January 1, 2027." in about(date(2026, 11, 25))
    assert "New rules of proof apply from January 1, 2027." in about(date(2026, 10, 1))
    assert about(date(2026, 11, 25)).count("newest one from the court's website") == 1
    assert "“”" not in about(date(2026, 11, 25))


def test_the_pages_that_are_given_away_say_nothing_of_the_filers_danger_or_address() -> None:
    told = case("address-must-stay-hidden")
    given = of("service-server.html", told) + of("service-log.html", told)
    mailing = told.petitioner.mailing
    assert mailing.street not in given  # type: ignore[union-attr]
    for word in ("protective order", "hotline", "afraid", "violence", "Safe at Home"):
        assert word not in given
    assert "Do not tell anybody where the person who asked you lives" in given


@pytest.mark.parametrize("name", ["plain-childless-divorce", "amended-petition"])
def test_nothing_of_the_filers_begins_on_a_page_that_is_given_away(name: str) -> None:
    sheets = tuple(service.sheets(brief(case(name), ON)))
    with pdfplumber.open(BytesIO(drawn(sheets, "Title", ON))) as pdf:
        pages = [page.extract_text() for page in pdf.pages]
    given = [text for text in pages if "Log of service Page" in text]
    assert given
    assert not any("Worksheet for" in text for text in given)


def test_the_server_is_told_where_the_other_side_may_be() -> None:
    told = case(respondent__mailing=Address(street="4 Levee Street", city="Stockton", zip="95203"))
    assert "Last address we know: 4 Levee Street, Stockton, CA 95203" in of("service-server.html", told)
    unknown = told.with_fact("respondent.mailing", None)
    assert "Where, and good times:" in of("service-server.html", unknown)


def test_the_filers_own_address_is_never_told_to_the_server_while_it_is_kept_off() -> None:
    # Fam. Code 3429(a)
    told = case("address-must-stay-hidden")
    same = told.with_fact("respondent.mailing", told.petitioner.mailing)
    assert told.petitioner.mailing.street not in of("service-server.html", same)  # type: ignore[union-attr]


def test_photographs_are_asked_back_only_where_they_are_asked_for() -> None:
    # Code Civ. Proc. 417.10(a)(1), operative January 1, 2027; a day of 2025 lies before the act
    before = case(record__filed_on=D("2025-03-03"))
    for page in ("service-server.html", "service-log.html"):
        assert "hotograph" not in of(page, before, date(2025, 3, 10))
        assert "hotograph" in of(page, case(), date(2026, 10, 30))
    assert "Then the photographs go there too" in of("service.html", case())


def test_nobody_is_sent_to_pages_that_are_not_there_when_the_other_side_cannot_be_found() -> None:
    # Code Civ. Proc. 415.50; Cal. Rules of Court, rule 5.72
    told = case(people__special=("other_side_missing",))
    (page,) = shown(service.sheets, told)
    text = words((page,))
    for one in ("FL-980", "FL-982", "it is the proof of service"):
        assert one in text
    for other in ("the page and the log that follow", "Who may serve", "What goes into the envelope"):
        assert other not in text


@pytest.mark.parametrize("danger", [True, False])
def test_looking_for_somebody_dangerous_is_planned_first(danger: bool) -> None:
    told = case(people__special=("other_side_missing",), safety__dangers=("afraid",) if danger else ())
    assert ("Looking for somebody can show them where you are" in of("service.html", told)) is danger


def test_the_envelope_says_how_many_copies_of_one_form_go_along() -> None:
    assert "FL-105(A), a copy of all 4" in of("service-server.html", case("six-children-and-one-unborn"))


@pytest.mark.parametrize("intent", [True, False])
def test_notice_of_a_divorce_that_was_announced_may_go_by_mail(intent: bool) -> None:
    # Fam. Code 2321(b)
    told = case("amended-petition", matter__first_stated_intent=intent)
    assert ("may also go by mail" in of("service.html", told)) is intent


def test_papers_for_somebody_locked_up_go_there() -> None:
    # Pen. Code 4013(a)-(b)
    told = case("he-is-in-prison")
    mine, theirs = of("service.html", told), of("service-server.html", told)
    for page in (mine, theirs):
        assert "Litigation Coordinator" in page
        assert "Left with somebody" not in page
    assert "Prison or jail, and the number there:" in theirs
    assert "the door" not in of("service-log.html", told)


@pytest.mark.parametrize(
    ("lives", "offered"), [("california", False), ("other_state", True), ("abroad", False), (None, True)]
)
def test_mail_out_of_california_is_offered_only_where_it_may_fit(lives: str | None, offered: bool) -> None:
    # Code Civ. Proc. 415.40; Cal. Rules of Court, rule 5.68(a)(5)
    told = case(residence__respondent__lives=lives)
    assert ("Mail out of California" in of("service.html", told)) is offered
    assert ("To an address outside California" in of("service-server.html", told)) is offered
    assert ("Another country: do nothing yet" in of("service-server.html", told)) is (lives == "abroad")


def test_where_there_is_danger_the_sheriff_comes_first_and_children_only_where_there_are_any() -> None:
    afraid = of("service.html", case(safety__dangers=("violence",)))
    assert afraid.index("The sheriff.") < afraid.index("A friend or a relative, only if")
    assert "with the children" not in afraid
    assert "with the children" in of("service.html", case("address-must-stay-hidden"))
    calm = of("service.html", case())
    assert calm.index("A friend or a relative. It is free") < calm.index("The sheriff.")


def test_whoever_serves_is_not_told_why_a_paper_may_be_missing() -> None:
    told = case("separation-now-divorce-later")
    filers, server, *_rest = service.sheets(brief(told, ON))
    told_the_filer, told_the_server = (" ".join(words_of([one])) for one in (filers, server))
    assert "(Only if the child of just one of you goes on the petition)" in told_the_filer
    assert "FL-105, blank" in told_the_server
    assert "just one of you" not in told_the_server


def test_the_filer_who_told_of_danger_is_told_to_plan_the_day() -> None:
    afraid = of("service.html", case("address-must-stay-hidden"))
    assert "Plan it before you give the papers to anybody" in afraid
    assert "safe mailing address" in afraid
    assert "Your safety comes first" not in of("service.html", case())


def test_service_abroad_needs_help_first() -> None:
    assert "Get help before you send anything" in of(
        "service.html", case(residence__respondent__lives="abroad")
    )


def test_the_envelope_holds_what_the_other_side_gets_and_no_private_paper() -> None:
    told = of("service-server.html", case("two-children-moved-county"))
    for paper in ("FL-100, a copy", "FL-110, a copy", "FL-105, a copy", "FL-105, blank", "FL-120, blank"):
        assert paper in told
    assert "FW-001" not in told
    assert "FL-105" not in of("service-server.html", case())


# --- the disclosure stage ----------------------------------------------------------------------


def test_the_declaration_is_served_and_only_its_proof_is_filed() -> None:
    # Fam. Code 2104(b), (f): 60 days from November 25, 2026 are Sunday, January 24, 2027
    told = words(shown(disclosure.sheets, case()))
    for form in ("FL-140", "FL-141", "FL-142", "FL-150"):
        assert form in told
    assert told.count("File this one with the court.") == 1
    assert "Sunday, January 24, 2027" in told
    assert "Monday, January 25, 2027" in told


def test_the_tax_window_goes_by_the_day_of_serving() -> None:
    # Fam. Code 2104(a): filed within the two years before the day of service
    told = words(shown(disclosure.sheets, case()))
    assert "Wednesday, November 25, 2026 Monday, November 25, 2024" in told
    assert "Sunday, January 24, 2027 Friday, January 24, 2025" in told
    assert "The day you filed the return counts" in told


def test_what_was_told_to_be_there_is_asked_for_first() -> None:
    told = case("two-children-moved-county")
    (sheet,) = shown(disclosure.sheets, told)
    assert any("Cars" in line for line in sheet.values["told"])  # type: ignore[attr-defined]
    assert any("House" in line for line in sheet.values["others"])  # type: ignore[attr-defined]


def test_in_a_nullity_the_court_is_asked() -> None:
    # Fam. Code 2103 names a dissolution and a legal separation
    told = words(shown(disclosure.sheets, case("nullity-for-force")))
    assert "Ask the court first." in told
    assert "Serve it by" not in told
    assert "Returns filed on this day" not in told


def test_after_publication_nothing_is_owed_while_the_other_side_is_silent() -> None:
    # Fam. Code 2104(f), 2110
    told = case(record__filed_on=D("2026-11-02"), record__service__method="publication")
    assert "You owe no declaration while the other side stays silent" in words(shown(disclosure.sheets, told))


def test_it_goes_once_the_declaration_was_served() -> None:
    served = case(record__filed_on=D("2026-11-02"), record__disclosure_served_on=D("2026-11-20"))
    assert shown(disclosure.sheets, served) == ()


def test_the_filer_in_danger_is_warned_of_what_the_papers_show() -> None:
    warned = words(shown(disclosure.sheets, case("address-must-stay-hidden")))
    assert "can show where you live, work or bank" in warned
    assert "can show where you live" not in words(shown(disclosure.sheets, case()))


def test_the_papers_to_gather_are_named_thing_by_thing() -> None:
    listed = case().model_copy(
        update={
            "asset": (
                Asset(kind="vehicle", words="2018 minivan", last_four="4471", documents=("the pink slip",)),
                Asset(kind="retirement_account", how="earned", by="petitioner"),
                Asset(words="A box"),
            ),
            "debt": (Debt(kind="credit_card", words="Visa", last_four="2210"),),
        }
    )
    (sheet,) = shown(disclosure.sheets, listed)
    told = words((sheet,))
    assert "2018 minivan (car, boat or trailer), ending 4471" in told
    assert "the pink slip" not in told, "a private note, on a page that is served"
    assert "retirement account" in told
    assert "the plan's full name and address" in told
    assert "A box" in told
    assert "what shows that it is there" in told
    assert "Visa (credit card), ending 2210" in told
    assert "one from the day you parted" in told
    others = sheet.values["others"]
    assert not any("Cars:" in one or "Debts and cards" in one or "Pensions" in one for one in others)
    assert any("House or land" in one for one in others)


# --- places where the usual way does not fit ------------------------------------------------------------


def test_in_prison_nobody_leaves_papers_and_whoever_handed_them_over_signs() -> None:
    """Pen. Code 4013; Code Civ. Proc. 417.10(a): only who did it can swear to it."""
    told = case(people__special=("other_side_locked_up",))
    server, log, kit = (of(f"{page}.html", told) for page in ("service-server", "service-log", "service"))
    assert "into the prisoner's hands fills in and signs FL-115" in server
    assert "served as an individual" in server
    assert "By staff of the prison or jail" in log
    for words_of_another_place in ("Left with somebody", "second set", "nobody at home"):
        assert words_of_another_place not in log
    assert "Left with somebody" not in kit
    assert "Left with somebody" in of("service-log.html", case())


def test_in_another_country_no_number_and_no_officer_of_this_one_is_named() -> None:
    told = case(residence__respondent__lives="abroad")
    server, kit = of("service-server.html", told), of("service.html", told)
    assert "the emergency number where you are" in server
    assert "911" not in server
    assert "sheriff" not in kit
    assert "If you were asked to mail them" in server
    assert "Left with somebody" not in kit + of("service-log.html", told)
    assert "call 911" in of("service-server.html", case(residence__respondent__lives="other_state"))


def test_a_post_office_box_is_no_place_to_meet_anybody() -> None:
    """Code Civ. Proc. 415.20(b): a usual mailing address other than a post office box."""
    box = case(respondent__mailing=Address(street="PO Box 41", city="Ojai", zip="93023"))
    assert "Nobody can be met there: PO Box 41" in of("service-server.html", box)
    assert "Find out where the other side lives or works" in of("service.html", box)
    assert "Nobody can be met there" not in of("service-server.html", case())


MAILED_OUT = {
    "record__filed_on": Day(2026, 10, 26),
    "record__service__method": "out_of_state_mail",
    "record__service__mailed_on": Day(2026, 11, 2),
}


@pytest.mark.parametrize("proved", [False, True])
def test_a_mailing_out_of_the_state_is_done_only_with_its_receipt(proved: bool) -> None:
    """Code Civ. Proc. 415.40, 417.20(a)."""
    proof = {"record__service__proof_filed_on": Day(2026, 11, 20)} if proved else {}
    told = case(**MAILED_OUT, **proof)
    (ahead,) = shown(dates_ahead.sheets, told, date(2026, 11, 25))
    lines = list(blocks(render(ahead.template, ahead.values)))
    assert ("[x] Thursday, November 12, 2026: Service was complete" in lines) is proved
    waits = "[ ] Thursday, November 12, 2026: Service counts from this day, if the signed receipt comes back"
    assert (waits in lines) is not proved
    on_the_road = words(shown(road.sheets, told, date(2026, 11, 25)))
    assert ("if the signed receipt comes back" in on_the_road) is not proved
