"""The report as a page: private, quiet, accessible, and without a network."""

from __future__ import annotations

import itertools
import re
from html.parser import HTMLParser
from pathlib import Path
from typing import Any, get_args

import pytest
from made_scores import NONE, TEXT, make_score, make_worry

import journal.reports
from journal.records import Flag, Function, Reasoning, Score, Source
from journal.reports.page import render_report

TEMPLATES = Path(journal.reports.__file__).parent / "templates"
STYLE = (TEMPLATES / "report.css").read_text(encoding="utf-8")
VOID = {"meta", "br", "link", "img", "hr", "input"}
IDEA = Flag("idea_to_check", 0, 6, "a half", "shrink", None, "“a half”")
HELP = Flag("help", 0, 6, "a half", None, None, "“a half”")


class Reader(HTMLParser):
    """Reads a page the strict way: every tag is closed in its turn."""

    def __init__(self, page: str) -> None:
        super().__init__()
        self.open: list[str] = []
        self.tags: list[tuple[str, dict[str, str | None]]] = []
        self.words: list[str] = []
        self.feed(page)
        assert self.open == []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append((tag, dict(attrs)))
        if tag not in VOID:
            self.open.append(tag)

    def handle_endtag(self, tag: str) -> None:
        assert self.open.pop() == tag

    def handle_data(self, data: str) -> None:
        if "style" not in self.open:
            self.words.append(data)

    def all(self, tag: str) -> list[dict[str, str | None]]:
        return [attrs for name, attrs in self.tags if name == tag]


def render(*scores: Score, **extra: Any) -> str:
    return render_report(scores, title="Fractions", ideas={"shrink": "Halves shrink."}, **extra)


@pytest.fixture(scope="module")
def page() -> str:
    return render(
        make_score("1", "Zoë"),
        make_score("2", "Ava", flags=(IDEA, HELP)),
        make_score("3", "ben", text="", scored=False, not_scored_because="empty", spelling=(),
                   vocabulary=(), informal=(), markers=(), reasons=(), claims=(), flags=(),
                   reasoning=Reasoning(None, None, "rules", None, ()), metacognition=NONE),
        make_worry(),
        left_out=2,
    )  # fmt: skip


@pytest.fixture(scope="module")
def read(page: str) -> Reader:
    return Reader(page)


def _part(page: str, name: str) -> str:
    return page[page.index(f'<section id="{name}"') :].split('<section id="', 2)[1]


def test_nothing_is_fetched_and_nothing_runs(page: str, read: Reader) -> None:
    assert not {"script", "link", "img", "iframe", "object", "form"} & {t for t, _ in read.tags}
    assert not re.search(r"https?:|//|url\(|@import", page.replace("<!DOCTYPE html>", ""))
    policies = [m["content"] for m in read.all("meta") if "http-equiv" in m]
    assert policies == ["default-src 'none'; style-src 'unsafe-inline'"]


def test_every_link_leads_to_a_place_on_the_page(read: Reader) -> None:
    ids = [attrs["id"] for _, attrs in read.tags if "id" in attrs]
    assert len(ids) == len(set(ids))
    for link in read.all("a"):
        assert (link["href"] or "").removeprefix("#") in ids


def test_headings_never_skip_a_level(read: Reader) -> None:
    levels = [int(tag[1]) for tag, _ in read.tags if re.fullmatch("h[1-6]", tag)]
    assert levels[0] == 1
    assert levels.count(1) == 1
    assert all(after - before <= 1 for before, after in itertools.pairwise(levels))


def test_the_page_has_its_landmarks_and_its_language(read: Reader) -> None:
    for tag in ("header", "nav", "main", "footer"):
        assert len(read.all(tag)) == 1
    assert read.all("html") == [{"lang": "en-GB"}]


def test_every_table_has_a_caption_and_every_heading_cell_a_scope(read: Reader) -> None:
    assert len(read.all("table")) == len(read.all("caption")) > 0
    assert all(cell["scope"] in ("col", "row") for cell in read.all("th"))


# Relative luminance and contrast ratio: WCAG 2.2, definitions; 4.5 is success criterion 1.4.3.
def _luminance(colour: str) -> float:
    parts = [int(colour[i : i + 2], 16) / 255 for i in (1, 3, 5)]
    red, green, blue = (p / 12.92 if p <= 0.04045 else ((p + 0.055) / 1.055) ** 2.4 for p in parts)
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def test_contrast_is_worked_out_as_the_standard_has_it() -> None:
    ratio = (_luminance("#ffffff") + 0.05) / (_luminance("#000000") + 0.05)
    assert ratio == pytest.approx(21)


@pytest.mark.parametrize("ink", ["ink", "soft", "pencil"])
def test_words_stand_out_from_the_paper(ink: str) -> None:
    colours = dict(re.findall(r"--(\w+): (#[0-9a-f]{6})", STYLE))
    ratio = (_luminance(colours["paper"]) + 0.05) / (_luminance(colours[ink]) + 0.05)
    assert ratio >= 4.5


def test_only_the_four_inks_are_used() -> None:
    assert set(re.findall(r"#[0-9a-fA-F]{3,6}\b", STYLE)) <= {
        "#fdfcf8", "#1f1e1b", "#5a574f", "#d9d4c7", "#0b5566", "#fff",
    }  # fmt: skip


def _line_of(kind: str) -> str:
    rules = re.findall(rf"^(?:\.\w+, )*\.{kind}(?:, \.\w+)* {{ (.*) }}$", STYLE, re.MULTILINE)
    assert rules, kind
    line = " ".join(rules)
    return " ".join(re.findall(r"(?:style|line|image|size|thickness): [^;]+", line))


