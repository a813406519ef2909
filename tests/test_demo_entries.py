"""The invented class: what the demo and its README promise of it. All of it is invented."""

from __future__ import annotations

import csv
import re
from collections import Counter, defaultdict
from collections.abc import Callable
from datetime import date
from pathlib import Path
from statistics import mean

import pytest

from journal.lexicon.plan import Lesson, Plan, load_plan

FOLDER = Path(__file__).parent.parent / "demo_entries"
UNITS = ("fractions_y4", "multiplication_division_y4")
WORRIES = {"md04-p28", "md05-p15", "md07-p06"}
TERM = (date(2026, 9, 7), date(2026, 12, 18))
HALF_TERM = (date(2026, 10, 24), date(2026, 11, 1))
RULES = {"A1", "A2", "A3a", "A3b", "A4a", "A4b"} | {f"R{number}" for number in range(1, 20)}
NOT_JUDGED = {"R9", "R10"}

Row = dict[str, str]


def rows_of(name: str) -> list[Row]:
    with (FOLDER / name).open(encoding="utf-8", newline="") as file:
        return list(csv.DictReader(file))


ENTRIES = rows_of("entries.csv")
PUPILS = rows_of("pupils.csv")
JUDGED = rows_of("judged.csv")


def words_of(text: str) -> list[str]:
    """Lower-case words with the punctuation stripped; 3/4 is two words."""
    return re.findall(r"[^\W_]+", re.sub(r"['’]", "", text.lower()))


def texts_of(pupil: str) -> list[str]:
    return [row["text"] for row in ENTRIES if row["pupil"] == pupil]


PLANS: list[Plan] = [load_plan(FOLDER / "plans" / f"{unit}.yaml") for unit in UNITS]
LESSONS: dict[tuple[str, str], Lesson] = {
    (plan.unit, lesson.id): lesson for plan in PLANS for lesson in plan.lessons
}
BANKS = {key: lesson.word_bank for key, lesson in LESSONS.items()}


def test_the_class_has_28_pupils_each_with_a_code_and_a_first_name() -> None:
    assert [row["code"] for row in PUPILS] == [f"P{number:02d}" for number in range(1, 29)]
    assert len({row["name"] for row in PUPILS}) == 28
    assert all(re.fullmatch(r"\w+", row["name"]) and row["year"] == "4" for row in PUPILS)


def test_every_entry_is_by_a_pupil_of_the_class_and_every_pupil_wrote() -> None:
    assert {row["pupil"] for row in ENTRIES} == {row["code"] for row in PUPILS}


def test_entry_ids_are_unique() -> None:
    assert len({row["entry_id"] for row in ENTRIES}) == len(ENTRIES)


def test_there_are_450_to_540_entries() -> None:
    assert 450 <= len(ENTRIES) <= 540


def test_there_are_two_units_of_ten_lessons() -> None:
    taught = {(row["unit"], row["lesson"]) for row in ENTRIES}
    assert Counter(unit for unit, _ in taught) == dict.fromkeys(UNITS, 10)


def test_a_pupil_writes_at_most_once_a_lesson() -> None:
    written = Counter((row["pupil"], row["unit"], row["lesson"]) for row in ENTRIES)
    assert max(written.values()) == 1


def test_absences_differ_from_pupil_to_pupil() -> None:
    present = Counter(row["pupil"] for row in ENTRIES)
    assert max(present.values()) == 20
    assert min(present.values()) >= 12
    assert len(set(present.values())) >= 5


def test_dates_are_weekdays_of_the_autumn_term_outside_half_term() -> None:
    for row in ENTRIES:
        day = date.fromisoformat(row["date"])
        assert day.weekday() < 5, row["entry_id"]
        assert TERM[0] <= day <= TERM[1], row["entry_id"]
        assert not HALF_TERM[0] <= day <= HALF_TERM[1], row["entry_id"]


def test_the_second_unit_follows_the_first() -> None:
    first, second = ({row["date"] for row in ENTRIES if row["unit"] == unit} for unit in UNITS)
    assert len(first) == len(second) == 10
    assert max(first) < min(second)


def test_lessons_dates_and_prompts_are_those_of_the_plans() -> None:
    assert len(LESSONS) == 20
    for row in ENTRIES:
        lesson = LESSONS[row["unit"], row["lesson"]]
        assert (row["date"], row["prompt"]) == (lesson.date, lesson.prompt), row["entry_id"]


def test_no_run_of_six_words_stands_in_more_than_two_entries() -> None:
    found: defaultdict[tuple[str, ...], set[str]] = defaultdict(set)
    for row in ENTRIES:
        words = words_of(row["text"])
        for start in range(len(words) - 5):
            found[tuple(words[start : start + 6])].add(row["entry_id"])
    assert {" ".join(run): ids for run, ids in found.items() if len(ids) > 2} == {}


