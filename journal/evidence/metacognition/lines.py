"""An entry as the schemas of own learning read it: plain words, contractions written out."""

from __future__ import annotations

from bisect import bisect_right

from journal.evidence.clauses import Clause, find_clauses
from journal.evidence.mathematics import Mathematics
from journal.language.parse import Parse

_WRITTEN_OUT = {
    "n't": "not",
    "nt": "not",
    "n’t": "not",
    "cannot": "can not",
    "dont": "do not",
    "didnt": "did not",
    "'m": "am",
    "’m": "am",
    "m": "am",
    "im": "i am",
    "'s": "is",
    "’s": "is",
    "its": "it is",
    "thats": "that is",
    "'re": "are",
    "’re": "are",
    "'ve": "have",
    "’ve": "have",
    "ve": "have",
    "ive": "i have",
    "'ll": "will",
    "’ll": "will",
    "ll": "will",
    "'d": "would",
    "’d": "would",
    "ca": "can",
    "wo": "will",
    "cos": "because",
    "coz": "because",
    "cuz": "because",
    "cus": "because",
    "bc": "because",
    "practice": "practise",
}
_REACH = 16


class Lines:
    """The words of an entry with its clauses.

    Parameters
    ----------
    parse : Parse
        The entry.
    mathematics : Mathematics
        What each token speaks of; such a word ends in ``#``.
    """

    def __init__(self, parse: Parse, mathematics: Mathematics) -> None:
        self.parse = parse
        self.mathematics = mathematics
        self.clauses = find_clauses(parse)
        self.words = [
            _WRITTEN_OUT.get(token.lower, token.lower) + ("#" if kind else "")
            for token, kind in zip(parse.tokens, mathematics.kinds, strict=True)
        ]

    def say(self, first: int, after: int) -> str:
        """Return the words of ``tokens[first:after]``, apart by single spaces."""
        return " ".join(self.words[first:after])

    def following(self, at: int) -> str:
        """Return the words that follow a token in its sentence, a score of them at most."""
        return self.say(at + 1, min(self.end_of_sentence(at), at + 1 + _REACH))

    def end_of_sentence(self, at: int) -> int:
        """Return one past the last token of the token's sentence."""
        return self.parse.sentence(at)[1]

    def say_clause(self, number: int) -> str:
        """Return the words of a clause, or nothing where there is no such clause."""
        if not 0 <= number < len(self.clauses):
            return ""
        clause = self.clauses[number]
        return self.say(clause.first, clause.after)

    def clause_at(self, at: int) -> int:
        """Return the number of the clause that holds a token, or that a joint follows."""
        return max(0, bisect_right(self.clauses, at, key=_first_of) - 1)


def _first_of(clause: Clause) -> int:
    return clause.first
