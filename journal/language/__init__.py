"""The only room that knows spaCy: the pipeline, and the parse as the finders see it."""

from __future__ import annotations

import os

# Sentences are short: a second thread of matrix arithmetic only waits for the first. The setting is
# read when numpy is first imported, so it stands before any import of it.
os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
