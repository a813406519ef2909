"""Work in chunks over any executor: an iterator in, an iterator out, order kept."""

from __future__ import annotations

from collections import deque
from collections.abc import Callable, Iterable, Iterator
from concurrent.futures import Executor, Future
from itertools import islice
from typing import TypeVar

Item = TypeVar("Item")
Result = TypeVar("Result")


def split_chunks(items: Iterable[Item], size: int) -> Iterator[list[Item]]:
    """Yield lists of ``size`` items, the last one shorter; nothing is read ahead."""
    source = iter(items)
    while chunk := list(islice(source, size)):
        yield chunk


def map_chunks(
    function: Callable[[list[Item]], list[Result]],
    items: Iterable[Item],
    executor: Executor,
    *,
    size: int = 64,
    ahead: int = 4,
) -> Iterator[Result]:
    """Apply a function to chunks of items, several at a time, and yield the results in order.

    Parameters
    ----------
    function : callable
        Takes a list of items and returns a list of results; must suit the executor.
    items : iterable
        Read only ``ahead`` chunks before they are needed, so that memory stays flat.
    executor : concurrent.futures.Executor
        Where the chunks are worked on.
    size : int
        Items a chunk.
    ahead : int
        Chunks under way at once.

    Yields
    ------
    Result
        One after another, in the order of ``items``.
    """
    under_way: deque[Future[list[Result]]] = deque()
    for chunk in split_chunks(items, size):
        under_way.append(executor.submit(function, chunk))
        if len(under_way) >= ahead:
            yield from under_way.popleft().result()
    while under_way:
        yield from under_way.popleft().result()
