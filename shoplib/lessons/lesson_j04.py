"""The exercises of the dado's own page, up the ladder: stop, length, fence, another's list, a whole set."""

from shoplib.draw.dry_fit import View
from shoplib.draw.look import FRONT
from shoplib.joints import joint
from shoplib.joints.bench_pair import stock_of
from shoplib.lessons.case_sides import SIDES, between_sides, butted
from shoplib.lessons.exercise import Exercise, Given, Givens, Misconception
from shoplib.lessons.joint_case import joint_case
from shoplib.lessons.joint_givens import (
    CALIPER,
    between,
    close_fit,
    cut_depth,
    end_gap,
    short_or_long,
    three_readings,
    too_much_or_too_little,
)
from shoplib.lessons.lesson_02 import RULE
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.lessons.set_exercise import Asked, SetExercise
from shoplib.lessons.usual_givens import case_width, sheet_as_measured, sheet_as_sold
from shoplib.live.joint_project import with_one_shelf
from shoplib.measure import INCH
from shoplib.model.dado_stack import target_width
from shoplib.model.passes import passes
from shoplib.model.solved import Cabinet

DADOES = "dadoes, depth"


def _gain(givens: Givens) -> int:
    """What a shelf gains at one end, as the bench has it."""
    return joint("dado").allowance(stock_of(INCH), {"depth": givens["d"], "fit": 0, "end gap": givens.get("e", 0)})


# Read a number off -------------------------------------------------------------------------------


