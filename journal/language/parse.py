"""A parse as the evidence finders see it: tokens with offsets into the child's own text."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import accumulate
from operator import add
from typing import TYPE_CHECKING, Any

from journal.records import Span
from journal.text.offsets import OffsetMap

if TYPE_CHECKING:
    from spacy.strings import StringStore
    from spacy.tokens import Doc

_BITS = 2**64 - 1
# Places of two fields of a token after its index.
_HEADS = 6
_SENTENCES = 9
_MEMO = 200_000


class _Lowered(dict[str, str]):
    """Lower-case spellings, filled as words turn up."""

    def __missing__(self, text: str) -> str:
        if len(self) >= _MEMO:
            self.clear()
        self[text] = lower = text.lower()
        return lower


class _Names(dict[int, str]):
    """The strings of a store by their keys, filled as they turn up."""

    def __init__(self, strings: StringStore) -> None:
        self.strings = strings

    def __missing__(self, key: int) -> str:
        if len(self) >= _MEMO:
            self.clear()
        self[key] = name = self.strings[key]
        return name


_LOWERED = _Lowered()


@lru_cache(maxsize=4)
def _names_of(strings: StringStore) -> _Names:
    return _Names(strings)


@dataclass(slots=True)
class Token:
    """One token of the corrected text.

    ``text``, ``lower`` and ``lemma`` are as corrected; ``start`` and ``end`` are offsets into the
    original. ``index`` and ``head`` are positions in `Parse.tokens` (a root is its own head);
    ``sentence`` counts sentences from 0. ``pos``, ``tag`` and ``dep`` are the model's labels.
    """

    index: int
    text: str
    lower: str
    lemma: str
    pos: str
    tag: str
    dep: str
    head: int
    start: int
    end: int
    sentence: int


class Parse:
    """Tokens, sentences and dependencies of one entry.

    Parameters
    ----------
    offsets : OffsetMap
        The corrected text that was parsed (``working``) with the way back to the original.
    tokens : sequence of Token
        In order; no white-space tokens.
    breaks : sequence of int, optional
        Original offsets at which a stretch that is not the child's (an adult's prompt) begins:
        nothing may be joined across one.
    """

    __slots__ = (
        "_children",
        "_ends",
        "_left",
        "_right",
        "_starts",
        "breaks",
        "offsets",
        "sentences",
        "text",
        "tokens",
        "working",
    )

    def __init__(
        self, offsets: OffsetMap, tokens: Sequence[Token], breaks: Sequence[int] = ()
    ) -> None:
        self.offsets = offsets
        self.text = offsets.original
        self.working = offsets.working
        self.tokens = tokens
        self.breaks = tuple(breaks)
        self._starts = [token.start for token in tokens]
        self._ends = [token.end for token in tokens]
        self._children: list[list[int]] | None = None
        self._left: list[int] | None = None
        self._right: list[int] | None = None
        self.sentences: list[tuple[int, int]] = []
        first = number = 0
        for token in tokens:
            if token.sentence != number:
                self.sentences.append((first, token.index))
                first, number = token.index, token.sentence
        if tokens:
            self.sentences.append((first, len(tokens)))

    def __len__(self) -> int:
        return len(self.tokens)

    def children(self, index: int) -> list[int]:
        """Return the positions of the token's direct dependants, in order."""
        if self._children is None:
            self._children = [[] for _ in self.tokens]
            for token in self.tokens:
                if token.head != token.index:
                    self._children[token.head].append(token.index)
        return self._children[index]

    def child(self, index: int, *deps: str) -> int | None:
        """Return the first dependant with one of the given dependency labels, or None."""
        for child in self.children(index):
            if self.tokens[child].dep in deps:
                return child
        return None

    def subtree(self, index: int) -> tuple[int, int]:
        """Return first token and one past the last token below (and with) the token."""
        if self._left is None or self._right is None:
            self._left = list(range(len(self.tokens)))
            self._right = list(range(len(self.tokens)))
            # Repeated passes carry edges up; chains are as short as the tree is deep.
            changed = True
            while changed:
                changed = False
                for token in self.tokens:
                    head = token.head
                    if self._left[token.index] < self._left[head]:
                        self._left[head] = self._left[token.index]
                        changed = True
                    if self._right[token.index] > self._right[head]:
                        self._right[head] = self._right[token.index]
                        changed = True
        return self._left[index], self._right[index] + 1

    def ancestors(self, index: int) -> list[int]:
        """Return the positions of the token's heads, nearest first, root last."""
        found = []
        while self.tokens[index].head != index:
            index = self.tokens[index].head
            found.append(index)
        return found

    def sentence(self, index: int) -> tuple[int, int]:
        """Return first token and one past the last token of the token's sentence."""
        return self.sentences[self.tokens[index].sentence]

    def span(self, first: int, after: int) -> Span:
        """Return the original offsets of ``tokens[first:after]``."""
        return self._starts[first], max(self._ends[first:after])

    def surface(self, first: int, after: int) -> str:
        """Return the child's own words for ``tokens[first:after]``."""
        start, end = self.span(first, after)
        return self.text[start:end]

    def tokens_in(self, start: int, end: int) -> tuple[int, int]:
        """Return first token and one past the last token that touch an original span."""
        return bisect_right(self._ends, start), bisect_left(self._starts, end)

    def crosses_break(self, first: int, after: int) -> bool:
        """Say whether an adult's prompt stands inside ``tokens[first:after]``."""
        if not self.breaks:
            return False
        start, end = self.span(first, after)
        return any(start <= at < end for at in self.breaks)


