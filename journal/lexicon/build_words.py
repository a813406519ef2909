"""Build the list of words that ships with the package. Run at development time only.

    python -m journal.lexicon.build_words SCOWL_FOLDER

It needs the SCOWL word lists (Debian's package ``scowl``) and the Python package ``wordfreq``;
nothing imports this module. A word of SCOWL up to size 60, or up to 70 if it is seen at all, is
a word; so are names, and words that SCOWL lacks if they are frequent and no near neighbour of a
far commoner word. A rare word that sounds exactly like a word a thousand times as common is left
out: in a child's writing "thay" is "they".
"""

from __future__ import annotations

import gzip
import sys
from collections.abc import Iterator
from pathlib import Path

from journal.resources import LEXICON
from journal.text.spelling.phonetic import skeleton_key, sound_key

_SPELLINGS = ("english", "british", "british_z", "british_variant_1", "american", "variant_1")
_BRITISH = ("english", "british")
_SIZES = (10, 20, 35, 40, 50, 55, 60, 70)
_CANDIDATE_SIZE = 60
_CANDIDATE_ZIPF = 1.6
_SELDOM_SEEN = 1.2
_FREQUENT = 2.9
_FAR_COMMONER = 1.3
_SOUND_ALIKE_GAP = 2.4
_SOUND_ALIKE_RARE = 3.5
_SOUND_ALIKE_SIZE = 50
_NAME_ZIPF = 3.0
_LETTERS = "abcdefghijklmnopqrstuvwxyz"
# Rare words, and short names, that are still read as they stand.
_KEPT = frozenset(
    ["rote", "dun", "wan", "dan", "ed", "jon", "ann", "tim", "ben", "sam", "dom", "kit", "pi", "hr"]
)
_CAPITALISED_CANDIDATES = frozenset(
    [
        "monday",
        "tuesday",
        "wednesday",
        "thursday",
        "friday",
        "saturday",
        "sunday",
        "january",
        "february",
        "march",
        "april",
        "may",
        "june",
        "july",
        "august",
        "september",
        "october",
        "november",
        "december",
        "english",
        "england",
        "british",
        "britain",
        "london",
        "french",
        "france",
        "spanish",
        "christmas",
        "roman",
        "venn",
    ]
)


def _read(
    folder: Path, kind: str, sizes: tuple[int, ...], spellings: tuple[str, ...] = _SPELLINGS
) -> dict[str, int]:
    found: dict[str, int] = {}
    for spelling in spellings:
        for size in sizes:
            file = folder / f"{spelling}-{kind}.{size}"
            if not file.exists():
                continue
            for word in file.read_text("latin-1").split():
                lower = word.lower()
                if lower.isascii() and lower.isalpha():
                    found[lower] = min(found.get(lower, 99), size)
    return found


def near_spellings(spelling: str) -> Iterator[str]:
    """Yield all strings one letter dropped, added, changed or swapped away."""
    size = len(spelling)
    for i in range(size):
        head, tail = spelling[:i], spelling[i + 1 :]
        yield head + tail
        for letter in _LETTERS:
            yield head + letter + tail
        if tail:
            yield head + tail[0] + spelling[i] + tail[1:]
    for i in range(size + 1):
        head, tail = spelling[:i], spelling[i:]
        for letter in _LETTERS:
            yield head + letter + tail


def build_words(folder: Path) -> list[tuple[str, float, str]]:
    """Return each word with its Zipf frequency and, if it may be a correction, its skeleton."""
    from wordfreq import get_frequency_dict, zipf_frequency

    def zipf(word: str) -> float:
        return float(round(zipf_frequency(word, "en", "large"), 2))

    sizes = _read(folder, "words", _SIZES)
    british = _read(folder, "words", _SIZES, _BRITISH)
    names = _read(folder, "upper", _SIZES[:6]) | _read(folder, "proper-names", _SIZES[:6])
    words = {w: zipf(w) for w, size in sizes.items() if size <= 60 or zipf(w) >= _SELDOM_SEEN}
    by_sound: dict[str, float] = {}
    for word, frequency in words.items():
        if sizes[word] <= 35:
            key = sound_key(word)
            by_sound[key] = max(by_sound.get(key, 0.0), frequency)

    def sounds_far_commoner(word: str, frequency: float) -> bool:
        return by_sound.get(sound_key(word), 0.0) - frequency >= _SOUND_ALIKE_GAP

    def kept(word: str, frequency: float) -> bool:
        if word in _KEPT or sizes[word] < _SOUND_ALIKE_SIZE or frequency > _SOUND_ALIKE_RARE:
            return True
        return not sounds_far_commoner(word, frequency)

    known = {word: frequency for word, frequency in words.items() if kept(word, frequency)}
    candidates = {
        word
        for word, frequency in known.items()
        if british.get(word, 99) <= _CANDIDATE_SIZE
        and frequency >= _CANDIDATE_ZIPF
        and len(word) > 1
    }
    for word in names:
        frequency = zipf(word)
        usual = word in _KEPT or not sounds_far_commoner(word, frequency)
        if usual and word not in words and frequency >= _NAME_ZIPF:
            known[word] = frequency
    for word in get_frequency_dict("en", "large"):
        frequency = zipf(word)
        if word in words or word in known or not (word.isascii() and word.isalpha()):
            continue
        if frequency < _FREQUENT or len(word) < 3 or sounds_far_commoner(word, frequency):
            continue
        if any(words.get(near, 0.0) - frequency >= _FAR_COMMONER for near in near_spellings(word)):
            continue
        known[word] = frequency
    candidates |= {word for word in _CAPITALISED_CANDIDATES if word in known}
    rows = sorted(known.items(), key=lambda row: (-row[1], row[0]))
    return [(w, f, (skeleton_key(w) if w in candidates else "") or "-") for w, f in rows]


def save_words(rows: list[tuple[str, float, str]], file: Path) -> None:
    """Write the rows as tab-separated text, gzipped with no time stamp."""
    text = "".join(f"{word}\t{zipf:.2f}\t{skeleton}\n" for word, zipf, skeleton in rows)
    file.write_bytes(gzip.compress(text.encode(), 9, mtime=0))


if __name__ == "__main__":
    save_words(build_words(Path(sys.argv[1])), LEXICON / "words.tsv.gz")
