"""Find every listed marker form of an entry, with its function and how it is read here."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from types import MappingProxyType

from journal.evidence.markers import (
    certainty,
    checking,
    comparison,
    condition,
    contrast,
    generalisation,
    mention,
    reason,
    result,
)
from journal.evidence.markers.copied import find_copied, read_copied
from journal.evidence.markers.view import Judgement, Occurrence, View
from journal.evidence.mathematics import Mathematics
from journal.evidence.setting import Setting
from journal.language.parse import Parse
from journal.lexicon.markers import MarkerForm, MarkerForms
from journal.records import Marker

Question = Callable[[View, Occurrence], Judgement]

QUESTIONS: Mapping[str, Question] = MappingProxyType(
    {
        name.removeprefix("read_"): getattr(module, name)
        for module in (
            certainty,
            checking,
            comparison,
            condition,
            contrast,
            generalisation,
            mention,
            reason,
            result,
        )
        for name in vars(module)
        if name.startswith("read_") and name != "read_mentions"
    }
)
"""The named question that settles each form, by the name it has in the lexicon."""

_THAN = MarkerForm("than", "comparison", "than", (("than",),))
_AS_AS = MarkerForm("as as", "comparison", "as_as", (("as",),))
_SAME_AS = 5


def find_markers(
    parse: Parse, forms: MarkerForms, mathematics: Mathematics, setting: Setting
) -> list[Marker]:
    """Find the markers of reasoning in an entry.

    Parameters
    ----------
    parse : Parse
        The entry.
    forms : MarkerForms
        The listed forms; see `journal.lexicon.markers.load_markers`.
    mathematics : Mathematics
        Which tokens speak of mathematics.
    setting : Setting
        Prompt, sentence starters, word bank and the stretches that were put in by a tap.

    Returns
    -------
    list of Marker
        Every occurrence of a listed form in the order of the text, longest form first; only
        those read as reasoning are counted.
    """
    view = View(parse, mathematics)
    occurrences = find_occurrences(view, forms)
    if not occurrences:
        return []
    mentions = mention.read_mentions(view, occurrences)
    copied = find_copied(parse, setting, {view.words[at.first] for at in occurrences})
    found = []
    for k, at in enumerate(occurrences):
        judgement = mentions.get(k)
        if judgement is None:
            judgement = QUESTIONS[at.form.read](view, at)
            if copied:
                judgement = read_copied(view, at, judgement, copied)
        start, end = parse.span(at.first, at.after)
        found.append(
            Marker(
                start,
                end,
                parse.text[start:end],
                at.label,
                judgement.function or at.form.function,
                judgement.reading,
                judgement.reading == "reasoning",
                judgement.why,
            )
        )
    return found


def find_occurrences(view: View, forms: MarkerForms) -> list[Occurrence]:
    """Find where listed forms stand: longest first, no token in two of them."""
    words, openers, ways_of = view.words, forms.by_first_word, forms.by_two_words
    found: list[Occurrence] = []
    taken = 0
    closing_as: set[int] = set()
    for i, word in enumerate(words):
        # Most words open no form.
        if (word not in openers and word != "than") or i < taken:
            continue
        longer = ways_of.get((word, view.word(i + 1)), ())
        alone = ways_of.get((word, ""), ())
        if not longer and not alone and word != "than":
            continue
        if word == "than" or (word == "then" and comparison.is_than(view, i)):
            than = comparison.find_than(view, i)
            if than is not None:
                first, label = than
                # "the same" inside "more of the same than" and the like gives way.
                while found and found[-1].after > first:
                    found.pop()
                found.append(Occurrence(first, i + 1, _THAN, label))
                taken = i + 1
            continue
        if i in closing_as:
            continue
        if word == "as":
            pair = comparison.find_as_as(view, i)
            if pair is not None:
                found.append(Occurrence(i, pair[0], _AS_AS, pair[1]))
                taken = pair[0]
                continue
        for way, form in (*longer, *alone):
            size = len(way)
            if size == 1 or tuple(words[i : i + size]) == way:
                if form.form == "so that" and result.that_is_subject(view, i):
                    continue
                first, after, label = i, i + size, form.form
                if form.read in ("same", "comparing"):
                    first, after, label, form = _widen(view, forms, first, after, form)
                    if form.form.endswith(" as"):
                        closing_as.update(_closing_as(words, after))
                found.append(Occurrence(first, after, form, label))
                taken = after
                break
    return found


def _widen(
    view: View, forms: MarkerForms, first: int, after: int, form: MarkerForm
) -> tuple[int, int, str, MarkerForm]:
    """Take in what belongs to a comparison: "the same length as", "three times as"."""
    if form.form == "times as" and view.tag(first - 1) in ("CD", "DT", "JJ"):
        return first - 1, after, f"{view.words[first - 1]} times as", form
    if form.read == "same":
        for at in range(after, min(after + 4, len(view.words))):
            if view.words[at] == "as":
                return first, at + 1, "the same as", _form(forms, "the same as")
            if view.tags[at] not in ("NN", "NNS", "JJ", "CD"):
                break
    return first, after, form.form, form


def _form(forms: MarkerForms, name: str) -> MarkerForm:
    return next(form for form in forms.forms if form.form == name)


def _closing_as(words: Sequence[str], after: int) -> set[int]:
    """Return where the second "as" of "twice as long as" stands."""
    return {at for at in range(after, min(after + 3, len(words))) if words[at] == "as"}
