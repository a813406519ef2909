"""From the text the parser reads back to the text the child wrote."""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from journal.records import Span


@dataclass(frozen=True, slots=True, order=True)
class Edit:
    """A stretch of the original and what the parser reads in its place.

    Parameters
    ----------
    start, end : int
        Python string indices into the original, end exclusive; ``start < end``.
    replacement : str
        What is read instead; not empty.
    """

    start: int
    end: int
    replacement: str


class OffsetMap:
    """Corrected text with a map of every offset back to the original.

    Parameters
    ----------
    original : str
        The text as given.
    edits : iterable of Edit
        Stretches that are read as something else; they must not overlap.
    clean : str, optional
        The text in plainer characters, of the same length, to be read instead of the original.

    Raises
    ------
    ValueError
        If edits overlap, are empty, or lie outside the text; if ``clean`` has another length.

    Notes
    -----
    An offset inside a replacement belongs to the whole stretch it replaces: a start maps to the
    stretch's start and an end to its end. So the two words read in "wholenumber" both map to all
    of "wholenumber", and no span is ever empty.
    """

    __slots__ = ("_changes", "_working_starts", "original", "working")

    def __init__(self, original: str, edits: Iterable[Edit] = (), clean: str | None = None) -> None:
        self.original = original
        clean = original if clean is None else clean
        if len(clean) != len(original):
            raise ValueError("the plainer text must have the length of the original")
        pieces: list[str] = []
        # Each change: working start and end, original start and end.
        changes: list[tuple[int, int, int, int]] = []
        at = length = 0
        for edit in sorted(edits):
            if edit.start < at or edit.end <= edit.start or edit.end > len(original):
                raise ValueError(f"edit {edit} overlaps another, is empty or leaves the text")
            if not edit.replacement:
                raise ValueError(f"edit {edit} would remove text; replace it with a space")
            pieces.append(clean[at : edit.start])
            length += edit.start - at
            changes.append((length, length + len(edit.replacement), edit.start, edit.end))
            pieces.append(edit.replacement)
            length += len(edit.replacement)
            at = edit.end
        pieces.append(clean[at:])
        self.working = "".join(pieces) if changes else clean
        self._changes = changes
        self._working_starts = [change[0] for change in changes]

    def to_original(self, start: int, end: int) -> Span:
        """Map a span of the working text to the original.

        Parameters
        ----------
        start, end : int
            Indices into ``working``, end exclusive, ``start < end``.

        Returns
        -------
        Span
            Indices into ``original``, end exclusive.
        """
        if not self._changes:
            return start, end
        return self._map(start, at_end=False), self._map(end, at_end=True)

    def to_original_many(
        self, starts: Sequence[int], ends: Sequence[int]
    ) -> tuple[Sequence[int], Sequence[int]]:
        """Map many spans at once; see `to_original`."""
        if not self._changes:
            return starts, ends
        return (
            [self._map(start, at_end=False) for start in starts],
            [self._map(end, at_end=True) for end in ends],
        )

    def _map(self, position: int, *, at_end: bool) -> int:
        # An end that stands exactly at a change's start belongs before it.
        found = bisect_right(self._working_starts, position - 1 if at_end else position) - 1
        if found < 0:
            return position
        _, working_end, original_start, original_end = self._changes[found]
        if position < working_end:
            return original_end if at_end else original_start
        return original_end + position - working_end
