"""Claims: what a child asserts about numbers, quantities and shapes, worked out exactly."""

from journal.evidence.claims.find import find_claims

__all__ = ["find_claims"]
