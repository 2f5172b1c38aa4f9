"""Each formula of the model beside arithmetic by hand, in fractions of an inch or of a millimetre.

The formulas follow from the shape of the joints; each stands in the name or first line of its test.
Thicknesses are ugly on purpose: what a caliper reads.
"""

from dataclasses import replace
from fractions import Fraction

import pytest

from shoplib.measure import MM as MM_TICKS
from shoplib.model.project import Back, Base, Bay, Opening, Pulls, Shelves, Size, Space
from tests.model.plain_case import IN, MM, Solved, a_case, drawer_case, each, exact, usual_size

HALF = Fraction(1, 2)
BOTH = pytest.mark.parametrize("unit", [IN, MM], ids=["in", "mm"])


CASES = each(
    "w, t, d",
    (IN, "34 1/2", "0.703", "1/4"),
    (IN, "23 5/8", "0.719", "11/32"),
    (IN, "59 63/64", "3/4", "3/8"),
    (MM, "876.5", "17.86", "6"),
    (MM, "601", "18.3", "8.5"),
)


# --- carcass


@CASES
@pytest.mark.parametrize("parts_of_step", [0, 1])
def test_bottom_between_sides_in_dadoes_is_w_less_2t_plus_2d_less_the_end_gaps(unit, w, t, d, parts_of_step):
    e = unit.step * parts_of_step
    base = Base("toe space", unit.of(4 if unit is IN else 100))
    case = a_case(unit, size=(w, w, w), t=[t], base=base, carcass={"corner": unit.joint("dado", d, end_gap=e)})
    solved = Solved(case, unit)
    for name in ("bottom", "top"):
        assert solved.size(name, 0) == w - 2 * t + 2 * d - 2 * e
    assert solved.high("right side", 0) - solved.low("left side", 0) == w
    assert solved.cut("left side", "bottom").kind == "dado"