def test_each_kind_of_evidence_has_its_own_line_in_any_colour() -> None:
    kinds = ["vocabulary", *get_args(Function)]
    lines = {kind: _line_of(kind) for kind in kinds}
    assert lines["reason"] == lines["result"]
    assert "double" in lines["reason"]
    assert len(set(lines.values())) == len(kinds) - 1


@pytest.mark.parametrize("function", sorted(set(get_args(Function)) - {"reason", "result"}))
def test_the_other_kinds_have_a_small_word_beside_them(function: str) -> None:
    marker = make_score().markers[0]
    from dataclasses import replace

    page = render(make_score(markers=(replace(marker, function=function),), reasons=()))
    assert (
        f'<span class="m {function}">bigger then</span><small class="beside">{function}</small>'
        in page
    )


def test_the_childs_words_are_there_character_for_character() -> None:
    page = render(make_score(markers=(), vocabulary=(), informal=(), reasons=(), claims=(),
                             flags=()))  # fmt: skip
    assert f'<blockquote dir="auto">{TEXT}</blockquote>' in page


def test_words_of_a_file_never_become_markup() -> None:
    nasty = '<script>alert("x")</script><img src=x onerror=y>&amp;'
    flag = Flag("help", 0, len(nasty), nasty, None, None, nasty)
    page = render(make_score(nasty, nasty, text=nasty, spelling=(), vocabulary=(), informal=(),
                             markers=(), reasons=(), claims=(), flags=(flag,), targets=(nasty,),
                             source=Source(pupil=nasty, unit=nasty, lesson=nasty, date=nasty,
                                           prompt=nasty)))  # fmt: skip
    read = Reader(page)
    assert not read.all("script")
    assert not read.all("img")
    assert nasty in "".join(read.words)


def test_an_entry_with_a_worry_is_only_counted(page: str) -> None:
    assert "1 entry to read first" in page
    assert "journal explain" in page
    assert "feel safe" not in page
    assert "Wren" not in page
    assert "3 entries by 3 pupils" in page


def test_rows_left_out_are_counted(page: str) -> None:
    assert "2 rows of the file could not be read" in page


def test_beside_every_level_stands_that_it_is_not_checked(page: str) -> None:
    levels = re.findall(r'<p class="level">(?!<b>Not scored).*?</p>', page, re.DOTALL)
    assert len(levels) == 4
    for level in levels:
        assert re.search(r"\(level \d, not yet checked against your school’s judgements\)", level)


def test_a_level_is_words_and_rule_first_and_a_number_second(page: str) -> None:
    assert '<b>Reasoning</b> a reason, not yet linked: A3a <span class="number">(level 2' in page


def test_pupils_stand_in_the_alphabets_order_whatever_the_files(page: str) -> None:
    rows = re.findall(r'<th scope="row">(.*?)</th>', _part(page, "pupils"))
    assert rows == ["Ava", "ben", "Zoë"]


def test_nothing_is_said_of_levels_by_pupil(page: str) -> None:
    table = _part(page, "pupils").split("<table", 1)[1]
    assert "level" not in table
    assert not re.search(r"<td>\d+</td>", table)


def test_the_word_table_tells_who_and_which_informal_forms(page: str) -> None:
    words = _part(page, "words")
    assert '<th scope="row">half</th><td>Ava, Zoë</td><td>nobody yet</td>' in words
    assert "“bottom number” (Ava, Zoë)" in words
    assert '<th scope="row">third</th><td>nobody yet</td>' in words


def test_ideas_are_grouped_in_a_teachers_words(page: str) -> None:
    first = _part(page, "first")
    assert first.index("Halves shrink.") < first.index("Calculations that do not come out")
    assert '<span class="computed">= 56</span>' in first


def test_calls_for_help_stand_before_ideas(page: str) -> None:
    first = _part(page, "first")
    assert first.index("Asked for help") < first.index("Ideas to check")


def test_an_entry_without_a_level_says_why(page: str) -> None:
    assert "<b>Not scored:</b> nothing written." in page
    assert "No level is not a low level." in page


def test_a_wrong_calculation_gets_its_value_and_no_cross(page: str) -> None:
    assert re.search(r'class="claim">.*?<span>= 56</span>', page, re.DOTALL)
    assert not re.search("[✗✘❌×✓✔★]", page)


def test_look_alikes_are_shown_only_on_request(page: str) -> None:
    assert '<span class="m certainty">is smaller' not in page
    details = page[page.index('<details class="look-alikes">') :].split("</details>", maxsplit=1)[0]
    assert "“is smaller” is another use" in details


def test_every_caution_is_on_the_page(page: str) -> None:
    cautions = page.split('<ol class="cautions">')[1].split("</ol>", maxsplit=1)[0]
    for word in ("Safeguarding", "understands", "too short", "eight entries", "same lesson",
                 "suggestion", "ranking", "version of the rubric", "new to English"):  # fmt: skip
        assert word in cautions


@pytest.mark.parametrize("verdict", ["weak", "poor", "fail", "excellent", "best", "bottom set"])
def test_no_word_on_the_page_is_a_verdict(verdict: str, page: str) -> None:
    words = " ".join(Reader(page).words).casefold()
    assert not re.search(rf"\b{verdict}\b", words)


def test_a_page_without_entries_is_still_a_page() -> None:
    Reader(render(make_worry()))
