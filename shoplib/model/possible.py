"""What a project cannot ask for, seen before any board is placed."""

from shoplib.measure import INCH, MM, Style, write_brief
from shoplib.model.project import Base, Bay, Fronts, ImpossibleProject, InUse, Project, Size, Space
from shoplib.model.species import refuse_unknown_species
from shoplib.model.unused import refuse_unused

_TABLES = {"drawers": "drawers", "shelves": "shelves", "pull-out": "pull_out"}
_SAYS = {
    "drawers": "needs a table that says how many",
    "shelves": "needs a table that says how many",
    "pull-out": "needs a table that describes its panel",
}


_WIDEST_KERF = {"in": INCH // 2, "mm": 12 * MM}
"""What a saw leaves is narrower: some four times a usual blade (common practice, no source)."""


def refuse_impossible(project: Project, case: int) -> None:
    """Look through the project as it is written; `case` is the thickness of the case sheet in ticks.

    Raises ImpossibleProject with the key to change.
    """
    if not project.bays:
        raise ImpossibleProject("bays", 'a case has at least one bay; write [[bays]] with kind = "open"')
    for number, bay in enumerate(project.bays, 1):
        _bay(bay, f"bays[{number}]")
    _size(project.size)
    _base(project.base)
    refuse_unused(project)
    refuse_unknown_species(project.sheets)
    _in_use(project.in_use, bool(project.carcass.rails))
    _strips(project)
    _kerf(project)
    for name, part in project.measured.parts.items():
        if part.length is None and part.width is None:
            raise ImpossibleProject(f'measured.parts."{name}"', "give its length, its width, or both")
    if project.space is not None:
        _space(project.space)
    if project.fronts.kind == "overlay":
        _overlay(project.fronts, case, len(project.bays) > 1)


def _size(size: Size) -> None:
    if size.by != "space":
        return
    for side in ("width", "height", "depth"):
        if getattr(size, side) is not None:
            raise ImpossibleProject(
                f"size.{side}", 'size.by = "space" takes it from the space; take this out, or write by = "outside"'
            )


def _base(base: Base) -> None:
    """What a base of this kind does not use would be ignored without a word."""
    if base.kind == "none" and base.height:
        raise ImpossibleProject("base.height", 'base.kind is "none"; name the base that is so high, or take this out')
    if base.kind not in ("toe space", "plinth"):
        for name in ("setback", "sheet"):
            if getattr(base, name):
                raise ImpossibleProject(
                    f"base.{name}", f'only a toe space or a plinth uses it, and base.kind is "{base.kind}"; take it out'
                )


def _strips(project: Project) -> None:
    name = project.cutting.strips_from
    if name and (name not in project.sheets or project.sheets[name].kind != "solid"):
        solid = [f'"{sheet.name}"' for sheet in project.sheets.values() if sheet.kind == "solid"]
        have = f"name one of {', '.join(solid)}" if solid else 'give a sheet of kind = "solid"'
        raise ImpossibleProject(
            "cutting.strips_from", f'strips are ripped from solid boards, and "{name}" is no such sheet; {have}'
        )


def _kerf(project: Project) -> None:
    if said := no_such_kerf(project.cutting.kerf, project.style):
        raise ImpossibleProject("cutting.kerf", said)


def no_such_kerf(kerf: int, style: Style) -> str:
    """Why no saw has this kerf; empty where one may.

    >>> from shoplib.measure import INCH_STYLE
    >>> no_such_kerf(INCH // 8, INCH_STYLE), no_such_kerf(0, INCH_STYLE)
    ('', 'every saw takes some wood at a cut; give the width of a cut of yours')
    """
    widest = _WIDEST_KERF[style.unit]
    if kerf > widest:
        said, most = (write_brief(size, style) for size in (kerf, widest))
        return f"no saw takes {said} at a cut, and {most} is the most; give the width of a cut of yours"
    return "" if kerf else "every saw takes some wood at a cut; give the width of a cut of yours"


def _in_use(in_use: InUse, has_rail: bool) -> None:
    if in_use.driest > in_use.dampest:
        raise ImpossibleProject("in_use.driest", f"{in_use.driest} % is damper than the dampest, {in_use.dampest} %")
    if in_use.stands == "hung" and not has_rail:
        raise ImpossibleProject("in_use.stands", "a case is hung by a rail, and this one has none; add carcass.rails")


def _bay(bay: Bay, key: str) -> None:
    for kind, table in _TABLES.items():
        given = getattr(bay, table) is not None
        if given and bay.kind != kind:
            raise ImpossibleProject(
                f"{key}.{table}", f'this bay is of kind "{bay.kind}"; write kind = "{kind}", or take the table out'
            )
        if bay.kind == kind and not given:
            raise ImpossibleProject(f"{key}.{table}", f'a bay of kind "{kind}" {_SAYS[kind]}')


def _space(space: Space) -> None:
    for side in ("width", "height", "depth"):
        if not getattr(space, side):
            raise ImpossibleProject(
                f"space.{side}", "the list is empty; read it at two places or more, and the smallest governs"
            )


def _overlay(fronts: Fronts, case: int, divided: bool) -> None:
    """An overlay front that does not reach over the edge of the case leaves its opening to be seen."""
    if fronts.reveal >= case:
        raise ImpossibleProject(
            "fronts.reveal", "it must be less than the thickness of the case, which the fronts cover"
        )
    if divided and fronts.gap >= case:
        raise ImpossibleProject("fronts.gap", "it must be less than the thickness of a divider, which two fronts cover")
