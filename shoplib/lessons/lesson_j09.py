"""The exercises of the page of dowels and splines: places, lengths, unlike faces, another's list, a whole panel."""

from shoplib.draw.dry_fit import View
from shoplib.draw.look import FROM_ABOVE
from shoplib.joints import joint
from shoplib.joints.bench_pair import stock_of
from shoplib.joints.in_case import spread_out
from shoplib.lessons.exercise import Exercise, Given, Givens, Misconception, Twin
from shoplib.lessons.frame_givens import planed_board
from shoplib.lessons.joint_givens import CALIPER, short_or_long, too_much_or_too_little
from shoplib.lessons.lesson_02 import RULE
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.lessons.set_exercise import Asked, SetExercise
from shoplib.lessons.splined_panel import spline_for, splined_panel
from shoplib.measure import INCH, INCH_STYLE, MM, read_length, share
from shoplib.model.solved import Cabinet

THICK, LONG = 3 * INCH // 4, 12 * INCH
"""The boards, where no sum asks how thick or how long they are."""


def _board_width(draw: Draw) -> Given:
    return draw.tape("w", "board, width", inch=("8 1/16 in", "14 1/16 in", "1/8 in"), mm=("205 mm", "355 mm", "5 mm"))


def _from_edge(draw: Draw) -> Given:
    return draw.pick("a", "first and last dowel, from the edges", inch=("1 1/4 in", "1 1/2 in", "1 3/4 in", "2 in"),
                     mm=("32 mm", "38 mm", "44 mm", "48 mm"))


_PLACE = too_much_or_too_little(
    "That hole would be {by} too far from the reference edge: its dowel meets solid wood in the mate.",
    "That hole would be {by} too near to the reference edge: its dowel meets solid wood in the mate.",
)

# Read a number off -------------------------------------------------------------------------------


def _last(givens: Givens) -> int:
    """As far from the far edge as the first is from the reference edge."""
    return givens["w"] - spread_out(givens["w"], givens["a"], 2)[0]


LAST = Exercise(
    id="j09-last", title="The last dowel, from the reference edge", rung="read a number off",
    question=(
        "A board is {w} wide; its first and its last dowel stand {a} from its edges. All places are measured from one "
        "edge, the reference edge. How far from it is the last dowel?"
    ),
    givens=lambda draw: [_board_width(draw), _from_edge(draw)],
    right=_last,
    misconceptions=(
        Misconception("other-edge", lambda g: g["a"], "That is measured from the other edge.",
                      "On which edge does the tape begin, for every hole?"),
        Misconception("both-edges", lambda g: g["w"] - 2 * g["a"], "That is from the first dowel to the last.",
                      "Where does the tape begin: at the first dowel, or at the edge?"),
        Misconception("beyond", lambda g: g["w"] + g["a"], "That lies off the board.",
                      "Is the last dowel before the far edge, or past it?"),
    ),
    effect=_PLACE,
    fits="Measured from the same edge on both boards, the holes meet, even where one board is a little wider.",
    hints=("Draw the end of the board, its reference edge left.", "The last dowel stands {a} before the far edge."),
    working=lambda g, say: (f"{g.texts['w']} - {g.texts['a']} = {say.length(_last(g))}",),
    tolerance=RULE,
)

# One step ----------------------------------------------------------------------------------------


def _dowel(givens: Givens) -> int:
    gap = givens["e"]
    pair = joint("dowel").build(
        stock_of(THICK, kind="solid"), {"into side": givens["q"] - gap, "into end": givens["p"] - gap, "end gap": gap},
    )
    return pair.by_name["dowel 1"].length


