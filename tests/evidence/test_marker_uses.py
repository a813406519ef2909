"""Every listed form in each of its uses, in invented sentences of a few words."""

from __future__ import annotations

import pytest
from found_markers import ParseOf, markers_of
from marked_lines import Line, read_lines


@pytest.mark.parametrize("line", read_lines("marker_uses.txt"), ids=lambda line: line.text)
def test_form_is_read_by_its_use(parse_of: ParseOf, line: Line) -> None:
    found = {(m.start, m.end): m.reading for m in markers_of(parse_of(line.text))}
    assert {span: found.get(span) for span in line.readings} == line.readings
