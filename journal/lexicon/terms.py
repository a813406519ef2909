"""The terms of school mathematics and their forms, in an index that finds the longest first."""

from __future__ import annotations

import re
from collections.abc import ItemsView, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Literal, NamedTuple, TypeAlias

from journal.errors import LexiconError
from journal.lexicon.inflections import inflections, singular
from journal.lexicon.tables import load_rows
from journal.records import TermForm
from journal.resources import LEXICON

WordType: TypeAlias = Literal["technical", "subtechnical", "symbolic", "general", "everyday"]
Words: TypeAlias = tuple[str, ...]

_LETTER = r"[^\W\d_²³¼½¾⅓⅔⅕⅛]"
PIECES = re.compile(rf"{_LETTER}+(?:'{_LETTER}+)*|\d+(?:[.,]\d+)*|\S")
"""A word, a number or a single sign: what terms and texts are compared in."""

_COLUMNS = [
    "term",
    "domain",
    "first_year",
    "source",
    "from_memory",
    "everyday_sense_risk",
    "word_type",
    "parts",
    "hides",
]
_RANK: dict[TermForm, int] = {"exact": 0, "inflected": 1, "variant": 2, "derived": 3, "symbol": 4}
_REMEMBERED = 256


@dataclass(frozen=True, slots=True)
class Term:
    """One headword of the lexicon, or a plan's own term.

    Parameters
    ----------
    headword : str
        As it stands in the vocabulary, with a sense in brackets where there are two.
    domain : str or None
        The domain of the curriculum; None for a plan's own term.
    first_year : int or None
        Year of the first mention, 0 for Reception.
    source : str
        Where the term is listed.
    from_memory : bool
        Whether the source was quoted from memory.
    everyday_sense_risk : bool
        Whether the word has a common everyday sense.
    word_type : str
        ``technical``, ``subtechnical``, ``symbolic``, ``general`` or ``everyday``.
    parts : tuple of str
        Parts of speech; see `journal.lexicon.inflections.inflections`.
    hides : frozenset of str
        Words that lose their own meaning inside the term: "right" in "right angle".
    """

    headword: str
    domain: str | None = None
    first_year: int | None = None
    source: str = "the plan"
    from_memory: bool = False
    everyday_sense_risk: bool = False
    word_type: WordType = "technical"
    parts: tuple[str, ...] = ("noun", "verb")
    hides: frozenset[str] = frozenset()

    @property
    def name(self) -> str:
        """The headword without a sense in brackets."""
        return self.headword.partition(" (")[0]


@dataclass(frozen=True, slots=True)
class Pattern:
    """One form of a term.

    ``kind`` says whose term it is; ``shown`` is how it is named in the record; ``head`` is the
    word the senses are kept under.
    """

    words: Words
    term: Term
    form: TermForm
    kind: Literal["target", "earlier", "curriculum"]
    shown: str


class Symbol(NamedTuple):
    """A sign with the terms it shows and the place it must stand in."""

    shows: tuple[str, ...]
    place: str


