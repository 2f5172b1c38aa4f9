"""The step of the pull-out: its panel bored, finished but where glue must hold, its cleat, pegs and slides put on."""

from shoplib.buying.screws import planned
from shoplib.documents.cautions import PULL_OUT
from shoplib.lists.alike_cuts import SCREW_HOLE, AlikeCuts, alike_cuts
from shoplib.lists.writing import Writing
from shoplib.model.hardware_places import pegs_by_size
from shoplib.model.solved import Cabinet
from shoplib.printed.build.called_for import template_numbers, templates_called
from shoplib.printed.build.cutting import alike_table
from shoplib.printed.build.words import SAW_AGAIN, cut_to_size, names_in_short, screws_told
from shoplib.printed.true_scale.template import PEGS
from shoplib.printed.typeset.blocks import Block, Framed, ToTick, Words
from shoplib.words.naming import and_list


def pull_outs(names: tuple[str, ...], cabinet: Cabinet) -> list[Block]:
    """A panel that stands upright on two slides, its cleat, its pegs and its slide members on before it goes in.

    >>> [type(block).__name__ for block in pull_outs((), Cabinet("no boards", (), {}))]
    ['Framed', 'ToTick', 'ToTick']
    """
    lines = (
        *_bored(names, cabinet),
        *_finished(names, cabinet),
        *_cleats(names, cabinet),
        *_pegs(names, cabinet),
        "Screw the slide members to the panel as the hardware page says, one screw in a slot at each end.",
        "Hold a level to both slides: they are parallel and stand plumb over one another, or the panel runs hard. Hang "
        "it, try it, then drive the other screws of the slides.",
    )
    return [
        Framed((Words(SAW_AGAIN, grave=True), Words(PULL_OUT))),
        ToTick((cut_to_size(names, cabinet),)),
        *alike_table(_screw_holes(names, cabinet)), ToTick(lines),
    ]


def _of(role: str, names: tuple[str, ...], cabinet: Cabinet) -> list[str]:
    return [name for name in names if cabinet.by_name[name].role == role]


def _bored(names: tuple[str, ...], cabinet: Cabinet) -> list[str]:
    if not pegs_by_size(cabinet, names):
        return []
    called = templates_called(template_numbers(PEGS, cabinet))
    return [f"Bore its peg holes from {called}; the hardware page has their sizes too."]


def _finished(names: tuple[str, ...], cabinet: Cabinet) -> list[str]:
    """What stays bare: glue does not hold on finish (common practice, no source)."""
    cleats = _of("cleat", names, cabinet)
    write = Writing(cabinet.style)
    strips = and_list(list(dict.fromkeys(write.measured(cabinet.by_name[name].box.size[1]) for name in cleats)))
    bare = [
        *([f"a strip {strips} wide along the front edge of the panel, on the face where the cleat will lie, and the "
           "edge of the cleat that lies there"] if cleats else []),
        *(["the peg holes, a dry end of dowel in each"] if pegs_by_size(cabinet, names) else []),
    ]
    masked = f" Keep finish off these, for glue does not hold on it: {'; '.join(bare)}." if bare else ""
    return [f"Finish {names_in_short(names, cabinet)} all round, both faces alike.{masked}"] if names else []


def _cleats(names: tuple[str, ...], cabinet: Cabinet) -> list[str]:
    cleats = _of("cleat", names, cabinet)
    screws = screws_told([n for n in planned(cabinet) if n.use == "cleats" and n.passed.name in names], cabinet)
    return [
        f"Glue and screw on {names_in_short(cleats, cabinet)}, with {screws}, flush with the front edge of the panel "
        "and square to it: the front is screwed to it."
    ] if cleats else []


def _pegs(names: tuple[str, ...], cabinet: Cabinet) -> list[str]:
    """Cut, tried and glued in (common practice, no source)."""
    write = Writing(cabinet.style).length
    return [
        f"Cut {count} pegs {write(peg.length)} long from the dowel rod {write(peg.diameter)} across, round off their "
        "ends, and try one: it goes in by hand. Glue each to the bottom of its hole, square to the panel: "
        f"{write(peg.out)} stands out."
        for peg, count in pegs_by_size(cabinet, names).items()
    ]


def _screw_holes(names: tuple[str, ...], cabinet: Cabinet) -> list[AlikeCuts]:
    """Holes for the screws that hold a cleat to its panel and a front to its cleat."""
    return [cut for cut in alike_cuts(cabinet) if cut.kind == SCREW_HOLE and {b.name for b in cut.boards} <= {*names}]
