"""Will it tip over, with its drawers out? Always with the advice to fasten it."""

from shoplib.measure import to_step, write_brief
from shoplib.measure.quantity import read_quantity, write_filling, write_force, write_load
from shoplib.model.laden import drawer_groups, stand_of
from shoplib.model.solved import Cabinet, Finding
from shoplib.model.tip_conditions import (
    EMPTY,
    FILLED,
    LEANT_ON,
    ONE,
    PULLED,
    Condition,
    conditions,
    in_scope,
    middle_of_rail,
    wall_pull,
)
from shoplib.model.weight import unweighed
from shoplib.tables.loads import loads
from shoplib.words.naming import and_list

_NOT_TESTED = "A shop case is no tested product, and local rules decide"

def find_tipping(cabinet: Cabinet) -> tuple[Finding, ...]:
    """One finding: a "warn" where a case that stands free goes over in one of the conditions, else a "note".

    The conditions are those of ASTM F2057 as far as they are known, from memory; it always says to fasten the case. A
    hung case is asked how hard it pulls on its rail.
    """
    sides = tuple(board.name for board in cabinet.boards if board.role == "side")
    if cabinet.project is None or not sides:
        return ()
    if cabinet.project.in_use.stands == "hung":
        return _hung(cabinet, sides)
    found = conditions(cabinet)
    over = [each for each in found if each.found.tips]
    free = cabinet.project.in_use.stands == "free"
    text = (
        f"{_told(found, cabinet)} (ASTM F2057, from memory{_scope(cabinet)}). "
        f"{_advice(cabinet, over, free)} {_NOT_TESTED}{_left_out(cabinet)}."
    )
    return (Finding("tipping", "warn" if over and free else "note", sides, text),)


def _told(found: tuple[Condition, ...], cabinet: Cabinet) -> str:
    """Under which conditions it stands, and how many times over it is held, and under which it goes over."""
    said, named = {each.name: each for each in found}, _named(cabinet.style.unit)
    one = said.pop(ONE, None)
    begins = "With all drawers and pull-outs open" if cabinet.travel else "Closed"
    if one is not None:
        begins = f"With one drawer open it {_held(one)}; with all that run out"
    stands = [f"{named[name]} ({_times(each)})" for name, each in said.items() if not each.found.tips]
    goes = [named[name] for name, each in said.items() if each.found.tips]
    if EMPTY in said and said[EMPTY].found.tips:
        return f"{begins} it goes over, even empty"
    told = [f"it stands {', '.join(stands)}"] if stands else []
    told += [f"it goes over {' or '.join(goes)}"] if goes else []
    return f"{begins} {', and '.join(told)}"


def _held(each: Condition) -> str:
    return "goes over" if each.found.tips else f"stands ({_times(each)})"


def _times(each: Condition) -> str:
    times = each.found.times
    return "nothing tips it" if times is None else f"held {times:.1f} times over"


def _named(unit: str) -> dict[str, str]:
    fill = write_filling(read_quantity(loads()["drawer_fill"].value, "filling"), unit)
    child, pull = (write_force(read_quantity(loads()[row].value, "force"), unit) for row in ("child", "pull_at_top"))
    return {
        EMPTY: "empty",
        FILLED: f"filled with {fill}",
        LEANT_ON: f"with {child} on one of them besides",
        PULLED: f"with {pull} pulling at its top",
    }


def _scope(cabinet: Cabinet) -> str:
    return "" if in_scope(cabinet) else "; it is smaller than those that the standard is about"


def _advice(cabinet: Cabinet, over: list[Condition], free: bool) -> str:
    stand, unit = stand_of(cabinet), cabinet.style.unit
    pull = sorted(each.found.pull_to_hold(stand.height) for each in over)
    at = f" there, where the fastening must hold at least {write_force(pull[-1], unit)}" if pull else ""
    if not free:
        return f"Keep it fastened at its top{at}."
    rolls = cabinet.project.base.kind == "casters"
    fasten = "Fasten it to the building at its top wherever it stands still" if rolls else \
        "Fasten it to the building at its top"  # fmt: skip
    one = ", put what is heavy low, and open one drawer at a time" if drawer_groups(cabinet) else ""
    return f"{fasten}{at.replace(' there,', ',')}{one}."


def _left_out(cabinet: Cabinet) -> str:
    """What was not weighed: sheets without a figure, and what hangs on a pull-out."""
    missing = list(unweighed(cabinet))
    if any(board.role == "panel" for board in cabinet.boards):
        missing.append("what hangs on the pull-out")
    return f"; not weighed: {and_list(missing)}" if missing else ""


def _hung(cabinet: Cabinet, sides: tuple[str, ...]) -> tuple[Finding, ...]:
    height = middle_of_rail(cabinet)
    if height is None:
        return ()
    load = read_quantity(cabinet.project.in_use.put_in)
    pull = write_force(wall_pull(cabinet, load, height), cabinet.style.unit)
    at = write_brief(to_step(height, cabinet.style.step), cabinet.style)
    text = (
        f"Hung, filled with {write_load(load, cabinet.style.unit)} and with all its drawers open, the case pulls its "
        f"rail off the wall with {pull}, {at} over its lower edge; its weight comes on top, across the fixings. Take "
        f"fixings that their maker rates for it, in the studs or masonry behind. {_NOT_TESTED}{_left_out(cabinet)}."
    )
    return (Finding("tipping", "note", sides, text),)
