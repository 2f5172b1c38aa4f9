"""The cautions that belong on the papers of a plan: which of them, by what the plan has.

They are common practice, no source, and defer to the manual of the tool, local codes and licensed practice. The
README and the page *00 Start here* say the same in the same words.
"""

import textwrap
from collections.abc import Callable

from shoplib.model.board import BoxCut
from shoplib.model.solved import Cabinet

TOOLS = (
    "Follow the manual of each tool, keep its guards on (and back on at once after a cut that cannot be made with "
    "them), wear eye and ear protection, and learn a new cut beside someone who knows it."
)
SLOTS = (
    "Dadoes, rabbets and grooves: where the guard has to come off for such a cut, guide the board with featherboards, "
    "move it with push blocks, keep hands away from the line of the cut, and put guard and riving knife back at once. "
    "Not every saw may take a dado set; the manuals of saw and router say which cutter, what speed, and which way to "
    "feed. Unplug before you change the cutter."
)
LIFTING = "Lift large sheets and cases with two people."
ANCHOR = (
    "Anchor tall and loaded cases to the building. Fasten the case to the wall, into studs or masonry, before it is "
    "loaded."
)
DRAWERS = "Drawers full of tools tip a case: open one drawer at a time."
CASTERS = (
    "On casters the case is not anchored: lock them before you pull at anything, put the heavy things lowest, and roll "
    "it with everything shut."
)
WALL = (
    "Where it hangs on a wall: fasten it through the rail into studs, and do not stand on it or lean on it. What load "
    "it carries is not worked out here."
)
NOT_HUNG = (
    "The plan lets this case stand. If you hang it by its rail after all, write stands = \"hung\" under [in_use] in "
    "your project and plan again: it then needs other screws and other cautions."
)
PULL_OUT = "A pull-out with tools on it may tip a light case: load it last, and keep the drawers shut while it is out."
RULES = "Local codes and licensed trades decide where they apply."


def hangs(cabinet: Cabinet) -> bool:
    """Whether the case hangs on a wall by its rail: its project says so. A rail may also just stiffen a case."""
    return cabinet.project is not None and cabinet.project.in_use.stands == "hung"


def _might_be_hung(cabinet: Cabinet) -> bool:
    """Whether somebody may hang it against the plan: it has a rail, and nothing to stand on."""
    on_base = cabinet.project is not None and cabinet.project.base.kind != "none"
    return not on_base and not hangs(cabinet) and any(board.role == "rail" for board in cabinet.boards)


def has_drawers(cabinet: Cabinet) -> bool:
    """Whether there is a drawer box."""
    return any(board.role == "box side" for board in cabinet.boards)


def on_casters(cabinet: Cabinet) -> bool:
    """Whether the case rolls."""
    return any(fitting.what == "caster" for fitting in cabinet.hardware)


def _has_slots(cabinet: Cabinet) -> bool:
    return any(
        isinstance(cut, BoxCut) and cut.kind in ("dado", "rabbet", "groove")
        for board in cabinet.boards for cut in board.cuts
    )


_WHEN: tuple[tuple[str, Callable[[Cabinet], bool]], ...] = (
    (TOOLS, lambda cabinet: True),
    (SLOTS, _has_slots),
    (LIFTING, lambda cabinet: True),
    (ANCHOR, lambda cabinet: not on_casters(cabinet)),
    (DRAWERS, has_drawers),
    (CASTERS, on_casters),
    (WALL, hangs),
    (NOT_HUNG, _might_be_hung),
    (PULL_OUT, lambda cabinet: any(board.role == "panel" for board in cabinet.boards)),
    (RULES, lambda cabinet: True),
)


def cautions(cabinet: Cabinet) -> tuple[str, ...]:
    """The cautions for this cabinet, in the order of the work.

    >>> cautions(Cabinet("plain boards", (), {})) == (TOOLS, LIFTING, ANCHOR, RULES)
    True
    """
    return tuple(text for text, holds in _WHEN if holds(cabinet))


def cautions_text(cabinet: Cabinet, width: int = 100) -> str:
    """The cautions as the last part of a list to read."""
    lines = ["Cautions", ""]
    for text in cautions(cabinet):
        lines += textwrap.wrap(
            text, width, initial_indent="  - ", subsequent_indent="    ", break_on_hyphens=False,
        )
    return "\n".join([*lines, ""])
