"""What a clause is besides mathematics: a feeling, somebody's word, a guess, a rule, learning."""

from __future__ import annotations

from collections.abc import Sequence

from journal.evidence.clauses import Clause
from journal.language.parse import Token
from journal.lexicon.reasoning_words import load_reasoning_words

WORDS = load_reasoning_words()

OWN = frozenset(("i", "got", "get", "me", "my", "we", "us", "our", "im", "ive"))
_NO_GROUND = WORDS["no_ground"]


def is_feeling(tokens: Sequence[Token], clause: Clause, present: frozenset[str]) -> bool:
    """Say so of "it was fun", "I like 48": a feeling or a judgement of the lesson (R1)."""
    own = not present.isdisjoint(("i", "we", "it", "its", "that", "this", "you", "me", "maths"))
    for word in present & WORDS["feeling"]:
        if word in ("stuck", "ill", "late") and present.isdisjoint(OWN):
            continue
        if word not in ("like", "likes", "love", "good", "best", "hard", "fast", "quick"):
            return True
        for i in range(clause.first, clause.after):
            token = tokens[i]
            if token.lower != word:
                continue
            if (token.pos == "VERB" and own) or (token.pos == "ADJ" and word != "like"):
                return True
    return False


def is_vouched(tokens: Sequence[Token], clause: Clause, present: frozenset[str]) -> bool:
    """Say so of "Miss said", "my partner got it": somebody else's word (R1)."""
    if not present.isdisjoint(WORDS["people"]) and not present.isdisjoint(WORDS["having"]):
        return True
    if present.isdisjoint(WORDS["telling"]):
        return False
    if not present.isdisjoint(WORDS["people"]) or not present.isdisjoint(("he", "she", "they")):
        return True
    return any(
        tokens[i].lower in WORDS["telling"] and tokens[i - 1].pos == "PROPN"
        for i in range(clause.first + 1, clause.after)
    )


def is_bare(tokens: Sequence[Token], clause: Clause, present: frozenset[str]) -> bool:
    """Say so of "I guessed", "I just know it", "I did it in my head"."""
    if present.isdisjoint(("i", "we")) or present.isdisjoint(WORDS["bare_knowing"]):
        return False
    if "know" in present and "my" in present:
        return True
    return all(
        token.pos not in ("NOUN", "NUM", "PROPN", "SYM") or token.lower in _NO_GROUND
        for token in tokens[clause.first : clause.after]
    )


def is_learning(present: frozenset[str], words: Sequence[str]) -> bool:
    """Say so of "it helped me", "I was stuck", "I dident get it": strand B, no mathematics."""
    if not present.isdisjoint(WORDS["helping"]):
        return True
    if present.isdisjoint(OWN):
        return False
    if " ".join(words[:2]) in ("next time", "at first") or words[1:3] == ["used", "to"]:
        return True
    return not present.isdisjoint(WORDS["learning_comment"]) or (
        words[-1] in ("it", "this") and words[-2:-1] in (["get"], ["got"])
    )


def is_rule(
    tokens: Sequence[Token],
    core: int,
    verb: int | None,
    clause: Clause,
    present: frozenset[str],
) -> bool:
    """R3: "you dont add the denominators", "you flip the second one", "that is the formula"."""
    if verb is None:
        return False
    if not present.isdisjoint(WORDS["rule_name"]):
        return tokens[verb].lemma == "be" and tokens[core].lower in ("that", "this", "it")
    if "you" not in (token.lower for token in tokens[core:verb]):
        return False
    acts = (t for t in tokens[verb : clause.after] if t.pos == "VERB" and t.lemma != "have")
    action = next(acts, None)
    # With numbers of its own, or telling what comes of it, it is working, no rule.
    return (
        action is not None
        and action.lemma in WORDS["rule_action"]
        and not any(t.pos == "NUM" for t in tokens[verb : clause.after])
        and present.isdisjoint(WORDS["rule_reasoned"])
        # "you cant add thirds and quarters" says what is impossible.
        and tokens[verb].lower not in ("ca", "cant", "can't", "could", "cannot")
        and "cannot" not in present
    )
