"""Caliper readings against the limits of NIST Voluntary Product Standard PS 1 (PS 1-09 and PS 1-19)."""

from dataclasses import replace
from fractions import Fraction
from pathlib import Path

import pytest

from shoplib.checks import check
from shoplib.checks.readings import find_doubtful_readings, unlike_in
from shoplib.documents.project_file import read_project
from shoplib.measure import INCH, INCH_STYLE, MM, MM_STYLE
from shoplib.model.cabinet import solve
from shoplib.model.sheet import Sheet
from shoplib.tables.plywood import plywood_limits
from tests.checks.cabinets import board, cabinet

PROJECTS = Path(__file__).parents[2] / "data" / "projects"

PRINTED = {  # nominal: limits in inches, unsanded, touch-sanded or overlaid sheets; read in PS 1
    "1/4": ("0.219", "0.281"),
    "11/32": ("0.313", "0.375"),
    "3/8": ("0.344", "0.406"),
    "7/16": ("0.406", "0.469"),
    "15/32": ("0.438", "0.500"),
    "1/2": ("0.469", "0.531"),
    "19/32": ("0.563", "0.625"),
    "5/8": ("0.594", "0.656"),
    "23/32": ("0.688", "0.750"),
    "3/4": ("0.719", "0.781"),
    "13/16": ("0.781", "0.844"),
    "7/8": ("0.831", "0.919"),
    "1": ("0.950", "1.050"),
    "9/8": ("1.069", "1.181"),
    "5/4": ("1.188", "1.313"),
}


def inches(text):
    """Inches as ticks, which must come out whole."""
    exact = Fraction(text) * INCH
    assert exact.denominator == 1
    return int(exact)


def found(nominal, *readings, kind="plywood", style=None):
    sheet = Sheet("case sheet", kind, nominal, tuple(map(inches, readings)))
    shelf = board("shelf", (0, 0, 0), (500, 300, 18), "z")
    given = {} if style is None else {"style": style}
    return find_doubtful_readings(cabinet([shelf], sheets={"case sheet": sheet}, **given))


def test_every_printed_row_and_no_other():
    table = plywood_limits()
    assert {n: (row.least, row.greatest) for n, row in table.items()} == {
        inches(n): (inches(low), inches(high)) for n, (low, high) in PRINTED.items()
    }
    assert {row.confidence for row in table.values()} == {"read"}


@pytest.mark.parametrize(("surface", "flat", "up_to", "share"), [
    ("unsanded", Fraction(1, 32), Fraction(13, 16), Fraction(5, 100)),
    ("sanded", Fraction(1, 64), Fraction(3, 4), Fraction(3, 100)),
])  # fmt: skip
def test_the_rows_follow_the_rule_of_the_standard(surface, flat, up_to, share):
    """+-1/32 up to 13/16 and +-5 % above; sanded +-1/64 up to 3/4 and +-3 % above (read), to the printed digit."""
    table = plywood_limits(surface)
    assert set(table) == {inches(n) for n in PRINTED}
    half_a_digit = (Fraction(1, 2000) if surface == "unsanded" else Fraction(1, 20000)) + Fraction(1, INCH)
    for row in table.values():
        nominal = Fraction(row.nominal, INCH)
        allowed = flat if nominal <= up_to else nominal * share
        assert abs(Fraction(row.least, INCH) - (nominal - allowed)) <= half_a_digit
        assert abs(Fraction(row.greatest, INCH) - (nominal + allowed)) <= half_a_digit


def test_no_such_surface_has_no_rows():
    assert plywood_limits("planed") == {}


@pytest.mark.parametrize("nominal", PRINTED)
def test_the_printed_limits_themselves_are_allowed_and_a_thousandth_more_is_not(nominal):
    least, greatest = PRINTED[nominal]
    assert found(inches(nominal), least, greatest) == ()
    for reading in (Fraction(least) - Fraction(1, 1000), Fraction(greatest) + Fraction(1, 1000)):
        (finding,) = found(inches(nominal), nominal, reading)
        assert (finding.check, finding.level, finding.amount) == ("readings", "warn", inches("0.001"))
        assert "reading 2 is" in finding.text and "reading 1" not in finding.text


def test_a_reading_outside_is_named_with_its_limits():
    (finding,) = found(inches("3/4"), "0.735", "0.703", "0.8")
    assert finding.text == (
        "case sheet: reading 2 is 0.703 in and reading 3 is 0.8 in, and PS 1, the plywood standard, "
        "lets plywood named 3/4 in be 0.719 in to 0.781 in thick. "
        "Read again, or this is another sheet than its name says."
    )
    assert finding.amount == inches("0.019")


