"""Cabinets of the bicycle workshop larger than the shipped ones, and with longer names: what is printed of them must
find room as well."""

from functools import cache
from pathlib import Path

from shoplib.documents.project_file import project_from_text
from shoplib.model.cabinet import solve
from shoplib.model.solved import Cabinet

DATA = Path(__file__).parents[2] / "data"
_DRAWERS = """
format = 1
name = "Wall of small parts"
show = { unit = "mm", step = "0.5 mm" }
size = { by = "outside", width = "1750 mm", height = "1700 mm", depth = "400 mm" }
sheets.ply = { kind = "plywood", nominal = "12 mm", readings = ["12 mm"], length = "2500 mm", width = "1700 mm" }
carcass = { sheet = "ply", divider = { kind = "dado" }, back = { kind = "applied", sheet = "ply" } }
fronts = { kind = "overlay", sheet = "ply" }
"""
_BAY = """
[[bays]]
kind = "drawers"
%s
[bays.drawers]
count = 10
heights = "ratio"
ratio = %s
slide = "side-mount ball-bearing, metric lengths"
box_sheet = "ply"
"""
_SHELVES = """
format = 1
name = "%s"
show = { unit = "in", step = "1/64 in" }
size = { by = "outside", width = "58 in", height = "40 in", depth = "15 in" }
[carcass]
sheet = "%s"
divider = { kind = "dado" }
corner = { kind = "rabbet" }
shelf = { kind = "dado" }
back = { kind = "rabbet", sheet = "%s" }

[sheets."%s"]
kind = "plywood"
nominal = "3/4 in"
readings = ["0.703 in", "0.709 in"]
length = "144 in"
width = "60 in"

[[edging]]
boards = "case"
kind = "strip"
thickness = "1/4 in"

[[edging]]
boards = "shelves"
kind = "strip"
thickness = "1/4 in"
"""
_SHELF = """
[[bays]]
kind = "shelves"
%s
shelves = { at = ["%s in"] }
"""


@cache
def drawers_in(count: int) -> Cabinet:
    """Ten drawers in each of so many bays, no two boxes of one size."""
    bays = [_BAY % (f'width = "{320 + 7 * bay} mm"' if bay < count - 1 else "",
                    [25 + (7 * bay + 5 * row) % 31 for row in range(10)]) for bay in range(count)]
    return solve(project_from_text("".join((_DRAWERS, *bays))))


@cache
def shelves_of(sheet: str, name: str = "Shelves for wheels") -> Cabinet:
    """Four bays of unlike width with a shelf each, of a sheet that is called so."""
    bays = [_SHELF % (f'width = "{12 + bay} in"' if bay < 3 else "", 8 + 2 * bay) for bay in range(4)]
    return solve(project_from_text("".join((_SHELVES % (name, sheet, sheet, sheet), *bays))))


@cache
def long_named() -> Cabinet:
    """The finger-jointed drawers with names as long as they may be, of the project and of each sheet, in one word."""
    text = (DATA / "projects" / "finger_jointed_drawers.toml").read_text(encoding="utf-8")
    for name in ("Finger-jointed drawers", "case sheet", "box sheet", "thin sheet"):
        text = text.replace(f'"{name}"', f'"{(name.replace(" ", "").replace("-", "") * 8)[:80]}"')
    return solve(project_from_text(text))
