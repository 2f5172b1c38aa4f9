"""What goes behind slides and runners of openings that are wider at one end, told where these are put on."""

from shoplib.building.in_opening import held_width
from shoplib.checks.shims import find_shims
from shoplib.model.solved import Cabinet
from shoplib.words.naming import and_list, in_short


def shims_told(cabinet: Cabinet) -> list[str]:
    """By the latest readings: at which end, and how thick; equal ones together, nothing where nothing is to be done.

    >>> from shoplib.documents.examples import cabinet_from
    >>> shims_told(cabinet_from("under_bench_case"))
    []
    """
    project, alike = cabinet.project, {}
    for group, read in project.measured.latest.items() if project else ():
        bay = next((board.part_of.bay for board in cabinet.groups.get(group, ()) if board.role == "box side"), None)
        if bay is None:
            continue
        row = cabinet.slides[project.bays[bay - 1].drawers.slide]
        for found in find_shims(group, read, held_width(cabinet, group, row), row, cabinet.style):
            if found.level == "warn":
                alike.setdefault(found.text.removeprefix(f"{group}: "), []).append(group)
    return [f"{and_list(in_short(groups)).capitalize()}: {text}" for text, groups in alike.items()]
