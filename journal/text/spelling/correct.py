"""The speller: which stretches of an entry are read as other words, and why."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from journal.records import Span, Spelling
from journal.text.confusions import Confusions
from journal.text.spelling.candidates import CandidateIndex
from journal.text.spelling.entry import EntryReading, WordKnowledge
from journal.text.spelling.likelihood import Weights
from journal.text.spelling.reading import Reading, find_reading
from journal.text.spelling.tokens import find_pieces

_TARGET = 3.0
_MEMO = 20_000
_LESSONS = 64
_ENDINGS = ("s", "es", "d", "ed", "ing", "er", "ly")


class Speller:
    """Reads children's spellings as the words they stand for.

    Parameters
    ----------
    words : mapping of str to float
        Every known lower-case word with its Zipf frequency; none is changed but by a rule.
    by_skeleton : mapping of str to sequence of str
        The words that may be corrections by `skeleton_key`, commonest first.
    weights : Weights
        What each feature of a slip counts; see `journal.text.spelling.likelihood`.
    doubtful : frozenset of str
        Known words that say nothing for the text being English: names and rarities.
    likelier : mapping of str to float
        Words of mathematics and reasoning, with what is added to their Zipf frequency.
    mathematics : frozenset of str
        Words of mathematics: misspelt, they still show that a text is English.
    readings : mapping of str to str
        Spellings with one meaning whatever stands beside them ("coz": "because").
    contractions : mapping of str to str
        Contractions by their form without the apostrophe ("dont": "don't").
    joins : mapping of str to str
        Two known words that are one ("be cause": "because").
    confusions : Confusions
        Rules for real words written for others.
    """

    def __init__(
        self,
        words: Mapping[str, float],
        by_skeleton: Mapping[str, Sequence[str]],
        *,
        weights: Weights,
        doubtful: frozenset[str] = frozenset(),
        likelier: Mapping[str, float] | None = None,
        mathematics: frozenset[str] = frozenset(),
        readings: Mapping[str, str] | None = None,
        contractions: Mapping[str, str] | None = None,
        joins: Mapping[str, str] | None = None,
        confusions: Confusions | None = None,
    ) -> None:
        self._words = words
        self._doubtful = doubtful
        self._likelier = dict(likelier or {})
        self._mathematics = mathematics
        self._contractions = dict(contractions or {})
        self._readings = {**self._contractions, **(readings or {})}
        self._joins = dict(joins or {})
        self._confusions = confusions or Confusions(())
        self._index = CandidateIndex(words, by_skeleton, weights, self._likelier)
        self._lessons: dict[tuple[str, ...], WordKnowledge] = {}

    @property
    def words(self) -> Mapping[str, float]:
        """Every known lower-case word with its Zipf frequency."""
        return self._words

    def find_corrections(
        self,
        clean: str,
        *,
        original: str | None = None,
        targets: Sequence[str] = (),
        excluded: Sequence[Span] = (),
    ) -> list[Spelling]:
        """Return the stretches that are read as other words.

        Parameters
        ----------
        clean : str
            Text after `normalise_characters`.
        original : str, optional
            The text as given, of the same length; by default ``clean``.
        targets : sequence of str
            The lesson's target terms.
        excluded : sequence of Span
            Stretches that are not the child's own.

        Returns
        -------
        list of Spelling
            In order, none overlapping; none if most of the words are not English.
        """
        original = clean if original is None else original
        pieces = find_pieces(clean, excluded)
        if not pieces:
            return []
        return EntryReading(pieces, clean, original, self._knowledge(tuple(targets))).find()

    def find_features(self, spelling: str) -> list[tuple[str, dict[str, float]]]:
        """Return the words a spelling may stand for, each with its features, for training."""
        return self._index.find_features(spelling, self._likelier, ())

    def _knowledge(self, targets: tuple[str, ...]) -> WordKnowledge:
        found = self._lessons.get(targets)
        if found is None:
            if len(self._lessons) >= _LESSONS:
                self._lessons.clear()
            found = self._lessons[targets] = self._make_knowledge(targets)
        return found

    def _make_knowledge(self, targets: tuple[str, ...]) -> WordKnowledge:
        today = self._forms(targets)
        likelier = self._likelier | dict.fromkeys(today, _TARGET)
        memo: dict[str, Reading | None] = {}

        def read(word: str) -> Reading | None:
            try:
                return memo[word]
            except KeyError:
                pass
            if len(memo) >= _MEMO:
                memo.clear()
            found = find_reading(
                word,
                self._index,
                self._words,
                likelier=likelier,
                today=today,
                contractions=self._contractions,
            )
            memo[word] = found
            return found

        return WordKnowledge(
            self._words,
            self._doubtful,
            likelier,
            today,
            self._mathematics | today,
            self._readings,
            frozenset(self._contractions.values()) | {"shan't", "needn't", "daren't", "mightn't"},
            self._joins,
            frozenset(pair.split()[0] for pair in self._joins),
            self._confusions,
            read,
        )

    def _forms(self, targets: Sequence[str]) -> frozenset[str]:
        """Return the words of the targets with those inflections that are words."""
        found: set[str] = set()
        for term in targets:
            for word in term.lower().replace("-", " ").split():
                if not (word.isascii() and word.isalpha()) or len(word) < 3:
                    continue
                found.add(word)
                stem = word[:-1] if word.endswith(("e", "y")) else word
                forms = [word + ending for ending in _ENDINGS]
                forms += [stem + ending for ending in ("ing", "ies", "ied")]
                found.update(form for form in forms if form in self._words)
        return frozenset(found)