DOWEL = Exercise(
    id="j09-dowel", title="A dowel for two holes", rung="one step",
    question=(
        "The holes are {q} deep in the side and {p} deep in the end of the bottom. At the floor of each, {e} is to "
        "stay open for glue. How long are the dowels cut?"
    ),
    givens=lambda draw: [
        draw.tape("q", "hole in the side, depth", inch=("7/16 in", "5/8 in", "1/64 in"),
                  mm=("12 mm", "15.5 mm", "0.5 mm")),
        draw.tape("p", "hole in the end, depth", inch=("1 1/32 in", "1 17/32 in", "1/32 in"),
                  mm=("26 mm", "38 mm", "0.5 mm")),
        draw.pick("e", "left open at each floor", inch=("1/16 in",), mm=("1 mm", "1.5 mm")),
    ],
    right=_dowel,
    misconceptions=(
        Misconception("no-room", lambda g: g["p"] + g["q"], "That reaches both floors.",
                      "Where does the glue go that the dowel drives before it?"),
        Misconception("room-once", lambda g: g["p"] + g["q"] - g["e"], "That leaves room at one floor.",
                      "How many holes does the dowel end in?"),
        Misconception("one-hole", lambda g: g["p"] - g["e"], "That is what stands in the end of the bottom.",
                      "In how many boards does the dowel stand?"),
        Misconception("room-added", lambda g: g["p"] + g["q"] + 2 * g["e"], "That adds the room.",
                      "Does room at its ends make the dowel longer or shorter?"),
    ),
    effect=short_or_long("The dowel", "it takes that much of the room for glue, or keeps the joint open",
                         "it has that much less to hold by"),
    fits="The joint closes before the dowel strikes, and the glue has where to go.",
    hints=("How long would it be from floor to floor?", "At each floor {e} stays open."),
    working=lambda g, say: (
        f"floor to floor = {g.texts['q']} + {g.texts['p']} = {say.length(g['q'] + g['p'])}",
        f"dowel = {say.length(g['q'] + g['p'])} - 2 x {g.texts['e']} = {say.length(_dowel(g))}",
    ),
    tolerance=RULE,
)

# Two steps ---------------------------------------------------------------------------------------


def _second(givens: Givens) -> int:
    return spread_out(givens["w"], givens["a"], int(givens["n"]))[1]


def _second_working(givens: Givens, say: Say) -> tuple[str, ...]:
    text, count = givens.texts, int(givens["n"])
    run = givens["w"] - 2 * givens["a"]
    space = share(run, count - 1, 1)[0]
    return (
        f"first to last = {text['w']} - 2 x {text['a']} = {say.length(run)}",
        f"{text['n']} dowels have {count - 1} spaces: {say.length(run)} / {count - 1} = {say.length(space)}",
        f"second = {text['a']} + {say.length(space)} = {say.length(_second(givens))}",
    )


SECOND = Exercise(
    id="j09-second", title="Even spaces along an edge", rung="two steps",
    question=(
        "{n} dowels go along the end of a board {w} wide: the first and the last {a} from the edges, the others evenly "
        "between. How far from the reference edge is the second?"
    ),
    givens=lambda draw: [_board_width(draw), _from_edge(draw), draw.count("n", "", 4, 5)],
    right=_second,
    misconceptions=(
        Misconception("a-space-each", lambda g: g["a"] + share(g["w"] - 2 * g["a"], g["n"], 1)[0],
                      "That makes as many spaces as dowels.", "Count the spaces between {n} dowels on your fingers."),
        Misconception("from-the-first", lambda g: share(g["w"] - 2 * g["a"], g["n"] - 1, 1)[0],
                      "That is measured from the first dowel.", "Where does the tape begin?"),
        Misconception("whole-width", lambda g: g["a"] + share(g["w"], g["n"] - 1, 1)[0],
                      "That shares the whole width.", "How far is it from the first dowel to the last?"),
    ),
    effect=_PLACE,
    fits="All spaces come out alike, and the last dowel stands {a} from the far edge.",
    hints=("How far is it from the first dowel to the last?",
           "Between {n} dowels there is one space fewer than dowels.",
           "Begin at the reference edge: {a}, and one space more."),
    working=_second_working,
    tolerance=RULE,
)


def _faces_givens(draw: Draw) -> list[Given]:
    return [*planed_board(draw), draw.reading("g", "gauge, set to", inch=("0.325 in", "0.350 in", "0.005 in"),
                                              mm=("8.2 mm", "8.6 mm", "0.05 mm"))]


