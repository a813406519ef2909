"""Whether the child stands by a statement: not quoted, asked, rejected, supposed or given up."""

from __future__ import annotations

from journal.evidence.claims.lexing import Lexemes
from journal.evidence.claims.phrases import load_operation_words
from journal.evidence.claims.verdicts import Found
from journal.lexicon.facts import load_claim_words, load_number_words

_LISTS = load_claim_words()
_SENTENCE_ENDS = _LISTS["sentence ends"]
_SPEECH = _LISTS["speech verbs"]
_OWN = _LISTS["own subjects"]
_OTHER = _LISTS["other subjects"]
_ADVERBS = _LISTS["speech adverbs"]
_TURNS = _LISTS["turns"]
_BELIEF = _LISTS["belief verbs"]
_SUPPOSING = _LISTS["supposing"]
_SUPPOSED = _LISTS["supposed fillers"]
_WRONG = _LISTS["wrong"]
_MISTAKEN = _LISTS["mistaken"]
_POINTERS = _LISTS["pointers"]
_DENIALS = _LISTS["denials"]
_NUMBERS = load_number_words()
_ENDORSING = (
    ("i", "agree"),
    ("i", "agreed"),
    ("i", "believed"),
    ("i", "believe"),
    ("i", "think", "so"),
    ("he", "was", "right"),
    ("she", "was", "right"),
    ("they", "were", "right"),
    ("he", "is", "right"),
    ("she", "is", "right"),
    ("they", "are", "right"),
    ("she's", "right"),
    ("he's", "right"),
    ("is", "right"),
    ("is", "correct"),
    ("is", "true"),
    ("was", "right"),
    ("was", "correct"),
    ("that's", "right"),
    ("thats", "right"),
)
_VERB_FIRST = load_operation_words()["verb"]
_FORMER = (
    ("at", "first"),
    ("used", "to", "think"),
    ("used", "to", "believe"),
    ("first", "i", "thought"),
    ("before", "i", "thought"),
    ("originally",),
    ("i", "first", "thought"),
    ("to", "begin", "with"),
    ("to", "start", "with"),
    ("before", "today"),
    ("before", "this", "lesson"),
    ("last", "week", "i", "thought"),
    ("yesterday", "i", "thought"),
    ("in", "the", "past"),
    ("i", "once", "thought"),
    ("i", "always", "thought"),
    ("i", "had", "thought"),
    ("i", "nearly", "said"),
    ("i", "nearly", "put"),
    ("i", "almost", "said"),
    ("i", "almost", "put"),
)
_REJECTED = (
    ("not", "true", "that"),
    ("not", "right", "that"),
    ("not", "correct", "that"),
    ("isn't", "true", "that"),
    ("isnt", "true", "that"),
    ("isn't", "right", "that"),
    ("wasn't", "true", "that"),
    ("wrong", "that"),
    ("wrong", "to", "say"),
    ("wrong", "to", "think"),
    ("wrong", "because", "they", "thought"),
    ("false", "that"),
    ("impossible", "that"),
    ("don't", "think"),
    ("dont", "think"),
    ("do", "not", "think"),
    ("don't", "believe"),
    ("don't", "agree"),
    ("dont", "agree"),
    ("do", "not", "agree"),
    ("disagree",),
    ("instead", "of"),
    ("rather", "than"),
    ("not", "sure"),
    ("wasn't", "sure"),
    ("unsure",),
    ("true", "or", "false"),
    ("by", "accident"),
    ("by", "mistake"),
    ("mixed", "up"),
    ("forgot", "to"),
    ("forgetting", "to"),
    ("didn't", "carry"),
    ("mistake", "was"),
    ("mistake", "and"),
    ("mistake", "of"),
    ("what", "if"),
    ("wonder",),
    ("wondered",),
)
_COUNTING = _LISTS["counting"]
_FIRST_SAID = (
    ("first", "i", "said"),
    ("first", "i", "put"),
    ("first", "i", "wrote"),
    ("first", "i", "believed"),
)
_LONGEST = 30
_NEAR = 9


def is_asserted(lexemes: Lexemes, found: Found) -> bool:
    """Say whether the child asserts a statement.

    Parameters
    ----------
    lexemes : Lexemes
        Of the working text.
    found : Found
        The statement.

    Returns
    -------
    bool
        False for what is quoted or reported, asked, supposed, rejected, or was once believed.
    """
    before = _before(lexemes, found.start)
    return not (
        _is_asked(lexemes, found, before)
        or _is_supposed(lexemes, found, before)
        or _would_be(lexemes, found, before)
        or _is_rejected(before)
        or _was_believed(lexemes, found, before)
        or (_is_reported(lexemes, found, before) and not _is_endorsed(lexemes, found.end))
        or _is_quoted(lexemes, found, before)
        or _is_taken_back(lexemes, found)
    )


