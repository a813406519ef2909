"""Chunks over an executor keep their order and read no further than they must."""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor
from itertools import count, islice

from hypothesis import given
from hypothesis import strategies as st

from journal.bulk import map_chunks, split_chunks


def _double(chunk: list[int]) -> list[int]:
    return [2 * item for item in chunk]


@given(st.lists(st.integers(), max_size=40), st.integers(1, 7))
def test_chunks_hold_every_item_in_order(items: list[int], size: int) -> None:
    chunks = list(split_chunks(items, size))
    assert [item for chunk in chunks for item in chunk] == items
    assert all(len(chunk) == size for chunk in chunks[:-1])


def test_results_come_in_the_order_of_the_items() -> None:
    with ThreadPoolExecutor(3) as executor:
        found = list(map_chunks(_double, range(50), executor, size=4, ahead=3))
    assert found == [2 * item for item in range(50)]


def test_an_endless_stream_is_read_only_as_far_as_needed() -> None:
    numbers = count()
    with ThreadPoolExecutor(2) as executor:
        found = list(islice(map_chunks(_double, numbers, executor, size=2, ahead=2), 3))
    assert found == [0, 2, 4]
    assert next(numbers) <= 8
