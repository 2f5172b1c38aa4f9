"""The exercises of the drawer-front joint, up the ladder: side, tongue, front, another's list, a drawer box."""

from shoplib.joints import joint
from shoplib.joints.bench_pair import stock_of
from shoplib.lessons.drawer_givens import box_stock, corner_rabbet, opening, slide_side
from shoplib.lessons.exercise import Exercise, Given, Givens, Misconception
from shoplib.lessons.joint_box import BACK_ALONE, BOTTOM_WIDTH, FRONT_ALONE, SEEN, box_givens, joined_box, sides_asked
from shoplib.lessons.joint_givens import CALIPER, short_or_long, too_much_or_too_little
from shoplib.lessons.lesson_02 import RULE
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.lessons.set_exercise import Asked, SetExercise
from shoplib.lessons.small_box import part, small_box
from shoplib.lessons.usual_givens import sheet_as_measured, sheet_as_sold
from shoplib.measure import INCH, narrowest, thickest
from shoplib.model.project import JointChoice
from shoplib.model.solved import Cabinet

LOCK = joint("drawer lock")


def _lip(draw: Draw) -> Given:
    return draw.pick("l", "lip of the front", inch=("3/16 in", "7/32 in", "1/4 in"), mm=("5 mm", "6 mm", "6.5 mm"))


def _lip_read(draw: Draw) -> Given:
    return draw.reading("l", "lip, measured", inch=("0.226 in", "0.244 in", "0.002 in"),
                        mm=("5.6 mm", "6.2 mm", "0.1 mm"))


# Read a number off -------------------------------------------------------------------------------


