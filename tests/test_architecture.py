"""The arrows of the house: who may import whom, and what importing the package loads."""

from __future__ import annotations

import ast
import subprocess
import sys
from pathlib import Path

import pytest

PACKAGE = Path(__file__).parent.parent / "journal"

# Each room and the rooms it may know, beside itself.
BASE = {"errors", "records", "resources"}
ARROWS: dict[str, set[str]] = {
    "errors": set(),
    "records": set(),
    "resources": set(),
    "levels": {"records"},
    "bulk": set(),
    "entries": {"errors", "records"},
    "text": {"records"},
    "lexicon": {"text", *BASE},
    "language": {"text", *BASE},
    "evidence": {"text", "lexicon", "language.parse", *BASE},
    "rubric": {"evidence", "text", "lexicon", "language.parse", *BASE},
    "lesson": {"evidence.setting", "lexicon", "text", *BASE},
    "scoring": {
        "lesson",
        "bulk",
        "entries",
        "text",
        "lexicon",
        "language",
        "evidence",
        "rubric",
        *BASE,
    },
    "component": {"scoring"},
    "growth": {"records", "errors"},
    "files": {"entries", "levels", "text", *BASE},
    "reports": {"growth", "levels", "lexicon", *BASE},
    "evaluation": {"scoring", "lexicon.words", "text", *BASE},
}
# The command line and the front door may know every room.
FREE = {"cli", "__main__", "__init__"}
HEAVY = ("pandas", "sklearn", "streamlit", "scipy")
SCORING_ROOMS = ("text", "lexicon", "language", "evidence", "rubric", "scoring", "records", "bulk")


def _room(path: Path) -> str:
    return path.relative_to(PACKAGE).parts[0].removesuffix(".py")


def _imports(path: Path) -> set[str]:
    found = set()
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            found.update(alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom) and node.module and not node.level:
            found.add(node.module)
            found.update(f"{node.module}.{alias.name}" for alias in node.names)
        elif isinstance(node, ast.ImportFrom) and node.level:
            found.add("relative import")
    return found


FILES = sorted(path for path in PACKAGE.rglob("*.py") if _room(path) not in FREE)


@pytest.mark.parametrize("path", FILES, ids=lambda path: str(path.relative_to(PACKAGE)))
def test_a_room_imports_only_the_rooms_it_may_know(path: Path) -> None:
    room = _room(path)
    allowed = {f"journal.{name}" for name in (*ARROWS[room], room)} | {"journal.__version__"}
    for name in _imports(path):
        if name.startswith("journal."):
            assert any(name == known or name.startswith(f"{known}.") for known in allowed), name


@pytest.mark.parametrize("path", FILES, ids=lambda path: str(path.relative_to(PACKAGE)))
def test_imports_are_absolute(path: Path) -> None:
    assert "relative import" not in _imports(path)


@pytest.mark.parametrize("room", sorted(ARROWS))
def test_every_room_of_the_map_exists(room: str) -> None:
    assert (PACKAGE / room).is_dir() or (PACKAGE / f"{room}.py").is_file()


@pytest.mark.parametrize("path", FILES, ids=lambda path: str(path.relative_to(PACKAGE)))
def test_only_language_knows_spacy(path: Path) -> None:
    if _room(path) not in ("language", "component"):
        assert not any(name.split(".")[0] in ("spacy", "thinc") for name in _imports(path))


@pytest.mark.parametrize("path", FILES, ids=lambda path: str(path.relative_to(PACKAGE)))
def test_scoring_imports_no_heavy_library(path: Path) -> None:
    if _room(path) in SCORING_ROOMS:
        assert not any(name.split(".")[0] in HEAVY for name in _imports(path))


@pytest.mark.parametrize(
    "path", sorted(PACKAGE.rglob("*.py")), ids=lambda path: str(path.relative_to(PACKAGE))
)
def test_no_file_is_over_four_hundred_lines(path: Path) -> None:
    assert len(path.read_text(encoding="utf-8").splitlines()) <= 400


def _loaded_by(code: str) -> set[str]:
    shown = subprocess.run(
        [sys.executable, "-c", f"{code}\nimport sys; print(*sys.modules)"],
        check=True,
        capture_output=True,
        text=True,
    )
    return {name.split(".")[0] for name in shown.stdout.split()}


def test_importing_the_package_loads_no_heavy_library() -> None:
    assert not _loaded_by("import journal") & {"spacy", "numpy", *HEAVY}


def test_the_scorer_loads_no_heavy_library() -> None:
    code = "from journal import Scorer; Scorer().score('It is even because it ends in 8.')"
    assert not _loaded_by(code) & set(HEAVY)