@CASES
@pytest.mark.parametrize("n", [2, 3, 4, 5])
def test_n_equal_bays_are_w_less_n_plus_1_t_by_n(unit, w, t, d, n):
    """Exact where nothing is rounded; for the shop whole steps, the rest in the middle; always filled.

    Where a whole step is nearer than 0.05 mm, which no shop sets, all are alike but for a few ticks.
    """
    case = a_case(unit, size=(w, w, w), t=[t], bays=(Bay(),) * n, carcass={"corner": unit.joint("rabbet", d)})
    ideal = (w - (n + 1) * t) / n
    for width in Solved(replace(case, rounding=1), unit).bays():
        assert abs(width - ideal) < Fraction(n, unit.ticks)
    widths = Solved(case, unit).bays()
    assert sum(widths) + (n + 1) * t == w
    nearest = -unit.down(-ideal + unit.step / 2)
    if abs(ideal - nearest) < Fraction(4_000, unit.ticks):
        assert all(abs(width - ideal) < Fraction(4 * n, unit.ticks) for width in widths)
        return
    middle = {(n - 1) // 2, n // 2}
    assert [width for k, width in enumerate(widths) if k not in middle] == [unit.down(ideal)] * (n - len(middle))
    assert all(unit.down(ideal) <= width < unit.down(ideal) + n * unit.step for width in widths)


@CASES
def test_back_in_a_rabbet_of_width_b_is_w_less_2t_plus_2b(unit, w, t, d):
    back = Back("rabbet", "thin sheet", unit.of(d))
    h = w + 3
    solved = Solved(a_case(unit, size=(w, h, w), t=[t], carcass={"back": back}), unit)
    assert (solved.size("back", 0), solved.size("back", 2)) == (w - 2 * t + 2 * d, h - 2 * t + 2 * d)
    assert solved.high("back", 1) == solved.high("left side", 1)
    e = unit.step
    floating = replace(back, end_gap=unit.of(e))
    solved = Solved(a_case(unit, size=(w, h, w), t=[t], carcass={"back": floating}), unit)
    assert solved.size("back", 0) == w - 2 * t + 2 * (d - e)


@each(
    "thin, mid, thick, fit",
    (IN, "0.699", "0.703", "0.707", "0.004"),
    (IN, "0.711", "0.719", "0.727", "0"),
    (MM, "17.7", "17.86", "18.02", "0.1"),
)
def test_a_cut_takes_the_thickest_reading_plus_the_fit_and_sums_take_the_mean(unit, thin, mid, thick, fit):
    w = 34 if unit is IN else 860
    depth = "1/4" if unit is IN else "6"
    choice = unit.joint("dado", depth, fit)
    shelf_at = 10 if unit is IN else 250
    backs = ["0.199", "0.204", "0.209"] if unit is IN else ["5.7", "5.9", "6.1"]
    case = a_case(
        unit,
        size=(w, w, w),
        t=[thin, mid, thick],
        thin=backs,
        bays=(Bay("shelves", shelves=Shelves(at=(unit.of(shelf_at),))), Bay()),
        carcass={
            "corner": choice,
            "divider": choice,
            "shelf": choice,
            "back": Back("groove", "thin sheet", unit.of(depth), fit=unit.of(fit)),
        },
    )
    solved = Solved(case, unit)
    assert solved.cut_size("bottom", "divider 1", 0) == thick + fit
    assert solved.cut_size("left side", "bay 1 shelf 1", 2) == thick + fit
    assert solved.cut_size("left side", "bottom", 2) == thick + fit  # a rabbet, from the edge to its wall
    assert solved.cut_size("left side", "back", 1) == exact(backs[-1]) + fit
    assert solved.size("bottom", 0) == w - 2 * mid + 2 * exact(depth)


@each("t, thick, p", (IN, "0.703", "0.709", "9 5/16"), (IN, "0.719", "0.719", "14"), (MM, "17.86", "18.1", "333.5"))
def test_a_dado_has_its_near_wall_at_p_from_the_lower_end_of_both_sides(unit, t, thick, p):
    """Not p + t, nor p + t / 2, nor from the other end; the sides are a mirrored pair."""
    case = a_case(
        unit,
        t=[2 * t - thick, thick],
        bays=(Bay("shelves", shelves=Shelves(at=(unit.of(p),))),),
        carcass={"shelf": unit.joint("dado", "1/4" if unit is IN else "6")},
    )
    solved = Solved(case, unit)
    for side in ("left side", "right side"):
        board, cut = solved.board(side), solved.cut(side, "bay 1 shelf 1")
        assert board.placement.axes[0] == "+z"
        assert unit.back(cut.low[0]) == p
        assert unit.back(cut.high[0]) == p + thick
        assert cut.low[2] == 0  # in the inside face
    assert solved.low("bay 1 shelf 1", 2) == p


@each("t, d", (IN, "0.703", "1/4"), (IN, "0.719", "7/64"), (MM, "17.86", "6"), (MM, "18.3", "5.5"))
def test_wood_left_is_t_less_d_and_t_less_2d_between_dadoes_back_to_back(unit, t, d):
    p = 10 if unit is IN else 250
    bay = Bay("shelves", shelves=Shelves(at=(unit.of(p),)))
    joint = unit.joint("dado", d)
    w = 40 if unit is IN else 1000
    carcass = {"shelf": joint, "divider": unit.joint("butt")}
    solved = Solved(a_case(unit, size=usual_size(unit, width=w), t=[t], bays=(bay, bay), carcass=carcass), unit)

    def left(name):
        inside = unit.of(p + t / 2)
        spans = [box.size[0] for box in solved.board(name).pieces if box.low[2] < inside < box.high[2]]
        return [unit.back(span) for span in spans]

    assert left("left side") == [t - d]
    assert left("divider 1") == [t - 2 * d]


@each("inside, t", (IN, "20 7/8", "0.703"), (MM, "512.5", "17.86"))
def test_outside_from_inside(unit, inside, t):
    """Width and height take 2t, the height its base too, the depth the back (behind a groove, the wood there too)."""
    base = exact("3 1/2" if unit is IN else "90")
    thin = exact("0.204" if unit is IN else "5.9")
    size = Size("inside", *map(unit.of, (inside, inside + 1, inside + 2)))
    for kind, behind in (("none", 0), ("rabbet", thin), ("applied", thin), ("groove", thin + HALF)):
        back = Back(kind, "" if kind == "none" else "thin sheet")
        back = replace(back, setback=unit.of(HALF)) if kind == "groove" else back
        case = a_case(unit, size=size, t=[t], base=Base("plinth", unit.of(base)), carcass={"back": back})
        solved = Solved(case, unit)
        assert solved.outside() == (inside + 2 * t, inside + 1 + 2 * t + base, inside + 2 + behind), kind


@each("least, clear, t", (IN, "33 15/16", "0.703", "0.703"), (MM, "861", "10.3", "17.86"))
def test_the_smallest_reading_of_a_space_governs_down_to_a_whole_step(unit, least, clear, t):
    def read(smallest):
        return tuple(unit.of(smallest + more) for more in (HALF, 0, 1))

    casters, projection = (4, 1) if unit is IN else (100, 30)
    f = exact("0.721" if unit is IN else "18.3")
    space = Space(read(least), read(least + 2), read(least + 4), *[unit.of(clear)] * 3)
    case = drawer_case(
        unit,
        fronts="overlay",
        size=Size("space"),
        t=[t],
        space=space,
        base=Base("casters", unit.of(casters)),
        pulls=Pulls(projection=unit.of(projection)),
    )
    solved = Solved(case, unit)
    width, height, depth = (unit.down(least + more - clear) for more in (0, 2, 4))
    assert [unit.back(side) for side in solved.cabinet.envelope.size] == [width, depth, height]
    assert solved.outside() == (width, height - casters, depth - projection)
    assert solved.size("left side", 1) == depth - projection - f


# --- drawers


@each(
    "w, t, wide",
    (IN, "16 27/64", "0.703", "15 3/64"),
    (IN, "24", "0.719", "22 33/64"),
    (MM, "600", "17.86", "563.9"),
    (MM, "437.5", "18.3", "401"),
)
def test_box_width_is_the_narrowest_opening_less_2c_down_to_a_whole_step(unit, w, t, wide):
    c = exact("1/2") if unit is IN else exact("12.7")  # side-mount slides, data/slides.toml
    case = drawer_case(unit, size=usual_size(unit, width=w), t=[t])
    o = w - 2 * t
    width = Solved(case, unit).box_width("bay 1 drawer 1")
    assert width == unit.down(o - 2 * c)
    assert 0 <= o - width - 2 * c < unit.step
    for ends in ((wide, wide - unit.step), (wide - unit.step, wide)):
        opening = Opening(*map(unit.of, ends))
        built = replace(case, measured=replace(case.measured, openings={"bay 1 drawer 1": opening}))
        assert Solved(built, unit).box_width("bay 1 drawer 1") == unit.down(wide - unit.step - 2 * c)


@each("w, t, s", (IN, "24", "0.703", "0.472"), (MM, "600", "17.86", "11.86"))
def test_an_undermount_slide_holds_the_inside_so_the_two_sides_come_on_top(unit, w, t, s):
    c = 21 if unit is MM else 21 / exact("25.4")  # example row of data/slides.toml
    rule = {"slide": "undermount"}
    case = drawer_case(unit, size=usual_size(unit, width=w), t=[t], s=[s], rule=rule)
    width = Solved(case, unit).box_width("bay 1 drawer 1")
    assert 0 <= (w - 2 * t - 2 * c + 2 * s) - width < unit.step + Fraction(2, unit.ticks)


@each(
    "s, r, e",
    (IN, "0.472", "1/4", "0"),
    (IN, "0.472", "0.236", "0"),
    (IN, "0.5", "3/16", "1/64"),
    (MM, "11.86", "5.5", "0"),
    (MM, "12.2", "6.1", "0.5"),
)
def test_box_front_between_rabbeted_sides_is_b_less_2s_plus_2r(unit, s, r, e):
    case = drawer_case(unit, s=[s], rule={"corner": unit.joint("rabbet", r, end_gap=e)})
    solved = Solved(case, unit)
    b = solved.box_width("bay 1 drawer 1")
    for part in ("box front", "box back"):
        assert solved.size(f"bay 1 drawer 1 {part}", 0) == b - 2 * s + 2 * (r - e)


@each(
    "s, q, e",
    (IN, "0.472", "7/32", "1/16"),
    (IN, "0.5", "1/4", "0"),
    (MM, "11.86", "5.5", "2"),
    (MM, "12", "6", "1"),
)
def test_a_bottom_in_grooves_is_b_less_2s_plus_2q_less_e(unit, s, q, e):
    grooves = {"bottom_depth": unit.of(q), "bottom_slack": unit.of(e)}
    solved = Solved(drawer_case(unit, s=[s], rule=grooves), unit)
    name = "bay 1 drawer 1 box bottom"
    b, deep = solved.box_width("bay 1 drawer 1"), solved.size("bay 1 drawer 1 left box side", 1)
    assert solved.size(name, 0) == b - 2 * s + 2 * q - e
    assert solved.size(name, 1) == deep - 2 * s + 2 * q - e
    solved = Solved(drawer_case(unit, s=[s], rule=grooves | {"bottom": "under back"}), unit)
    assert solved.size(name, 0) == b - 2 * s + 2 * q - e
    assert solved.size(name, 1) == deep - s + q - e / 2  # held in front alone; out under the back behind


# Lengths, rear room and setback as they stand in data/slides.toml: common practice, no source.
LENGTHS = {IN: range(10, 29, 2), MM: range(250, 701, 50)}
REAR_ROOM = {IN: exact("1/4"), MM: exact(6)}
SETBACK = {IN: exact("1/16"), MM: exact(2)}


@BOTH
@pytest.mark.parametrize("fronts", ["inset", "overlay", "none"])
def test_slide_length_is_the_largest_that_fits_the_inside_depth(unit, fronts):
    """Inside depth less setback and rear room, less the front where it is inset; one step short gives the next."""
    f = exact("0.721" if unit is IN else "18.3")
    thin = exact("0.204" if unit is IN else "5.9")
    wanted = 16 if unit is IN else 400
    back = Back("rabbet", "thin sheet", unit.of("1/4" if unit is IN else 6))
    for short in (0, unit.step, -unit.step, -1):
        depth = wanted + SETBACK[unit] + REAR_ROOM[unit] + (0 if fronts == "none" else f) + thin - short
        case = drawer_case(unit, fronts=fronts, size=usual_size(unit, depth=depth), carcass={"back": back})
        solved = Solved(case, unit)
        inside = depth - thin - (f if fronts != "none" else 0) - SETBACK[unit] - REAR_ROOM[unit]
        expected = max(length for length in LENGTHS[unit] if length <= inside)
        assert expected == (wanted if short <= 0 else LENGTHS[unit][LENGTHS[unit].index(wanted) - 1])
        assert solved.size("bay 1 drawer 1 left box side", 1) == expected
        assert {unit.back(h.box.size[1]) for h in solved.cabinet.hardware if h.what == "slide"} == {expected}
        (end,) = {unit.back(h.box.high[1]) for h in solved.cabinet.hardware if h.what == "slide"}
        free = solved.low("back", 1) - end
        assert free >= REAR_ROOM[unit] and (short != 0 or free == REAR_ROOM[unit])


def test_units_of_these_tests_are_those_of_the_model():
    assert MM.ticks == MM_TICKS and IN.ticks == MM_TICKS * exact("25.4")
