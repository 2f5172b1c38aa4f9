"""The cut list of the plan set, read back out of the PDF, is cut_list.csv: number for number."""

import csv
import io
import json
import re
from decimal import Decimal
from fractions import Fraction
from math import floor

import pytest

from shoplib.documents.cut_list_file import cut_list_csv, cut_list_text
from shoplib.documents.paper import PAPERS
from shoplib.documents.plan_file import plan_text
from shoplib.printed.plan.cut_list_pages import cut_list_pages
from shoplib.printed.typeset.blocks import Table
from tests.printed.parts import cabinet_of, found_in
from tests.printed.sets import PROJECTS, plan_set_of, solved
from tests.printed.test_build_pages import flat

SETS = pytest.mark.parametrize(("project", "paper"), [(one, paper) for one in PROJECTS for paper in PAPERS])
MM = {"in": Fraction(254, 10), "mm": Fraction(1)}
FINEST = {"in": Fraction(5, 10_000), "mm": Fraction(1, 100)}
"""What a caliper shows; a rest is rounded to it. Common practice, no source."""
LEAST = {"in": Fraction(2, 1_000), "mm": Fraction(5, 100)}
"""What a saw is set to at the finest; a smaller rest is not told. Common practice, no source."""
LENGTH = re.compile(r"(?:(\d+) )?(\d+)/(\d+) (in|mm)|(\d+(?:\.\d+)?) (in|mm)")
REST = re.compile(r" \(([+-]\d+\.\d+) (?:in|mm)\)")


def number(text: str) -> Fraction:
    """A length without its rest, in its own unit."""
    whole, above, below, _, plain, _ = LENGTH.fullmatch(text).groups()
    return Fraction(plain) if plain else Fraction(whole or 0) + Fraction(int(above), int(below))


def parted(text: str) -> tuple[str, Fraction]:
    """What is written, and the rest in brackets behind it."""
    rest = REST.search(text)
    return (text[:rest.start()], Fraction(rest[1])) if rest else (text, Fraction(0))


def rounded(size: Fraction, unit: str) -> Fraction:
    """To what a caliper shows, a half up."""
    return FINEST[unit] * floor(size / FINEST[unit] + Fraction(1, 2))


def as_read(exact: str) -> tuple[str, Fraction]:
    """What must be printed of a length of cut_list.csv: as written, its rest as a caliper shows it, or none."""
    written, rest = parted(exact)
    unit = written.split()[-1]
    return written, Fraction(0) if abs(rest) < LEAST[unit] else rounded(rest, unit)


def as_measured(exact: str) -> Fraction:
    """What must be printed of a thickness: as a caliper shows it."""
    unit = exact.split()[-1]
    return rounded(number(exact), unit)


def under(project: str, paper: str):
    return plan_set_of(project, paper).under("Cut list")


def tables(project: str, paper: str) -> list[tuple[str, dict[str, str]]]:
    """The rows of the tables to cut from, each with the heading over it."""
    found, heading = [], ""
    for part in under(project, paper):
        heading = part.text if part.tag == "H2" else heading
        if part.tag == "Table" and "length" in part.rows[0]:
            head, *rows = part.rows
            found += [(heading, dict(zip(head, row, strict=True))) for row in rows]
    return found


def names(project: str, paper: str) -> dict[str, str]:
    """The boards of the rows that have several, by the number of the row."""
    [table] = [part for part in under(project, paper) if part.tag == "Table" and part.rows[0] == ("no.", "boards")]
    return dict(table.rows[1:])


def listed(project: str) -> list[dict[str, str]]:
    return list(csv.DictReader(io.StringIO(cut_list_csv(solved(project).cabinet, solved(project).findings))))


