"""The tables behind "will it hold": what was read stands there with its source and its mark."""

import csv

import pytest

from shoplib.measure import INCH, read_length
from shoplib.measure.quantity import read_quantity
from shoplib.model.screw_room import shank
from shoplib.model.species import moves_as
from shoplib.tables.loads import loads
from shoplib.tables.properties import sheet_properties, wood_properties
from shoplib.tables.screw_sizes import metric_screw_sizes, screw_sizes, size_of
from shoplib.tables.slide_ratings import slide_ratings
from shoplib.tables.slides import DATA
from shoplib.tables.wood import woods

FILES = ("wood_properties.csv", "sheet_stiffness.csv", "screw_sizes.csv", "screw_sizes_mm.csv", "slide_ratings.csv")


@pytest.mark.parametrize("name", FILES)
def test_every_row_has_its_source_and_mark(name):
    with (DATA / name).open(newline="", encoding="utf-8") as file:
        rows = list(csv.DictReader(file))
    assert rows and all(row["source"] and row["confidence"] for row in rows)


def test_every_load_has_its_source_and_mark():
    assert len(loads()) == 11
    assert all(row.source and row.what for row in loads().values())
    assert {row.mark for row in loads().values()} == {"read", "from memory", "common practice, no source"}
    kinds = {"put_in": "load", "tipping_weight": "force", "child": "force", "pull_at_top": "force",
             "drawer_fill": "filling"}  # fmt: skip
    for name, row in loads().items():
        if name == "tipping_volume":
            assert row.value == "3.2 ft3"
        else:
            assert read_quantity(row.value, kinds[name]) if name in kinds else read_length(row.value)


@pytest.mark.parametrize(
    ("species", "gravity", "stiffness"),
    [("white ash", 0.60, 12000), ("black cherry", 0.50, 10300), ("sugar pine", 0.36, 8200),
     ("northern red oak", 0.63, 12500), ("eastern white pine", 0.35, 8500)],
)  # fmt: skip
def test_woods_as_printed(species, gravity, stiffness):
    """Wood Handbook (2010) Table 5-3; the last two from memory, the others read."""
    row = wood_properties()[species]
    assert (row.gravity, row.stiffness) == (gravity, stiffness)
    assert (row.confidence == "from memory") == (species in ("northern red oak", "eastern white pine"))


def test_sheets_as_printed():
    """Wood Handbook FPL-GTR-282 (2021) Table 12-1, read in a copy."""
    rows = sheet_properties()
    assert rows["particleboard"].stiffness == (2760, 4140) and rows["MDF"].stiffness == (3590, 3590)
    assert rows["oriented strandboard"].gravity == (0.5, 0.8) and "hardboard" not in rows


def test_each_wood_moves_as_one_of_the_movement_table_or_says_none():
    names = {row.moves_as for row in wood_properties().values()}
    assert names - {""} <= set(woods())
    assert moves_as("sugar maple") == woods()["sugar maple (hard)"] and moves_as("sassafras") == woods()["sassafras"]
    assert [name for name, row in wood_properties().items() if not row.moves_as] == [
        "black ash", "shagbark hickory", "red pine", "shortleaf pine", "slash pine", "Virginia pine",
        "redwood, young-growth",
    ]  # fmt: skip


def test_screw_diameters_follow_the_standard():
    """ASME B18.6.1: D = 0.060 + 0.013 N in, read."""
    for gauge, row in screw_sizes().items():
        number = int(gauge.removeprefix("No. "))
        assert row.diameter == (60 + 13 * number) * INCH // 1000 == shank(gauge)
        assert row.root is None or row.root < row.diameter


@pytest.mark.parametrize(("gauge", "inch"), [("3.5 mm", "No. 6"), ("4.0 mm", "No. 8")])
def test_drills_of_metric_gauges_are_those_of_the_inch_gauge_as_thick(gauge, inch):
    """By hand: No. 6 is 3.51 mm thick, No. 8 4.17 mm; 5/64 in is 1.98 mm, 3/32 in 2.38 mm, 11/64 in 4.37 mm."""
    ours, theirs, half = metric_screw_sizes()[gauge], size_of(inch), read_length("0.5 mm")
    assert ours.diameter == shank(gauge) <= theirs.diameter <= ours.diameter + half
    for name in ("pilot_softwood", "pilot_hardwood"):
        assert abs(getattr(ours, name) - getattr(theirs, name)) <= half // 2
    assert 0 <= ours.clearance - theirs.clearance < half
    assert ours.pilot_softwood < ours.pilot_hardwood < ours.diameter < ours.clearance


def test_slide_classes_stand_in_order():
    """AWS 2009, appendix B, read: 50, 75, 100 lb standing; 30, 50, 75 lb running 35,000, 50,000, 100,000 times."""
    rows = [(row.static, row.moving, row.cycles) for row in slide_ratings()]
    assert rows == [(50, 30, 35_000), (75, 50, 50_000), (100, 75, 100_000)]