def test_a_sheet_that_keeps_the_limits_of_another_name_is_told_which():
    """0.703 in is the label thickness that PS 1 prints for 23/32 in."""
    (finding,) = found(inches("3/4"), "0.703", "0.699")
    assert finding.text.endswith("than its name says; 23/32 in would allow what was read, and is often sold as 3/4 in.")
    assert found(inches("23/32"), "0.703", "0.699") == ()


def test_limits_are_in_inches_whatever_the_project_shows():
    (finding,) = found(inches("1/2"), "0.45", style=MM_STYLE)
    assert "reading 1 is 0.45 in" in finding.text and "0.469 in to 0.531 in" in finding.text


def test_a_sheet_read_once_is_a_note_and_a_sheet_not_read_a_warning():
    (once,) = found(inches("3/4"), "0.735")
    assert once.level == "note" and "read once, and it may be thicker elsewhere" in once.text
    (never,) = found(inches("3/4"))
    assert never.level == "warn" and "the name of a sheet is not its thickness" in never.text


@pytest.mark.parametrize(
    ("nominal", "kind"), [(18 * MM, "plywood"), (inches("0.74"), "plywood"), (inches("3/4"), "MDF")]
)
def test_what_ps_1_does_not_name_is_not_held_against_its_limits(nominal, kind):
    assert found(nominal, "0.5", "0.5", kind=kind) == ()


@pytest.mark.parametrize("kind", ["plywood", "MDF", "particleboard", "hardboard"])
def test_any_sheet_that_was_not_read_or_read_once_is_told(kind):
    """In millimetres too: nothing stands between a learner and a cut list made from the name of the sheet."""
    (never,) = found(18 * MM, kind=kind)
    assert never.level == "warn" and "no thickness was measured" in never.text
    (once,) = found(18 * MM, "0.7", kind=kind)
    assert once.level == "note" and "read once" in once.text


@pytest.mark.parametrize(("nominal", "kind"), [(inches("3/4"), "plywood"), (inches("0.72"), "MDF"), (18 * MM, "MDF")])
def test_a_single_reading_that_is_the_name_of_the_sheet_is_told(nominal, kind):
    (finding,) = found(nominal, Fraction(nominal, INCH), kind=kind, style=MM_STYLE)
    assert finding.level == "note" and "the very thickness it is sold by" in finding.text
    assert found(nominal, Fraction(nominal, INCH), Fraction(nominal, INCH), kind=kind) == ()


def test_solid_stock_is_planed_and_needs_no_reading():
    assert found(18 * MM, kind="solid") == ()


def test_a_sheet_that_no_board_comes_from_is_not_judged():
    sheet = Sheet("spare sheet", "plywood", inches("3/4"))
    shelf = board("shelf", (0, 0, 0), (500, 300, 18), "z")
    assert find_doubtful_readings(cabinet([shelf], sheets={
        "spare sheet": sheet, "case sheet": replace(sheet, readings=(inches("0.735"),) * 2)})) == ()  # fmt: skip


@pytest.mark.parametrize("file", sorted(PROJECTS.glob("*.toml")), ids=lambda path: path.stem)
def test_the_sheets_of_the_shipped_projects_are_what_their_names_say(file):
    told = [finding for finding in check(solve(read_project(file))) if finding.check == "readings"]
    assert told == []


def test_a_mistyped_reading_is_a_stop():
    plan = read_project(PROJECTS / "under_bench_case.toml")
    sheet = plan.sheets["case sheet"]
    wrong = replace(sheet, readings=(*sheet.readings[1:], inches("0.966")))
    told = [f for f in check(solve(replace(plan, sheets=plan.sheets | {"case sheet": wrong}))) if f.level == "stop"]
    assert any(f.check == "readings" and "0.966 in" in f.text for f in told)


@pytest.mark.parametrize(("apart", "stops"), [("1/16", False), ("0.064", True), ("0.08", True)])
def test_readings_of_one_sheet_lie_within_a_sixteenth(apart, stops):
    """PS 1 lets a sheet be 1/32 in over or under its name, so one sheet cannot read farther apart than twice that."""
    low = inches("0.7")
    sheet = Sheet("case sheet", "plywood", inches("3/4"), (low, low + inches(apart)))
    found = unlike_in(sheet, INCH_STYLE)
    assert [(f.level, f.amount) for f in found] == ([("stop", inches(apart))] if stops else [])