def is_supposed(lexemes: Lexemes, found: Found) -> bool:
    """Say whether a statement is only supposed ("if 7 x 8 = 54 then..")."""
    return _is_supposed(lexemes, found, _before(lexemes, found.start))


def sentence_end(lexemes: Lexemes, at: int) -> int:
    """Return the first sentence end at or after a lexeme."""
    while at < len(lexemes) and lexemes.text(at) not in _SENTENCE_ENDS:
        at += 1
    return at


def _before(lexemes: Lexemes, start: int) -> list[str]:
    """Return the words of the sentence before a statement."""
    first = start
    while first > 0 and start - first < _LONGEST:
        if lexemes.text(first - 1) in _SENTENCE_ENDS:
            break
        first -= 1
    return lexemes.texts[first:start]


def _is_asked(lexemes: Lexemes, found: Found, before: list[str]) -> bool:
    for at in range(found.end, found.end + 4):
        if lexemes.text(at) == "?":
            return True
        if lexemes.text(at) in (*_SENTENCE_ENDS, "because", "so", "and", "but"):
            break
    if not before or before[-1] not in ("is", "does", "are", "do", "can", "was", "could"):
        return False
    opener = before[-2] if len(before) > 1 else ""
    return opener in ("", "and", ",", "but", "so", "why", "how", "asked", "when", "or", ":", '"')


def _is_supposed(lexemes: Lexemes, found: Found, before: list[str]) -> bool:
    at = _last(before, _SUPPOSING)
    if at is None:
        return before[-2:] in (["let's", "say"], ["lets", "say"])
    rest = before[at + 1 :]
    if before[at - 1 : at] == ["even"]:
        return False
    if not all(word in _SUPPOSED for word in rest):
        return False
    # "if you add 3 and 4 you get 7" tells what is so.
    return not (rest in (["you"], ["i"], ["we"]) and lexemes.text(found.start) in _VERB_FIRST)


def _would_be(lexemes: Lexemes, found: Found, before: list[str]) -> bool:
    """Say whether a statement follows from something supposed: "if that worked 3 + 4 would be"."""
    at = _last(before, _SUPPOSING)
    if at is None or "would" not in lexemes.texts[found.start : found.end]:
        return False
    # "if you add 3 and 4 it would be 7" supposes nothing strange.
    return not any(word.isdigit() or word in _NUMBERS for word in before[at:])


def _last(words: list[str], wanted: frozenset[str]) -> int | None:
    for at in range(len(words) - 1, -1, -1):
        if words[at] in wanted:
            return at
    return None


def _ends(words: list[str], phrases: tuple[tuple[str, ...], ...]) -> int | None:
    """Return one past the last place where one of some phrases stands."""
    best = None
    for at in range(len(words)):
        for phrase in phrases:
            if words[at] == phrase[0] and tuple(words[at : at + len(phrase)]) == phrase:
                best = at + len(phrase)
    return best


def _is_rejected(before: list[str]) -> bool:
    if before and before[-1] in ("not", "never"):
        return True
    if before[-2:] in (["not", "that"], ["not", "because"]):
        return True
    if not _MISTAKEN.isdisjoint(before[-6:]):
        return True
    end = _ends(before, _REJECTED)
    if end is None:
        return False
    rest = before[end:]
    return len(rest) <= 7 and not any(
        word in _TURNS or word in ("because", "so", "then", "cos", "since") for word in rest
    )


def _was_believed(lexemes: Lexemes, found: Found, before: list[str]) -> bool:
    end = _ends(before, _FORMER)
    if end is not None:
        rest = before[end:]
        held = "thought" in before[end - 1 :] or "think" in before or not rest
        held = held or not _BELIEF.isdisjoint(before)
        if held and not any(word in _TURNS or word == "realised" for word in rest):
            return True
    wrong = found.verdict == "false"
    end = _ends(before, _FIRST_SAID)
    if end is not None and wrong and _TURNS.isdisjoint(before[end:]):
        return True
    at = _last(before, frozenset(("thought", "believed", "assumed", "guessed")))
    if at is None or any(word in _TURNS for word in before[at:]):
        return False
    # A wrong idea told as past needs no turn after it.
    past = wrong and len(before) - at <= 3 and before[at - 1 : at] == ["i"]
    return past or _turns_after(lexemes, found.end)