def _step(givens: Givens) -> int:
    """Where the line lies on the board that was turned over, from its face side, less where it should lie."""
    turned = givens["t"] - givens["g"]
    return turned - givens["g"]


FACES = Exercise(
    id="j09-faces", title="Marked from unlike faces", rung="two steps",
    question=(
        "Two boards, sold as {T} and measured {t}, get dowels edge to edge. The gauge is set to {g}. On one board it "
        "ran on the face side, on the other by mistake on the back. How high is the step between the two faces?"
    ),
    givens=_faces_givens,
    right=_step,
    misconceptions=(
        Misconception("the-line", lambda g: g["t"] - g["g"], "That is where the line of the turned board lies.",
                      "How far is that from where its mate has its line?"),
        Misconception("half", lambda g: share(_step(g), 2, 1)[0], "That is how far each line is off the middle.",
                      "One line is off to one side, the other to the other: what do both come to?"),
        Misconception("nominal", lambda g: g["T"] - 2 * g["g"], "That sum begins with {T}, the name of the boards.",
                      "Look at what the calipers read."),
    ),
    effect=too_much_or_too_little("You would look for a step {by} higher than comes.",
                                  "You would look for a step {by} lower than comes."),
    fits="Gauged from the face side on both boards, the same error would have left no step at all.",
    hints=("How far from the face side is the line of the board that was gauged from its back?",
           "The other line is {g} from its face side. What lies between?"),
    working=lambda g, say: (
        f"turned board, from its face side: {g.texts['t']} - {g.texts['g']} = {say.length(g['t'] - g['g'])}",
        f"step = {say.length(g['t'] - g['g'])} - {g.texts['g']} = {say.length(_step(g))}",
        f"The name {g.texts['T']} stands in no sum.",
    ),
    tolerance=CALIPER, caliper=True, coarse=Twin(read_length("0.01 in"), read_length("0.25 mm")),
)

# Find the slip -----------------------------------------------------------------------------------


def _grooves(draw: Draw) -> list[Given]:
    sizes = {"inch": ("0.405 in", "0.595 in", "0.005 in"), "mm": ("10 mm", "15 mm", "0.1 mm")}
    one = draw.reading("q", "groove in the runner, depth", **sizes)
    other = draw.reading("p", "groove in the bearer, depth", **sizes)
    gap = draw.reading("e", "open at each edge of the spline", inch=("0.016 in", "0.03 in", "0.002 in"),
                       mm=("0.4 mm", "0.8 mm", "0.1 mm"))
    return [one, other, gap, draw.derived_reading("L", "spline in Ruben's list", one.value + other.value)]


def _spline(givens: Givens) -> int:
    return spline_for(givens["q"], givens["p"], givens["e"])


