"""Cuts and edging of the plan's own list, edited by hand: what was taken out, shuffled or added is told."""

import csv
from pathlib import Path

import pytest

from shoplib.commands import check, plan

UNDER_BENCH = Path(__file__).parents[2] / "data" / "projects" / "under_bench_case.toml"


@pytest.fixture(scope="module")
def rows(tmp_path_factory: pytest.TempPathFactory) -> list[dict[str, str]]:
    folder = tmp_path_factory.mktemp("plan")
    assert plan.run(str(UNDER_BENCH), str(folder)) == 0
    with (folder / "cut_list.csv").open(newline="", encoding="utf-8") as file:
        return list(csv.DictReader(file))


def agrees(rows: list[dict[str, str]], changed: dict[str, str], folder: Path) -> int:
    """The exit status for the list with the left side's row changed."""
    edited = [row | changed if row["names"] == "left side" else row for row in rows]
    with (folder / "list.csv").open("w", newline="", encoding="utf-8") as file:
        writer = csv.DictWriter(file, list(rows[0]))
        writer.writeheader()
        writer.writerows(edited)
    return check.run(str(UNDER_BENCH), str(folder / "list.csv"))


def test_the_list_as_planned_agrees(rows, tmp_path):
    assert agrees(rows, {}, tmp_path) == 0


@pytest.mark.parametrize("how", ["shuffled", "none", "left out"])
def test_cuts_that_were_changed_are_told(rows, how, tmp_path, capsys):
    cuts = next(row["cuts"] for row in rows if row["names"] == "left side").split("; ")
    shuffled = "dado 5/16 in wide, 4 in deep for the bottom, in the outside face, 0.713 in from the top end"
    new = {"shuffled": [cuts[0], shuffled, *cuts[2:]], "none": ["none"], "left out": cuts[:1]}[how]
    assert agrees(rows, {"cuts": "; ".join(new)}, tmp_path) == 1
    told = {"shuffled": f"left side: `{shuffled}` cannot be cut", "none": "left side: no cuts, planned notch 4 in"}
    assert told.get(how, "left side: cuts leave out dado") in " ".join(capsys.readouterr().out.split())
