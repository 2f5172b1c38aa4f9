"""Boards that stand on their end or edge at the cutter: their cautions, and how a joint is set up that way."""

from collections.abc import Iterable, Sequence

from shoplib.lists.on_end import OnEnd, stood_on_end, ways_told
from shoplib.model.board import Board
from shoplib.model.solved import Cabinet
from shoplib.printed.typeset.blocks import Block, Bullets, Framed, Together, ToTick, Words
from shoplib.tables.setups import Setup
from shoplib.words.naming import boards_in_short

TITLE = "A board stood on end"

_WITH = {"stacked dado set": "With a stacked dado set", "router": "With a router and a straight bit",
         "single blade in passes": "With the blade alone"}


def on_end_frame(ways: Sequence[Setup], lead: Iterable[str] = ()) -> Framed:
    """The cautions of a board on end, the first of each tool, and before them what is stood so.

    >>> from shoplib.tables.setups import setup
    >>> on_end_frame([setup("finger", "router")]).title
    'A board stood on end'
    """
    of_cuts = [one.claim.say for way in ways for one in way.cautions if one.of in way.cuts]
    # Of the tools of a way the last one is what turns in it, such as the dado set in the table saw.
    first = [next(one.claim.say for one in way.cautions if one.of == way.way.tools[-1]) for way in ways]
    told = Bullets(tuple(dict.fromkeys((*of_cuts, *first))))
    return Framed((*(Words(line) for line in lead), told), TITLE)


def on_end_caution(boards: Iterable[Board], cabinet: Cabinet, but: str = "") -> tuple[Framed, ...]:
    """The frame of all joints that stand one of these boards on end, except `but`, which is told elsewhere.

    >>> on_end_caution((), Cabinet("no boards", (), {}))
    ()
    """
    joints = _joints(boards, cabinet, but)
    ways = tuple(dict.fromkeys(way for one in joints for way in one.ways))
    return (on_end_frame(ways, map(_stood, joints)),) if joints else ()


def on_end_ways(boards: Iterable[Board], cabinet: Cabinet, but: str = "") -> list[Block]:
    """Each joint of these boards that no table saw cuts flat, set up way by way; `but` is told elsewhere.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("rolling_stand")
    >>> len(on_end_ways(cabinet.boards, cabinet)), on_end_ways((), cabinet)
    (4, [])
    """
    blocks: list[Block] = []
    for one in _joints(boards, cabinet, but):
        if one.always:
            head, *rest = [block for way in one.ways for block in set_up(way, before=True)]
            lead = f"{one.joint.capitalize()}: one of these ways. The drawing of each board says from which face."
            blocks += [Together((Words(lead), head)), *rest]
    return blocks


def _joints(boards: Iterable[Board], cabinet: Cabinet, but: str) -> list[OnEnd]:
    return [one for one in stood_on_end(boards, cabinet) if one.joint != but]


def _stood(one: OnEnd) -> str:
    return f"{one.joint.capitalize()}, with {ways_told(one)}: {boards_in_short(one.boards)}."


def set_up(way: Setup, before: bool = False) -> tuple[Block, Block]:
    """Setting up and the order of one way, its trial corner, and only then the boards.

    `before`: with the faces that lie against fence and table.
    """
    parts = (*((way.reference,) if before else ()), way.stops, way.tear_out, way.order)
    setting = (claim.say for part in parts for claim in part)
    trial = (f"In scrap first: {claim.say[0].lower()}{claim.say[1:]}" for claim in way.test)
    right = (claim.say for claim in way.measure)
    return Words(f"{_WITH[way.way.name]}, first in scrap and then in the boards:", grave=True), ToTick((
        *setting, *trial, *right, "When the corner in scrap is right, cut the boards by the same lines.",
    ))
