"""Will the screws hold that fasten fronts, cleats and rails, pulled straight out?"""

from dataclasses import dataclass

import pint

from shoplib.checks.drawer_load import loaded_drawers
from shoplib.measure import ureg, write_brief
from shoplib.measure.quantity import write_force
from shoplib.model.material import material_of
from shoplib.model.screw_room import shank
from shoplib.model.solved import Cabinet, Finding, Hardware, Screw
from shoplib.model.weight import together, weights
from shoplib.model.withdrawal import Withdrawal, thread_in, withdrawal
from shoplib.words.naming import and_list, in_short

_ALONG = {"front screws": 1, "cleat screws": 0, "rail screws": 0}
"""The world axis along which the screws of each fitting are driven."""

FORMULA_HOLDS = ("solid", "plywood")
"""The formula is for solid wood; plywood is taken as such, by its lowest gravity (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Hold:
    """What the screws of one fitting bear together; `thread` is what of each is in the wood (ticks)."""

    fitting: Hardware
    screw: Screw
    thread: int
    in_end: bool
    one: Withdrawal

    @property
    def allowable(self) -> pint.Quantity:
        """What may be asked of all of them."""
        return self.one.allowable * self.screw.count


def hold_of(cabinet: Cabinet, fitting: Hardware) -> Hold | None:
    """How hard the screws of a fitting are to pull out; None where it has none, or no formula holds for the sheet.

    In the end of a board, and in any edge of plywood, the factor for end grain is used.
    """
    screw = fitting.screws[0] if fitting.screws else None
    into = cabinet.by_name.get(screw.into) if screw else None
    through = cabinet.by_name.get(fitting.on)
    sheets = cabinet.sheets
    if into is None or through is None or into.sheet not in sheets or through.sheet not in sheets:
        return None
    sheet = sheets[into.sheet]
    material = material_of(sheet)
    thread = thread_in(screw.length, sheets[through.sheet].thickness)
    if sheet.kind not in FORMULA_HOLDS or material is None or thread <= 0:
        return None
    own = into.placement.own_axis(_ALONG[fitting.what])
    in_end = own == 0 or (own == 1 and not material.solid)
    one = withdrawal(material.gravity[0], shank(screw.gauge), thread, in_end, cabinet.style)
    return Hold(fitting, screw, thread, in_end, one)


def find_weak_front_screws(cabinet: Cabinet) -> tuple[Finding, ...]:
    """One finding for the screws of drawer fronts, about the drawer that asks most of them.

    A drawer that sticks is pulled with as much as it weighs filled (common practice, no source), by its front. "warn"
    where that is more than may be asked of the screws, else "note"; "note" too where no figure is known.
    """
    if cabinet.project is None:
        return ()
    heavy = loaded_drawers(cabinet)
    fittings = [piece for piece in cabinet.hardware if piece.what == "front screws" and piece.group in heavy]
    holds = [hold for piece in fittings if (hold := hold_of(cabinet, piece))]
    if not holds:
        return _no_figure(cabinet, [piece for piece in fittings if piece.screws], "fronts")
    worst = sorted(holds, key=lambda hold: hold.allowable.magnitude / heavy[hold.fitting.group])[0]
    group, unit = worst.fitting.group, cabinet.style.unit
    asked = ureg.Quantity(heavy[group], "newton")
    says = f"{_screws(cabinet, worst)} of the front of {group} may be asked for {write_force(worst.allowable, unit)}"
    if asked > worst.allowable:
        text = (
            f"{says} (2,850 G^2 D an inch of thread), and the drawer weighs up to {write_force(asked, unit)} filled: "
            "pulled hard, the front may come off. Take more or longer screws, or a thicker front."
        )
        return (Finding("screw hold", "warn", (worst.screw.into,), text),)
    text = (
        f"{says} pulled straight out (2,850 G^2 D an inch of thread), and the drawer weighs up to "
        f"{write_force(asked, unit)} filled: enough for one that sticks."
    )
    return (Finding("screw hold", "note", (worst.screw.into,), text),)


def tell_cleats_and_rails(cabinet: Cabinet) -> tuple[Finding, ...]:
    """One note for the screws of cleats and one for those of the rails that a case hangs from: what may be asked."""
    if cabinet.project is None:
        return ()
    found = []
    hung = cabinet.project.in_use.stands == "hung"
    unit = cabinet.style.unit
    for what, kind in (("cleat screws", "cleat"), ("rail screws", "rail")):
        pieces = [piece for piece in cabinet.hardware if piece.what == what and piece.screws]
        holds = [hold for piece in pieces if (hold := hold_of(cabinet, piece))]
        if what == "rail screws" and not hung:
            continue
        if not holds:
            found += _no_figure(cabinet, pieces, f"{kind}s")
            continue
        weak = sorted(holds, key=lambda hold: hold.allowable.magnitude)[0]
        says = f"{_screws(cabinet, weak)} of {weak.screw.into} may be asked for {write_force(weak.allowable, unit)}"
        grain = ", 0.60 of it in end grain or an edge (other sources: 0.75)" if weak.in_end else ""
        if kind == "cleat":
            _, own = together(weights(cabinet.groups[weak.fitting.group], cabinet))
            more = (
                f"{weak.fitting.group} weighs up to {write_force(own, unit)} without what hangs on it, and it is "
                "pulled by these"
            )
        else:
            more = "The weight of the case presses across them, for which there is no figure here: glue the rail too"
        text = f"{says} pulled straight out (2,850 G^2 D an inch of thread{grain}). {more}."
        found.append(Finding("screw hold", "note", (weak.screw.into,), text))
    return tuple(found)


def _screws(cabinet: Cabinet, hold: Hold) -> str:
    screw, style = hold.screw, cabinet.style
    thread = write_brief(hold.thread, style, decimal=True)
    many = f"The {screw.count} screws" if screw.count > 1 else "The screw"
    each = " each" if screw.count > 1 else ""
    return f"{many} ({screw.gauge}, {thread} of thread in the wood{each})"


def _no_figure(cabinet: Cabinet, pieces: list[Hardware], what: str) -> tuple[Finding, ...]:
    """One note where screws go into a sheet for which the formula does not hold."""
    boards = [cabinet.by_name[piece.screws[0].into] for piece in pieces if piece.screws[0].into in cabinet.by_name]
    without = [board for board in boards if board.sheet in cabinet.sheets
               and cabinet.sheets[board.sheet].kind not in FORMULA_HOLDS]  # fmt: skip
    if not without:
        return ()
    kinds = and_list(list(dict.fromkeys(cabinet.sheets[board.sheet].kind for board in without)))
    names = and_list(in_short(board.name for board in without))
    text = (
        f"{names}: how hard screws are to pull out of {kinds} stands in no table here; ask the maker of the sheet, or "
        f"screw the {what} to wood or plywood."
    )
    return (Finding("screw hold", "note", tuple(board.name for board in without), text),)
