"""Solid wood moves with the season: fronts need their gaps, bottoms and backs the room in their grooves."""

from dataclasses import dataclass

from shoplib.measure import narrowest, thickest, write_brief
from shoplib.model.board import Board
from shoplib.model.movement import gap_left
from shoplib.model.solid_room import YearRound, year_round
from shoplib.model.solved import Cabinet, Finding, Gap
from shoplib.model.species import moves_as
from shoplib.words.amounts import true_amount
from shoplib.words.naming import and_list, boards_in_short, in_short

IN_GROOVES = ("box bottom", "back")
"""The boards that lie loose in grooves; frames with solid panels are not among what is planned here."""


def find_closing_gaps(cabinet: Cabinet) -> tuple[Finding, ...]:
    """One finding for the gaps beside solid fronts, about the one that is left narrowest when the air is damp.

    "warn" where it closes, else "note". The fronts are taken as flatsawn, which moves more, and as fixed in their
    middle. The amount is what is left of the gap.
    """
    fronts = {board.name: moved for board in _solid(cabinet, ("front",)) if (moved := _year(cabinet, board))}
    left = []
    for gap in cabinet.gaps:
        grown = [fronts[name].grows if name in fronts and _across(cabinet.by_name[name]) == gap.along else 0
                 for name in gap.between]  # fmt: skip
        if any(grown):
            left.append((gap_left(gap.size, grown), gap))
    if not left:
        return ()
    least, gap = sorted(left, key=lambda pair: pair[0])[0]
    return (_of_gap(cabinet, least, gap),)


def _of_gap(cabinet: Cabinet, least: int, gap: Gap) -> Finding:
    style, use = cabinet.style, cabinet.project.in_use
    air = f"made at {use.made} % humidity, in a room of up to {use.dampest} %"
    between = f"the gap of {write_brief(gap.size, style)} between {' and '.join(gap.between)}"
    if least <= 0:
        need = write_brief(gap.size - least, style, decimal=True)
        text = (
            f"Solid fronts, {air}: {between} closes, and they press on each other. Plan it more than {need} wide, or "
            "use quartersawn wood, which moves less."
        )
        return Finding("movement", "warn", gap.between, text, least)
    text = f"Solid fronts, {air}: of {between} {write_brief(least, style, decimal=True)} is left, the least of all."
    return Finding("movement", "note", gap.between, text, least)


@dataclass(frozen=True, slots=True)
class _Loose:
    """A board in two grooves: the room of both together at their floors, and how deep the shallower one is (ticks).

    A back may lie in two rabbets as well: `cuts` names them.
    """

    board: Board
    room: int
    shallower: int
    moves: YearRound
    cuts: str

    @property
    def short(self) -> int:
        """By how much it wants more room than it has."""
        return self.moves.grows - self.room

    @property
    def out(self) -> int:
        """How far it comes out of one groove in dry air, slid to the floor of the other: then that has all the room."""
        return self.room + self.moves.shrinks - self.shallower


def find_bottoms_without_room(cabinet: Cabinet) -> tuple[Finding, ...]:
    """Findings for solid bottoms and backs in grooves, each about the ones that are the worst off.

    "warn" where one presses its grooves apart in damp air, and where one comes out of a groove in dry air; one "note"
    where neither does. The amount is the room that is missing, or how far it comes out.
    """
    loose = [found for board in _solid(cabinet, IN_GROOVES) if (found := _loose(cabinet, board))]
    if not loose:
        return ()
    tight = sorted(loose, key=lambda each: each.short)[-1]
    dry = sorted(loose, key=lambda each: each.out)[-1]
    found = [_presses(cabinet, tight, [each.board for each in loose if each.short == tight.short])] * (tight.short > 0)
    found += [_comes_out(cabinet, dry, [each.board for each in loose if each.out == dry.out])] * (dry.out >= 0)
    return tuple(found) or (_stays(cabinet, loose),)


