"""Strand B, metacognition: the questions B1 to B3, with rule R19."""

from __future__ import annotations

import re

from journal.evidence.evidence import Evidence
from journal.lexicon.metacognition import load_metacognition
from journal.records import Metacognition, MetacognitionEvidence, Span, Step

# What follows a former idea when the pupil says what changed it.
_WHAT_CHANGED = re.compile(
    r"\b(show(ed|s|n) (me|us|that|it)|when i|when we|until|only got (it|that) (when|after)|"
    r"then i (saw|realised|noticed|"
    r"knew|drew|used|counted|put|tried|looked|checked)|but (when|then i|after|once)|lining up|"
    r"(i|we) (drew|saw|folded|counted|tested|cut|noticed|compared|lined|made)|so now i|"
    r"so next time|instead|helped me (see|understand)|so i (changed|counted|drew|went|did|looked)|"
    r"now i (say|do|look|check|use|count|draw|write|put|start|line|read)|now because|"
    r"but (that|it)('s| is| was)? not|(should|shud) (have|of)|so you can ?('|no)?t)\b"
)
_SO_NOW = re.compile(
    r"\b(so i (had to|counted|knew|went|drew|used|did|changed|looked|put)|so now|i remember now|"
    r"now i (say|do|look|check|use|count|draw|write|put|start|line|read)|so it had to|"
    r"(should|shud) (have|of)|i need to \w+|i had to (look|work|count|think|go)|never be right)\b"
)
_WHY_HELPED = re.compile(
    r"\b((because|cos|coz|cuz|since) \S+ \S+|so (i|you|we) (can|could|did)|so that|"
    r"as (i|it|you|we)|which meant|made it (easier|clear|quicker)|showed me|i could see|"
    r"let me see|more than|better than|stopped me|made fewer)\b"
)
_HOW_CHECKED = re.compile(
    r"\b(by|using|used|with|because|inverse|estimat\w*|round\w*|again|against|added|adding|counted|"
    r"did|wrong|see if|went back|fixed|crossed|undid|fits|enough|too (big|small)|couldn't be)\b|"
    r"[0-9] ?[-+x×÷=]"
)
_HELPS_BECAUSE_IT_HELPS = re.compile(
    r"\b(because|cos|coz|as|since) (it|this|that)('s| is| was)? "
    r"(helps?|helped|easy|easier|quick|quicker|fun)( me)?\b(?! (see|to))"
)
_VAGUE_STEP = re.compile(
    r"\b(try (harder|my best|again)|do better|work harder|learn more|get better)\b"
)
_WORDS = load_metacognition()
_WISH = re.compile(r"\b(would|'d|want) (to )?like|\bwant to (do|get|be)\b")
_CHECK_REACH = 120
"""Characters before the words of a check in which what was checked may stand."""


def check_metacognition(evidence: Evidence) -> Metacognition:
    """Suggest a level of metacognition, with the path of questions that led to it.

    Parameters
    ----------
    evidence : Evidence
        All that was found in the entry.

    Returns
    -------
    Metacognition
        ``level`` 0 to 3; ``rule`` the first question answered no, or ``"B3"`` for level 3.
    """
    path: list[Step] = []
    for level, ask in enumerate((ask_b1, ask_b2, ask_b3)):
        step = ask(evidence)
        path.append(step)
        if not step.answer:
            return Metacognition(level, step.question, tuple(path), evidence.metacognition)
    return Metacognition(3, "B3", tuple(path), evidence.metacognition)


def ask_b1(evidence: Evidence) -> Step:
    """B1: does the pupil comment on own knowing, difficulty, strategy or feeling?"""  # noqa: D400
    if not evidence.metacognition:
        return Step("B1", False, False, (), "nothing about the pupil's own knowing or learning")
    first = evidence.metacognition[0]
    return Step("B1", True, False, (_span(first),), f"{_KINDS[first.kind]}: “{first.surface}”")


def ask_b2(evidence: Evidence) -> Step:
    """B2: is it specific to a named piece of mathematics or a strategy?"""  # noqa: D400
    for item in evidence.metacognition:
        if is_specific(evidence, item):
            return Step(
                "B2", True, False, (_span(item),), f"names what it is about: “{item.surface}”"
            )
    first = evidence.metacognition[0]
    why = f"“{first.surface}” names no piece of mathematics"
    return Step("B2", False, False, (_span(first),), why)


def ask_b3(evidence: Evidence) -> Step:
    """B3: what changed, why a strategy helped, how it was checked, or a specific next step?"""  # noqa: D400
    for item in evidence.metacognition:
        if is_regulating(evidence, item):
            return Step("B3", True, False, (_span(item),), f"{_KINDS[item.kind]}: “{item.surface}”")
    last = evidence.metacognition[-1]
    why = (
        f"“{last.surface}”: not yet what changed, why it helped, how it was checked or what is next"
    )
    return Step("B3", False, True, (_span(last),), why)


def is_specific(evidence: Evidence, item: MetacognitionEvidence) -> bool:
    """Say whether a comment names mathematics; R19: liking or pride does not make it specific."""
    if item.kind == "feeling" and _LIKING.search(item.surface.lower()):
        return False
    parse = evidence.parse
    first, after = parse.tokens_in(item.start, item.end)
    if item.kind == "feeling":
        return evidence.mathematics.any_in(first, after)
    end = min(parse.sentence(first)[1], after + 10)
    return evidence.mathematics.any_in(first, end) or any(
        token.lower in _WORDS.these
        or (token.pos in ("NOUN", "PROPN") and token.lemma.lower() not in _WORDS.general)
        for token in parse.tokens[first:after]
    )


def is_regulating(evidence: Evidence, item: MetacognitionEvidence) -> bool:
    """R19: a described check and a specific next step regulate; a former idea needs its change."""
    text = evidence.parse.text.lower().replace("’", "'")
    said, after = text[item.start : item.end], text[item.end :]
    following = said + after
    if item.kind == "check":
        return bool(_HOW_CHECKED.search(text[max(0, item.start - _CHECK_REACH) :]))
    if item.kind == "change":
        changed = _WHAT_CHANGED.search(following[len(said) // 2 :])
        return bool(changed) and is_specific(evidence, item)
    if item.kind == "strategy":
        return bool(_WHY_HELPED.search(_HELPS_BECAUSE_IT_HELPS.sub("", following)))
    if item.kind == "next":
        vague = _VAGUE_STEP.search(said) or _WISH.search(said)
        return not vague and is_specific(evidence, item)
    return item.kind == "difficulty" and bool(_SO_NOW.search(after) and is_specific(evidence, item))


_LIKING = re.compile(
    r"\b(like|liked|love|loved|enjoy|enjoyed|fun|favourite|happy|excited|boring|good at|better at|"
    r"proud (of|that)|"
    r"best|can do|ok|okay|easy|all right)\b"
)
_KINDS = {
    "feeling": "a feeling about learning",
    "difficulty": "what was hard",
    "strategy": "a strategy",
    "check": "a check",
    "change": "a change of mind",
    "next": "what is next",
}


def _span(item: MetacognitionEvidence) -> Span:
    return item.start, item.end
