"""The spacers of a project: blocks of wood that slides rest on, and thin ones that keep the gaps between fronts."""

from dataclasses import dataclass

from shoplib.building.datum import datum
from shoplib.building.gaps import open_gaps
from shoplib.building.riding import heights, riding
from shoplib.model.solved import Cabinet
from shoplib.words.naming import and_list, in_short


@dataclass(frozen=True, slots=True)
class Spacer:
    """One size to cut, in ticks, how many of it, and what for."""

    size: int
    count: int
    purpose: str


def slide_spacers(cabinet: Cabinet) -> tuple[Spacer, ...]:
    """What slides and runners rest on while they are screwed on, each height once, from the lowest up.

    As many as the slides that one drawer has at that height: two where there is a left and a right one. The same ones
    serve the next drawer (common practice, no source).

    >>> slide_spacers(Cabinet("no boards", (), {}))
    ()
    """
    purposes: dict[int, dict[str, list[str]]] = {}
    for text, ticks in heights(cabinet):
        if ticks <= 0:  # it lies on the bottom itself
            continue
        group, _, what = text.partition(": ")
        purposes.setdefault(ticks, {}).setdefault(what, []).append(group)
    found = []
    for ticks, uses in sorted(purposes.items()):
        groups = {group for several in uses.values() for group in several}
        told = "; ".join(f"{and_list(in_short(several))}: {what}" for what, several in uses.items())
        found.append(Spacer(ticks, _at_once(cabinet, ticks, groups), told))
    return tuple(found)


def _at_once(cabinet: Cabinet, height: int, groups: set[str]) -> int:
    """The most slides and runners that one of the drawers has at that height above the bottom."""
    floor = datum(cabinet).height
    return max((sum(item.group == group and item.box.low[2] - floor == height for item in riding(cabinet))
                for group in groups), default=0)


def gap_spacers(cabinet: Cabinet) -> tuple[Spacer, ...]:
    """What stands in the gaps about fronts while they are screwed on, each thickness once.

    As many as one front needs at once, two at least: two under it and one at each side (common practice, no source).

    >>> gap_spacers(Cabinet("no boards", (), {}))
    ()
    """
    found: dict[int, dict[str, None]] = {}
    about: dict[tuple[int, str], int] = {}
    for gap in open_gaps(cabinet):
        if gap.size <= 0:
            continue
        fronts = [name for name in gap.between if cabinet.by_name[name].role == "front"]
        found.setdefault(gap.size, {})["between fronts" if len(fronts) == 2 else "between fronts and case"] = None
        for front in fronts if gap.along == "x" else fronts[-1:] if gap.between[1] in fronts else ():
            about[gap.size, front] = about.get((gap.size, front), 0) + (1 if gap.along == "x" else 2)
    most = {size: max((count for (of, _), count in about.items() if of == size), default=0) for size in found}
    return tuple(Spacer(size, max(2, most[size]), and_list(list(where))) for size, where in sorted(found.items()))