class TermIndex:
    """Forms of terms by their first word, the longest first.

    Parameters
    ----------
    terms : iterable of Term
        The lexicon's terms.
    forms : mapping
        For each name or word, the forms that no rule makes, each with its kind.
    symbols : mapping
        Signs and what they show.
    """

    __slots__ = ("_families", "_known", "_owners", "heads", "own", "starts", "symbols", "terms")

    def __init__(
        self,
        terms: Iterable[Term],
        forms: Mapping[str, Sequence[tuple[str, TermForm]]],
        symbols: Mapping[str, Symbol],
    ) -> None:
        self.terms = tuple(terms)
        self.symbols = symbols
        self.own: dict[str, tuple[Pattern, ...]] = {}
        self._families = _Families(self.terms, forms)
        self._known: dict[tuple[tuple[str, ...], tuple[str, ...]], TermIndex] = {}
        self.heads = _by_first_word(
            Pattern(words, term, form, "curriculum", term.headword)
            for term in self.terms
            for words, form in self._families.forms_of(term.name)
        )
        self.starts = frozenset(self.heads).union(symbols)
        self._owners = {
            pattern.words: pattern
            for patterns in reversed(self.heads.values())
            for pattern in reversed(patterns)
        }

    def with_targets(self, targets: Sequence[str], earlier: Sequence[str] = ()) -> TermIndex:
        """Return an index that also finds a plan's terms, whether or not the lexicon has them.

        Parameters
        ----------
        targets : sequence of str
            Today's terms, as the teacher wrote them.
        earlier : sequence of str
            Terms of earlier lessons.

        Returns
        -------
        TermIndex
            Shares everything with this one; kept, so that asking again costs nothing.
        """
        asked = (tuple(targets), tuple(earlier))
        if not any(asked):
            return self
        known = self._known.get(asked)
        if known is None:
            if len(self._known) >= _REMEMBERED:
                self._known.clear()
            known = self._known[asked] = self._extended(*asked)
        return known

    def find_term(self, words: str) -> Term | None:
        """Return the lexicon's term of which ``words`` is a form, or None."""
        pattern = self._owners.get(split_words(words))
        return None if pattern is None else pattern.term

    def _extended(self, targets: tuple[str, ...], earlier: tuple[str, ...]) -> TermIndex:
        index = object.__new__(TermIndex)
        index.terms, index.symbols, index.heads = self.terms, self.symbols, self.heads
        index._families, index._owners = self._families, self._owners
        index._known = self._known
        patterns: list[Pattern] = []
        for kind, names in (("target", targets), ("earlier", earlier)):
            for name in names:
                patterns.extend(self._own_patterns(name, kind == "target"))
        index.own = _by_first_word(patterns)
        index.starts = self.starts.union(index.own)
        return index

    def _own_patterns(self, name: str, is_target: bool) -> Iterator[Pattern]:
        words = split_words(name.partition(" (")[0])
        if not words:
            return
        owner = self._owners.get(words)
        term = Term(name) if owner is None else owner.term
        kind: Literal["target", "earlier"] = "target" if is_target else "earlier"
        shown = name if is_target or owner is None else term.headword
        yield Pattern(words, term, "exact", kind, shown)
        bases = {" ".join(words)}
        if owner is not None and owner.form in ("exact", "inflected"):
            bases.add(term.name)
        elif owner is None:
            bases.add(" ".join((*words[:-1], singular(words[-1]))))
        for base in bases:
            for form_words, form in self._families.forms_of(base):
                if form_words != words:
                    yield Pattern(
                        form_words, term, "inflected" if form == "exact" else form, kind, shown
                    )


class _Families:
    """The forms of every name: by rule, by the table of forms, and across a family of words."""

    def __init__(
        self, terms: Sequence[Term], forms: Mapping[str, Sequence[tuple[str, TermForm]]]
    ) -> None:
        self._parts = {term.name.lower(): term.parts for term in terms}
        self._listed: dict[str, list[tuple[str, TermForm]]] = {}
        for word, listed in forms.items():
            for form, kind in listed:
                self._listed.setdefault(word, []).append((form, kind))
                if kind != "inflected":
                    self._listed.setdefault(form, []).append((word, kind))

    def forms_of(self, name: str) -> ItemsView[Words, TermForm]:
        found: dict[Words, TermForm] = {split_words(name): "exact"}
        name = name.lower()
        for form in self._inflected(name):
            found.setdefault(split_words(form), "inflected")
        for relative, kind in self._related(name):
            found.setdefault(split_words(relative), kind)
            for form in self._inflected(relative):
                found.setdefault(split_words(form), kind)
        return found.items()

    def _related(self, name: str) -> Iterator[tuple[str, TermForm]]:
        seen = {name}
        queue: list[tuple[str, TermForm]] = [(name, "variant")]
        for word, through in queue:
            for relative, kind in self._listed.get(word, ()):
                if kind == "inflected" or relative in seen:
                    continue
                seen.add(relative)
                reached: TermForm = "derived" if "derived" in (kind, through) else "variant"
                queue.append((relative, reached))
                yield relative, reached

    def _inflected(self, name: str) -> Iterator[str]:
        listed = [form for form, kind in self._listed.get(name, ()) if kind == "inflected"]
        yield from listed
        *before, last = name.split(" ")
        parts = self._parts.get(name)
        if parts is None:
            if last.endswith(("s", "ed", "ing")) and last not in self._parts:
                return
            # A plan's own term, or a relative that is no headword: as its last word does.
            parts = self._parts.get(last, ("noun", "verb") if not before else ("noun",))
        if before and "verb" in parts:
            for form in inflections(before[0], ("verb",)):
                yield " ".join((form, *before[1:], last))
            return
        for form in (*inflections(last, parts), *(self._irregular(last) if before else ())):
            yield " ".join((*before, form))

    def _irregular(self, word: str) -> Iterator[str]:
        for form, kind in self._listed.get(word, ()):
            if kind == "inflected":
                yield form


