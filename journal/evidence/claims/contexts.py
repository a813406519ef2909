"""What stands around a side: whether its beginning and its end are really its own."""

from __future__ import annotations

from journal.evidence.claims.expressions import read_side
from journal.evidence.claims.lexing import Lexemes
from journal.evidence.claims.numbers import read_number
from journal.evidence.claims.relations import read_relation
from journal.lexicon.facts import load_claim_words, load_number_words

_WORDS = load_number_words()
_OPERATOR_ENDS = load_claim_words()["operator ends"]
_LABELS = load_claim_words()["labels"]
_OPENERS = load_claim_words()["openers"]
_PRONOUN_HEADS = load_claim_words()["pronoun heads"]
_OPEN = load_claim_words()["goes on"]
_SAFE_AFTER = load_claim_words()["new thought"]
_HEARD_AS = frozenset(("too", "to", "tu", "won", "for", "fore", "ate", "sicks", "free"))
_SAID_OF_NUMBERS = frozenset(
    ("even", "odd", "prime", "a", "an", "not", "bigger", "smaller", "more", "less", "divisible")
)
_TENS = frozenset(word for word, entry in _WORDS.items() if entry.kind == "ten")
_STATING = (
    load_claim_words()["equal verbs"]
    | load_claim_words()["property verbs"]
    | frozenset(("=", "<", ">", "to", "rounds", "rounded"))
) - frozenset(("left", "will", "would"))
_DOUBT_AFTER_AND = load_claim_words()["goes on after and"]


def opens_statement(lexemes: Lexemes, at: int) -> bool:
    """Say whether a quantity at a lexeme is the beginning of a statement ("8 is a factor")."""
    side = read_side(lexemes, at)
    return side is not None and lexemes.text(side.end) in _STATING


def is_label(lexemes: Lexemes, at: int) -> bool:
    """Say whether the number at a lexeme only names something ("question 3", "year 5")."""
    before = lexemes.text(at - 1)
    if before in ("no", "number") and lexemes.text(at - 2) in ("the", "a", "any", "my", "this"):
        return False
    return before in _LABELS or (before == "#")


def begins_itself(lexemes: Lexemes, at: int, free_from: int) -> bool | None:
    """Say whether a side can begin at a lexeme.

    Parameters
    ----------
    lexemes : Lexemes
        Of the working text.
    at : int
        First lexeme of the side.
    free_from : int
        Where the last statement ended: what follows it directly begins afresh.

    Returns
    -------
    bool or None
        True: yes. False: no, it is the rest of something longer. None: perhaps.
    """
    before = lexemes.item(at - 1)
    if at == free_from or not before.text:
        return True
    if before.text in _OPERATOR_ENDS:
        if before.text in ("-", "–") and not lexemes.glued(at):
            # A bullet, or a dash between clauses.
            return None if lexemes.item(at - 2).kind == "numeral" else True
        return False
    if before.kind in ("numeral", "barrier"):
        return True if is_label(lexemes, at - 1) else None
    if before.text in ("=", "<"):
        return False
    word = _WORDS.get(before.text)
    if word is not None:
        return None
    if before.text in ("of", "a", "an", "the", "another"):
        return None
    if before.text == "and" and at - 1 != free_from:
        two = lexemes.item(at - 2)
        if two.kind == "numeral" or two.text in _WORDS:
            # "I did 45 add 38 and 45 + 38 = 83": the calculation before is whole.
            return True if lexemes.text(at - 3) in _OPERATOR_ENDS else None
    if before.text == "," and at - 1 != free_from and lexemes.item(at - 2).kind == "numeral":
        return None
    return True


def opens_freely(lexemes: Lexemes, at: int, free_from: int) -> bool:
    """Say whether a lone number at a lexeme stands at the beginning of its clause."""
    if is_label(lexemes, at):
        return False
    before = lexemes.item(at - 1)
    if before.text == "number" and lexemes.text(at - 2) in ("the", "my"):
        return True
    return at == free_from or not before.text or before.text in _OPENERS


def names_one(lexemes: Lexemes, at: int) -> bool:
    """Say whether "one" at a lexeme stands for a thing ("this one", "the last one")."""
    if lexemes.text(at) != "one":
        return False
    before = lexemes.text(at - 1)
    return before in _PRONOUN_HEADS or (
        lexemes.item(at - 1).kind == "word" and before not in _OPENERS
    )


def goes_on(lexemes: Lexemes, end: int, *, symbol: bool) -> bool:
    """Say whether the right side may go on after ``end`` in a way that was not read.

    Parameters
    ----------
    lexemes : Lexemes
        Of the working text.
    end : int
        One past the side.
    symbol : bool
        After "=" an unknown word is taken for the next thought; after "is" for what is counted.
    """
    after = lexemes.item(end)
    if not after.text:
        return False
    if after.text in ("-", "–") and not lexemes.glued(end + 1):
        # A dash before the next thought: a number after it would have been taken away.
        return False
    if after.text in _OPEN:
        return True
    if after.kind == "numeral" and lexemes.text(end + 1) == ")":
        # The next one of a numbered list.
        return False
    if after.text in _HEARD_AS and lexemes.text(end - 1) in _TENS:
        # "forty too", "thirty won": two or one may be meant.
        return True
    if after.kind in ("numeral", "barrier") or after.text in _WORDS:
        # Another statement may begin here without any comma.
        return not _statement_at(lexemes, end)
    if after.text == "and":
        after_and = end + 1 + (lexemes.text(end + 1) == "then")
        if lexemes.text(after_and) in _DOUBT_AFTER_AND and not _statement_at(lexemes, after_and):
            return True
        number = read_side(lexemes, after_and)
        if number is None:
            return False
        relation = read_relation(lexemes, number.end)
        # "is 60 and 15 and that is 75": the second belongs to the first.
        return relation is None or (relation.told and not number.operation)
    if after.text == "," and read_number(lexemes, end + 1) is not None:
        return not _statement_at(lexemes, end + 1)
    if after.kind != "word" or symbol:
        return after.kind == "word" and lexemes.glued(end) and after.text != "x"
    return after.text not in _SAFE_AFTER


def _statement_at(lexemes: Lexemes, at: int) -> bool:
    side = read_side(lexemes, at)
    if side is None:
        return False
    if not side.operation:
        verb, said = lexemes.text(side.end), lexemes.text(side.end + 1)
        nearest = verb in ("to", "rounded") and "nearest" in lexemes.texts[side.end : side.end + 4]
        return nearest or (verb in ("is", "are", "isn't", "isnt") and said in _SAID_OF_NUMBERS)
    return read_relation(lexemes, side.end) is not None


def thought_ends(lexemes: Lexemes, at: int) -> bool:
    """Say whether nothing that belongs to what was said stands at a lexeme."""
    after = lexemes.item(at)
    if not after.text or after.kind != "word":
        return after.text not in ("-", "/", "%", "'")
    return after.text in _SAFE_AFTER
