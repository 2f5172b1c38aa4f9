"""What changed because of what was measured: each board before, after, and because of which reading."""

from shoplib.measure import INCH, Style, narrowest, write_brief
from shoplib.model.as_measured import STRANGE, far_off
from shoplib.model.board import FRONTS, Board
from shoplib.model.project import Opening as Reading
from shoplib.model.project import Project
from shoplib.model.solved import Cabinet, Finding

SEEN = INCH // 500
"""0.002 in: a saw is not set finer, so a board that is off by less is no other board (common practice, no source)."""


def what_changed(project: Project, planned: Cabinet, built: Cabinet) -> tuple[Finding, ...]:
    """One note for each board whose size follows from a measurement: before, after, and because of what.

    A finished part that is far off its plan is a "warn": it was misread, or spoilt, before anything is cut to it.
    """
    found, style = [], project.style
    for board in built.boards:
        before = planned.by_name[board.name]
        if before.size == board.size:
            continue
        parts = [
            f"{name} {write_brief(new, style)}, planned {write_brief(old, style)}"
            for name, old, new in zip(("length", "width"), before.size, board.size, strict=False)
            if abs(new - old) >= SEEN
        ]
        if not parts:
            continue
        off = far_off([new - old for old, new in zip(before.size, board.size, strict=True)], 0)
        text = f"{board.name}: {' and '.join(parts)}, {_because(project, built, before, board)}."
        text += _before_edging(project, before, board)
        if board.name in project.measured.parts and off > STRANGE:
            text += " Measure it again before anything is cut to it; if it is so, cut it again."
            found.append(Finding("as measured", "warn", (board.name,), text, off))
        else:
            found.append(Finding("as measured", "note", (board.name,), text + _leaves(project, built, before, board)))
    return (*found, *_other_slides(project, planned, built))


def _before_edging(project: Project, planned: Board, made: Board) -> str:
    """Where a part was measured as large as the saw leaves it: sizes are measured with the edging on."""
    given, style = project.measured.parts.get(made.name), project.style
    for name, index in (("length", 0), ("width", 1)) if given else ():
        read, finished, cut = getattr(given, name), planned.size[index], planned.cut_size[index]
        if read is not None and abs(read - cut) <= style.step and abs(read - cut) < abs(read - finished):
            edging = write_brief(finished - cut, style)
            return (
                f" This is its {name} at the saw, {write_brief(cut, style)}, before {edging} of edging: if the edging "
                "is not on yet, measure again with it on, or leave the line out."
            )
    return ""


_AGAINST_BACK = {"divider", "fixed shelf", "top", "bottom", "stretcher"}


def _leaves(project: Project, built: Cabinet, before: Board, after: Board) -> str:
    """What a part of the case does that was finished less deep than planned, where the dry-fit sees no clash."""
    short = before.box.size[1] - after.box.size[1]
    if short <= 0 or after.name not in project.measured.parts or after.role not in _AGAINST_BACK:
        return ""
    ends = after.box.high[1]
    backs = [board for board in built.boards if board.role == "back"]
    reach = [board.box.high[1] for board in built.boards if board.role == "side"]
    if not backs or after.role in ("top", "bottom", "stretcher"):
        less = "" if not backs or after.role == "stretcher" else ", and the back lies on so much less of it"
        gap = write_brief(narrowest(reach) - ends, project.style)
        return f" Flush in front, it ends {gap} before the rear edges of the sides{less}."
    gap = write_brief(narrowest([back.box.low[1] for back in backs]) - ends, project.style)
    return (
        f" Flush in front, it ends {gap} before the back, which has nothing to be fastened to there: "
        "glue a strip of that thickness to its rear edge, or cut it again."
    )


def _other_slides(project: Project, planned: Cabinet, built: Cabinet) -> list[Finding]:
    """One note for each bay that takes slides of another length than planned: they are bought by then."""
    before = {piece.group: piece.box.size[1] for piece in planned.hardware if piece.what == "slide"}
    told: dict[tuple[str, int, int], None] = {}
    for piece in built.hardware:
        new, old = piece.box.size[1], before.get(piece.group)
        if piece.what == "slide" and new != old and new in built.slides[piece.row].lengths:
            told[built.part_of(piece.group).bay_name, old, new] = None
    style = project.style
    return [
        Finding(
            "as measured",
            "note",
            (),
            f"{bay}: it takes slides of {write_brief(new, style)}, where the plan had {write_brief(old, style)}; "
            "buy these, or change them.",
            new - old,
        )
        for bay, old, new in told
    ]


def _governing(read: Reading, board: Board, style: Style) -> str:
    """The reading that decides this board: a front goes by the one in front, what goes in by the smaller."""
    if read.front == read.back:
        return write_brief(read.front, style)
    if board.role == "front":
        return f"{write_brief(read.front, style)} at the front"
    where = "front" if read.front < read.back else "back"
    return f"{write_brief(narrowest([read.front, read.back]), style)} at the {where}, where it is narrower"


def _decides(project: Project, built: Cabinet, board: Board) -> str:
    """The opening that a board goes by: its own, of overlay fronts the narrowest of their bay (`before_the_edges`)."""
    part, latest = board.part_of, project.measured.latest
    if board.role != "front" or project.fronts.kind != "overlay" or part.what != "drawer":
        return part.opening
    column = {front.part_of.opening: latest[front.part_of.opening].front for front in built.boards
              if front.role == "front" and (front.part_of.bay, front.part_of.what) == (part.bay, part.what)
              and front.part_of.opening in latest}
    least = narrowest([*column.values()])
    return part.opening if column[part.opening] == least else next(name for name in column if column[name] == least)


def _because(project: Project, built: Cabinet, before: Board, after: Board) -> str:
    """Across, the opening decides; in depth, the depth of the bay; where they are not measured, finished parts."""
    measured, style = project.measured, project.style
    if after.name in measured.parts:
        return "because it was measured so"
    changed = [old != new for old, new in zip(before.box.size, after.box.size, strict=True)]
    part, causes = after.part_of, []
    openings = measured.latest if after.stage == FRONTS else measured.openings
    if changed[0] and part and part.opening in openings:
        name = _decides(project, built, after)
        of = name if name == part.opening else f"{name}, the narrowest of its column,"
        causes.append(f"the opening of {of} measures {_governing(openings[name], after, style)}")
    if changed[1] and part and part.bay_name in measured.depths:
        causes.append(f"the depth of {part.bay_name} measures {write_brief(measured.depths[part.bay_name], style)}")
    if sum(changed) > len(causes) and measured.parts:
        own = [name for name in measured.parts if name.startswith(f"{after.group} ")]
        causes.append(f"of the measured size of {', '.join(own or measured.parts)}")
    return f"because {' and because '.join(causes)}"
