"""What drawers and the whole case weigh, filled: what slides must carry, and what is lifted."""

from shoplib.measure import ureg
from shoplib.measure.quantity import read_quantity, write_force, write_load
from shoplib.model.laden import as_one, drawer_groups, filled, in_use, room_in
from shoplib.model.solved import Cabinet, Finding
from shoplib.model.weight import together, unweighed, weights
from shoplib.tables.slide_ratings import SlideRating, slide_ratings
from shoplib.words.naming import and_list


def loaded_drawers(cabinet: Cabinet) -> dict[str, float]:
    """What each drawer weighs at most with what is put into it, in newtons, by its group; those without a figure too,
    as what lies in them alone.
    """
    load = read_quantity(cabinet.project.in_use.put_in)
    found = {}
    for group in drawer_groups(cabinet):
        own = as_one(group, weights(cabinet.groups[group], cabinet))
        inside = filled(room_in(cabinet, group), load)
        found[group] = (inside + own.high if own else inside).to("newton").magnitude
    return found


def class_for(weight: float) -> SlideRating | None:
    """The lightest class of slides (AWS 2009, appendix B) that runs with so many newtons; None where none does.

    >>> class_for(100).static, class_for(200).static, class_for(400)
    (50, 75, None)
    """
    pounds = ureg.Quantity(weight, "newton").to("pound_force").magnitude
    return next((rating for rating in slide_ratings() if pounds <= rating.moving), None)


def find_slide_load(cabinet: Cabinet) -> tuple[Finding, ...]:
    """One finding for the drawers on bought slides, about the heaviest: which class of slides carries it.

    "warn" where no class of AWS 2009 does, else "note".
    """
    if cabinet.project is None:
        return ()
    bought = {piece.group for piece in cabinet.hardware
              if piece.row in cabinet.slides and cabinet.slides[piece.row].carries == "hardware"}  # fmt: skip
    heavy = {group: weight for group, weight in loaded_drawers(cabinet).items() if group in bought}
    if not heavy:
        return ()
    group, weight = sorted(heavy.items(), key=lambda item: item[1])[-1]
    unit = cabinet.style.unit
    boards = tuple(board.name for board in cabinet.groups[group])
    load = write_load(read_quantity(cabinet.project.in_use.put_in), unit)
    most = write_force(ureg.Quantity(weight, "newton"), unit)
    rating = class_for(weight)
    if rating is None:
        heaviest = write_force(ureg.Quantity(slide_ratings()[-1].moving, "pound_force"), unit)
        text = (
            f"{group} weighs up to {most} filled with {load}: more than the {heaviest} that the heaviest class of AWS "
            "2009 runs with. Take slides that their maker rates for it, or more and smaller drawers."
        )
        return (Finding("drawer load", "warn", boards, text),)
    moving, static = (write_force(ureg.Quantity(p, "pound_force"), unit) for p in (rating.moving, rating.static))
    text = (
        f"{group}, the heaviest drawer, weighs up to {most} filled with {load}: a pair of slides tested to run with "
        f"{moving} {rating.cycles:,} times, and to bear {static} standing still, carries it (a class of AWS 2009). "
        "Look at the sheet of yours."
    )
    return (Finding("drawer load", "note", boards, text),)


def tell_weight(cabinet: Cabinet) -> tuple[Finding, ...]:
    """One note: what the case weighs by its boards, what may come on top in its drawers, and its heaviest board."""
    if cabinet.project is None:
        return ()
    unit = cabinet.style.unit
    low, high = together(in_use(cabinet))
    parts = weights(cabinet.boards, cabinet)
    if not parts:
        return ()
    heaviest = sorted(parts, key=lambda one: one.high.magnitude)[-1]
    load = read_quantity(cabinet.project.in_use.put_in)
    inside = sum((filled(room_in(cabinet, group), load) for group in drawer_groups(cabinet)),
                 ureg.Quantity(0, "newton"))  # fmt: skip
    more = f" Filled with {write_load(load, unit)}, its drawers hold {write_force(inside, unit)} more." \
        if inside.magnitude else ""  # fmt: skip
    missing = unweighed(cabinet)
    out = f", without {and_list(missing)}, whose weight stands in no table here" if missing else ""
    text = (
        f"The boards weigh {_range(low, high, unit)} together{out}; the heaviest, {heaviest.of}, "
        f"{_range(heaviest.low, heaviest.high, unit)} (ranges of the materials; hardware comes on top).{more}"
    )
    return (Finding("weight", "note", (heaviest.of,), text),)


def _range(low: ureg.Quantity, high: ureg.Quantity, unit: str) -> str:
    one, other = write_force(low, unit), write_force(high, unit)
    return one if one == other else f"{one} to {other}"
