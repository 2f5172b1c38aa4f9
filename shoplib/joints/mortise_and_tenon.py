"""The mortise and tenon: a rail's tenon in a stile or leg, with its shoulders, haunch, and a second rail to meet."""

from shoplib.joints.bench_pair import CannotCut, Clearance, JointKind, Pair, Setting, Stock, Values, must_leave
from shoplib.joints.draft import Draft, middle
from shoplib.joints.in_case import NO_SOURCE, drawn_apart, eighth, one_step
from shoplib.joints.in_frame import TIGHT_FIT, rail, stile
from shoplib.measure import INCH, MM, narrowest, share
from shoplib.model.box import Box
from shoplib.model.prism import beside
from shoplib.model.solved import Joint

THICK = Setting(
    "tenon", "thickness of the tenon", eighth, lambda stock: stock.enters.thinnest - stock.style.step,
    lambda stock: stock.part(stock.enters.thickness, 3), one_step,
    "a third: Fairham, Woodwork Joints (1920) pp. 82, 85; Noyes, Handwork in Wood (1910) p. 164 (read); up to 2/3 "
    "where the mortised piece is thicker: 1/2 in 1, Zerbe, Carpentry for Boys (1914) p. 45 (read)",
)
LONG = Setting(
    "length", "length of the tenon", eighth, lambda stock: stock.across,
    lambda stock: stock.part(stock.across, 8, 7) - stock.natural(INCH // 16, 3 * MM // 2), one_step,
    "the mortise 7/8 of the stile: Fairham p. 91 (read), and the tenon slightly less: Noyes p. 160 (read)",
)
TOP = Setting(
    "top shoulder", "shoulder above the tenon", lambda stock: 0, lambda stock: share(stock.width, 2, 1)[0],
    lambda stock: stock.part(stock.width, 4), one_step, "a quarter of the rail: Noyes Fig. 291, scaled from the figure",
)
BOTTOM = Setting(
    "bottom shoulder", "shoulder below the tenon", lambda stock: 0, lambda stock: share(stock.width, 3, 1)[0],
    lambda stock: 0, one_step, "none on a table's rail: Zerbe pp. 44-48 (read)",
)
HAUNCH = Setting(
    "haunch", "length of the haunch above the tenon", lambda stock: 0, lambda stock: share(stock.across, 3, 1)[0],
    lambda stock: 0, one_step, "none; as deep as the groove in a panelled frame: Fairham p. 67, Noyes (read)",
)
FRONT = Setting(
    "front shoulder", "shoulder before the tenon", lambda stock: 0,
    lambda stock: share(stock.enters.thickness, 2, 1)[0],
    lambda stock: share(stock.enters.thickness - stock.part(stock.enters.thickness, 3), 2, 1)[0], one_step,
    f"the tenon in the middle of the rail ({NO_SOURCE})",
)
SET_IN = Setting(
    "set in", "rail's face behind the stile's", lambda stock: 0, lambda stock: share(stock.receives.thickness, 2, 1)[0],
    lambda stock: 0, one_step, "flush in a frame; 1/4 in on a table leg: Zerbe pp. 44-48 (read)",
)
DEEPER = Setting(
    "end gap", "mortise deeper than the tenon", lambda stock: 0, lambda stock: stock.natural(INCH // 8, 3 * MM),
    lambda stock: stock.natural(INCH // 16, 3 * MM // 2), one_step, "slightly deeper: Noyes p. 160 (read)",
)
HORN = Setting(
    "horn", "stile left long above the rail", lambda stock: 0, lambda stock: stock.natural(3 * INCH, 75 * MM),
    lambda stock: 0, one_step, "none on a leg; a frame's stiles 1 to 3 in longer in all: Fairham p. 83 (read)",
)
RAILS = Setting(
    "rails", "rails that meet in the leg", lambda stock: 1, lambda stock: 2, lambda stock: 1, lambda stock: 1,
    "two at the corner of a table; tenons that meet are mitred: Fairham p. 80 (read)", "count",
)


def make(stock: Stock, values: Values) -> Pair:
    """A rail's tenon in the mortise of a stile; a tenon as long as the stile is wide goes through.

    With high = width - top shoulder - bottom shoulder, the rail loses length * (thickness * width - tenon * high), less
    haunch * tenon * top shoulder where it has a haunch; the stile loses (length + end gap) * (tenon + fit) * high, and
    (haunch + end gap) * (tenon + fit) * top shoulder. Where two tenons meet in a leg, each by `past`, what its back
    reaches over the line on which the other one begins, each loses past^2 / 2 * high besides, and what the gap takes;
    the square that both mortises share is lost but once.

    Raises CannotCut where walls, ends or bottom of the mortise are under 3 mm, or two rails meet in a leg that is not
    square, or more than two.
    """
    tenon, long, top, bottom, haunch, front, back, gap, horn = (
        values[name] for name in ("tenon", "length", "top shoulder", "bottom shoulder", "haunch", "front shoulder",
                                  "set in", "end gap", "horn")
    )
    across, width, thick = stock.across, stock.width, stock.enters.thickness
    near = share(values["fit"], 2, 1)[0]
    begin, stop = back + front, back + front + tenon
    walls = (begin - near, stop + values["fit"] - near)
    low, high = bottom, width - top
    if values["rails"] > 2:
        many = values["rails"]
        raise CannotCut("rails", f"{many} rails do not meet in a leg: it takes 1, or 2.", many - 2)
    must_leave(stock, "tenon", "as the tenon", tenon)
    must_leave(stock, "front shoulder", "behind the tenon in the rail's thickness", thick - front - tenon, 0)
    must_leave(stock, "front shoulder", "before the mortise", walls[0])
    must_leave(stock, "tenon", "behind the mortise", stock.receives.thinnest - walls[1])
    must_leave(stock, "top shoulder", "of the tenon between its shoulders", high - low)
    must_leave(stock, "top shoulder", "above the mortise", top + horn)
    must_leave(stock, "haunch", "of the tenon past its haunch", long - haunch)
    if not (top or bottom or front or thick - tenon):
        raise CannotCut("tenon", f"No shoulder is left: the tenon is the whole rail, {stock.say(thick)} thick.", tenon)
    if haunch and not top:
        raise CannotCut("haunch", "A haunch stands in the shoulder above the tenon, and there is none.", haunch)
    through = long >= across
    if not through:
        must_leave(stock, "length", "behind the mortise in the stile's width", across - long - gap)
    end = across - long
    floor = 0 if through else end - gap
    upright = "stile" if values["rails"] == 1 else "leg"
    enters, receives = rail(stock, end, back=back), stile(stock, -stock.receives_length, width + horn, upright)
    _shoulders(enters, end, across, (begin, stop), (low, high), haunch)
    receives.take("mortise", Box((floor, walls[0], low), (across, walls[1], high)), "rail")
    if haunch:
        receives.take("haunching", Box((across - haunch - gap, walls[0], high), (across, walls[1], width)), "rail")
    entered = Box((end, begin, low), (across, stop, high))
    stated = [
        Clearance(f"shoulders on the {upright}", "rail", upright, "-x", 0),
        Clearance("fit before the tenon", "rail", upright, "-y", near, entered),
        Clearance("fit behind the tenon", "rail", upright, "+y", values["fit"] - near, entered),
        Clearance("tenon on the lower end of the mortise", "rail", upright, "-z", 0, entered),
    ]
    drafts = [receives, enters]
    joints = [Joint("mortise and tenon", "rail", upright, "-x", across - floor, values["fit"], gap, tenon)]
    if values["rails"] == 1:
        if not through:
            stated.append(Clearance("end of the tenon and bottom of the mortise", "rail", upright, "-x", gap, entered))
    else:
        drafts.append(_second_rail(stock, values, receives, (begin, stop), walls, (low, high)))
        joints.append(Joint("mortise and tenon", "second rail", "leg", "-y", long + gap, values["fit"], gap, tenon))
        stated.append(Clearance(f"shoulders on the {upright}", "second rail", "leg", "-y", 0))
        stated.append(Clearance("tenon on the lower end of the mortise", "second rail", "leg", "-z", 0))
        if end < stop:
            _mitre(enters, 0, long, (begin, stop), gap, (low, high))
            stated.append(Clearance("mitred ends", "rail", "second rail", "-x", 2 * gap))
    pull = long + drawn_apart(stock)
    apart = {upright: (0, 0, 0), "rail": (pull, 0, 0), "second rail": (0, pull, 0)}
    half, centre = middle(low, high), middle(begin, stop)
    one = values["rails"] == 1  # of two tenons that meet, a mitre may leave nothing of the cheek but its root
    named = {
        "tenon": ("rail", (middle(end, across), begin, half) if one else (across, centre, half)),
        "mortise": (upright, (across, centre, low)),
        "shoulder": ("rail", (across, middle(back, begin), half)),
        "cheek": ("rail", (across, begin, half)),
        "root": ("rail", (across, stop, half)),
        "wall of the mortise": (upright, (across, walls[0], half)),
    }
    if not through and values["rails"] == 1:
        named["bottom"] = (upright, (floor, centre, half))
    if haunch:
        named["haunch"] = ("rail", (across - haunch, centre, middle(high, width)))
    boards = tuple(draft.board for draft in drafts)
    return Pair(
        "mortise and tenon", stock, values, boards, tuple(joints), tuple(stated),
        {board.name: apart[board.name] for board in boards}, ("z", half), named,
    )


def _shoulders(
    draft: Draft, end: int, shoulder: int, cheeks: tuple[int, int], heights: tuple[int, int], haunch: int,
    turn: bool = False,
) -> None:
    """Take away what is beside the tenon, from its end to its shoulder; `turn` where the rail runs along y."""
    (one, other), (low, high) = cheeks, heights
    box = draft.box
    a = 0 if turn else 1
    near, far, bottom, top = box.low[a], box.high[a], box.low[2], box.high[2]
    past = shoulder - haunch
    for kind, along, through, up in (
        ("cheek", (end, shoulder), (near, one), (bottom, top)),
        ("cheek", (end, shoulder), (other, far), (bottom, top)),
        ("shoulder", (end, shoulder), (one, other), (bottom, low)),
        ("shoulder", (end, past), (one, other), (high, top)),
    ):
        p, q = (through, along) if turn else (along, through)
        draft.take(kind, Box((p[0], q[0], up[0]), (p[1], q[1], up[1])))


def _second_rail(
    stock: Stock, values: Values, leg: Draft, cheeks: tuple[int, int], walls: tuple[int, int], heights: tuple[int, int]
) -> Draft:
    """The rail that enters the leg from the back, as the first does from the right: the leg is square."""
    across, gap, long, haunch = stock.across, values["end gap"], values["length"], values["haunch"]
    odd = abs(across - stock.receives.thickness)
    if odd:
        raise CannotCut("rails", f"Two rails meet in a square leg; this one is {stock.say(odd)} out of square.", odd)
    if long >= across:
        raise CannotCut("length", "Two tenons that go right through would cross; one of them must stop short by "
                        f"{stock.say(long - across + eighth(stock))}.", long - across + eighth(stock))
    end = across - long
    must_leave(stock, "set in", "between the rails at the leg's inner corner",
               across - values["set in"] - stock.enters.thickness, 0)
    must_leave(stock, "end gap", "of the tenon where the other one is mitred", values["tenon"] - gap, stock.style.step)
    must_leave(stock, "haunch", "between the haunches of the two rails", across - haunch - cheeks[1], 0)
    back, reach = values["set in"], across + stock.enters_length
    box = Box((back, end, 0), (back + stock.enters.thickness, reach, stock.width))
    other = Draft("second rail", stock.enters, ("+y", "+z", "+x"), box)
    _shoulders(other, end, across, cheeks, heights, haunch, turn=True)
    leg.take("mortise", Box((walls[0], end - gap, heights[0]), (walls[1], across, heights[1])), "second rail")
    if haunch:
        high = Box((walls[0], across - haunch - gap, heights[1]), (walls[1], across, stock.width))
        leg.take("haunching", high, "second rail")
    if end < cheeks[1]:
        _mitre(other, 1, long, cheeks, gap, heights)
    return other


def _mitre(draft: Draft, along: int, long: int, cheeks: tuple[int, int], gap: int, heights: tuple[int, int]) -> None:
    """Cut the end of a tenon back along the diagonal on which the other one meets it, and `gap` more."""
    end = draft.box.low[along]
    (one, other), shoulder = cheeks, narrowest([cheeks[1] + gap, draft.box.low[along] + long])
    blunt = ((end, one), (shoulder, one), (shoulder, other), (end, other))
    waste = beside(blunt, 1, -1, gap)
    draft.take_prism("mitre", 2, waste if along == 0 else [(q, p) for p, q in waste], *heights)


MORTISE_AND_TENON = JointKind(
    "mortise and tenon", "mortise and tenon", 2,
    (THICK, LONG, TOP, BOTTOM, HAUNCH, FRONT, SET_IN, TIGHT_FIT, DEEPER, HORN, RAILS), make,
    lambda stock, values: values["length"], frame=True,
)
"""Resists pull, racking and twist: frames, doors, tables."""
