"""Words talked about, strings of keywords, and copied stretches."""

from __future__ import annotations

from collections.abc import Sequence

from journal.evidence.markers.view import Judgement, Occurrence, View
from journal.evidence.markers.words import BE, STOPS, WORDS

_QUOTES = frozenset(['"', "'", "“", "”", "‘", "’", "`", "``", "''"])
_BETWEEN = frozenset([",", "and", "or", "the", "word", "words", "/", "-", "&", "+"]) | _QUOTES
_AFTER_A_WORD = WORDS["mention.after_a_word"]
_JOINING = frozenset(("because", "since", "therefore"))
_NAMED_AFTER = WORDS["mention.named_after"]
_SPELLING = WORDS["mention.spelling"]
_WORD = frozenset(("word", "words"))
_SOMETIMES = frozenset(("sometimes",))
_STRING = 3
_CLAUSE = 2


def read_mentions(view: View, occurrences: Sequence[Occurrence]) -> dict[int, Judgement]:
    """Find occurrences that are talked about or strung together without sense.

    Returns
    -------
    dict of int to Judgement
        By the position in ``occurrences``.
    """
    found: dict[int, Judgement] = {}
    for run in _strings(view, occurrences):
        words = " ".join(occurrences[k].label for k in run)
        for k in run:
            found[k] = Judgement("mention", f"a string of words that joins nothing: '{words}'")
    for k, at in enumerate(occurrences):
        if k not in found and _is_named(view, at, k, occurrences, found):
            found[k] = Judgement("mention", f"the word '{at.label}' itself is talked about")
    return found


def _strings(view: View, occurrences: Sequence[Occurrence]) -> list[list[int]]:
    """Return runs of three or more forms with nothing but commas and "and" between them."""
    runs: list[list[int]] = []
    run: list[int] = []
    for k, at in enumerate(occurrences):
        if run and all(
            word in _BETWEEN for word in view.words[occurrences[run[-1]].after : at.first]
        ):
            run.append(k)
            continue
        runs.append(run)
        run = [k]
    runs.append(run)
    return [run for run in runs if len(run) > 1 and _joins_nothing(view, occurrences, run)]


def _joins_nothing(view: View, occurrences: Sequence[Occurrence], run: list[int]) -> bool:
    """Tell a bare list of words from forms that pile up in a sentence ("because if every")."""
    joining = [
        occurrences[k].form.function
        for k in run
        if occurrences[k].form.function in ("reason", "result", "contrast")
    ]
    last = occurrences[run[-1]].after
    bare = view.following(last)[1] - last < _CLAUSE
    if len(run) < _STRING:
        return joining == ["reason", "result"] and occurrences[run[1]].form.form == "therefore"
    if len(joining) >= 2:
        return bare or len(joining) > 2 or joining[-1] != "reason"
    return bare and (len(joining) == 1 or len(run) > _STRING)


def _is_named(
    view: View,
    at: Occurrence,
    k: int,
    occurrences: Sequence[Occurrence],
    found: dict[int, Judgement],
) -> bool:
    before, after = view.word(at.first - 1), view.word(at.after)
    if before in _QUOTES and after in _QUOTES and at.after - at.first <= 2:
        return True
    if before in ("word", "words", "connective", "conjunction", "keyword"):
        return True
    if _is_word_named(view, at):
        return True
    if at.form.form in _JOINING and before in _NAMED_AFTER and view.word(at.first) != "cause":
        return True
    ends = not after or after in STOPS or after in ("in", "at", "to", "instead", "because")
    if before in ("write", "say", "use", "used", "using", "wrote", "put", "said", "writing") and (
        at.form.function in ("reason", "result", "condition", "contrast")
        or at.form.read in ("prove", "always")
    ):
        return (
            ends
            or (
                after in _AFTER_A_WORD
                and after not in ("my", "when", "all", "every", "more", "lots")
            )
            or (
                after in ("and", ",", "or")
                and k + 1 < len(occurrences)
                and occurrences[k + 1].first == at.after + 1
            )
        )
    # "because and so": the second of two words that are named together.
    return (
        k - 1 in found
        and before in ("and", ",", "or")
        and occurrences[k - 1].after == at.first - 1
        and ends
    )


def _is_word_named(view: View, at: Occurrence) -> bool:
    """Say whether the sentence is about the word: "the word was always", "I can spell because"."""
    before, after = view.word(at.first - 1), view.word(at.after)
    if before in _SPELLING and at.form.form in _JOINING:
        return True
    if before in BE and view.has((max(0, at.first - 6), at.first), _WORD):
        return True
    if after in BE and view.has((at.after, at.after + 5), _WORD):
        return at.first == 0 or before in STOPS
    # "always, sometimes or never": the choices of a task.
    near = (max(0, at.first - 2), at.after + 2)
    return at.form.read == "always" and view.has(near, _SOMETIMES)


def read_other_use(view: View, at: Occurrence) -> Judgement:
    """Read a form that is listed only so that its parts are not misread."""
    return Judgement("look_alike", f"'{at.label}' is another use of these words")