def test_hardly_any_run_of_six_words_is_shared_apart_from_copied_prompts() -> None:
    """Written by hand: what two pupils share by chance is a handful of everyday phrases."""
    found: defaultdict[tuple[str, ...], set[str]] = defaultdict(set)
    for row in ENTRIES:
        prompt = " ".join(words_of(row["prompt"]))
        words = words_of(row["text"])
        for start in range(len(words) - 5):
            if (run := " ".join(words[start : start + 6])) not in prompt:
                found[tuple(run.split())].add(row["entry_id"])
    assert sum(len(ids) > 1 for ids in found.values()) <= 5


def test_lengths_have_a_real_range_about_an_ordinary_mean() -> None:
    lengths = [len(row["text"].split()) for row in ENTRIES]
    assert 20 <= mean(lengths) <= 35
    assert min(lengths) == 1
    assert 80 <= max(lengths) <= 100
    assert sum(length <= 8 for length in lengths) >= 30
    assert sum(length >= 50 for length in lengths) >= 20


def test_two_pupils_are_scribed_and_one_dictates() -> None:
    by_mode: defaultdict[str, set[str]] = defaultdict(set)
    for row in ENTRIES:
        by_mode[row["mode"]].add(row["pupil"])
    assert (by_mode["scribed"], by_mode["dictated"]) == ({"P05", "P21"}, {"P10"})
    assert set(by_mode) == {"typed", "scribed", "dictated"}


def test_adult_prompts_stand_in_square_brackets_in_scribed_entries_only() -> None:
    for row in ENTRIES:
        assert ("[" in row["text"]) == (row["mode"] == "scribed"), row["entry_id"]


def _has(pattern: str) -> Callable[[Row], bool]:
    return lambda row: re.search(pattern, row["text"], re.IGNORECASE) is not None


def _copies_prompt(row: Row) -> bool:
    prompt = " ".join(words_of(row["prompt"]))
    return len(prompt) > 20 and prompt in " ".join(words_of(row["text"]))


def _pastes_word_bank(row: Row) -> bool:
    bank = BANKS[row["unit"], row["lesson"]]
    return len(bank) > 3 and row["text"].lower().startswith(", ".join(bank))


def _is_run_on(row: Row) -> bool:
    return len(row["text"].split()) >= 40 and not re.search(r"[.!?,;:]", row["text"])


def _is_all_lower_case(row: Row) -> bool:
    return len(row["text"].split()) >= 15 and row["text"] == row["text"].lower()


KINDS: dict[str, tuple[Callable[[Row], bool], int]] = {
    "one word": (lambda row: len(row["text"].split()) == 1, 2),
    "run-on without punctuation": (_is_run_on, 15),
    "all in small letters": (_is_all_lower_case, 40),
    "copied prompt": (_copies_prompt, 2),
    "pasted word bank": (_pastes_word_bank, 3),
    "feelings only": (
        _has(r"^(i loved today|today i felt really|i felt a bit worried|i was sad)"),
        4,
    ),
    "sound spelling": (_has(r"\b(fracshun|becoz|kworters?|haffs?|skwares?|cyoobs|wos|sed)\b"), 12),
    "f for th": (_has(r"\b(fink|fird|fing|tenf|anuvver|frees|fort)\b"), 8),
    "b and d swapped": (
        _has(r"\b(dottom|benominator|digger|numder|bivide|abb|bid|bib|anb|harb|dib|remainber)\b"),
        8,
    ),
    "letters left out": (_has(r"\b(becase|numbr|qarter|eqal|fractons?|thnk|mor|digts)\b"), 8),
    "another word of the same sound": (_has(r"\b(peaces?|hole|won|there was eight teen|buy)\b"), 8),
    "capitals in odd places": (_has(r"\b(?-i:Add|Half|Biger|Tenth|Hundredth|Remainder) "), 2),
    "article left out": (_has(r"\b(is down number|make eight part|take one seven)\b"), 2),
    "another verb form": (
        _has(r"\bI (am (make|understand|see|help|liking|colour)|don't can)\b"),
        4,
    ),
    "partly in another language": (_has(r"fratele|trei ori|arriba|me gusta el juego"), 4),
    "wholly in another language": (_has(r"dzisiaj|hoy hemos|\u4eca\u5929"), 3),
    "larger denominator, larger fraction": (_has(r"8 is digger|six is more big|12 is biger"), 3),
    "tops and bottoms added": (_has(r"= 2/8|= 3/6 because|= 4/10\."), 3),
    "multiplying makes bigger": (_has(r"multiply a number always it become"), 1),
    "add a zero": (_has(r"(add?|abb|put always) a zero"), 3),
    "remainder larger than the divisor": (_has(r"remain[db]er (5|7)"), 3),
    "reason with a connective": (_has(r"\bbecause\b"), 40),
    "reason without a connective": (
        _has(r"They stop at the same place|One's a row|You pair everything up"),
        2,
    ),
    "check by the inverse": (
        _has(r"undo(es|ing)|turned it back|taking 5/9 away again|checked by mul"),
        5,
    ),
    "counter-example": (
        _has(r"not true|isn't (always )?true|isn't always|i disagree|which fails"),
        4,
    ),
    "general with support": (_has(r"\b(any|all|always|every)\b.*\b(because|since|as)\b"), 12),
    "general without support": (
        _has(r"they all worked|order never is|big numbers have more"),
        3,
    ),
    "keyword string": (_has(r"because therefore"), 2),
    "word list": (_has(r"^\w+( \w+)?(, \w+( \w+)?){4,}\.?$"), 3),
    "bare feeling of learning": (_has(r"made my head hurt|felt ok|felt alright|can't think"), 3),
    "named difficulty": (_has(r"cant do thirds|mixed up|i forget|lost my place|got stuck on"), 5),
    "change, check or next step": (
        _has(r"next time|used to|at first|from now on|last month|changed my mind|helped"),
        12,
    ),
    "call for help": (_has(r"help me|can somebody help|show me agen"), 3),
}