def read_parse(doc: Doc, offsets: OffsetMap, breaks: Sequence[int] = ()) -> Parse:
    """Turn a parsed ``Doc`` of the corrected text into a `Parse`.

    Parameters
    ----------
    doc : Doc
        Parsed from ``offsets.working``.
    offsets : OffsetMap
        The way back to the original text.
    breaks : sequence of int
        Original offsets of adult prompts.

    Returns
    -------
    Parse
        White-space tokens are left out and their dependants handed to their heads.
    """
    from spacy.attrs import DEP, HEAD, IDX, LEMMA, LENGTH, ORTH, POS, SENT_START, TAG

    rows = doc.to_array([ORTH, LEMMA, POS, TAG, DEP, IDX, LENGTH, HEAD, SENT_START])
    orth, lemma, pos, tag, dep, begins, sizes, ahead, opens = rows.T.tolist()
    names = _names_of(doc.vocab.strings)
    name = names.__getitem__
    starts, ends = offsets.to_original_many(begins, list(map(add, begins, sizes)))
    texts = list(map(name, orth))
    columns: list[Sequence[Any]] = [
        texts,
        list(map(_LOWERED.__getitem__, texts)),
        list(map(name, lemma)),
        list(map(name, pos)),
        list(map(name, tag)),
        list(map(name, dep)),
        # Heads are stored as offsets from the token, in unsigned 64-bit numbers.
        [(i + far) & _BITS for i, far in enumerate(ahead)],
        starts,
        ends,
        _number_sentences(opens),
    ]
    if any(map(str.isspace, texts)):
        columns = _without_blanks(columns)
    return Parse(offsets, list(map(Token, range(len(texts)), *columns)), breaks)


def _number_sentences(opens: Sequence[int]) -> list[int]:
    numbers = accumulate(int(opening == 1) for opening in opens[1:])
    return [0, *numbers] if opens else []


def _without_blanks(columns: Sequence[Sequence[Any]]) -> list[Sequence[Any]]:
    """Leave white space out; hand its dependants to its head, count the sentences that are left."""
    texts, heads = columns[0], columns[_HEADS]
    kept = [i for i, text in enumerate(texts) if not text.isspace()]
    place = {old: new for new, old in enumerate(kept)}
    found = []
    for i in kept:
        head = heads[i]
        while head not in place and heads[head] != head:
            head = heads[head]
        found.append(place.get(head, place[i]))
    left: list[Sequence[Any]] = [[column[i] for i in kept] for column in columns]
    left[_HEADS] = found
    numbers = {old: new for new, old in enumerate(dict.fromkeys(left[_SENTENCES]))}
    left[_SENTENCES] = [numbers[old] for old in left[_SENTENCES]]
    return left