def _turns_after(lexemes: Lexemes, end: int) -> bool:
    """Say whether what follows gives a belief up: "but..", "then I realised..", "it isn't"."""
    ended = False
    for at in range(end, end + 14):
        word = lexemes.text(at)
        if word in ("but", "until", "however", "actually", "realised", "realized"):
            return True
        if ended and word in ("now", "then") and at <= end + 3:
            return True
        if word == "now" and lexemes.text(at + 1) in ("i", "it", "i've"):
            return True
        if word in _SENTENCE_ENDS:
            if ended:
                return False
            ended = True
    return False


def _is_reported(lexemes: Lexemes, found: Found, before: list[str]) -> bool:
    if len(before) > 1 and before[-1] in ("goes", "went"):
        # "Zara goes 3 + 4 is 8"; "it goes 3, 6, 9" is no one's word.
        return before[-2].isalpha() and before[-2] not in _OWN and before[-2] not in _COUNTING
    after = found.end + (lexemes.text(found.end) in (",", '"'))
    after += lexemes.text(after) in (",", '"')
    if lexemes.text(after) in ("said", "says") and lexemes.text(after + 1) not in _OWN:
        return True
    at = _last(before, _SPEECH)
    while at is not None:
        rest = before[at + 1 :]
        if any(word in _OWN or word in _TURNS for word in rest) or len(rest) > 14:
            return False
        subject = _subject(before, at)
        if subject is None and before[at] == "did":
            at = _last(before[:at], _SPEECH)
            continue
        return subject is not None and subject not in _OWN
    return False


def _is_endorsed(lexemes: Lexemes, end: int) -> bool:
    """Say whether the child takes over what was reported: "and I agree", "and he was right"."""
    for at in range(end, end + 4):
        if any(lexemes.follows(at, *phrase) for phrase in _ENDORSING):
            return not any(word in ("but", "n't", "?") for word in lexemes.texts[end:at])
    return False


def _subject(before: list[str], at: int) -> str | None:
    """Return who says it: the nearest word before the verb that can be somebody."""
    place = at - 1
    while place >= 0 and before[place] in _ADVERBS:
        place -= 1
    if place < 0:
        return None
    word = before[place]
    if word in _OWN or word in _OTHER:
        return word
    if word in ("and", ",", "then", "or", "who"):
        for earlier in range(place - 1, -1, -1):
            if before[earlier] in _OWN:
                return before[earlier]
            if before[earlier] in _OTHER:
                return before[earlier]
        return None
    # A name, or another noun, right before "said".
    if before[at] in ("said", "says", "thinks", "thought", "reckons", "told", "claimed", "wrote"):
        return word if word.isalpha() and word not in ("because", "so", "that", "but") else None
    return None


def _is_quoted(lexemes: Lexemes, found: Found, before: list[str]) -> bool:
    marks = lexemes.texts[: found.start].count('"')
    if marks % 2 == 0 or '"' not in lexemes.texts[found.end :]:
        return False
    opening = _last(before, frozenset('"'))
    spoken = before[:opening] if opening is not None else before
    return not (_last(spoken, _SPEECH) is not None and _last(spoken, _OWN) is not None)


def _is_taken_back(lexemes: Lexemes, found: Found) -> bool:
    """Say whether the words after a statement take it back."""
    at = found.end
    word = lexemes.text(at)
    if word in ("no", "nope", "oops", "wait") or (
        word == "," and lexemes.text(at + 1) in ("no", "nope", "oops", "wait")
    ):
        return True
    if (
        lexemes.follows(at, "instead", "of")
        or lexemes.follows(at, "by", "mistake")
        or lexemes.follows(at, "by", "accident")
    ):
        return True
    turned = False
    while at < found.end + _NEAR:
        word = lexemes.text(at)
        if word in _WRONG:
            return at > found.end or word != "mistake"
        if word in ("isn't", "isnt", "not", "wasn't") and lexemes.text(at + 1) in (
            *("right", "true", "correct", "possible", "what"),
        ):
            return True
        if turned and word in _DENIALS:
            return True
        if turned and word == "is" and lexemes.item(at + 1).kind == "numeral":
            return True
        if word == "but":
            turned = True
        elif (word == "." and at <= found.end) or word == "," or word in _POINTERS:
            pass
        else:
            return False
        at += 1
    return False
