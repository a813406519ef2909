"""What a comment on own learning is about, and whether it evaluates or regulates (B2, B3, R19)."""

from __future__ import annotations

from dataclasses import dataclass

from journal.evidence.evidence import Evidence
from journal.evidence.metacognition.lines import Lines
from journal.language.parse import Token
from journal.lexicon.kinds import load_kinds
from journal.lexicon.metacognition import load_metacognition
from journal.records import MetacognitionEvidence

_DECIDING = load_metacognition().deciding
_TOPICS = load_metacognition().topics
_VAGUE = load_metacognition().vague_nouns
_DOINGS = load_kinds()["operation_on"] | load_kinds()["operation"]
_BEFORE = 24
_AFTER = 30


@dataclass(frozen=True, slots=True)
class Comment:
    """A comment with its surroundings, as `Lines` says them.

    Parameters
    ----------
    item : MetacognitionEvidence
        The comment.
    said, before, after : str
        Its words, those before it, those after it.
    near : str
        Its words with the clauses joined on to it: what it is about stands here.
    names : bool
        Whether its own clause names a thing that is no mathematics word ("the spinner").
    difficulty : bool
        Whether a difficulty was told before it.
    """

    item: MetacognitionEvidence
    said: str
    before: str
    after: str
    near: str
    names: bool
    difficulty: bool


def read_comments(evidence: Evidence) -> list[Comment]:
    """Return the comments of an entry with their surroundings."""
    if not evidence.metacognition:
        return []
    lines = Lines(evidence.parse, evidence.mathematics)
    comments: list[Comment] = []
    difficulty = False
    for item in evidence.metacognition:
        comments.append(_read_comment(lines, item, difficulty))
        difficulty = difficulty or item.kind == "difficulty"
    return comments


def _read_comment(lines: Lines, item: MetacognitionEvidence, difficulty: bool) -> Comment:
    parse = lines.parse
    first, after = parse.tokens_in(item.start, item.end)
    begin, end = _joined(lines, first, after, item.kind not in ("difficulty", "feeling"))
    return Comment(
        item=item,
        said=lines.say(first, after),
        before=lines.say(max(0, first - _BEFORE), first),
        after=lines.say(after, min(len(parse), after + _AFTER)),
        near=lines.say(begin, end),
        names=any(
            _is_name(lines, token) for token in parse.tokens[begin : _names_end(lines, after, end)]
        ),
        difficulty=difficulty,
    )


def _is_name(lines: Lines, token: Token) -> bool:
    if token.pos == "PROPN" and token.dep == "nsubj":
        # "Kaya said", but "Partitioning is the way".
        return lines.parse.tokens[token.head].lemma == "be"
    if token.pos in ("NOUN", "PROPN"):
        return token.lemma.lower() not in _VAGUE
    # "carrying", "sharing": what is done, where no number stands near it.
    return token.tag == "VBG" and token.lower in _DOINGS


def _names_end(lines: Lines, after: int, end: int) -> int:
    """Return where names are looked for: "I get it wrong | when they have zeros" is one thing."""
    following = lines.words[after] if after < end else ""
    return end if following in ("when", "if", "where", "with") else after


def _joined(lines: Lines, first: int, after: int, runs_on: bool) -> tuple[int, int]:
    """Return the stretch of a comment with two clauses joined on to it."""
    clauses = lines.clauses
    number = lines.clause_at(first)
    begin = first
    if number and _DECIDING["pointing_back"].search(lines.say_clause(number - 1)):
        # "Chance is the bit | I don't get"
        begin = clauses[number - 1].first
    end = after
    for clause in clauses[number + 1 : number + 3]:
        # A run-on may go on to something else: what was hard stands in the joined clauses.
        if clause.opens_sentence or not (clause.joints or runs_on):
            break
        end = max(end, clause.after)
    return begin, end


def is_specific(comment: Comment) -> bool:
    """B2: say whether a comment names mathematics or a strategy; R19: liking does not."""
    kind = comment.item.kind
    if kind == "feeling":
        if _DECIDING["liking"].search(comment.said):
            return False
        skill = _DECIDING["skill"].search(comment.said)
        if skill and (comment.names or _DECIDING["tell_time"].search(comment.said)):
            return True
        joined = _DECIDING["about"].match(comment.after)
        words = comment.near if joined else comment.said
        return _names_mathematics(_DECIDING["amounts"].sub("", words))
    if _names_mathematics(comment.near) or _DECIDING["tell_time"].search(comment.near):
        return True
    if kind == "check":
        return bool(_DECIDING["described"].search(comment.said))
    if _DECIDING["takes_up"].search(comment.said) and _names_mathematics(comment.before):
        return True
    return kind in ("strategy", "difficulty", "change") and comment.names


def _names_mathematics(words: str) -> bool:
    return any(word[-1] == "#" and word not in _TOPICS for word in words.split())


def is_regulating(comment: Comment) -> bool:
    """R19: a described check and a specific next step regulate; a former idea needs its change."""
    return _QUESTIONS[comment.item.kind](comment)


def _says_how_it_was_checked(comment: Comment) -> bool:
    return bool(
        _DECIDING["described"].search(f"{comment.said} {comment.after}")
        or _DECIDING["what_was_wrong"].search(f"{comment.before} {comment.said}")
    )


def _says_what_changed(comment: Comment) -> bool:
    around = f"{comment.before} {comment.said} {comment.after}"
    if not (_names_mathematics(_DECIDING["amounts"].sub("", around)) or is_specific(comment)):
        return False
    return bool(
        _DECIDING["changed"].search(f"{comment.said} {comment.after}")
        or comment.before.endswith("until")
    )


def _says_why_it_helped(comment: Comment) -> bool:
    after = _DECIDING["helps_as_it_helps"].sub("", comment.after)
    if comment.difficulty and _DECIDING["made_easier"].search(comment.said):
        return True
    return bool(
        _DECIDING["why"].search(after)
        or _DECIDING["reason_inside"].search(f"{comment.before[-12:]} {comment.said}")
        or _DECIDING["purpose"].search(f"{comment.before} | {comment.said}")
    )


def _is_specific_step(comment: Comment) -> bool:
    said = f"{comment.said} {comment.after}"
    if _DECIDING["vague"].search(comment.said):
        return False
    return is_specific(comment) or bool(_DECIDING["action"].search(said))


def _says_what_went_wrong(comment: Comment) -> bool:
    found = _DECIDING["diagnosis"].search(comment.after)
    if found is not None and _names_mathematics(found[0]):
        return True
    return bool(_DECIDING["remedy"].search(comment.after)) and is_specific(comment)


def _never(comment: Comment) -> bool:
    return False


_QUESTIONS = {
    "feeling": _never,
    "difficulty": _says_what_went_wrong,
    "strategy": _says_why_it_helped,
    "check": _says_how_it_was_checked,
    "change": _says_what_changed,
    "next": _is_specific_step,
}
