"""The spacers of a project: blocks of wood that slides rest on, and thin ones that keep the gaps between fronts."""

from collections import Counter
from dataclasses import dataclass

from shoplib.building.datum import datum
from shoplib.building.gaps import fronted, open_gaps
from shoplib.building.riding import heights, riding
from shoplib.measure import to_step
from shoplib.model.solved import Cabinet, Gap
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
    for one in heights(cabinet):
        if one.height > 0:  # else it lies on the bottom itself
            purposes.setdefault(one.height, {}).setdefault(one.what, []).append(one.group)
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
    Gaps that come to the same step of the project take one spacer, of that step where they are not all alike: after
    measuring they differ by less than is cut. Where one kind of gap takes several spacers, each but the most used one
    says which.

    >>> gap_spacers(Cabinet("no boards", (), {}))
    ()
    """
    alike: dict[int, list[Gap]] = {}
    for gap in open_gaps(cabinet):
        if gap.size > 0:
            alike.setdefault(to_step(gap.size, cabinet.style.step) or gap.size, []).append(gap)
    kinds = {step: Counter(_kind(cabinet, gap) for gap in gaps) for step, gaps in alike.items()}
    found = []
    for step, gaps in sorted(alike.items()):
        size = gaps[0].size if len({gap.size for gap in gaps}) == 1 else step
        purposes = []
        for kind, count in kinds[step].items():
            others = [more[kind] for at, more in kinds.items() if at != step and more[kind]]
            named = [gap for gap in gaps if _kind(cabinet, gap) == kind] if others else []
            most = others and count > max(others)
            purposes.append(f"{kind}, the others" if most else f"{kind}{_which(named, cabinet)}")
        found.append(Spacer(size, max(2, _about_one_front(cabinet, gaps)), and_list(purposes)))
    return tuple(found)


def _kind(cabinet: Cabinet, gap: Gap) -> str:
    both = all(cabinet.by_name[name].role == "front" for name in gap.between)
    return "between fronts" if both else "between fronts and case"


def _which(gaps: list[Gap], cabinet: Cabinet) -> str:
    """Each gap by the two things that it lies between; nothing where none need be told."""
    between = "; ".join(" | ".join(fronted(cabinet.by_name[name]) for name in gap.between) for gap in gaps)
    return f": {between}" if between else ""


def _about_one_front(cabinet: Cabinet, gaps: list[Gap]) -> int:
    """The most of these spacers that one front needs at once."""
    need: dict[str, int] = {}
    for gap in gaps:
        fronts = [name for name in gap.between if cabinet.by_name[name].role == "front"]
        for front in fronts if gap.along == "x" else fronts[-1:] if gap.between[1] in fronts else ():
            need[front] = need.get(front, 0) + (1 if gap.along == "x" else 2)
    return max(need.values(), default=0)
