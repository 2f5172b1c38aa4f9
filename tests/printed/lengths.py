"""Lengths as they stand on a printed page, read by nothing of `shoplib`, and plan.json for the shipped projects."""

import json
import re
from fractions import Fraction
from functools import cache

from shoplib.documents.plan_file import plan_text
from tests.printed.parts import cabinet_of, found_in

UNIT = {"in": Fraction(254, 10), "mm": Fraction(1)}
"""Millimetres."""
HIDDEN = {"in": Fraction(2, 1_000), "mm": Fraction(5, 100)}
"""A rest below this is not written. Common practice, no source."""
BARE = r"(?:\d+ )?\d+/\d+|\d+(?:\.\d+)?"
WRITTEN = re.compile(rf"({BARE})(?: (in|mm))?(?: \(([+-]\d+\.\d+)(?: (?:in|mm))?\))?")


def mm(text: str, unit: str) -> Fraction:
    """What is written, with its rest in brackets, in mm."""
    found = WRITTEN.fullmatch(text)
    assert found, text
    whole = sum(Fraction(part) for part in found[1].split())
    return (whole + Fraction(found[3] or 0)) * UNIT[unit]


def numbers(text: str) -> set[str]:
    """Every length in the text, without its unit."""
    return {found[1] for found in WRITTEN.finditer(text)}


def near(printed: str, exact: float, unit: str) -> bool:
    """Whether a printed length is that of plan.json, up to the rest that is not written and the caliper's digit."""
    return abs(mm(printed, unit) - Fraction(str(exact))) <= HIDDEN[unit] * UNIT[unit]


def unit_of(project: str) -> str:
    return cabinet_of(project).style.unit


@cache
def plan(project: str) -> dict:
    return json.loads(plan_text(cabinet_of(project), found_in(project)))


@cache
def boards(project: str) -> dict[str, dict]:
    return {board["name"]: board for board in plan(project)["boards"]}


def corners(board: dict) -> tuple[list[float], list[float]]:
    """The lowest and the highest corner of the uncut board in the cabinet, in mm."""
    low, high = list(board["origin"]), list(board["origin"])
    for axis, size in zip(board["axes"], board["size"], strict=True):
        way = "xyz".index(axis[1])
        (high if axis[0] == "+" else low)[way] += size if axis[0] == "+" else -size
    return low, high


def about(several: list[dict]) -> tuple[list[float], list[float]]:
    """The corners of the space that boards fill together."""
    ends = [corners(board) for board in several]
    return [min(low[k] for low, _ in ends) for k in range(3)], [max(high[k] for _, high in ends) for k in range(3)]