def _stopped(givens: Givens) -> int:
    pair = joint("stopped dado").build(
        stock_of(3 * INCH // 4, width=givens["w"]), {"depth": INCH // 4, "stop": givens["s"]}
    )
    dado = pair.by_name["side"].cuts[0]
    return dado.high[1] - dado.low[1]


STOPPED = Exercise(
    id="j04-stopped", title="How far the stopped dado runs", rung="read a number off",
    question=(
        "A side is {w} wide. The dado comes in from its rear edge and stops {s} behind the front edge, so that it "
        "does not show. How long is the dado?"
    ),
    givens=lambda draw: [
        draw.tape("w", "side, width", inch=("11 1/32 in", "15 1/32 in", "1/16 in"), mm=("281 mm", "381 mm", "1 mm")),
        draw.pick("s", "stop behind the front edge", inch=("1/2 in", "5/8 in", "3/4 in", "7/8 in"),
                  mm=("12 mm", "15 mm", "20 mm")),
    ],
    right=_stopped,
    misconceptions=(
        Misconception("through", lambda g: g["w"], "That is a dado that runs right through.",
                      "What of the side stays whole at its front edge?"),
        Misconception("both-edges", lambda g: g["w"] - 2 * g["s"], "That stops it at both edges.",
                      "At which edge does the cutter come in?"),
        Misconception("beyond", lambda g: g["w"] + g["s"], "That adds what stays whole.",
                      "The dado is shorter than the side is wide."),
    ),
    effect=short_or_long("The dado"),
    fits="The shelf gets a notch {s} long, and nothing shows from the front.",
    hints=("Draw the side from its inside face, front edge left.", "Take the {s} that stay whole off the width."),
    working=lambda g, say: (f"{g.texts['w']} - {g.texts['s']} = {say.length(_stopped(g))}",),
    tolerance=RULE,
)

# One step ----------------------------------------------------------------------------------------


LONG = Exercise(
    id="j04-long", title="A shelf for an opening that stands", rung="one step",
    question=(
        "Two sides stand {I} apart, inside to inside. The new shelf goes to the floor of a dado {d} deep in each. How "
        "long is the shelf cut?"
    ),
    givens=lambda draw: [between(draw, "between the sides"), cut_depth(draw, DADOES)],
    right=lambda g: g["I"] + 2 * _gain(g),
    misconceptions=(
        Misconception("butted", lambda g: g["I"], "That is what lies between the sides.",
                      "The shelf goes on into both sides."),
        Misconception("one-end", lambda g: g["I"] + g["d"], "That counts one dado.", "How many ends has a shelf?"),
        Misconception("taken-off", lambda g: g["I"] - 2 * g["d"], "That takes the dadoes off.",
                      "Is the shelf longer or shorter than what lies between the sides?"),
    ),
    effect=short_or_long("The shelf"),
    fits="It reaches both floors.",
    hints=("Begin with {I}.", "At each end it goes in {d}."),
    working=lambda g, say: (
        f"{g.texts['I']} + 2 x {g.texts['d']} = {say.length(g['I'] + 2 * _gain(g))}",
    ),
    tolerance=RULE,
)


# Two steps ---------------------------------------------------------------------------------------


def _fence_givens(draw: Draw) -> list[Given]:
    return [
        sheet_as_sold(draw), *three_readings(draw, sheet_as_measured(draw)), close_fit(draw),
        draw.reading("k", "kerf, measured in a scrap", inch=("0.122 in", "0.128 in", "0.001 in"),
                     mm=("3.05 mm", "3.25 mm", "0.05 mm")),
    ]


def _fence(givens: Givens) -> int:
    return passes(target_width([givens["thin"], givens["t"], givens["thick"]], givens["f"]), givens["k"]).last


FENCE = Exercise(
    id="j04-fence", title="From one wall to the other", rung="two steps",
    question=(
        "A saw that takes no dado set cuts a dado in passes. The sheet was sold as {T}; calipers read {thin}, {t} and "
        "{thick}. The fit is {f}, and the kerf of the blade, measured in a scrap, is {k}. The first wall is cut. How "
        "far is the fence moved for the other?"
    ),
    givens=_fence_givens,
    right=_fence,
    misconceptions=(
        Misconception("no-kerf", lambda g: g["thick"] + g["f"], "That is the width of the dado.",
                      "The blade itself takes a part of it: {k}."),
        Misconception("mean", lambda g: g["t"] + g["f"] - g["k"], "That is the move for the mean of the readings.",
                      "Which reading must still go in?"),
        Misconception("nominal", lambda g: g["T"] + g["f"] - g["k"], "That begins with {T}, the name of the sheet.",
                      "Look at what the calipers read."),
        Misconception("kerf-twice", lambda g: g["thick"] + g["f"] - 2 * g["k"], "That takes two kerfs off.",
                      "The two passes together cut one kerf more than the fence moves."),
    ),
    effect=too_much_or_too_little(
        "The dado would be {by} too wide: the shelf is loose.",
        "The dado would be {by} too narrow: the shelf stays out.",
    ),
    fits="First and last pass cut the two walls; what stands between is cleared after.",
    hints=("How wide is the dado? The thickest reading and the fit.", "The fence moves by that, less one kerf."),
    working=lambda g, say: (
        f"Of {g.texts['thin']}, {g.texts['t']} and {g.texts['thick']} the thickest is {g.texts['thick']}.",
        f"width = {g.texts['thick']} + {g.texts['f']} = {say.length(g['thick'] + g['f'])}",
        f"move = {say.length(g['thick'] + g['f'])} - {g.texts['k']} = {say.length(_fence(g))}",
        f"The name {g.texts['T']} stands in no sum.",
    ),
    tolerance=CALIPER, caliper=True,
)

# Find the slip -----------------------------------------------------------------------------------


def _hers(givens: Givens) -> int:
    return givens["I"] + 2 * givens["d"]


def _list_working(givens: Givens, say: Say) -> tuple[str, ...]:
    text, gain = givens.texts, _gain(givens)
    return (
        f"gain at each end = {text['d']} - {text['e']} = {say.length(gain)}",
        f"shelf = {text['I']} + 2 x {say.length(gain)} = {say.length(givens['I'] + 2 * gain)}",
        f"Ilse's {text['L']} let the shelf reach both floors; nothing stayed open for glue.",
    )


ILSES_SHELF = Exercise(
    id="j04-ilses-shelf", title="Ilse's shelf", rung="find the slip",
    question=(
        "Ilse's list has a shelf {L} long, for sides that stand {I} apart. Her dadoes are {d} deep, and {e} is to stay "
        "open at each end. Something is wrong with it. How long should the shelf be?"
    ),
    givens=lambda draw: (lambda inside, deep, gap: [
        inside, deep, gap, draw.derived("L", "shelf in Ilse's list", inside.value + 2 * deep.value)
    ])(between(draw, "between the sides"), cut_depth(draw, DADOES), end_gap(draw, "gap at the end of the shelf")),
    right=lambda g: g["I"] + 2 * _gain(g),
    misconceptions=(
        Misconception("as-listed", _hers, "That is the length in Ilse's list.",
                      "What is to stay open at the ends of the shelf?"),
        Misconception("gap-added", lambda g: _hers(g) + 2 * g["e"], "That adds what stays open.",
                      "Does an open end make the shelf longer or shorter?"),
        Misconception("one-end", lambda g: g["I"] + _gain(g), "That lets one end in.", "How many ends has a shelf?"),
        Misconception("butted", lambda g: g["I"], "That is what lies between the sides.",
                      "The shelf goes on into both sides."),
    ),
    effect=short_or_long("The shelf"),
    fits="Ilse's would have struck both floors, with no room for glue.",
    hints=("Work the shelf out once more, from {I}.", "What does one end gain, when {e} of {d} stays open?"),
    working=_list_working,
    tolerance=RULE,
)

# A whole set -------------------------------------------------------------------------------------


def _set_givens(draw: Draw) -> list[Given]:
    return [
        case_width(draw),
        draw.tape("D", "case, outside depth", inch=("10 in", "14 in", "1/2 in"), mm=("250 mm", "350 mm", "10 mm")),
        draw.pick("H", "case, outside height", inch=("24 in",), mm=("600 mm",)),
        sheet_as_sold(draw), sheet_as_measured(draw), cut_depth(draw, DADOES),
    ]


def _case(givens: Givens) -> Cabinet:
    return with_one_shelf(joint_case(
        (givens["t"],), width=givens["W"], deep=givens["D"], height=givens["H"], dado=givens["d"],
    ))


PLAIN = butted("bottom", "Top and bottom", ("bottom", "top"), Misconception(
    "bottom-dado", lambda g: between_sides(g) + 2 * g["d"], "That lets top and bottom into the sides.",
    "They are butted: which board is let in here?",
))

SHELF = Asked(
    "shelf", "Shelf", "length", ("shelf",), "x",
    (
        Misconception("shelf-no-joint", between_sides, "That is the room between the sides, with no dado counted.",
                      "The shelf goes on into the sides: how far?"),
        Misconception("shelf-one-joint", lambda g: between_sides(g) + g["d"], "That counts one dado of {d}.",
                      "How many ends has the shelf?"),
        Misconception("shelf-nominal", lambda g: g["W"] - 2 * g["T"] + 2 * g["d"],
                      "That is the sum with {T}, the name of the sheet.", "Look at what the calipers read."),
    ),
    lambda g, say: (
        f"shelf = {say.exact(between_sides(g))} + 2 x {g.texts['d']} = {say.length(between_sides(g) + 2 * g['d'])}",
    ),
)

SHELF_SET = SetExercise(
    id="j04-shelf-set", title="Cut the case for the pumps",
    question=(
        "The case for the pumps is {W} wide, {H} high and {D} deep outside. Its sheet was sold as {T} and measures "
        "{t}. The sides run the full height; top and bottom are butted between them. The shelf goes to the floor of "
        "dadoes {d} deep. Give the three lengths: what you give is put together dry."
    ),
    givens=_set_givens, case=_case, asked=(PLAIN, SHELF, SIDES), view=View(FRONT, "shelf"),
    fits="That is a case {W} wide, and the shelf is home in both dadoes.",
    hints=("Top, bottom and shelf begin with {W} less two sides of {t}.", "Only the shelf gains, {d} at each end.",
           "The sides run the full height."),
)

EXERCISES = (STOPPED, LONG, FENCE, ILSES_SHELF)
SETS = (SHELF_SET,)
