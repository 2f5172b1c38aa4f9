"""The exercises of what holds, up the ladder: a reading, one step, two steps of sag, of tipping, of screws, a case."""

from dataclasses import replace

from shoplib.lessons.exercise import Exercise, Given, Givens, Misconception, Twin
from shoplib.lessons.hold_effects import arm_off, limit_off, sag_off, screw_off
from shoplib.lessons.numbers import Draw
from shoplib.lessons.parts_case import PARTS_CASE
from shoplib.lessons.say import Say
from shoplib.measure import INCH, MM, share
from shoplib.model.sag import allowed_sag

FINE = Twin(INCH // 500, MM // 25)
"""What a sag may be off and still be right: what two people read off the same straightedge."""

RULE = Twin(INCH // 64, MM // 5)
"""The same for what is read off a rule: one fine step of it."""

COARSE = Twin(INCH // 100, MM // 4)
"""A sag is small: told to an eighth of an inch by how much it is off, it would be given away."""


def _weight(draw: Draw, name: str, pounds: tuple[int, int], kilos: tuple[int, int]) -> Given:
    return draw.count(name, "", *(pounds if draw.unit == "in" else kilos))


def _unit_of_weight(draw: Draw) -> Given:
    return Given("u", "", 0, "lb" if draw.unit == "in" else "kg")


# Read a number off -------------------------------------------------------------------------------


def _card(draw: Draw) -> list[Given]:
    bowed = draw.reading("bowed", "gap in the middle, empty", inch=("0.020 in", "0.090 in", "0.001 in"),
                         mm=("0.5 mm", "2.3 mm", "0.05 mm"))
    more = draw.reading("more", "", inch=("0.100 in", "0.300 in", "0.001 in"), mm=("2.5 mm", "7.6 mm", "0.05 mm"))
    loaded = draw.derived_reading("loaded", "gap in the middle, loaded", bowed.value + more.value)
    # At a quarter of its span a shelf under an even load is 57/80 as far down as in its middle.
    quarter = draw.derived_reading("quarter", "gap at a quarter, loaded", share(loaded.value * 57, 80, INCH // 1000
                                   if draw.unit == "in" else MM // 100)[0])
    return [bowed, loaded, quarter]


READING = Exercise(
    id="07-reading",
    title="The sag behind the readings",
    rung="read a number off",
    question=(
        "A straightedge lies along the front edge of a shelf, from end to end. Empty, the gap under it is {bowed} in "
        "the middle: the board was bowed before. Loaded, it is {loaded} in the middle and {quarter} at a quarter of "
        "the span. How far did the load make the shelf sag?"
    ),
    givens=_card,
    right=lambda g: g["loaded"] - g["bowed"],
    misconceptions=(
        Misconception(
            "with-bow", lambda g: g["loaded"],
            "That is the whole gap, with the bow that the board had before.", "What was under the straightedge when "
            "nothing lay on the shelf?",
        ),
        Misconception(
            "quarter", lambda g: g["quarter"] - g["bowed"],
            "That takes the reading at a quarter.", "Where does a shelf go down farthest?",
        ),
        Misconception(
            "added", lambda g: g["loaded"] + g["bowed"],
            "That adds the bow once more.", "The bow is in the loaded reading already.",
        ),
    ),
    effect=sag_off,
    fits="So much came with the load; the rest was in the board, and turning it over takes it away.",
    hints=(
        "Which of the three readings are from the same place?",
        "What came with the load is the difference between loaded and empty.",
    ),
    working=lambda g, say: (
        f"In the middle, where it sags farthest; {g.texts['quarter']} at a quarter is another place.",
        f"sag = {g.texts['loaded']} - {g.texts['bowed']} = {say.length(g['loaded'] - g['bowed'])}",
    ),
    tolerance=FINE,
    caliper=True,
    coarse=COARSE,
)


# One step ----------------------------------------------------------------------------------------


LIMIT = Exercise(
    id="07-limit",
    title="The limit on the card",
    rung="one step",
    question=(
        "A shelf spans {S} between its supports. KCMA A161.1 lets it sag 1/16 in for each foot of its span, which is "
        "the span divided by 192 in any unit, and 1/4 in ({cap}) at most. How far may it sag?"
    ),
    givens=lambda draw: [
        draw.tape("S", "span", inch=("25 1/8 in", "44 in", "1/8 in"), mm=("640.5 mm", "1100 mm", "1 mm")),
        draw.derived_reading("cap", "", INCH // 4),
    ],
    right=lambda g: allowed_sag(g["S"]),
    misconceptions=(
        Misconception(
            "cap", lambda _g: INCH // 4,
            "That is the most that any shelf may sag.", "This span comes to less: divide it.",
        ),
        Misconception(
            "once", lambda _g: INCH // 16,
            "That is what one foot of span may sag.", "How many feet does this shelf span?",
        ),
        Misconception(
            "half-span", lambda g: share(g["S"], 384, 1)[0],
            "That takes half of the span.", "The rule asks for the whole way between the supports.",
        ),
    ),
    effect=limit_off,
    fits="A short shelf is held to less than a long one: the eye sees the slope, not the depth.",
    hints=("It is shorter than 48 in (1219 mm), so the first part of the rule decides.", "Divide the span by 192."),
    working=lambda g, say: (
        f"{g.texts['S']} is less than 48 in (1219 mm), so 1/16 in for each foot decides.",
        f"{g.texts['S']} / 192 = {say.length(allowed_sag(g['S']))}",
    ),
    tolerance=FINE,
    caliper=True,
)


def _sag_given(draw: Draw, inch: tuple[str, str, str], mm: tuple[str, str, str]) -> Given:
    """In steps that leave the answer a whole reading of the calipers."""
    return draw.reading("s", "sag at once", inch=inch, mm=mm)


THICKER = Exercise(
    id="07-thicker",
    title="Two layers glued into one",
    rung="one step",
    question=(
        "A shelf sags {s} as soon as its load is on. A second layer of the same sheet is glued under it over its whole "
        "face, so it is twice as thick. How far does it sag now under the same load? (Leave its own weight out.)"
    ),
    givens=lambda draw: [_sag_given(draw, ("0.240 in", "0.480 in", "0.008 in"), ("6 mm", "12 mm", "0.08 mm"))],
    right=lambda g: share(g["s"], 8, 1)[0],
    misconceptions=(
        Misconception(
            "half", lambda g: share(g["s"], 2, 1)[0],
            "That halves it, as if the two layers lay loose on each other.", "Glued, they bend as one board: stiffness "
            "goes with thickness x thickness x thickness.",
        ),
        Misconception(
            "added-up", lambda g: share(g["s"], 6, 1)[0],
            "That adds where it should multiply: 2 + 2 + 2.",
            "Stiffness counts the thickness three times: 2 x 2 x 2.",
        ),
        Misconception(
            "fourth", lambda g: share(g["s"], 16, 1)[0],
            "That counts it four times, as the span does.", "The span counts four times, the thickness three times.",
        ),
    ),
    effect=sag_off,
    fits="Twice as thick is eight times as stiff: the cheapest way to a stiff shelf is thickness.",
    hints=("How often does the thickness count in the stiffness of a board?", "2 x 2 x 2 = 8 times as stiff."),
    working=lambda g, say: (
        "twice as thick: 2 x 2 x 2 = 8 times as stiff",
        f"sag = {g.texts['s']} / 8 = {say.length(share(g['s'], 8, 1)[0])}",
    ),
    tolerance=Twin(INCH // 1000, MM // 50),
    caliper=True,
    coarse=COARSE,
)


# Two steps ---------------------------------------------------------------------------------------


DIVIDER = Exercise(
    id="07-divider",
    title="A divider, and the years",
    rung="two steps",
    question=(
        "A long shelf sags {s} as soon as it is loaded. You cut it in two and put a divider in the middle: two "
        "shelves, each half as long, each with half of the load. What does one of them come to sag in years? (Under "
        "a lasting load, 1.5 times its first sag.)"
    ),
    givens=lambda draw: [_sag_given(draw, ("0.480 in", "0.960 in", "0.032 in"), ("12 mm", "24 mm", "0.32 mm"))],
    right=lambda g: share(3 * g["s"], 32, 1)[0],
    misconceptions=(
        Misconception(
            "at-once", lambda g: share(g["s"], 16, 1)[0],
            "That is what it sags at once.", "The load stays for years: what does wood do then?",
        ),
        Misconception(
            "span-alone", lambda g: share(g["s"], 8, 1)[0],
            "That counts the shorter span alone.",
            "Half as long, it carries half as much; and the load stays for years.",
        ),
        Misconception(
            "halved", lambda g: share(3 * g["s"], 4, 1)[0],
            "That halves the sag with the span.", "The span counts three times, and the load on it once more.",
        ),
    ),
    effect=sag_off,
    fits="One divider takes away fifteen sixteenths. No other mend does so much.",
    hints=(
        "Half of the span: 2 x 2 x 2 = 8 times less for the same load.",
        "Half of the load besides: 16 times less in all.",
        "Then the years: 1.5 times as much.",
    ),
    working=lambda g, say: (
        "half the span and half the load: 2 x 2 x 2 x 2 = 16 times less",
        f"at once = {g.texts['s']} / 16 = {say.length(share(g['s'], 16, 1)[0])}",
        f"in years = 3 x {g.texts['s']} / 32 = {say.length(share(3 * g['s'], 32, 1)[0])}",
    ),
    tolerance=Twin(INCH // 1000, MM // 50),
    caliper=True,
    coarse=COARSE,
)


def _balance(givens: Givens) -> int:
    return share(givens["d"] * givens["W"], givens["w"], 1)[0]


TIPPING = Exercise(
    id="07-tipping",
    title="Just about to tip",
    rung="two steps",
    question=(
        "A case without the drawer that is open weighs {W} {u}, and its middle lies {d} behind the tipping edge. The "
        "open drawer weighs {w} {u} with what lies in it. How far before the edge may the middle of that drawer come "
        "until the case is just about to tip?"
    ),
    givens=lambda draw: [
        _weight(draw, "W", (40, 70), (18, 32)), _weight(draw, "w", (26, 38), (12, 17)),
        draw.tape("d", "middle of the case, behind the edge", inch=("7 1/16 in", "11 in", "1/16 in"),
                  mm=("180.5 mm", "280 mm", "1 mm")),
        _unit_of_weight(draw),
    ],
    right=_balance,
    misconceptions=(
        Misconception(
            "turned", lambda g: share(g["d"] * g["w"], g["W"], 1)[0],
            "That gives the lighter one the shorter arm.", "On a seesaw, who sits farther out?",
        ),
        Misconception(
            "same-arm", lambda g: g["d"],
            "That takes the same distance for both, as if they weighed the same.",
            "The moments are equal, not the arms.",
        ),
        Misconception(
            "of-both", lambda g: share(g["d"] * g["W"], g["W"] + g["w"], 1)[0],
            "That divides by both weights together.", "Only the drawer tips: divide by what it weighs.",
        ),
    ),
    effect=arm_off,
    fits="At this reach nothing is left for an uneven floor or a hand on the front. So: fasten the case.",
    hints=(
        "First the moment that holds: the weight of the case x its distance.",
        "The drawer's weight x its distance must come to the same.",
    ),
    working=lambda g, say: (
        f"what holds: {g.texts['W']} {g.texts['u']} x {g.texts['d']}; what tips: {g.texts['w']} {g.texts['u']} x its "
        "distance",
        f"distance = {g.texts['W']} x {g.texts['d']} / {g.texts['w']} = {say.length(_balance(g))}",
    ),
    tolerance=RULE,
)


def _each(draw: Draw) -> Given:
    return replace(draw.pick("e", "", inch=("1 in",), mm=("10 mm",)), called="thread that may be asked so much")


def _pulled(draw: Draw) -> list[Given]:
    asked = _weight(draw, "f", (95, 130), (17, 24))
    # 15,700 over 2,850: the two figures of `model/withdrawal.py`.
    out = asked.value * 11 // 2
    return [
        _weight(draw, "F", (180, 320), (90, 150)), asked, Given("p", "", out, str(out)),
        draw.tape("t", "board that the screw goes through", inch=("1/2 in", "1 1/4 in", "1/32 in"),
                  mm=("12.5 mm", "32 mm", "0.5 mm")),
        _each(draw), _unit_of_weight(draw),
    ]


def _screw(givens: Givens) -> int:
    return givens["t"] + share(givens["e"] * givens["F"], 2 * givens["f"], 1)[0]


def _screw_working(givens: Givens, say: Say) -> tuple[str, ...]:
    text = givens.texts
    return (
        f"thread = {text['e']} x {text['F']} / (2 x {text['f']}) = {say.exact(_screw(givens) - givens['t'])}",
        f"screw = {text['t']} + {text['e']} x {text['F']} / (2 x {text['f']}) = {say.length(_screw(givens))}",
    )


SCREW = Exercise(
    id="07-screw",
    title="Thread enough for the rail",
    rung="two steps",
    question=(
        "A board {t} thick is pulled off its post with {F} {u}, and two screws through it share that. Each {e} of "
        "thread in the post may be asked to hold {f} {u}; it comes out at {p} {u}. How long must a screw be, threaded "
        "as far as it stands in the post?"
    ),
    givens=_pulled,
    right=_screw,
    misconceptions=(
        Misconception(
            "thread-only", lambda g: _screw(g) - g["t"],
            "That is the thread in the post alone.", "The screw goes through the board first.",
        ),
        Misconception(
            "one-screw", lambda g: g["t"] + share(g["e"] * g["F"], g["f"], 1)[0],
            "That hangs the whole pull on one screw.", "Two of them share it.",
        ),
        Misconception(
            "until-it-comes", lambda g: g["t"] + share(g["e"] * g["F"], 2 * g["p"], 1)[0],
            "That counts on the load at which it comes out.", "Ask of a screw only what it may be asked.",
        ),
    ),
    effect=screw_off,
    fits="Take the next longer screw that is sold, and look that its point stays inside.",
    hints=(
        "Half of the pull is for one screw.",
        "How much thread bears that, at what each {e} may be asked?",
        "The thickness of the board comes before the thread.",
    ),
    working=_screw_working,
    tolerance=RULE,
)

EXERCISES = (READING, LIMIT, THICKER, DIVIDER, TIPPING, SCREW)
SETS = (PARTS_CASE,)
