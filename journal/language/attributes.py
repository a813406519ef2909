"""Parts of speech and lemmas, worked out once for each (word, tag, dependency).

The model's attribute ruler and its rule lemmatiser look at one token at a time but for a few
patterns of two tokens ("gonna", "let's", an expletive "there is"). Memoised on the word, its tag
and its dependency they give the same answer many times faster; "is" after an expletive has a memo
of its own, and a text that holds another of the pairs goes through the model's own components.
"""

from __future__ import annotations

from itertools import pairwise

import numpy as np
from spacy.attrs import DEP, LEMMA, LOWER, MORPH, ORTH, POS, TAG
from spacy.language import Language
from spacy.tokens import Doc

_COLUMNS = [POS, MORPH, LEMMA]
_KEYS = [ORTH, TAG, DEP, LOWER]
# The ruler's two-token patterns; see its `patterns`.
_PAIRS = (
    ("ai", "n't"),
    ("ai", "nt"),
    ("gon", "na"),
    ("got", "ta"),
    ("let", "'s"),
    ("c'm", "on"),
    ("y", "all"),
    ("y'", "all"),
)
_AFTER_EXPLETIVE = ("is", "are", "was", "were", "'s", "'re")

Row = tuple[int, ...]
_MEMO_LIMIT = 200_000


class MemoisedAttributes:
    """A pipeline component in the place of attribute ruler and lemmatiser.

    Parameters
    ----------
    nlp : Language
        A pipeline with ``attribute_ruler`` and ``lemmatizer``; both are taken over.
    """

    def __init__(self, nlp: Language) -> None:
        self._ruler = nlp.get_pipe("attribute_ruler")
        self._lemmatiser = nlp.get_pipe("lemmatizer")
        self._memo: dict[Row, tuple[int, int, int]] = {}
        strings = nlp.vocab.strings
        self._pairs: dict[int, set[int]] = {}
        for first, second in _PAIRS:
            self._pairs.setdefault(strings.add(first), set()).add(strings.add(second))
        self._after_expletive = frozenset(strings.add(word) for word in _AFTER_EXPLETIVE)
        self._expletive = strings.add("expl")

    def __call__(self, doc: Doc) -> Doc:
        orths, tags, deps, lowers = doc.to_array(_KEYS).T.tolist()
        if not self._pairs.keys().isdisjoint(lowers) and self._holds_pair(lowers):
            return self._annotate(doc)
        rows: list[Row] = list(zip(orths, tags, deps, strict=True))
        if self._expletive in deps:
            for i, (dep, lower) in enumerate(zip(deps, lowers[1:], strict=False), start=1):
                if dep == self._expletive and lower in self._after_expletive:
                    rows[i] = (*rows[i], dep)
        memo = self._memo
        try:
            values = [memo[row] for row in rows]
        except KeyError:
            return self._learn(doc, rows)
        # spaCy's stubs ask for signed numbers; the keys of strings are unsigned.
        doc.from_array(_COLUMNS, np.array(values, dtype=np.uint64))  # type: ignore[arg-type]
        return doc

    def _holds_pair(self, lowers: list[int]) -> bool:
        return any(
            first in self._pairs and second in self._pairs[first]
            for first, second in pairwise(lowers)
        )

    def _annotate(self, doc: Doc) -> Doc:
        annotated: Doc = self._lemmatiser(self._ruler(doc))
        return annotated

    def _learn(self, doc: Doc, rows: list[Row]) -> Doc:
        doc = self._annotate(doc)
        if len(self._memo) > _MEMO_LIMIT:
            self._memo.clear()
        self._memo.update(zip(rows, map(tuple, doc.to_array(_COLUMNS).tolist()), strict=True))
        return doc


def memoise_attributes(nlp: Language) -> None:
    """Replace the pipeline's attribute ruler and lemmatiser by one memoised component."""
    component = MemoisedAttributes(nlp)
    Language.component("memoised_attributes", func=component)
    nlp.add_pipe("memoised_attributes", last=True)
    nlp.remove_pipe("attribute_ruler")
    nlp.remove_pipe("lemmatizer")
