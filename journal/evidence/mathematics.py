"""Which tokens speak of mathematics: quantities, terms, operations, relations, representations."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal, TypeAlias

MathematicsKind: TypeAlias = Literal["quantity", "term", "operation", "relation", "representation"]


@dataclass(frozen=True, slots=True)
class Mathematics:
    """What kind of mathematics each token of a parse speaks of, if any.

    Parameters
    ----------
    kinds : sequence of str or None
        One for each token of the parse.
    """

    kinds: Sequence[MathematicsKind | None]

    def any_in(self, first: int, after: int, *kinds: MathematicsKind) -> bool:
        """Say whether ``tokens[first:after]`` hold mathematics (of the given kinds)."""
        for kind in self.kinds[first:after]:
            if kind is not None and (not kinds or kind in kinds):
                return True
        return False
