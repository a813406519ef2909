"""An entry as the marker questions look at it: words, tags, and the clauses on either side.

Clauses are found by words: a parser trained on edited text reads a child's run-on as one
sentence, so a new clause begins at a full stop, at a joining word, or where a pronoun and its
verb follow a clause that has a verb already.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import NamedTuple

from journal.evidence.markers.words import (
    AUXILIARIES,
    HOLDS_ON,
    JOINS_ALWAYS,
    JOINS_WITH_CLAUSE,
    OPENS_INSIDE,
    SKIPPED_AT_START,
    STOPS,
    SUBJECTS,
    VERBS_ANYWHERE,
    WORDS,
)
from journal.evidence.mathematics import Mathematics, MathematicsKind
from journal.language.parse import Parse
from journal.lexicon.markers import MarkerForm
from journal.records import Function, Reading

_HARD, _STRONG = 3, 2
_VERB_TAGS = frozenset(("VBZ", "VBD", "VBP", "MD"))
_LOOSE_VERB_TAGS = frozenset(("VBZ", "VBD", "VBP", "MD", "VB", "VBN", "NNS", "NN"))


class Judgement(NamedTuple):
    """How one occurrence is read, in a teacher's words, and its function if not the listed one."""

    reading: Reading
    why: str
    function: Function | None = None


@dataclass(frozen=True, slots=True)
class Occurrence:
    """A listed form where it stands: ``first`` token, one past the last, and its listed form."""

    first: int
    after: int
    form: MarkerForm
    label: str


Stretch = tuple[int, int]
"""First token and one past the last."""