RUBENS_SPLINE = Exercise(
    id="j09-rubens-spline", title="Ruben's spline", rung="find the slip",
    question=(
        "Ruben joins a drawer runner to its bearer with a spline. His calipers read grooves {q} and {p} deep; {e} is "
        "to stay open at each edge of the spline. His list has a spline {L} wide. Something is wrong with it. How wide "
        "should it be?"
    ),
    givens=_grooves,
    right=_spline,
    misconceptions=(
        Misconception("as-listed", lambda g: g["L"], "That is the width in Ruben's list.",
                      "What is to stay open at the edges of the spline?"),
        Misconception("room-once", lambda g: g["q"] + g["p"] - g["e"], "That leaves room at one edge.",
                      "How many edges has the spline?"),
        Misconception("room-added", lambda g: g["L"] + 2 * g["e"], "That adds the room.",
                      "Does room at its edges make the spline wider or narrower?"),
        Misconception("one-groove", lambda g: g["q"] - g["e"], "That fills one groove.",
                      "In how many boards does the spline stand?"),
    ),
    effect=too_much_or_too_little(
        "The spline would be {by} too wide: it takes that much of the room for glue, or keeps the joint open.",
        "The spline would be {by} too narrow: it has that much less to hold by.",
    ),
    fits="Ruben's would have struck both floors, and no clamp closes that joint.",
    hints=("How far is it from floor to floor?", "At each edge {e} stays open."),
    working=lambda g, say: (
        f"floor to floor = {g.texts['q']} + {g.texts['p']} = {say.length(g['q'] + g['p'])}",
        f"spline = {say.length(g['q'] + g['p'])} - 2 x {g.texts['e']} = {say.length(_spline(g))}",
        f"Ruben's {g.texts['L']} goes from floor to floor; nothing stayed open for glue.",
    ),
    tolerance=CALIPER, caliper=True, coarse=Twin(INCH // 4, 6 * MM),
)

# A whole set -------------------------------------------------------------------------------------


def _set_givens(draw: Draw) -> list[Given]:
    return [
        draw.tape("W", "parts board, width", inch=("16 1/8 in", "26 1/4 in", "3/16 in"),
                  mm=("411 mm", "660 mm", "3 mm")),
        draw.tape("q", "each groove, depth", inch=("3/8 in", "1/2 in", "1/64 in"), mm=("9 mm", "12 mm", "0.5 mm")),
        draw.pick("e", "open at each edge of a spline", inch=("1/64 in", "1/32 in"), mm=("0.8 mm",)),
    ]


def _panel(givens: Givens) -> Cabinet:
    return splined_panel(wide=givens["W"], count=3, long=LONG, thick=THICK, groove=givens["q"], gap=givens["e"],
                         style=INCH_STYLE)


def _third(givens: Givens) -> int:
    return share(givens["W"], 3, 1)[0]


def _strip(givens: Givens) -> int:
    return spline_for(givens["q"], givens["q"], givens["e"])


BOARDS = Asked(
    "boards", "Boards", "width", ("board 1", "board 2", "board 3"), "x",
    (
        Misconception("boards-tongue", lambda g: _third(g) + g["q"], "That adds a tongue of {q}.",
                      "The tongue is loose here: which piece of wood is it cut from?"),
        Misconception("boards-splines-off", lambda g: share(g["W"] - 2 * _strip(g), 3, 1)[0],
                      "That takes the splines off.", "Do the splines lie between the boards, or inside them?"),
        Misconception("boards-tongues", lambda g: _third(g) + 2 * g["q"], "That adds a tongue at both edges.",
                      "What goes into the grooves: the boards, or a strip by itself?"),
    ),
    lambda g, say: (f"boards = {g.texts['W']} / 3 = {say.length(_third(g))}",),
)

SPLINES = Asked(
    "splines", "Splines", "width", ("spline 1", "spline 2"), "x",
    (
        Misconception("splines-no-room", lambda g: 2 * g["q"], "That goes from floor to floor.",
                      "What is to stay open at each edge?"),
        Misconception("splines-one-groove", lambda g: g["q"] - g["e"], "That fills one groove.",
                      "How many grooves does a spline stand in?"),
        Misconception("splines-room-added", lambda g: 2 * (g["q"] + g["e"]), "That adds the room.",
                      "Does room make the spline wider or narrower?"),
    ),
    lambda g, say: (
        f"in each groove = {g.texts['q']} - {g.texts['e']} = {say.length(g['q'] - g['e'])}",
        f"splines = 2 x {say.length(g['q'] - g['e'])} = {say.length(_strip(g))}",
    ),
)

PANEL_SET = SetExercise(
    id="j09-panel-set", title="Glue up the parts board",
    question=(
        "The parts board is {W} wide, of three equal boards edge to edge, with a loose spline in each of the two "
        "seams. Every groove is {q} deep, and {e} stays open at each edge of a spline. Give both widths: what you give "
        "is put together dry, and you see it from above, cut level through the splines."
    ),
    givens=_set_givens, case=_panel, asked=(BOARDS, SPLINES), view=View(FROM_ABOVE, "board 1"), whole="panel",
    fits="The edges meet, and both splines have their room.",
    hints=("The edges meet: the three boards alone make the width.",
           "A spline goes into two grooves, and stops {e} before the floor of each."),
)

EXERCISES = (LAST, DOWEL, SECOND, FACES, RUBENS_SPLINE)
SETS = (PANEL_SET,)
