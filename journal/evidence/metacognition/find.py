"""Find what the pupil says of own knowing and learning, by schemas around single words."""

from __future__ import annotations

from collections.abc import Sequence

from journal.evidence.mathematics import Mathematics
from journal.evidence.metacognition.asked import find_answers
from journal.evidence.metacognition.lines import Lines
from journal.evidence.metacognition.readings import READINGS
from journal.evidence.setting import Setting
from journal.language.parse import Parse
from journal.lexicon.metacognition import Schema, load_metacognition
from journal.records import Marker, MetacognitionEvidence, MetacognitionKind, Reason

_LEARNING = load_metacognition()
_LATER = 30


def find_metacognition(
    parse: Parse,
    markers: Sequence[Marker],
    mathematics: Mathematics,
    setting: Setting,
    reasons: Sequence[Reason] = (),
) -> list[MetacognitionEvidence]:
    """Find what the pupil says of their own knowing and learning.

    Parameters
    ----------
    parse : Parse
        The entry.
    markers : sequence of Marker
        As `find_markers` gives them.
    mathematics : Mathematics
        What each token speaks of.
    setting : Setting
        What was set: an answer to a prompt about learning is a comment on learning.
    reasons : sequence of Reason
        As `find_reasons` gives them: a check written out is a comment on one's own work.

    Returns
    -------
    list of MetacognitionEvidence
        Sorted by start; one for each kind that a clause shows. Rule R19: a strategy told as one
        step of a recount, and liking the lesson without any mathematics, are left out.
    """
    schemas = _LEARNING.schemas
    triggers = [token.index for token in parse.tokens if token.lower in schemas]
    found = _find_comments(Lines(parse, mathematics), triggers) if triggers else []
    if setting.prompt:
        found += find_answers(parse, mathematics, setting.prompt, found)
    if reasons:
        found += _find_written_checks(parse, reasons, found)
    found.sort(key=lambda item: (item.start, item.end))
    return found


def _find_comments(lines: Lines, triggers: Sequence[int]) -> list[MetacognitionEvidence]:
    parse = lines.parse
    found: dict[tuple[int, MetacognitionKind], MetacognitionEvidence] = {}
    for at in triggers:
        number = lines.clause_at(at)
        clause = lines.clauses[number]
        before = lines.say(clause.first, at)
        after = lines.following(at)
        for schema in _LEARNING.schemas[parse.tokens[at].lower]:
            key = (number, schema.kind)
            if key in found or not _fits(schema, before, after, lines, number):
                continue
            if not schema.later.search(lines.say(at + 1, at + 1 + _LATER)):
                continue
            if schema.when and not READINGS[schema.when](lines, number, at, bool(found)):
                continue
            first = _without_numbers(lines, clause.first, at)
            start, end = parse.span(first, _without_stop(parse, first, clause.after))
            found[key] = MetacognitionEvidence(start, end, parse.text[start:end], schema.kind)
    return list(found.values())


def _fits(schema: Schema, before: str, after: str, lines: Lines, number: int) -> bool:
    return (
        bool(schema.before.search(before))
        and bool(schema.after.match(after))
        and not schema.not_before.search(before)
        and not schema.not_after.match(after)
        and (schema.joint is None or schema.joint in lines.clauses[number].joints)
        and bool(schema.previous.search(lines.say_clause(number - 1)))
    )


def _find_written_checks(
    parse: Parse, reasons: Sequence[Reason], found: Sequence[MetacognitionEvidence]
) -> list[MetacognitionEvidence]:
    """R16 and R19: an inverse, estimate or second method written out is a described check."""
    checks = [item for item in found if item.kind == "check"]
    return [
        MetacognitionEvidence(*reason.reason, parse.text[slice(*reason.reason)], "check")
        for reason in reasons
        if reason.role == "check"
        and _speaks_of_self(parse, reason)
        and not any(
            item.start < reason.reason[1] and reason.reason[0] < item.end for item in checks
        )
    ]


def _speaks_of_self(parse: Parse, reason: Reason) -> bool:
    first, _ = parse.tokens_in(*reason.reason)
    begin, end = parse.sentence(first)
    return any(token.lower in ("i", "we", "my") for token in parse.tokens[begin:end])


def _without_numbers(lines: Lines, first: int, at: int) -> int:
    """Leave out a calculation that runs on into the comment: "9+1 8+2 i am quick"."""
    for place in range(first + 1, at):
        if lines.words[place] in ("i", "we") and lines.mathematics.kinds[place - 1] == "quantity":
            return place
    return first


def _without_stop(parse: Parse, first: int, after: int) -> int:
    while after - 1 > first and parse.tokens[after - 1].pos == "PUNCT":
        after -= 1
    return after