def _presses(cabinet: Cabinet, worst: _Loose, alike: list[Board]) -> Finding:
    style = cabinet.style
    back = worst.board.role == "back"
    other_way = "use quartersawn wood, which moves less" if back else "let it run out under a low back"
    text = (
        f"{boards_in_short(alike)}: solid, it grows {write_brief(worst.moves.grows, style, decimal=True)} across "
        f"its grain in air of {cabinet.project.in_use.dampest} %, and its {worst.cuts} leave "
        f"{write_brief(worst.room, style, decimal=True)}. Give it "
        f"{true_amount(worst.short, style)} more room, or {other_way}."
    )
    return Finding("movement", "warn", _names(alike), text, worst.short)


def _comes_out(cabinet: Cabinet, worst: _Loose, alike: list[Board]) -> Finding:
    style = cabinet.style
    out = f"{write_brief(worst.out, style, decimal=True)} out of" if worst.out else "to the very edge of"
    text = (
        f"{boards_in_short(alike)}: solid, it shrinks {write_brief(worst.moves.shrinks, style, decimal=True)} across "
        f"its grain in air of {cabinet.project.in_use.driest} %: slid to the floor of one groove, it comes {out} the "
        "other. Make its grooves deeper, or use quartersawn wood, which moves less."
    )
    return Finding("movement", "warn", _names(alike), text, worst.out)


def _stays(cabinet: Cabinet, loose: list[_Loose]) -> Finding:
    style, use = cabinet.style, cabinet.project.in_use
    grows, shrinks = (thickest([getattr(each.moves, way) for each in loose]) for way in ("grows", "shrinks"))
    moves = [f"{write_brief(most, style, decimal=True)} {way} in air of {air} %" for most, way, air in
             ((grows, "wider", use.dampest), (shrinks, "narrower", use.driest)) if most]  # fmt: skip
    through_the_year = f"at most {and_list(moves)}" if moves else "it keeps its width in this air"
    text = (
        f"{boards_in_short([each.board for each in loose])}: solid, {through_the_year}: the grooves are wide and deep "
        "enough for that. Do not glue it in."
    )
    return Finding("movement", "note", _names(each.board for each in loose), text)


def tell_wood_without_species(cabinet: Cabinet) -> tuple[Finding, ...]:
    """One note that names the solid sheets of which it is not known how much they move."""
    boards = [board for board in _solid(cabinet, ("front", *IN_GROOVES)) if _year(cabinet, board) is None]
    if not boards:
        return ()
    sheets = list(dict.fromkeys(board.sheet for board in boards))
    text = (
        f"{boards_in_short(boards)}: solid wood moves with the season. Write the species of "
        f'{and_list(in_short(sheets))}, such as species = "sugar maple", and how much is worked out; a few woods are '
        "not in the table."
    )
    return (Finding("movement", "note", _names(boards), text),)


def _solid(cabinet: Cabinet, roles: tuple[str, ...]) -> list[Board]:
    if cabinet.project is None:
        return []
    return [board for board in cabinet.boards if board.role in roles
            and board.sheet in cabinet.sheets and cabinet.sheets[board.sheet].kind == "solid"]  # fmt: skip


def _year(cabinet: Cabinet, board: Board) -> YearRound | None:
    """How far a board moves across its grain; None where its wood is in no table. Flatsawn, which moves more."""
    wood, use = moves_as(cabinet.sheets[board.sheet].species), cabinet.project.in_use
    if wood is None:
        return None
    return year_round(board.width, wood.coefficient("flatsawn"), use.made, use.driest, use.dampest)


def _across(board: Board) -> str:
    """The world axis that the width of a board runs along: across its grain."""
    return board.placement.axes[1][1]


def _loose(cabinet: Cabinet, board: Board) -> _Loose | None:
    """A board held in grooves at both ends of its width; None where one end is free."""
    moves = _year(cabinet, board)
    held = [joint for joint in cabinet.joints if joint.enters == board.name and joint.depth
            and joint.axis[1] == _across(board)]  # fmt: skip
    if moves is None or {joint.axis[0] for joint in held} != {"+", "-"}:
        return None
    room, depths = sum(joint.end_gap for joint in held), [joint.depth for joint in held]
    cuts = "rabbets" if all(joint.kind == "rabbet" for joint in held) else "grooves"
    return _Loose(board, room, narrowest(depths), moves, cuts)


def _names(boards) -> tuple[str, ...]:
    return tuple(board.name for board in boards)
