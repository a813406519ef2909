"""One entry read from left to right: unknown words first, then real words in their neighbours."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass

from journal.records import Spelling, SpellingKind
from journal.text.confusions import Confusions
from journal.text.spelling.reading import LONGEST, Reading
from journal.text.spelling.tokens import STOP, Piece

_SURE_OF_A_NAME = 0.4
_SURE_AT_THE_START = 0.8
_COMMON_ZIPF = 4.0
_JOIN_ZIPF = 3.4
_LEAST_ENGLISH = 0.5
_LEAST_KNOWN = 0.25
_ENOUGH_WORDS = 5
_SURELY_ENGLISH = 0.6
_CLITICS = frozenset({"s", "d", "m", "ll", "re", "ve"})


@dataclass(frozen=True, slots=True)
class WordKnowledge:
    """What the speller knows of words; see `journal.text.spelling.Speller`."""

    words: Mapping[str, float]
    doubtful: frozenset[str]
    likelier: Mapping[str, float]
    today: frozenset[str]
    mathematics: frozenset[str]
    readings: Mapping[str, str]
    contracted: frozenset[str]
    joins: Mapping[str, str]
    join_starts: frozenset[str]
    confusions: Confusions
    read: Callable[[str], Reading | None]

    def knows(self, word: str) -> bool:
        """Say whether a lower-case word, its possessive or the parts of its hyphens are known."""
        if word in self.words or word in self.today:
            return True
        if "'" in word:
            head, _, tail = word.rpartition("'")
            if tail == "t" or word in self.contracted:
                return word in self.contracted
            return tail in _CLITICS and self.knows(head)
        if "-" in word:
            parts = word.split("-")
            # "co-ordinated": a prefix set off; "rect-angle" is a word broken in two.
            prefixed = parts[0] in self.words and "".join(parts) in self.words
            return prefixed or all(part in self.words for part in parts)
        return False


class EntryReading:
    """The corrections of one entry, found piece by piece."""

    def __init__(
        self, pieces: list[Piece], clean: str, original: str, knowledge: WordKnowledge
    ) -> None:
        self._pieces = pieces
        self._clean = clean
        self._original = original
        self._know = knowledge
        self._found: dict[int, Spelling] = {}
        self._swallowed: set[int] = set()
        self._shouting = _is_shouting(pieces)

    def find(self) -> list[Spelling]:
        """Return the corrections in order; none if most of the words are not English."""
        words = known = accented = 0
        likely = 0.0
        know = self._know
        for i, piece in enumerate(self._pieces):
            if not piece.is_word:
                words += piece.surface.isalpha()
                accented += not piece.surface.isascii() and piece.surface.isalpha()
                continue
            if i in self._swallowed:
                continue
            words += 1
            lower = piece.lower
            if lower in know.join_starts and self._join_known(i):
                known += 1
            elif lower in know.readings and (len(lower) > 1 or piece.surface == lower):
                known += 1
                self._read_fixed(i, know.readings[lower])
            elif know.knows(lower):
                if len(lower) == 1:
                    words -= 1
                elif lower not in know.doubtful:
                    known += 1
            elif len(lower) <= LONGEST:
                likely += self._read_unknown(i)
        english = known + likely >= _LEAST_ENGLISH * words
        if words >= _ENOUGH_WORDS:
            # Foreign words can look misspelt, but few are English, or mathematics, as they stand.
            least = _LEAST_ENGLISH if accented else _LEAST_KNOWN
            lesson = sum(spelling.read_as in know.mathematics for spelling in self._found.values())
            english = english and known + lesson >= least * words
        if words > 2 and not english:
            return []
        self._read_real_words()
        return [self._found[i] for i in sorted(self._found)]

    def _read_fixed(self, i: int, read_as: str, ending: str = "") -> None:
        piece = self._pieces[i]
        if "'" in read_as and read_as.replace("'", "") == piece.lower:
            why = f"'{read_as}' without its apostrophe"
        else:
            why = f"a child's spelling of '{read_as}'"
        self._add(i, i, read_as + ending, "non_word", why)

    def _join_known(self, i: int) -> bool:
        if not self._followed(i):
            return False
        pair = f"{self._pieces[i].lower} {self._pieces[i + 1].lower}"
        read_as = self._know.joins.get(pair)
        if read_as is None:
            return False
        self._add(i, i + 1, read_as, "split", f"the two parts make one word, '{read_as}'")
        return True

    def _followed(self, i: int) -> bool:
        """Say whether one word follows another after a single space."""
        if i + 1 >= len(self._pieces):
            return False
        piece, after = self._pieces[i], self._pieces[i + 1]
        return after.is_word and piece.is_word and self._clean[piece.end : after.start] == " "

    def _join_unknown(self, i: int) -> bool:
        pieces, know = self._pieces, self._know
        for first in (i - 1, i):
            if first < 0 or not self._followed(first) or first in self._found:
                continue
            if first in self._swallowed:
                continue
            whole = pieces[first].lower + pieces[first + 1].lower
            likely = know.words.get(whole, 0.0) + know.likelier.get(whole, 0.0)
            if likely < _JOIN_ZIPF and whole not in know.today:
                continue
            self._add(first, first + 1, whole, "split", f"the two parts make one word, '{whole}'")
            return True
        return False

    def _read_unknown(self, i: int) -> float:
        """Correct one unknown word if it can be; return how English it looks, from 0 to 1."""
        piece = self._pieces[i]
        lower = piece.lower
        if len(lower) < 2 or (piece.surface.isupper() and not self._shouting):
            return 0.5
        if self._join_unknown(i):
            return 1.0
        ending = ""
        if lower.endswith("'s"):
            lower, ending = lower[:-2], "'s"
        letters = lower.replace("-", "").replace("'", "")
        if letters in self._know.readings:
            self._read_fixed(i, self._know.readings[letters], ending)
            return 1.0
        if len(letters) < 2:
            return 0.5
        if letters in self._know.words and letters != lower:
            self._add(i, i, letters + ending, "non_word", f"'{letters}', written as one word")
            return 1.0
        reading = self._know.read(letters)
        if reading is None:
            return 0.0
        capital = piece.surface[0].isupper() and not self._shouting
        if capital and not self._sure_of(reading, opens=piece.opens):
            return 0.5
        self._add(i, i, reading.read_as + ending, reading.kind, self._why(reading))
        return 1.0 if reading.cost < _SURELY_ENGLISH else 0.3

    def _sure_of(self, reading: Reading, *, opens: bool) -> bool:
        """Say whether a word with a capital is a misspelling rather than a name."""
        likely = reading.read_as in self._know.likelier
        if opens:
            common = likely or self._know.words.get(reading.read_as, 0.0) >= _COMMON_ZIPF
            return common and reading.cost <= _SURE_AT_THE_START
        return likely and reading.cost <= _SURE_OF_A_NAME

    def _why(self, reading: Reading) -> str:
        word = reading.read_as
        if reading.kind == "join":
            return f"two words written as one, '{word}'"
        likeness = f"sounds like '{word}'" if reading.by_sound else f"a slip away from '{word}'"
        if word in self._know.today:
            return f"{likeness}, a word of today's lesson"
        return likeness

    def _read_real_words(self) -> None:
        words = [piece.lower for piece in self._pieces]
        indices: Sequence[int] = range(len(words))
        confusions = self._know.confusions
        if not self._found:
            # Most entries: the words stand as they are.
            if confusions.words.isdisjoint(words):
                return
        else:
            words, indices = self._read_so_far()
        for at, word in enumerate(words):
            i = indices[at]
            if word not in confusions or i in self._found or not self._pieces[i].is_word:
                continue
            decided = confusions.find_reading(words, at)
            if decided is None:
                continue
            read_as, (first, last) = decided
            quoted = self._quote(indices[first], indices[last])
            self._add(i, i, read_as, "real_word", f"read as '{read_as}' because of '{quoted}'")
            words[at] = read_as

    def _read_so_far(self) -> tuple[list[str], list[int]]:
        """Return the words with the corrections, and the piece that each stands in."""
        words: list[str] = []
        indices: list[int] = []
        for i, piece in enumerate(self._pieces):
            if i in self._swallowed:
                continue
            spelling = self._found.get(i)
            read = [piece.lower] if spelling is None else spelling.read_as.lower().split()
            words.extend(read)
            indices.extend([i] * len(read))
        return words, indices

    def _quote(self, first: int, last: int) -> str:
        # A sentence's end is no word to quote.
        while first < last and self._pieces[first].lower == STOP:
            first += 1
        while last > first and self._pieces[last].lower == STOP:
            last -= 1
        return self._original[self._pieces[first].start : self._pieces[last].end]

    def _add(self, first: int, last: int, read_as: str, kind: SpellingKind, why: str) -> None:
        start, end = self._pieces[first].start, self._pieces[last].end
        surface = self._original[start:end]
        self._found[first] = Spelling(start, end, surface, _cased(read_as, surface), kind, why)
        self._swallowed.update(range(first + 1, last + 1))


def _cased(read_as: str, surface: str) -> str:
    if len(surface) > 1 and surface.isupper():
        return read_as.upper()
    if surface[0].isupper() or read_as == "i" or read_as.startswith("i'"):
        return read_as[0].upper() + read_as[1:]
    return read_as


def _is_shouting(pieces: list[Piece]) -> bool:
    words = [piece.surface for piece in pieces if piece.is_word and len(piece.surface) > 1]
    return len(words) > 2 and sum(word.isupper() for word in words) > 0.7 * len(words)
