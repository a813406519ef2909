"""For spaCy users: a component that adds the evidence to any ``Doc``.

``nlp.add_pipe("reasoning_journal")`` after a parser. Each parsed ``Doc`` then carries

``doc._.journal``
    The score record (`journal.records.Score`) of ``doc.text``.
``doc._.reasoning_level``, ``doc._.metacognition_level``
    The suggested levels, or None.
``doc.spans["vocabulary"]``, ``["markers"]``, ``["reasons"]``, ``["claims"]``
    The evidence as spans; labels are the term, the function, the ground and the verdict.
"""

from __future__ import annotations

from collections.abc import Iterable
from typing import TYPE_CHECKING

from spacy.language import Language
from spacy.tokens import Doc, Span

if TYPE_CHECKING:
    from journal.scoring import Scorer


class ReasoningJournal:
    """The registered component ``reasoning_journal``; see the module's docstring."""

    def __init__(self) -> None:
        self._scorer: Scorer | None = None
        for name in ("journal", "reasoning_level", "metacognition_level"):
            if not Doc.has_extension(name):
                Doc.set_extension(name, default=None)

    def __call__(self, doc: Doc) -> Doc:
        if self._scorer is None:
            # Loaded at the first text: to register a component must cost nothing.
            from journal.scoring import Scorer

            self._scorer = Scorer()
        score = self._scorer.score(doc.text)
        doc._.journal = score
        doc._.reasoning_level = score.reasoning.level
        doc._.metacognition_level = score.metacognition.level
        doc.spans["vocabulary"] = _spans(
            doc, ((use.start, use.end, use.term) for use in score.vocabulary if use.counted)
        )
        doc.spans["markers"] = _spans(
            doc, ((item.start, item.end, item.function) for item in score.markers if item.counted)
        )
        doc.spans["reasons"] = _spans(doc, ((*item.reason, item.ground) for item in score.reasons))
        doc.spans["claims"] = _spans(
            doc, ((item.start, item.end, item.verdict) for item in score.claims)
        )
        return doc


def _spans(doc: Doc, found: Iterable[tuple[int, int, str]]) -> list[Span]:
    made = (doc.char_span(a, b, label=label, alignment_mode="expand") for a, b, label in found)
    return [span for span in made if span is not None]


@Language.factory(
    "reasoning_journal",
    assigns=["doc._.journal", "doc._.reasoning_level", "doc._.metacognition_level", "doc.spans"],
)
def make_component(nlp: Language, name: str) -> ReasoningJournal:
    """Return the component, as spaCy's registry asks for it."""
    return ReasoningJournal()