def split_words(text: str) -> Words:
    """Return the words of a term as texts are compared: lower case, no hyphens between words."""
    pieces = PIECES.findall(text.lower())
    if len(pieces) > 1:
        pieces = [piece for piece in pieces if piece not in "-."]
    return tuple(pieces)


def _by_first_word(patterns: Iterable[Pattern]) -> dict[str, tuple[Pattern, ...]]:
    heads: dict[str, list[Pattern]] = {}
    for pattern in patterns:
        heads.setdefault(pattern.words[0], []).append(pattern)
    return {
        word: tuple(
            sorted(
                found,
                key=lambda p: (-len(p.words), p.kind != "target", _RANK[p.form], "(" in p.shown),
            )
        )
        for word, found in heads.items()
    }


@lru_cache(maxsize=1)
def load_terms() -> TermIndex:
    """Load the vocabulary, its forms and the symbols.

    Returns
    -------
    TermIndex
        One for the life of the process.

    Raises
    ------
    LexiconError
        If a table is not as it should be; the message names file and line.
    """
    terms = [_read_term(row) for row in load_rows(LEXICON / "vocabulary.csv", _COLUMNS, ["term"])]
    forms: dict[str, list[tuple[str, TermForm]]] = {}
    columns = ["word", "form", "kind"]
    for row in load_rows(LEXICON / "forms.csv", columns, ["word", "form"]):
        forms.setdefault(row["word"], []).append((row["form"], _read_form(row)))
    symbols = {
        row["symbol"]: Symbol(tuple(row["shows"].split("|")), row["place"])
        for row in load_rows(LEXICON / "symbols.csv", ["symbol", "shows", "place"], ["symbol"])
    }
    return TermIndex(terms, forms, symbols)


def _read_term(row: Mapping[str, str]) -> Term:
    year = row["first_year"]
    if year != "R" and not year.isdigit():
        raise LexiconError(
            f"vocabulary.csv, term {row['term']!r}: first_year is {year!r}; write R or 1 to 6"
        )
    word_type = row["word_type"]
    if word_type not in ("technical", "subtechnical", "symbolic", "general", "everyday"):
        raise LexiconError(f"vocabulary.csv, term {row['term']!r}: unknown word_type {word_type!r}")
    return Term(
        row["term"],
        row["domain"],
        0 if year == "R" else int(year),
        row["source"],
        row["from_memory"] == "yes",
        row["everyday_sense_risk"] == "yes",
        word_type,  # type: ignore[arg-type]  # checked above
        tuple(row["parts"].split()),
        frozenset(row["hides"].split()),
    )


def _read_form(row: Mapping[str, str]) -> TermForm:
    kind = row["kind"]
    if kind not in ("inflected", "derived", "variant"):
        raise LexiconError(
            f"forms.csv, form {row['form']!r}: kind is {kind!r}; "
            "write inflected, derived or variant"
        )
    return kind  # type: ignore[return-value]  # checked above