@SETS
def test_each_row_of_the_cut_list_stands_there_and_no_other(project, paper):
    printed, rows, several = tables(project, paper), listed(project), names(project, paper)
    assert len(printed) == len(rows)
    for at, ((heading, there), row) in enumerate(zip(printed, rows, strict=True), start=1):
        assert (there["no."], there["count"], there["sheet"]) == (str(at), row["count"], row["sheet"])
        assert heading.startswith(f"Stage {row['stage']}: ")
        assert parted(there["length"]) == as_read(row["length"])
        assert parted(there["width"]) == as_read(row["width"])
        assert number(there["thickness"]) == as_measured(row["thickness"])
        assert (several[str(at)] if row["count"] != "1" else there["part"]) == row["names"]
        assert there["cut"] == "\u2610"
    assert len(several) == sum(row["count"] != "1" for row in rows)


@SETS
def test_no_other_size_stands_in_the_tables(project, paper):
    for (_, there), row in zip(tables(project, paper), listed(project), strict=True):
        said = [part.strip() for part in there.get("edging and pairs", "").split(": finished ")]
        if row["edging"]:
            finished = said[1].split("; ")[0].split(" x ")
            assert [parted(size) for size in finished] == [
                as_read(row["finished_length"]), as_read(row["finished_width"])
            ]
            assert len(LENGTH.findall(there.get("edging and pairs", ""))) == len(LENGTH.findall(row["edging"])) + sum(
                1 + bool(REST.search(size)) for size in finished
            )
        else:
            assert not LENGTH.search(there.get("edging and pairs", ""))
        assert not re.search(r"[/().]", there["part"])


@SETS
def test_sizes_are_written_as_in_the_list_to_read(project, paper):
    printed = [f"{there['length']} x {there['width']} x {there['thickness']}" for _, there in tables(project, paper)]
    lines = cut_list_text(solved(project).cabinet)
    assert printed == re.findall(r"^ {6}(\d[^,\n]* x [^,\n]* x [^,\n]*), ", lines, re.MULTILINE)


@SETS
def test_sums_and_diagonals_are_those_of_the_plan(project, paper):
    of = solved(project)
    plan = json.loads(plan_text(of.cabinet, of.findings, of.in_use))
    said: dict[str, list[str]] = {}
    heading = ""
    for part in under(project, paper):
        heading = part.text if part.tag == "H2" else heading
        if part.tag == "LBody":
            said.setdefault(heading, []).append(part.text)
    assert len(said["Closing sums"]) == len(plan["sums"]) > 0
    for text, chain in zip(said["Closing sums"], plan["sums"], strict=True):
        words, numbers = text.split(": ", 1)
        assert words == f"{' + '.join(what for what, _ in chain['terms'])} = {chain['total'][0]}"
        unit = of.cabinet.style.unit
        terms, total = numbers.split(" = ")
        for printed, (_, mm) in zip([*terms.split(" + "), total], [*chain["terms"], chain["total"]], strict=True):
            written, rest = parted(printed)
            off = abs((number(written) + rest) * MM[unit] - Fraction(Decimal(str(mm))))
            assert off < (Fraction(2, 1_000) * MM["in"] if unit == "in" else Fraction(5, 100))
    diagonals = [finding["text"] for finding in plan["findings"] if finding["check"] == "diagonals"]
    assert said["Diagonals to expect"] == diagonals


@pytest.mark.parametrize(("project", "pairs"), [
    ("under_bench_case", [("left side", "right side")]),
    ("wheel_wall_drawers", [("left side", "right side"), ("bay 1 drawer 1 box front", "bay 2 drawer 1 box front")]),
    ("rolling_stand", []), ("finger_jointed_drawers", []),
])
def test_the_mirror_image_of_a_board_is_named_beside_it(project, pairs):
    """By hand from the drawings: each of a pair names the other, and no other row has a twin."""
    cabinet = cabinet_of(project)
    rows = [row for block in flat(cut_list_pages(cabinet, found_in(project))) if isinstance(block, Table)
            and block.head[:2] == ("cut", "no.") for row in block.rows]
    told = {(row[3].removesuffix(" (1)"), row[-1].partition("mirror image of ")[2]) for row in rows
            if "mirror image of" in row[-1]}
    assert told == {way for one, other in pairs for way in ((one, other), (other, one))}
