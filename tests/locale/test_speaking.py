"""A language is a context: what is said inside it is said in it, and nothing made there is kept."""

from datetime import date
from pathlib import Path
from threading import Thread

import pytest

from firstpaper.counting import short_date, spell_date
from firstpaper.errors import UserError
from firstpaper.locale import _, _c, _n, by_paragraph, catalogs, language, offered, speak, speaking, tag
from firstpaper.locale.po import compiled, messages

PART = r"""
msgid ""
msgstr ""
"Language: xx-US\n"
"Content-Type: text/plain; charset=UTF-8\n"
"Plural-Forms: nplurals=2; plural=(n != 1);\n"

#. A full month.
msgid "May"
msgstr "mayo"

msgctxt "short"
msgid "May"
msgstr "may"

msgid "{weekday}, {month} {day}, {year}"
msgstr "{weekday} {day} de {month} de {year}"

msgid "{count} \"day\""
msgid_plural "{count} \"days\""
msgstr[0] "{count} «día»"
msgstr[1] ""
"{count} "
"«días»\n"

msgid "Something went wrong, and nothing was changed. Please try again."
msgstr "Algo salió mal."

#, fuzzy
msgid "June"
msgstr "julio"
"""


@pytest.fixture(autouse=True)
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A language of one part, of which one message was never made sure of."""
    (tmp_path / "xx").mkdir()
    (tmp_path / "xx/part.po").write_text(PART, "utf-8")
    monkeypatch.setattr(catalogs, "FOLDER", tmp_path)
    catalogs.catalog.cache_clear()
    offered.cache_clear()
    yield tmp_path
    catalogs.catalog.cache_clear()
    offered.cache_clear()


def test_a_language_holds_inside_its_block_alone() -> None:
    assert _("May") == "May"
    with speaking("xx"):
        assert (_("May"), _c("short", "May"), tag()) == ("mayo", "may", "xx-US")
        with speaking("en"):
            assert (_("May"), tag()) == ("May", "en-US")
        assert _("May") == "mayo"
    assert (_("May"), language()) == ("May", "en")


def test_another_thread_speaks_its_own_language() -> None:
    heard = []
    with speaking("xx"):
        thread = Thread(target=lambda: heard.append(_("May")))
        thread.start()
        thread.join()
    assert heard == ["May"]


def test_dates_and_errors_are_said_in_the_language_in_which_they_are_shown() -> None:
    error = UserError()
    with speaking("xx"):
        assert spell_date(date(2026, 5, 4)) == "Monday 4 de mayo de 2026"
        assert short_date(date(2026, 5, 4)) == "Mon, may 4, 2026"
        assert error.message == "Algo salió mal."
    assert error.message.startswith("Something went wrong")


def test_a_number_has_its_own_form_and_words_their_marks() -> None:
    with speaking("xx"):
        assert _n('{count} "day"', '{count} "days"', 1) == "{count} «día»"
        assert _n('{count} "day"', '{count} "days"', 3) == "{count} «días»\n"


def test_what_is_not_sure_is_said_in_english() -> None:
    with speaking("xx"):
        assert _("June") == "June"


def test_a_text_is_a_message_a_paragraph() -> None:
    with speaking("xx"):
        assert by_paragraph("May\n\nMay\nhas days") == "mayo\n\nMay has days"


def test_a_language_with_a_hole_is_not_offered(folder: Path) -> None:
    assert offered() == ("en",)
    part = folder / "xx/part.po"
    part.write_text(part.read_text("utf-8").replace("#, fuzzy\n", ""), "utf-8")
    offered.cache_clear()
    assert offered() == ("en", "xx")
    part.write_text(part.read_text("utf-8").replace("julio", ""), "utf-8")
    offered.cache_clear()
    assert offered() == ("en",)


def test_a_compiled_catalog_is_whole_and_says_the_same(folder: Path) -> None:
    parts = catalogs.catalog_parts("xx")
    (folder / "xx/firstpaper.mo").write_bytes(compiled(messages(parts)))
    (folder / "xx/part.po").unlink()
    assert offered() == ("en", "xx")
    with speaking("xx"):
        assert (_c("short", "May"), _n('{count} "day"', '{count} "days"', 1)) == ("may", "{count} «día»")


@pytest.mark.parametrize("name", ["../xx", "zz", "", "xx/../xx", "."])
def test_a_name_that_is_no_language_of_ours_speaks_english(name: str) -> None:
    with speaking(name):
        assert (_("May"), tag()) == ("May", "en-US")


def test_a_language_can_be_spoken_from_here_on() -> None:
    def inside() -> str:
        speak("xx")
        return _("May")

    with speaking("en"):
        assert inside() == "mayo"
