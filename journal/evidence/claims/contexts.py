"""What stands around a side: whether its beginning and its end are really its own."""

from __future__ import annotations

from journal.evidence.claims.expressions import read_side
from journal.evidence.claims.lexing import Lexemes
from journal.evidence.claims.numbers import read_number
from journal.evidence.claims.relations import read_relation
from journal.lexicon.facts import load_number_words

_WORDS = load_number_words()
_OPERATOR_ENDS = frozenset(
    "+ - – × x * ÷ / plus add minus times by subtract takeaway away multiplied divided into "
    "between than lots groups sets ^ point % £ double half twice from".split()
)
_LABELS = frozenset(
    "question questions q number no num page pages year years day step part group table chapter "
    "lesson grade room class team level stage set unit task problem exercise activity row column "
    "line example challenge match game round age aged section card side shape box sum figure "
    "picture diagram letter option answer book week term test paper star mission quiz".split()
)
_OPENERS = frozenset(
    "because that know knew so and then think thought but as since cos cuz coz becuase say said "
    "says means mean like if when or also , . : ; ! ( \" ' \n see noticed learned learnt realised "
    "found first therefore wrote put yes ok well example e.g eg - → > is? now only remember "
    "remembered saw worked out out showed shows prove checked".split()
)
_PRONOUN_HEADS = frozenset("this that last first next each which another only every other".split())
_OPEN = frozenset(
    "+ - – × x * ÷ / % of more less fewer times lots groups point : out or to remainder r rem "
    "th st nd rd bigger smaller point ^ wrong marks points and-a ish . . . rounded roughly".split()
) - {"."}
_SAFE_AFTER = frozenset(
    "and so because but then which when that not as cos cuz coz since if after now for in i we it "
    "my you he she they the is are was were altogether total too also exactly correct right again "
    "next first obviously actually really like on with using from at by until while though "
    "although therefore this these those its it's i'm i've left each in all he's just well yes no "
    "ok wait oh um even who how why what where same still always never this's that's thats lol "
    "instead is isnt isn't however his her our their your our here there later before i'd i'll "
    "and? my mine makes make equals equal gives where whereas unless even finally lastly second "
    "secondly once easily easy be has have had did do does can".split()
)
_DOUBT_AFTER_AND = frozenset("another one some a an add then plus more half there".split())


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
    before = lexemes[at - 1]
    if at == free_from or not before.text:
        return True
    if before.text in _OPERATOR_ENDS:
        if before.text in ("-", "–") and not lexemes.glued(at):
            # A bullet, or a dash between clauses.
            return None if lexemes[at - 2].kind == "numeral" else True
        return False
    if before.kind in ("numeral", "barrier"):
        return True if is_label(lexemes, at - 1) else None
    if before.text in ("=", "<"):
        return False
    word = _WORDS.get(before.text)
    if word is not None:
        return None
    if before.text in ("of", "a", "an", "the"):
        return None
    if before.text == "and" and at - 1 != free_from:
        two = lexemes[at - 2]
        if two.kind == "numeral" or two.text in _WORDS:
            return None
    if before.text == "," and at - 1 != free_from and lexemes[at - 2].kind == "numeral":
        return None
    return True


def opens_freely(lexemes: Lexemes, at: int, free_from: int) -> bool:
    """Say whether a lone number at a lexeme stands at the beginning of its clause."""
    if is_label(lexemes, at):
        return False
    before = lexemes[at - 1]
    return at == free_from or not before.text or before.text in _OPENERS


def names_one(lexemes: Lexemes, at: int) -> bool:
    """Say whether "one" at a lexeme stands for a thing ("this one", "the last one")."""
    if lexemes.text(at) != "one":
        return False
    before = lexemes.text(at - 1)
    return before in _PRONOUN_HEADS or lexemes[at - 1].kind == "word" and before not in _OPENERS


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
    after = lexemes[end]
    if not after.text:
        return False
    if after.text in ("-", "–") and not lexemes.glued(end + 1):
        return read_number(lexemes, end + 1) is not None and lexemes.glued(end)
    if after.text in _OPEN:
        return True
    if after.kind in ("numeral", "barrier"):
        # Another statement may begin here without any comma.
        return not _statement_at(lexemes, end)
    if after.text == "and":
        following = lexemes.text(end + 1)
        if following in _DOUBT_AFTER_AND and not _statement_at(lexemes, end + 1):
            return True
        number = read_side(lexemes, end + 1)
        return number is not None and read_relation(lexemes, number.end) is None
    if after.text == "," and lexemes[end + 1].kind == "numeral":
        return not _statement_at(lexemes, end + 1)
    if after.kind != "word" or symbol:
        return after.kind == "word" and lexemes.glued(end) and after.text != "x"
    return after.text not in _SAFE_AFTER


def _statement_at(lexemes: Lexemes, at: int) -> bool:
    side = read_side(lexemes, at)
    return side is not None and side.operation and (read_relation(lexemes, side.end) is not None)
