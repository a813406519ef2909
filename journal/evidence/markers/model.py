"""Whether 'as' joins statements at all: a small model, where hand-written rules are weak.

A logistic regression over the words and tags around the form, trained on annotated adult text and
applied here with plain arithmetic from readable JSON; see ``models/connectives.md``. It knows
nothing of mathematics or of children: what is joined is asked afterwards.
"""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path
from typing import Literal, TypeAlias, get_args

from journal.evidence.markers.view import View
from journal.evidence.markers.words import STOPS, SUBJECTS, WORDS
from journal.resources import shipped_folder

Use: TypeAlias = Literal["other", "joins", "causal"]
"""Another use of the form; it joins statements; it joins a cause and its effect."""

USES: tuple[Use, ...] = get_args(Use)
_FUNCTION_WORDS = WORDS["model.function_words"]
_FINITE = frozenset(("VBZ", "VBP", "VBD", "MD"))
_SIDE = 7


@dataclass(frozen=True, slots=True)
class Connectives:
    """Trained weights.

    Parameters
    ----------
    id : str
        Name and version of the model.
    weights : mapping of str to mapping of str to tuple of float
        For each form and each feature one weight a use, in the order of `USES`; the feature
        ``"(bias)"`` is always on.
    """

    id: str
    weights: Mapping[str, Mapping[str, tuple[float, ...]]]


@lru_cache(maxsize=1)
def load_connectives(path: Path | None = None) -> Connectives:
    """Load the model that ships with the package.

    Parameters
    ----------
    path : Path, optional
        Another file of the same shape.

    Returns
    -------
    Connectives
        Shared by all callers.
    """
    path = path or shipped_folder("models") / "connectives.json"
    data = json.loads(path.read_text(encoding="utf-8"))
    return Connectives(
        data["id"],
        {
            form: {name: tuple(row) for name, row in rows.items()}
            for form, rows in data["weights"].items()
        },
    )


def estimate_use(view: View, first: int, after: int, form: str, hint: str) -> Use:
    """Estimate how a form is used.

    Parameters
    ----------
    view : View
        The entry.
    first, after : int
        The form's first token and one past its last.
    form : str
        One of the forms the model was trained for.
    hint : str
        What the words alone make of it.
    """
    weights = load_connectives().weights[form]
    scores = score_uses(weights, [f"hint={hint}", *read_features(view, first, after)])
    return USES[scores.index(max(scores))]


def score_uses(
    weights: Mapping[str, Sequence[float]], features: Sequence[str]
) -> tuple[float, ...]:
    """Return the linear score of each use: the sum of the weights of the features that hold."""
    rows = [weights["(bias)"], *(weights[name] for name in features if name in weights)]
    return tuple(map(sum, zip(*rows, strict=True)))


def read_features(view: View, first: int, after: int) -> list[str]:
    """Name what holds around a form: words of the closed classes, tags, and the clause after it."""
    token = view.parse.tokens[first]
    head = view.parse.tokens[token.head]
    side = "after" if head.index > first else "before"
    features = [
        f"dep={token.dep}",
        f"tag={token.tag}",
        f"head={head.pos} {side}",
        f"head dep={head.dep}",
        f"dep={token.dep} of {head.pos} {head.tag} {side}",
        f"dep={token.dep} of {head.dep}",
    ]
    for offset in (-3, -2, -1, 1, 2, 3):
        at = first + offset if offset < 0 else after + offset - 1
        word = view.word(at)
        tag = view.tag(at) or "(edge)"
        features.append(f"{offset:+} tag={tag}")
        if word in _FUNCTION_WORDS or word in STOPS or word == ",":
            features.append(f"{offset:+}={word}")
    features.append(f"tags={view.tag(first - 1)} {view.tag(after)}")
    features.append(f"next tags={view.tag(after)} {view.tag(after + 1)}")
    before = view.word(first - 1)
    if first == 0 or before in STOPS or (first == 1 and before in ("and", "but", "um", "oh")):
        features.append("opens")
    if not view.word(after) or view.word(after) in STOPS:
        features.append("ends")
    clause = _clause_features(view, first, after)
    has_verb = "no verb after" not in clause
    features.append(f"verb={has_verb} dep={token.dep}")
    features.append(f"verb={has_verb} tags={view.tag(first - 1)} {view.tag(after)}")
    features.append(f"verb={has_verb} next tag={view.tag(after)}")
    return features + clause


def _clause_features(view: View, first: int, after: int) -> list[str]:
    features = []
    right = view.following(after)
    finite = next((at for at in range(*right) if view.tags[at] in _FINITE), None)
    if finite is None:
        features.append("no verb after")
    else:
        distance = min(finite - after, _SIDE)
        features.append(f"verb after={distance}")
        features.append(f"verb tag={view.tags[finite]}")
        if view.words[finite] in _FUNCTION_WORDS:
            features.append(f"verb={view.words[finite]}")
        if any(view.tags[at] == "VBG" for at in range(finite + 1, min(finite + 3, right[1]))):
            features.append("verb goes on")
    features.append(f"words after={min((right[1] - after) // 2, _SIDE)}")
    if view.word(after) in SUBJECTS:
        features.append("subject after")
    if finite is not None and view.word(after) in SUBJECTS and finite - after <= 2:
        features.append("clause after")
    for at in range(after, min(after + 5, len(view.words))):
        if view.words[at] == view.words[first]:
            features.append(f"again after={at - after}")
    for at in range(max(0, first - 4), first):
        if view.words[at] == view.words[first]:
            features.append(f"again before={first - at}")
    if finite is not None:
        child = view.parse.tokens[finite]
        if child.head == first or token_governs(view, child.index, first):
            features.append("marks its verb")
    left = view.opening(first)
    if any(view.tags[at] in _FINITE for at in range(*left)):
        features.append("verb before")
        last = max(at for at in range(*left) if view.tags[at] in _FINITE)
        features.append(f"verb before={view.tags[last]}")
    return features


def token_governs(view: View, verb: int, first: int) -> bool:
    """Say whether the form hangs on the verb, directly or through one word."""
    head = view.parse.tokens[first].head
    return head == verb or view.parse.tokens[head].head == verb
