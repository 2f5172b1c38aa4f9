"""Names of many boards in few words, and no board lost on the way."""

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shoplib.measure import INCH, INCH_STYLE, MM, MM_STYLE
from shoplib.words.amounts import how_much, setting
from shoplib.words.naming import and_list, boards_in_short, in_short
from tests.checks.cabinets import board

numbers = st.lists(st.integers(1, 12), min_size=1, max_size=6, unique=True).map(sorted)


def told(names: list[str]) -> str:
    return and_list(in_short(names))


@pytest.mark.parametrize(
    ("names", "text"),
    [
        (["bottom", "top"], "bottom and top"),
        (["divider 1", "divider 2"], "dividers 1 and 2"),
        (["bay 2 shelf 1", "bay 2 shelf 2", "bay 2 shelf 3"], "bay 2 shelves 1 to 3"),
        (["bay 1 rail 1", "bay 4 rail 1"], "rail 1 in bays 1 and 4"),
        (["bay 2 pull-out", "bay 3 pull-out"], "pull-out in bays 2 and 3"),
        (["bay 1 drawer 1", "bay 1 drawer 2", "bay 2 drawer 1"], "bay 1 drawers 1 and 2, and bay 2 drawer 1"),
        (["bay 1 drawer 1.1", "bay 1 drawer 1.2"], "bay 1 drawers 1.1 and 1.2"),
        (["shelf\n1", "=2"], "shelf\n1 and =2"),
    ],
)
def test_names_are_told_in_short(names: list[str], text: str) -> None:
    assert told(names) == text


@given(numbers, numbers)
def test_every_number_is_named_or_inside_a_range(bays: list[int], drawers: list[int]) -> None:
    text = told([f"bay {bay} drawer {drawer}" for bay in bays for drawer in drawers])
    inner, outer = re.fullmatch(r"drawers? (.*) in bays (.*)", text).groups() if len(bays) > 1 else (
        re.fullmatch(r"bay \d+ drawers? (.*)", text)[1], str(bays[0])
    )  # fmt: skip
    assert (_spelt(outer), _spelt(inner)) == (bays, drawers)


def _spelt(text: str) -> list[int]:
    found: list[int] = []
    for part in re.split(", | and ", text):
        first, _, last = part.partition(" to ")
        found += range(int(first), int(last or first) + 1)
    return found


def test_parts_of_drawers_are_told_by_what_they_are() -> None:
    groups = [f"bay {bay} drawer 1" for bay in (1, 3)]
    sides = [
        board(f"{group} {end} box side", (0, 0, 0), (9, 9, 9), "z", group=group)
        for group in groups for end in ("left", "right")
    ]  # fmt: skip
    assert boards_in_short(sides) == "left and right box side of drawer 1 in bays 1 and 3"
    assert boards_in_short(sides[:2]) == "bay 1 drawer 1 left and right box side"
    assert boards_in_short(sides[:1]) == "bay 1 drawer 1 left box side"
    back = board("back", (0, 0, 0), (9, 9, 9), "z")
    assert boards_in_short([back, sides[0], sides[2]]) == "back, and left box side of drawer 1 in bays 1 and 3"


@pytest.mark.parametrize(
    ("ticks", "style", "text"),
    [
        (2 * INCH + 2032, INCH_STYLE, "2 in"),
        (31 * INCH // 2000, INCH_STYLE, "0.0155 in"),
        (12 * MM + 3_999, MM_STYLE, "12 mm"),
        (4_000, MM_STYLE, "0.05 mm"),
        (1, MM_STYLE, "0.00001 mm"),
    ],
)
def test_amounts_are_steps_or_decimals_and_never_nothing(ticks: int, style, text: str) -> None:
    assert how_much(ticks, style) == text


def test_a_tool_is_set_to_a_step_or_a_decimal() -> None:
    assert setting(5 * INCH // 16, INCH_STYLE) == "5/16 in"
    assert setting(703 * INCH // 2000, INCH_STYLE) == "0.3515 in"
