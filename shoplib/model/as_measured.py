"""What was measured replaces what was planned; and the plan says what changed because of it."""

from dataclasses import replace

from shoplib.measure import write_length
from shoplib.model.board import Board
from shoplib.model.project import Project
from shoplib.model.solved import Cabinet, Finding


def with_measured_parts(project: Project, boards: tuple[Board, ...]) -> tuple[Board, ...]:
    """The boards with each measured length or width in place of the planned one.

    A part keeps its own origin (lower, left or front end); the dry-fit then shows where it no longer
    meets its neighbours.
    """
    parts = project.measured.parts
    if not parts:
        return boards
    return tuple(
        replace(board, length=parts[board.name].length or board.length, width=parts[board.name].width or board.width)
        if board.name in parts
        else board
        for board in boards
    )


def what_changed(project: Project, planned: Cabinet, built: Cabinet) -> tuple[Finding, ...]:
    """One note for each board whose size follows from a measurement, with the size before and after."""
    found = []
    for board in built.boards:
        before = planned.by_name.get(board.name)
        if before is None or before.size == board.size:
            continue
        parts = [
            f"{name} {write_length(new, project.style)} (planned {write_length(old, project.style)})"
            for name, old, new in zip(("length", "width", "thickness"), before.size, board.size, strict=True)
            if old != new
        ]
        found.append(
            Finding("as measured", "note", (board.name,), f"{board.name}: as measured, {' and '.join(parts)}.")
        )
    return tuple(found)
