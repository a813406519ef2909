"""Closed sets of words that the marker questions look for."""

from __future__ import annotations

from journal.lexicon.markers import load_marker_words

WORDS = load_marker_words()
"""Every set, by name; a set of one module only has the module's name before its own."""


STOPS = frozenset([".", "!", "?", ";", "..", "!!", "??", "?!"])
"""What ends a sentence."""

SUBJECTS = WORDS["subjects"]
"""Pronouns that open a clause."""

AUXILIARIES = WORDS["auxiliaries"]
VERBS_ANYWHERE = AUXILIARIES | WORDS["verbs_anywhere"]
"""Words that can carry a clause whatever their tag."""

JOINS_ALWAYS = WORDS["joins_always"]
JOINS_WITH_CLAUSE = WORDS["joins_with_clause"]
OPENS_INSIDE = WORDS["opens_inside"]
SKIPPED_AT_START = WORDS["skipped_at_start"] | frozenset([","])
HOLDS_ON = WORDS["holds_on"]
"""Words after which a pronoun does not begin a new statement."""

PEOPLE = WORDS["people"]
AUTHORITIES = WORDS["authorities"]
SAYING = WORDS["saying"]

LIKING = WORDS["liking"]
FEELINGS = WORDS["feelings"]
BE = WORDS["be"]

TOPIC_VERBS = WORDS["topic_verbs"]

STATES = WORDS["states"]
"""Verbs of being, having, knowing and needing: what a step can follow from."""

KNOWING = WORDS["knowing"]

TIME_WORDS = WORDS["time_words"]

CLOSED_NOUNS = WORDS["closed_nouns"]
