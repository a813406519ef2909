"""Where the data that ships with the package lies: in a checkout, or in an installed wheel."""

from __future__ import annotations

from pathlib import Path

PACKAGE = Path(__file__).parent
LEXICON = PACKAGE / "lexicon" / "data"


def shipped_folder(name: str) -> Path:
    """Return the folder ``models`` or ``demo_entries``.

    Parameters
    ----------
    name : str
        The folder's name at the top of the checkout.

    Returns
    -------
    Path
        Beside the package in a checkout; inside the package in an installed wheel.
    """
    inside = PACKAGE / name
    return inside if inside.is_dir() else PACKAGE.parent / name
