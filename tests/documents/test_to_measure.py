"""to_measure.toml: filled in as it says, it reads back, and the plan follows what stands in it."""

import re
from dataclasses import replace
from pathlib import Path

import pytest

from shoplib.checks import check
from shoplib.documents.project_file import ProjectFileError, project_from_text
from shoplib.documents.project_text import project_text
from shoplib.documents.to_measure import example_line, planned_depths, planned_openings, to_measure_text
from shoplib.lists.cut_list import kinds
from shoplib.measure import to_step
from shoplib.model.cabinet import solve
from shoplib.model.project import Measured, Opening
from tests.random_projects import project

PROJECTS = sorted((Path(__file__).parents[2] / "data" / "projects").glob("*.toml"))


@pytest.fixture(params=PROJECTS, ids=lambda path: path.stem)
def given(request) -> str:
    return request.param.read_text(encoding="utf-8")


def filled(block: str, change: dict[str, str] | None = None) -> str:
    """The block with every reading as planned, or as `change` has it for the lines of a name."""
    lines = []
    for line in block.splitlines():
        body, found, planned = line.partition(" # planned ")
        name = body.split(" = ")[0].strip('"')
        value = (change or {}).get(name, planned)
        lines.append(body.replace('""', f'"{value}"') if found else line)
    return "\n".join(lines)


def in_steps(cabinet) -> list:
    """The rows of the cut list as they are set at a saw: at whole steps."""
    return [(kind.names, [to_step(side, cabinet.style.step) for side in kind.cut[:2]]) for kind in kinds(cabinet)]


def test_filled_with_the_planned_values_it_gives_the_same_plan(given: str) -> None:
    planned = solve(project_from_text(given))
    built = solve(project_from_text(f"{given}\n{filled(to_measure_text(planned))}"))
    assert planned.waiting
    assert not built.waiting
    assert in_steps(built) == in_steps(planned)
    assert [finding.text for finding in check(built)] == [finding.text for finding in check(planned)]


@pytest.mark.parametrize("seed", range(60))
def test_the_planned_values_are_those_of_the_plan_to_the_tick(seed: int) -> None:
    """All that waits is named and nothing else; measured so, not one board is another."""
    given = project(seed)
    planned = solve(given)
    openings = {name: Opening(width, width) for name, width in planned_openings(planned).items()}
    built = solve(replace(given, measured=Measured(openings, planned_depths(planned))))
    assert built.boards == planned.boards
    assert built.waiting == ()
    assert bool(openings) == bool(planned.waiting) == bool(to_measure_text(planned))


def test_a_value_that_differs_changes_the_plan_where_it_was_read(given: str) -> None:
    """Overlay fronts of a bay have one width: those over other openings follow too, and say by which they go."""
    planned = solve(project_from_text(given))
    name = next(name for name in planned_openings(planned) if "drawer" in name)
    read = "0.1 in less"
    narrower = planned_openings(planned)[name] - 3 * planned.style.step
    read = f"{narrower / 80_000:.7f} mm"
    built = solve(project_from_text(f"{given}\n{filled(to_measure_text(planned), {name: read})}"))
    changed = {board.group for board in built.boards if board.size != planned.by_name[board.name].size}
    assert name in changed
    told = [finding.text for finding in built.findings if finding.check == "as measured"]
    assert any(text.startswith(name) for text in told)
    overlay = planned.project.fronts.kind == "overlay"
    elsewhere = [text for text in told if not text.startswith((name, "bay 1:"))]
    assert bool(elsewhere) == (overlay and "bay 1 drawer 2 front" in planned.by_name)
    for text in elsewhere:
        assert re.match(r"bay 1 drawer \d front: ", text)
        assert f"the opening of {name}, the narrowest of its column," in text


def test_what_was_measured_before_stands_filled_in(given: str) -> None:
    """So the whole can take the place of what the file has; saved and written again it stays the same."""
    block = filled(to_measure_text(solve(project_from_text(given))))
    part = '[measured.parts."left side"]\nlength = "33 in"\n'
    block += "\n" + (part if "33 1/2 in" in given else "")
    built = solve(project_from_text(f"{given}\n{block}"))
    again = solve(project_from_text(f"{given}\n{to_measure_text(built)}"))
    assert again.project.measured == built.project.measured
    first, _, second = to_measure_text(built).partition("[measured.openings_again]")
    assert ' = ""' not in first and len(re.findall(' = "", back = ""', second)) == len(built.again)
    assert example_line(built) == ""
    assert to_measure_text(solve(project_from_text(project_text(built.project)))) == to_measure_text(built)


def test_the_example_is_a_line_that_can_be_read(given: str) -> None:
    planned = solve(project_from_text(given))
    line = example_line(planned)
    built = solve(project_from_text(f"{given}\n[measured.openings]\n{line}\n"))
    read = next(iter(built.project.measured.openings.values()))
    assert read.back - read.front == planned.style.step


def test_lines_left_empty_count_as_not_read_yet(given: str) -> None:
    """The block as it comes changes nothing; filled in for one depth alone, that one counts and the rest waits."""
    planned = solve(project_from_text(given))
    block = to_measure_text(planned)
    assert solve(project_from_text(f"{given}\n{block}")) == planned
    bay, depth = next(iter(planned_depths(planned).items()))
    one = block.replace(f'"{bay}" = ""', f'"{bay}" = "{depth // 80_000 - 1} mm"', 1)
    assert project_from_text(f"{given}\n{one}").measured == Measured({}, {bay: (depth // 80_000 - 1) * 80_000})


def test_an_opening_read_at_one_end_only_is_named(given: str) -> None:
    block = to_measure_text(solve(project_from_text(given)))
    line = re.search(r'"(bay \d drawer \d)" = \{ front = "", back = "" \}', block)
    half = line[0].replace('front = ""', 'front = "20 in"')
    with pytest.raises(ProjectFileError, match=rf'measured\.openings\."{line[1]}"\.back: the text is empty'):
        project_from_text(f"{given}\n[measured.openings]\n{half}\n")


def test_it_is_read_on_a_narrow_screen(given: str) -> None:
    assert max(map(len, to_measure_text(solve(project_from_text(given))).splitlines())) <= 80


def test_an_empty_table_measures_nothing_and_is_no_fault(given: str) -> None:
    assert solve(project_from_text(f"{given}\n[measured]\n")) == solve(project_from_text(given))
