"""Parts of speech and lemmas, worked out once for each (word, tag, dependency).

The model's attribute ruler and its rule lemmatiser look at one token at a time but for a few
patterns of two tokens ("gonna", "let's", an expletive "there"). Memoised on the word, its tag and
its dependency they give the same answer many times faster; a text that may hold one of the
two-token patterns goes through the model's own components.
"""

from __future__ import annotations

import numpy as np
from spacy.attrs import DEP, LEMMA, LOWER, MORPH, ORTH, POS, TAG
from spacy.language import Language
from spacy.tokens import Doc

_COLUMNS = [POS, MORPH, LEMMA]
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
        self._memo: dict[tuple[int, int, int], tuple[int, int, int]] = {}
        strings = nlp.vocab.strings
        # First tokens of the ruler's two-token patterns; see its `patterns`.
        self._paired_words = frozenset(
            strings.add(word) for word in ("ai", "gon", "got", "let", "c'm", "y", "y'")
        )
        self._expletive = strings.add("expl")

    def __call__(self, doc: Doc) -> Doc:
        keys = doc.to_array([ORTH, TAG, DEP])
        lowers = doc.to_array(LOWER)
        if self._paired_words.intersection(lowers.tolist()) or self._expletive in keys[:, 2]:
            return self._annotate(doc)
        rows = list(map(tuple, keys.tolist()))
        memo = self._memo
        try:
            values = [memo[row] for row in rows]
        except KeyError:
            return self._learn(doc, rows)
        doc.from_array(_COLUMNS, np.array(values, dtype=np.uint64))
        return doc

    def _annotate(self, doc: Doc) -> Doc:
        annotated: Doc = self._lemmatiser(self._ruler(doc))
        return annotated

    def _learn(self, doc: Doc, rows: list[tuple[int, int, int]]) -> Doc:
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