def _side(givens: Givens) -> int:
    return givens["D"] - givens["F"] + LOCK.allowance(stock_of(INCH // 2, givens["F"]), {"lip": givens["l"]})


SIDE = Exercise(
    id="j06-side", title="As far as the lip", rung="read a number off",
    question=(
        "A drawer box is {D} deep outside. Its front is {F} thick, and a lip of {l} covers the ends of the sides. At "
        "the rear the sides run right through. How long is a side?"
    ),
    givens=lambda draw: [
        draw.tape("D", "box, outside depth", inch=("14 1/32 in", "20 1/32 in", "1/8 in"),
                  mm=("351 mm", "501 mm", "5 mm")),
        draw.pick("F", "front, thickness", inch=("11/16 in", "23/32 in"), mm=("17.5 mm", "18 mm")), _lip(draw),
    ],
    right=_side,
    misconceptions=(
        Misconception("whole", lambda g: g["D"], "That is the whole depth of the box.",
                      "What of the front stands before the end of the side?"),
        Misconception("butted", lambda g: g["D"] - g["F"], "That ends the side at the inside of the front.",
                      "Its end goes on into the slot of the front: how far?"),
        Misconception("two-lips", lambda g: g["D"] - 2 * g["l"], "That takes a lip off at both ends.",
                      "How is the side joined at the rear?"),
    ),
    effect=short_or_long("The side", "the box comes out so much deeper, or the corner stays open",
                         "it does not reach the lip, and a dark line shows at the corner"),
    fits="The end of the side stands on the lip.",
    hints=("Draw the corner from above: from the outside in, first the lip, then the end of the side.",
           "From {D} only the lip comes off."),
    working=lambda g, say: (
        f"{g.texts['D']} - {g.texts['l']} = {say.length(_side(g))}",
        f"Over one that ends at the inside of the front, the side gains {g.texts['F']} - {g.texts['l']}.",
    ),
    tolerance=RULE,
)

# One step ----------------------------------------------------------------------------------------


def _tongue(givens: Givens) -> int:
    values = {"lip": givens["l"], "groove": givens["g"]}
    return LOCK.build(stock_of(INCH // 2, givens["t"]), values).joints[0].tongue


TONGUE = Exercise(
    id="j06-tongue", title="What is left for the tongue", rung="one step",
    question=(
        "A drawer front was sold as {T} and measures {t}. The stack cuts a slot {g} wide into its ends, and the lip "
        "that it leaves outside measures {l}. How thick is the tongue that is left inside?"
    ),
    givens=lambda draw: [
        sheet_as_sold(draw), sheet_as_measured(draw), _lip_read(draw),
        draw.reading("g", "slot, measured", inch=("0.248 in", "0.254 in", "0.001 in"),
                     mm=("6.3 mm", "6.5 mm", "0.05 mm")),
    ],
    right=_tongue,
    misconceptions=(
        Misconception("nominal", lambda g: g["T"] - g["l"] - g["g"], "That is the sum with {T}, the name of the sheet.",
                      "Look at what the calipers read."),
        Misconception("no-lip", lambda g: g["t"] - g["g"], "That is lip and tongue together.",
                      "The slot leaves wood on both its sides."),
        Misconception("no-slot", lambda g: g["t"] - g["l"], "That is slot and tongue together.",
                      "What does the stack take away?"),
        Misconception("rest", lambda g: g["l"] + g["g"], "That is the lip and the slot.",
                      "Lip, slot and tongue add up to the front."),
    ),
    effect=too_much_or_too_little(
        "You would make the dado of the side {by} too wide for it: the corner is loose.",
        "You would make the dado of the side {by} too narrow for it: the corner does not go together.",
    ),
    fits="That is what the dado of the side must take, and the fit.",
    hints=("Lip, slot and tongue add up to the front as measured.", "{t}, less the lip, less the slot."),
    working=lambda g, say: (
        f"{g.texts['t']} - {g.texts['l']} - {g.texts['g']} = {say.length(_tongue(g))}",
        f"The name {g.texts['T']} stands in no sum.",
    ),
    tolerance=CALIPER, caliper=True,
)

# Two steps ---------------------------------------------------------------------------------------


def _front(givens: Givens) -> int:
    box = small_box(
        givens["F"], givens["R"], unit="mm" if givens["metric"] else "in", side=givens["c"], stock=givens["s"],
        corner=JointChoice("drawer lock"),
    )
    return part(box, "box front", 0)


def _front_working(givens: Givens, say: Say) -> tuple[str, ...]:
    text, least = givens.texts, say.exact(narrowest([givens["F"], givens["R"]]))
    return (
        f"Of {text['F']} and {text['R']} the narrower governs: {least}.",
        f"front = {least} - 2 x {text['c']} = {say.length(_front(givens))}",
        f"Its lips cover the ends of the sides, so the {text['s']} of the sides stand in no sum.",
    )


FRONT = Exercise(
    id="j06-front", title="A front for an opening", rung="two steps",
    question=(
        "An opening reads {F} at the front and {R} at the back. A slide takes {c} at each side of the box; box sides "
        "measure {s}. Front and sides meet in drawer-front joints. How long is the front of the box?"
    ),
    givens=lambda draw: [*opening(draw), slide_side(draw), box_stock(draw),
                         Given("metric", "", int(draw.unit == "mm"), "")],
    right=_front,
    misconceptions=(
        Misconception("between", lambda g: narrowest([g["F"], g["R"]]) - 2 * g["c"] - 2 * g["s"],
                      "That is the room between the sides.", "Which board shows its ends at the sides of the box?"),
        Misconception("one-slide", lambda g: narrowest([g["F"], g["R"]]) - g["c"], "That counts one slide.",
                      "A drawer runs on a pair."),
        Misconception("widest", lambda g: thickest([g["F"], g["R"]]) - 2 * g["c"],
                      "That begins with the wider reading.", "Where must the box still go through?"),
        Misconception("one-side", lambda g: narrowest([g["F"], g["R"]]) - 2 * g["c"] - g["s"],
                      "That takes one side off.", "Do the sides stand beside the front, or behind its lips?"),
    ),
    effect=too_much_or_too_little(
        "The front would be {by} too long: the box does not go in between its slides.",
        "The front would be {by} too short: so much stays open beside the slides.",
    ),
    fits="The front is as long as the box is wide.",
    hints=("How wide is the box? The narrower reading, less the pair of slides.",
           "The lips of the front cover the sides: it runs from outside to outside."),
    working=_front_working,
    tolerance=RULE,
)

# Find the slip -----------------------------------------------------------------------------------


def _from_end(givens: Givens) -> int:
    values = {"lip": givens["l"], "groove": givens["t"] - givens["l"] - givens["k"], "fit": 0}
    return LOCK.build(stock_of(INCH // 2, givens["t"]), values).by_name["side"].cuts[0].low[0]


def _his(givens: Givens) -> int:
    return givens["T"] - givens["l"] - givens["k"]


def _list_givens(draw: Draw) -> list[Given]:
    sold, mean, lip = sheet_as_sold(draw), sheet_as_measured(draw), _lip_read(draw)
    tongue = draw.reading("k", "tongue, measured", inch=("0.180 in", "0.204 in", "0.002 in"),
                          mm=("4.5 mm", "5.2 mm", "0.1 mm"))
    listed = draw.derived_reading("L", "dado from the end, in Pim's list", sold.value - lip.value - tongue.value)
    return [sold, mean, lip, tongue, listed]


PIMS_DADO = Exercise(
    id="j06-pims-dado", title="Pim's dado", rung="find the slip",
    question=(
        "Pim's front was sold as {T} and measures {t}; its lip is {l} and its tongue {k}. In his list the dado begins "
        "{L} from the end of the side. A trial corner does not close. How far from the end should it begin, so that "
        "the side stands on the lip and the tongue in the dado?"
    ),
    givens=_list_givens,
    right=_from_end,
    misconceptions=(
        Misconception("as-listed", _his, "That is what stands in Pim's list.", "Which thickness did he begin with?"),
        Misconception("lip", lambda g: g["l"], "That is the thickness of the lip.",
                      "What of the front lies between its lip and its tongue?"),
        Misconception("tongue", lambda g: g["k"], "That is the thickness of the tongue.",
                      "The tongue goes into the dado; what stands before it?"),
        Misconception("with-tongue", lambda g: g["t"] - g["l"], "That is slot and tongue together.",
                      "The dado begins where the tongue begins."),
    ),
    effect=too_much_or_too_little(
        "The dado would begin {by} too far in: the end of the side strikes the lip before the tongue finds its dado.",
        "The dado would begin {by} too near the end: the side does not reach the lip.",
    ),
    fits="Pim took the name of the sheet. The dado begins as far from the end as the slot is wide.",
    hints=("Between lip and tongue lies the slot, and the end of the side fills it.",
           "How wide is the slot? The front as measured, less lip and tongue."),
    working=lambda g, say: (
        f"slot = {g.texts['t']} - {g.texts['l']} - {g.texts['k']} = {say.length(_from_end(g))}",
        f"Pim's {g.texts['L']} = {g.texts['T']} - {g.texts['l']} - {g.texts['k']}",
    ),
    tolerance=CALIPER, caliper=True,
)

# A whole set -------------------------------------------------------------------------------------


def _box(givens: Givens) -> Cabinet:
    lock = JointChoice("drawer lock", tongue=givens["k"], lip=givens["l"])
    return joined_box(givens, lock, JointChoice("rabbet", givens["r"]), givens["F"])


SIDES = sides_asked(
    (
        Misconception("side-whole", lambda g: g["L"], "That is the whole depth of the box.",
                      "What of the front stands before the end of the side?"),
        Misconception("side-butted", lambda g: g["L"] - g["F"], "That ends the side at the inside of the front.",
                      "Its end goes on into the slot of the front."),
        Misconception("side-two-lips", lambda g: g["L"] - 2 * g["l"], "That takes a lip off at both ends.",
                      "How is the side joined at the rear?"),
    ),
    lambda g, say: (f"side = {g.texts['L']} - {g.texts['l']} = {say.length(g['L'] - g['l'])}",),
)

FRONT_LONG = Asked(
    "front", "Box front", "length", FRONT_ALONE, "x",
    (
        Misconception("front-between", lambda g: g["B"] - 2 * g["s"], "That is the room between the sides.",
                      "The lips of the front cover the sides."),
        Misconception("front-like-back", lambda g: g["B"] - 2 * g["s"] + 2 * g["r"],
                      "That joins the front as the back.", "Which board has lips here?"),
        Misconception("front-one-side", lambda g: g["B"] - g["s"], "That takes one side off.",
                      "How many sides do the lips cover?"),
    ),
    lambda g, say: (f"front = the whole width = {g.texts['B']}",),
)

BACK = Asked(
    "back", "Box back", "length", BACK_ALONE, "x",
    (
        Misconception("back-between", lambda g: g["B"] - 2 * g["s"],
                      "That is the room between the sides, with no rabbet counted.",
                      "The back goes on into the sides."),
        Misconception("back-one-rabbet", lambda g: g["B"] - 2 * g["s"] + g["r"], "That counts one rabbet.",
                      "How many ends has the back?"),
        Misconception("back-like-front", lambda g: g["B"], "That gives the back the length of the front.",
                      "The back has no lips: it ends inside the sides."),
    ),
    lambda g, say: (
        f"back = {g.texts['B']} - 2 x {g.texts['s']} + 2 x {g.texts['r']} = "
        f"{say.length(g['B'] - 2 * g['s'] + 2 * g['r'])}",
    ),
)

BOX_SET = SetExercise(
    id="j06-box-set", title="A drawer box whose front stays on",
    question=(
        "The box for the chain tools is {B} wide and {L} deep outside. Its front is {F} thick, with lips of {l} and "
        "tongues of {k} in the sides. The sides measure {s}; at the rear they run right through, and the back lies in "
        "rabbets {r} deep. The bottom lies in grooves {q} deep, and is made {e} smaller each way than they would let "
        "it be. What you give is put together dry."
    ),
    givens=lambda draw: [
        *box_givens(draw),
        draw.pick("F", "box front, thickness", inch=("11/16 in", "23/32 in"), mm=("17.5 mm", "18 mm")), _lip(draw),
        draw.pick("k", "tongues of the front, thickness", inch=("3/16 in", "7/32 in"), mm=("5 mm", "6 mm")),
        corner_rabbet(draw),
    ],
    case=_box, asked=(FRONT_LONG, SIDES, BACK, BOTTOM_WIDTH), view=SEEN,
    fits="The front cannot be pulled off its sides, and the box is as deep as its slides.",
    hints=(
        "The front has lips: it is as long as the box is wide, and the sides are one lip shorter than the box is deep.",
        "The back ends inside the sides: two sides of {s} off the width, two rabbets of {r} on.",
        "The bottom: two sides of {s} off the width, two grooves of {q} on, {e} off.",
    ),
)

EXERCISES = (SIDE, TONGUE, FRONT, PIMS_DADO)
SETS = (BOX_SET,)
