"""The exercises of measuring, up the ladder: read off, one step, two steps, another's list, a whole set."""

from shoplib.lessons.exercise import Exercise, Given, Givens, Misconception, Twin
from shoplib.lessons.fractions_slipped import borrowed_wrong
from shoplib.lessons.halves_and_sums import HALF, SUM
from shoplib.lessons.marks_read import READ
from shoplib.lessons.measuring_givens import board_and_cut, kerf
from shoplib.lessons.numbers import Draw
from shoplib.lessons.one_strip import ONE_STRIP
from shoplib.lessons.sams_list import SAMS_LIST
from shoplib.lessons.say import Say
from shoplib.measure import INCH, MM, share
from shoplib.model.strip import cut_at, equal_pieces

# Two steps: the line and the kerf ------------------------------------------------------------------


def second_piece(givens: Givens) -> int:
    """What is left of `L` when `P` is sawn off it on the waste side of its line."""
    return cut_at(givens["L"], givens["P"], givens["k"], "waste side").rest


def _line_givens(draw: Draw) -> list[Given]:
    board, piece, cut = board_and_cut(draw)
    wrong = borrowed_wrong(board.value, piece.value, draw.unit) - cut.value
    said = {"in": "An inch was borrowed as ten sixteenths.", "mm": "A ten was borrowed and not paid back."}[draw.unit]
    return [board, piece, cut, Given("borrow", "", wrong, said)]


def _line_effect(_givens: Givens, off: int, say: Say) -> str:
    if off > 0:
        return f"You would count on {say.amount(off)} of wood that is not there: the second piece comes out shorter."
    return f"The second piece would come out {say.amount(off)} longer than you wrote, and would need one more cut."


def _line_working(givens: Givens, say: Say) -> tuple[str, ...]:
    text, both = givens.texts, say.length(givens["P"] + givens["k"])
    return (
        "second piece = board - first piece - kerf",
        f"second piece = {text['L']} - {text['P']} - {text['k']} = {text['L']} - {both} = "
        f"{say.length(second_piece(givens))}",
    )


LINE = Exercise(
    id="01-line",
    title="Both pieces count",
    rung="two steps",
    question=(
        "A board is {L} long. You mark {P} from its left end and saw just beside the line, on the right of it. The "
        "kerf is {k}. Both pieces are wanted: how long is the second one, right of the cut?"
    ),
    givens=_line_givens,
    right=second_piece,
    misconceptions=(
        Misconception(
            "no-kerf", lambda g: g["L"] - g["P"],
            "That is the board less the first piece, as if a saw took no wood.",
            "Look at the slot that the blade leaves: whose wood was that?",
        ),
        Misconception(
            "half-kerf", lambda g: g["L"] - g["P"] - share(g["k"], 2, 1)[0],
            "That takes half a kerf off.",
            "Half of it would be right with the blade on the line; here it runs beside the line.",
        ),
        Misconception(
            "added", lambda g: g["L"] - g["P"] + g["k"],
            "That adds the kerf.",
            "Does the saw make wood, or dust?",
        ),
        Misconception("borrow", lambda g: g["borrow"], "{borrow}", "Take {P} from {L} once more, on paper."),
    ),
    effect=_line_effect,
    fits="First piece, kerf and second piece make {L} again.",
    hints=(
        "Draw the board: first piece, slot, second piece.",
        "Together they are {L}. Take the first piece off.",
        "The whole kerf lies right of the line: take {k} off too.",
    ),
    working=_line_working,
    tolerance=Twin(INCH // 64, MM // 5),
)


# Two steps: equal pieces ---------------------------------------------------------------------------


def _equal_givens(draw: Draw) -> list[Given]:
    piece = draw.tape("piece", "", inch=("5 1/8 in", "17 7/8 in", "1/4 in"), mm=("130.5 mm", "450.5 mm", "1 mm")).value
    count, cut = draw.count("n", "", 3, 5), kerf(draw)
    strip = draw.derived("S", "strip, length", count.value * piece + (count.value - 1) * cut.value)
    return [strip, cut, count]


def each_piece(givens: Givens) -> int:
    """How long each of `n` equal pieces of `S` is."""
    return equal_pieces(givens["S"], givens["n"], givens["k"])[0]


def _equal_effect(givens: Givens, off: int, say: Say) -> str:
    by, all_of_it = say.amount(off), say.amount(givens["n"] * off)
    if off > 0:
        return (
            f"Each would be marked {by} too long, and the last of the {givens['n']} would come out {all_of_it} shorter "
            "than the others."
        )
    return f"Each would be {by} too short, and {all_of_it} of the strip would be left over."


def _equal_working(givens: Givens, say: Say) -> tuple[str, ...]:
    text, count = givens.texts, givens["n"]
    wood = say.length(givens["S"] - (count - 1) * givens["k"])
    return (
        f"{count} pieces have {count - 1} cuts between them.",
        f"({text['S']} - {count - 1} x {text['k']}) / {count} = {wood} / {count} = {say.length(each_piece(givens))}",
    )


EQUAL = Exercise(
    id="01-equal",
    title="Equal spacers from one strip",
    rung="two steps",
    question=(
        "A strip of beech is {S} long, both its ends are square. It is to give {n} spacers of one length, with nothing "
        "left over. The kerf is {k}. How long is each?"
    ),
    givens=_equal_givens,
    right=each_piece,
    misconceptions=(
        Misconception(
            "no-kerf", lambda g: share(g["S"], g["n"], 1)[0],
            "That shares the strip as if a saw took no wood.",
            "Count the cuts, and take their kerfs off before you share.",
        ),
        Misconception(
            "kerf-each", lambda g: share(g["S"] - g["n"] * g["k"], g["n"], 1)[0],
            "That takes off {n} kerfs, one for each piece.",
            "Draw the strip: how many cuts lie between {n} pieces?",
        ),
        Misconception(
            "one-kerf", lambda g: share(g["S"] - g["k"], g["n"], 1)[0],
            "That takes off one kerf.",
            "Draw the strip: how many cuts lie between {n} pieces?",
        ),
    ),
    effect=_equal_effect,
    fits="{n} of them and the cuts between make {S} again.",
    hints=(
        "Draw the strip with its {n} pieces and mark every cut.",
        "Between {n} pieces there is one cut fewer than pieces. Take all kerfs off {S}.",
        "Share what is left, which is wood only, among {n}.",
    ),
    working=_equal_working,
    tolerance=Twin(INCH // 128, MM // 10),
)

EXERCISES = (READ, HALF, SUM, LINE, EQUAL, SAMS_LIST)
SETS = (ONE_STRIP,)