@pytest.mark.parametrize("kind", KINDS)
def test_the_class_holds_entries_of_every_kind(kind: str) -> None:
    is_kind, at_least = KINDS[kind]
    assert sum(is_kind(row) for row in ENTRIES) >= at_least


def test_a_prompt_is_copied_at_most_twice() -> None:
    copied = Counter(row["prompt"] for row in ENTRIES if _copies_prompt(row))
    assert max(copied.values()) <= 2


def test_three_entries_hold_a_worry_for_an_adult_to_read() -> None:
    worry = _has(r"scared to|woke me|breakfast|will get me|hurts? (me|us)|hit me|afraid")
    told = {row["entry_id"] for row in ENTRIES if worry(row)}
    assert told == WORRIES


@pytest.mark.parametrize(
    ("pupil", "habit", "at_least"),
    [
        ("P04", r"\b(becos|wun|fink|fird|menny|fings?|wuns)\b", 10),
        ("P08", r"\b(cuz|dottom|numder|bivide|abb?|dib|dug|bont|dy|doth|tiby)\b", 8),
        ("P12", r"\b(becase|\w*numbr|frctions?|wich|tke|othr|numertor|eqal|thnk|dobled)\b", 8),
        ("P17", r"\b(becoz|haff|fracshuns?|kworters?|wun|eekwal|groops|agen|skwares)\b", 10),
        ("P23", r"\bbecuase\b", 12),
        ("P26", r"\b(peaces?|won|to|two|too|for|ate|there|their|hole|buy|theirs)\b", 12),
    ],
)
def test_a_spelling_habit_stays_with_its_pupil(pupil: str, habit: str, at_least: int) -> None:
    assert sum(bool(re.search(habit, text)) for text in texts_of(pupil)) >= at_least


def test_pupils_name_each_other_by_the_first_names_of_the_class_alone() -> None:
    """A capital within a sentence is a classmate or one of a few everyday words."""
    everyday = set(
        "I Miss Mrs English Romania Romanian Spanish PE Friday D A1 A2 A3 B1 B2 B3 Factoria"
        " It It's".split()
    )
    allowed = everyday | {row["name"] for row in PUPILS}
    for row in ENTRIES:
        if row["pupil"] == "P22":  # who puts capitals anywhere
            continue
        inside = re.findall(r"(?<=[a-z,] )([A-Z][\w']*)", row["text"])
        names = {re.sub(r"'\w+$", "", word) if word != "It's" else word for word in inside}
        assert names <= allowed | set(row["prompt"].split()), row["entry_id"]


def test_sixty_entries_are_judged_once_each() -> None:
    judged = [row["entry_id"] for row in JUDGED]
    assert len(judged) == len(set(judged)) == 60
    assert set(judged) <= {row["entry_id"] for row in ENTRIES}


def test_the_judged_entries_spread_over_pupils_units_and_levels() -> None:
    pupils = {row["entry_id"][-3:] for row in JUDGED}
    assert len(pupils) >= 24
    assert {row["entry_id"][:2] for row in JUDGED} == {"fr", "md"}
    levels = Counter(row["level_a"] for row in JUDGED)
    assert all(levels[level] >= 8 for level in "01234")


def test_a_judgement_has_both_levels_and_a_rule_of_the_rubric_or_is_left_unscored() -> None:
    for row in JUDGED:
        assert row["rule_a"] in RULES, row["entry_id"]
        assert row["reason"], row["entry_id"]
        if row["rule_a"] in NOT_JUDGED:
            assert (row["level_a"], row["level_b"]) == ("", ""), row["entry_id"]
        else:
            assert row["level_a"] in set("01234"), row["entry_id"]
            assert row["level_b"] in set("0123"), row["entry_id"]


def test_the_readme_says_that_all_is_invented() -> None:
    readme = (FOLDER / "README.md").read_text(encoding="utf-8")
    assert "Everything here is invented" in readme
    assert "not a sample of real pupils" in readme
