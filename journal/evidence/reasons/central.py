"""The central claim of an entry (rule R17)."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from journal.evidence.setting import Setting
from journal.language.parse import Parse
from journal.records import Claim, Reason

_NUMBERS = str.maketrans("", "", " ")


def mark_central(
    claims: Sequence[Claim], reasons: Sequence[Reason], parse: Parse, setting: Setting
) -> list[Claim]:
    """Mark the claim that answers the prompt, else the one the first reason supports.

    Parameters
    ----------
    claims : sequence of Claim
        As `find_claims` gives them.
    reasons : sequence of Reason
        As `find_reasons` gives them.
    parse : Parse
        The entry.
    setting : Setting
        What was set, for its prompt.

    Returns
    -------
    list of Claim
        The same claims, at most one of them central. Former, quoted and rejected claims are never
        central.
    """
    central = _find_central(claims, reasons, setting.prompt)
    return [
        replace(claim, central=True) if number == central else claim
        for number, claim in enumerate(claims)
    ]


def _find_central(
    claims: Sequence[Claim], reasons: Sequence[Reason], prompt: str | None
) -> int | None:
    asserted = [number for number, claim in enumerate(claims) if claim.asserted]
    # A claim that could be settled says more than a fragment that could not.
    asserted.sort(key=lambda number: claims[number].verdict == "undecided")
    if prompt:
        asked = {word.strip("?.,:") for word in prompt.lower().split()}
        asked = {word for word in asked if any(map(str.isdigit, word))}
        for number in asserted:
            said = set(claims[number].surface.lower().replace("=", " ").split())
            if asked and len(said & asked) >= min(2, len(asked)):
                return number
    for reason in reasons:
        if reason.ground in ("circular", "not_mathematical") or reason.claim is None:
            continue
        start, end = reason.claim
        for number in asserted:
            if claims[number].start < end and start < claims[number].end:
                return number
    return None
