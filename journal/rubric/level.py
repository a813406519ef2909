"""The level of reasoning: the questions in order, stopping at the first no."""

from __future__ import annotations

from collections.abc import Callable

from journal.evidence.evidence import Evidence
from journal.records import Reasoning, Step
from journal.rubric.reasoning import ask_a1, ask_a2, ask_a3a, ask_a3b, ask_a4a, ask_a4b
from journal.rubric.rules import HARD_CASES

_QUESTIONS: tuple[tuple[int, Callable[[Evidence], Step]], ...] = (
    (0, ask_a1),
    (1, ask_a2),
    (2, ask_a3a),
    (2, ask_a3b),
    (3, ask_a4a),
    (3, ask_a4b),
)


def check_reasoning(evidence: Evidence) -> Reasoning:
    """Suggest a level of reasoning, with the path of questions that led to it.

    Parameters
    ----------
    evidence : Evidence
        All that was found in the entry.

    Returns
    -------
    Reasoning
        ``level`` 0 to 4 by the rules; ``rule`` the hard-case rule that decided, else the first
        question answered no, and ``"A4b"`` for level 4.
    """
    path: list[Step] = []
    for level, ask in _QUESTIONS:
        step = ask(evidence)
        path.append(step)
        if step.answer is False or is_held_at_two(step):
            return Reasoning(level, level, "rules", _rule(evidence, step), tuple(path))
    return Reasoning(4, 4, "rules", "A4b", tuple(path))


def is_held_at_two(step: Step) -> bool:
    """R17: an idea on the watch-list in a claim whose truth can't be settled goes no further."""
    return step.question == "A3b" and step.answer is None and bool(step.spans)


def _rule(evidence: Evidence, step: Step) -> str:
    if step.question == "A3b":
        return "R5" if step.answer is False else "R17"
    for name, decides in HARD_CASES.get(step.question, ()):
        if decides(evidence):
            return name
    return step.question