class View:
    """A parse with its words, tags and the places where clauses begin.

    Parameters
    ----------
    parse : Parse
        The entry.
    mathematics : Mathematics
        Which of its tokens speak of mathematics.
    """

    __slots__ = ("_edges", "kinds", "mathematics", "parse", "tags", "verbs", "words")

    def __init__(self, parse: Parse, mathematics: Mathematics) -> None:
        self.parse = parse
        self.mathematics = mathematics
        self.kinds = mathematics.kinds
        self.words = [token.lower for token in parse.tokens]
        self.tags = [token.tag for token in parse.tokens]
        self.verbs: list[bool] = []
        self._edges: list[int] | None = None

    def word(self, i: int) -> str:
        """Return a token's word in lower case, or "" outside the text."""
        return self.words[i] if 0 <= i < len(self.words) else ""

    def tag(self, i: int) -> str:
        """Return a token's tag, or "" outside the text."""
        return self.tags[i] if 0 <= i < len(self.tags) else ""

    def quote(self, first: int, after: int, most: int = 9) -> str:
        """Return the child's own words in quotation marks, cut to a few words."""
        after = min(after, len(self.words))
        while first < after and self.words[after - 1] in _CLOSING:
            after -= 1
        if first >= after:
            return "nothing"
        if after - first > most:
            return f"'{self.parse.surface(first, first + most)} ...'"
        return f"'{self.parse.surface(first, after)}'"

    def maths(self, stretch: Stretch, *kinds: MathematicsKind) -> bool:
        """Say whether the stretch holds mathematics (of the given kinds)."""
        return self.mathematics.any_in(stretch[0], stretch[1], *kinds)

    def has(self, stretch: Stretch, words: frozenset[str]) -> bool:
        """Say whether one of the words stands in the stretch."""
        return not words.isdisjoint(self.words[stretch[0] : stretch[1]])

    def edges(self) -> list[int]:
        """Return for each token how surely a clause begins there: 0, 2 or 3."""
        if self._edges is None:
            self._edges = self._find_edges()
        return self._edges

    def before(self, i: int) -> Stretch:
        """Return the clause that ends at token ``i``, over one full stop if ``i`` opens one."""
        edges, words = self.edges(), self.words
        after = i
        while after > 0 and (words[after - 1] in STOPS or words[after - 1] in _GLUE):
            after -= 1
        first = after
        seen = False
        while first > 0:
            first -= 1
            seen = seen or self.verbs[first]
            if edges[first] and (seen or edges[first] == _HARD) and first < after - 1:
                break
        return first, after

    def opening(self, i: int) -> Stretch:
        """Return the part of token ``i``'s own clause that stands before it."""
        edges, words = self.edges(), self.words
        first = i
        while first > 0 and not edges[first]:
            first -= 1
        # Conditions are no edges of their own, but what is said after them has its own subject.
        for at in range(i - 1, first, -1):
            if words[at] in OPENS_INSIDE:
                first = at
                break
        while first < i and words[first] in SKIPPED_AT_START:
            first += 1
        return first, i

    def following(self, i: int) -> Stretch:
        """Return the clause that begins at token ``i``."""
        edges, words, n = self.edges(), self.words, len(self.words)
        first = i
        while first < n and words[first] in _LIGHT:
            first += 1
        at = first
        seen = False
        while at < n:
            if words[at] in STOPS and at > first:
                break
            if edges[at] and at > first and seen:
                break
            if edges[at] == _HARD and at > first:
                break
            seen = seen or self.verbs[at]
            at += 1
        return first, at

    def _find_edges(self) -> list[int]:
        words, tags, n = self.words, self.tags, len(self.words)
        self.verbs = verbs = [
            tags[i] in _VERB_TAGS or words[i] in VERBS_ANYWHERE or "=" in words[i] for i in range(n)
        ]
        hard = self._hard_edges()
        edges = [0] * n
        seen = False
        for i, word in enumerate(words):
            strength = 0
            if i in hard:
                strength = _HARD
            elif word not in _OPENERS:
                pass
            elif word in JOINS_ALWAYS:
                strength = _STRONG
            elif word in JOINS_WITH_CLAUSE:
                if self._opens_clause(i + 1) and not (
                    word == "as" and "as" in words[max(0, i - 4) : i]
                ):
                    strength = _STRONG
            elif seen and self._runs_on(i):
                strength = _STRONG
            if strength:
                edges[i] = strength
                seen = verbs[i]
            else:
                seen = seen or verbs[i]
        return edges

    def _hard_edges(self) -> set[int]:
        """Return where a sentence opens; a new line has been read as a full stop already."""
        words = self.words
        return {0} | {
            i
            for i, word in enumerate(words[:-1], start=1)
            if word in STOPS and words[i] not in STOPS
        }

    def _runs_on(self, i: int) -> bool:
        """Say whether a new statement begins without any joining word."""
        before = self.words[i - 1]
        return before not in HOLDS_ON and before not in JOINS_WITH_CLAUSE and self._verb_soon(i + 1)

    def _opens_clause(self, i: int) -> bool:
        word = self.word(i)
        if word in SUBJECTS or word in ("then", "so", "because", "if", "when", "there"):
            return True
        return (
            self._verb_soon(i)
            if self.tag(i) in ("VBD", "VBP", "VBZ", "MD")
            else (
                self.tag(i) in ("DT", "PRP$", "CD", "NNP", "NNS", "NN", "JJ") and self._verb_near(i)
            )
        )

    def _verb_soon(self, i: int) -> bool:
        if self.tag(i) in ("RB", "DT") or self.word(i) in ("both", "all"):
            i += 1
        return (self.tag(i) in _LOOSE_VERB_TAGS and self.word(i) not in _NOT_VERBS) or self.word(
            i
        ) in AUXILIARIES

    def _verb_near(self, i: int) -> bool:
        for at in range(i, min(i + 5, len(self.words))):
            word = self.words[at]
            if self.verbs[at]:
                return True
            if word in STOPS or word in JOINS_ALWAYS or word in JOINS_WITH_CLAUSE:
                return False
        return False


_OPENERS = JOINS_ALWAYS | JOINS_WITH_CLAUSE | SUBJECTS
_CLOSING = STOPS | {","}
_GLUE = frozenset([",", "and", ";", ":", "-", "–", "—", "(", ")", "...", "…"])
_LIGHT = frozenset([",", ":", "-", "–", "—", "...", "…", '"', "'", "“", "”"])
_NOT_VERBS = WORDS["view.not_verbs"]
