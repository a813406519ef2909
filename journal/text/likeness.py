"""How far apart two spellings are."""

from __future__ import annotations


def one_letter_apart(a: str, b: str) -> bool:
    """Say whether two words differ by one letter more, less or other, or by two swapped.

    Parameters
    ----------
    a, b : str
        Words, not empty, in the same case. The first letters must agree: children rarely miss
        the first sound, and cat and hat are two words.
    """
    if abs(len(a) - len(b)) > 1 or a[0] != b[0]:
        return False
    at = 0
    while at < len(a) and at < len(b) and a[at] == b[at]:
        at += 1
    rest_a, rest_b = a[at:], b[at:]
    return (
        rest_a[1:] == rest_b[1:]
        or rest_a[1:] == rest_b
        or rest_a == rest_b[1:]
        or (rest_a[:2] == rest_b[:2][::-1] and rest_a[2:] == rest_b[2:])
    )
