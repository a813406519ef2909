import pytest

from journal.errors import LexiconError
from journal.lexicon import senses
from journal.lexicon.senses import load_senses, read_patterns

ENDING = """
[classes]
WHO = ["i", "we"]
[plain]
words = ["top"]
[elsewhere]
words = ["phone"]
[word.net]
"""


@pytest.fixture
def load(tmp_path, monkeypatch):
    def load_from(text):
        (tmp_path / "senses.toml").write_text(text, encoding="utf-8")
        monkeypatch.setattr(senses, "LEXICON", tmp_path)
        return load_senses.__wrapped__()

    return load_from


@pytest.mark.parametrize(
    ("pattern", "message"),
    [
        ("~ of the 3d", "can never meet '3d'"),
        ("town's ~", 'can never meet "town\'s"'),
        ("NOBODY ~", "can never meet 'NOBODY'"),
        ("The ~", "can never meet 'The'"),
        ("the| ~", "can never meet ''"),
        ("the|a|the ~", "names 'the' twice"),
        ("~netted of", "'netted', which is no form"),
        ("~ of …", "begins or ends with …"),
        ("… ~", "begins or ends with …"),
        ("the net", "needs one ~"),
        ("~ and ~", "needs one ~"),
    ],
)
def test_a_pattern_that_can_never_match_is_refused(load, pattern, message):
    with pytest.raises(LexiconError) as refused:
        load(ENDING + f'everyday = ["{pattern}"]')
    assert message in str(refused.value)
    assert "word 'net'" in str(refused.value)


def test_a_pattern_that_can_match_is_read(load):
    entry = load(ENDING + 'mathematical = ["! fold|cut_up WHO|the … ~nets of"]').entries["net"]
    assert len(entry.decisive) == 2
    assert entry.decisive[0].only == {"nets"}


def test_a_file_that_is_no_toml_is_refused(load):
    with pytest.raises(LexiconError, match=r"senses\.toml: can't be read"):
        load("[word")


def test_several_words_stand_nearest_first():
    (pattern,) = read_patterns("net", "the_big ~")
    assert [sorted(place.words) for place in pattern.before] == [["big"], ["the"]]
