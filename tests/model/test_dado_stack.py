"""The stack that is proposed is the one that trying every set of cutters and shims finds."""

from fractions import Fraction
from itertools import chain, combinations, pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shoplib.measure import INCH, MM, MM_STYLE, read_length
from shoplib.measure.traced import Traced, leaf
from shoplib.model.dado_stack import NEAR, CannotStack, SawLimits, nearest_stack, stacks, target_width
from shoplib.tables.dado_sets import DadoSet, dado_sets

ANY_SAW = SawLimits(10**9, 10**9)
NARROW = DadoSet("narrow", "in", 8 * INCH, INCH // 8, (INCH // 8,), ())


def every_stack(owned):
    """(width, shims, chippers) of each way to put the owned pieces on the arbor; knows nothing of the model."""

    def subsets(pieces, most):
        return chain.from_iterable(combinations(pieces, count) for count in range(most + 1))

    return [
        (owned.outer + owned.outer + sum(chippers) + sum(shims), len(shims), len(chippers))
        for chippers in subsets(owned.chippers, len(owned.chippers))
        for shims in subsets(owned.shims, 2)
    ]


pieces = st.one_of(
    st.sampled_from([INCH // 8, INCH * 3 // 32, INCH // 16, 3 * MM, 2 * MM, MM]), st.integers(1, 4 * MM)
)
slips = st.one_of(
    st.sampled_from([INCH * n // 1000 for n in (4, 5, 10, 15, 20, 31)] + [MM // 10, MM // 5]), st.integers(1, MM)
)
sets = st.builds(
    DadoSet,
    name=st.just("a set"),
    unit=st.sampled_from(["in", "mm"]),
    diameter=st.just(8 * INCH),
    outer=pieces,
    chippers=st.lists(pieces, max_size=6).map(tuple),
    shims=st.lists(slips, max_size=6).map(tuple),
)


@given(owned=sets, data=st.data())
def test_it_equals_a_full_enumeration(owned, data):
    """Targets and limits stand near a width that the set makes, or anywhere."""
    made, off = st.sampled_from(every_stack(owned)), st.integers(-2 * NEAR, 2 * NEAR) | st.just(0)
    near = st.builds(lambda way, by: way[0] + by, made, off).filter(lambda length: length > 0)
    anywhere = st.integers(MM, 30 * MM)
    target, widest = data.draw(near | anywhere), data.draw(near | anywhere | st.just(10**9))
    saw = SawLimits(widest, 8 * INCH)
    allowed = [way for way in every_stack(owned) if way[0] <= widest]
    reach = [width for width, _, _ in allowed]
    if not reach or not min(reach) - NEAR <= target <= min(widest, max(reach)) + NEAR:
        with pytest.raises(CannotStack):
            nearest_stack(target, owned, saw)
        return
    choice = nearest_stack(target, owned, saw)
    order = sorted(allowed, key=lambda way: (abs(way[0] - target), -way[0], *way[1:]))
    best = choice.best
    assert (best.width, len(best.shims), len(best.chippers)) == order[0]
    assert choice.error == order[0][0] - target
    others = [way for way in order if way[0] != order[0][0]]
    second = choice.next_best
    assert (second and (second.width, len(second.shims), len(second.chippers))) == (others[0] if others else None)
    assert choice.next_error == (others[0][0] - target if others else None)


@given(owned=sets)
def test_each_width_is_made_of_pieces_that_are_owned_and_no_width_is_missing(owned):
    made = stacks(owned)
    assert set(made) == {width for width, _, _ in every_stack(owned)}
    for width, stack in made.items():
        assert width == stack.width == 2 * stack.outer + sum(stack.chippers) + sum(stack.shims)
        assert stack.outer == owned.outer
        for used, have in ((stack.chippers, owned.chippers), (stack.shims, owned.shims)):
            assert all(used.count(piece) <= have.count(piece) for piece in used)
        fewest = min(way[1:] for way in every_stack(owned) if way[0] == width)
        assert (len(stack.shims), len(stack.chippers)) == fewest and fewest[0] <= 2


def cutters(shims=()):
    """Outers that cut 1/4 in together (US Navy course 14043, read), chippers 4 x 1/8, 3/32, 1/16 (common practice)."""
    eighth = INCH // 8
    return DadoSet("worked", "in", 8 * INCH, eighth, (eighth,) * 4 + (3 * INCH // 32, INCH // 16), shims)


def test_the_worked_set_makes_twenty_widths_from_a_quarter_to_29_32():
    """Counted by hand: 20 widths from 1/4 to 29/32 in, without shims."""
    widths = sorted(Fraction(width, INCH) for width in stacks(cutters()))
    assert len(widths) == 20
    assert (widths[0], widths[-1]) == (Fraction(1, 4), Fraction(29, 32))


def test_the_worked_sheet_of_18_mm_leaves_a_thousandth_and_a_half():
    """Worked by hand: 18 mm is .709 in; 1/4 + 3/8 + 1/16 = .6875 asks for shims of .0215; .020 leaves .0015."""
    thou = INCH // 1000
    target = 709 * thou
    bare = stacks(cutters())[INCH * 11 // 16]
    assert Fraction(bare.width, INCH) == Fraction("0.6875")
    assert (sum(bare.chippers), bare.shims) == (3 * INCH // 8 + INCH // 16, ())
    assert Fraction(target - bare.width, INCH) == Fraction("0.0215")
    shimmed = nearest_stack(target, cutters((20 * thou,)), ANY_SAW)
    assert shimmed.best.shims == (20 * thou,)
    assert Fraction(-shimmed.error, INCH) == Fraction("0.0015")


def test_the_sets_of_the_table_reach_an_eighteen_millimetre_sheet():
    """Both the inch and the millimetre set come within the press and tap fits, 0.002 in, of 18 mm."""
    for owned in dado_sets().values():
        assert abs(nearest_stack(18 * MM, owned, ANY_SAW).error) <= INCH // 500


def test_of_two_as_near_the_wider_is_taken_for_what_is_too_thick_does_not_enter():
    """Common practice, no source: a cut that is a hair wide is glued, and one that is a hair narrow is cut again."""
    owned = DadoSet("two", "mm", 100, outer=100, chippers=(10,), shims=())
    choice = nearest_stack(205, owned, ANY_SAW)
    assert (choice.best.width, choice.next_best.width) == (210, 200)
    assert nearest_stack(204, owned, ANY_SAW).best.width == 200
    assert nearest_stack(206, owned, ANY_SAW).best.width == 210


def test_a_panel_of_12_mm_gets_the_wider_of_two_stacks_that_miss_alike():
    """12 mm and 0.05 mm more: the set of the table makes 12 and 12.1 mm, each 0.05 mm off (worked by hand)."""
    choice = nearest_stack(12 * MM + MM // 20, dado_sets()["200 mm set, millimetre sizes"], ANY_SAW)
    assert (choice.best.width, choice.next_best.width) == (12 * MM + MM // 10, 12 * MM)


@pytest.mark.parametrize("owned", dado_sets().values(), ids=lambda owned: owned.unit)
def test_wherever_two_stacks_of_the_table_miss_alike_the_wider_is_first(owned):
    """Every width that the set makes, by trying all arrangements, and every target half way between two of them."""
    widths = sorted({width for width, _, _ in every_stack(owned)})
    halves = [(low + high) // 2 for low, high in pairwise(widths) if (low + high) % 2 == 0]
    assert len(halves) > 100
    for (low, high), target in zip([(a, b) for a, b in pairwise(widths) if (a + b) % 2 == 0], halves, strict=True):
        choice = nearest_stack(target, owned, ANY_SAW)
        assert (choice.best.width, choice.next_best.width) == (high, low)


def test_of_stacks_alike_the_one_with_fewer_chippers_is_taken():
    owned = DadoSet("alike", "mm", 100, outer=100, chippers=(5, 7, 10), shims=(1, 3))
    best = nearest_stack(213, owned, ANY_SAW).best
    assert (best.chippers, best.shims) == ((10,), (3,))


@pytest.mark.parametrize(("end", "beyond"), [(INCH // 4, -1), (INCH * 3 // 8, 1)])
def test_two_thousandths_beyond_either_end_are_no_reason_to_refuse(end, beyond):
    assert nearest_stack(end + beyond * NEAR, NARROW, ANY_SAW).best.width == end
    with pytest.raises(CannotStack):
        nearest_stack(end + beyond * (NEAR + 1), NARROW, ANY_SAW)


def test_never_three_shims():
    owned = DadoSet("shims", "mm", 100, outer=100_000, shims=(10_000,) * 3)
    assert nearest_stack(220_000 + NEAR, owned, ANY_SAW).best.width == 220_000
    with pytest.raises(CannotStack):
        nearest_stack(230_000, owned, ANY_SAW)


SAW = SawLimits(read_length("13/16 in"), read_length("8 in"))


@pytest.mark.parametrize(
    ("target", "owned", "saw", "sentence"),
    [
        ("7/8 in", cutters(), SAW, "the maker of this saw allows a stack of 13/16 in, and this cut is 7/8 in wide"),
        ("1/2 in", NARROW, SAW, "the widest stack that this set makes is 3/8 in, and this cut is 1/2 in wide"),
        ("1/8 in", cutters(), SAW, "the narrowest stack of this set is 1/4 in, its two outer cutters"),
        ("1/8 in", cutters(), SawLimits(INCH // 8, 8 * INCH), "the narrowest stack of this set is 1/4 in"),
        ("3/4 in", cutters(), SawLimits(0, 0), "the maker of this saw allows no dado set, and this cut is 3/4 in wide"),
        ("3/4 in", cutters(), SawLimits(INCH, 6 * INCH), "a dado set of 6 in across, and this one is 8 in"),
    ],
)
def test_what_may_not_or_cannot_be_cut_is_refused_in_one_sentence(target, owned, saw, sentence):
    with pytest.raises(CannotStack) as refused:
        nearest_stack(read_length(target), owned, saw)
    text = str(refused.value)
    assert sentence in text
    assert text.endswith(".") and ". " not in text


def test_a_refusal_speaks_in_millimetres_too():
    with pytest.raises(CannotStack, match=r"allows a stack of 20 mm, and this cut is 25 mm wide"):
        nearest_stack(25 * MM, cutters(), SawLimits(20 * MM, 210 * MM), MM_STYLE)


def test_the_target_is_the_thickest_reading_and_the_fit_and_says_so():
    assert target_width([18 * MM, 18 * MM + 900, 18 * MM + 100], 80) == 18 * MM + 980
    traced = target_width([leaf(700, "one corner"), leaf(706, "the other corner")], leaf(2, "fit"))
    assert (int(traced), type(traced), traced.sum.terms[0][0].name) == (708, Traced, "width of the cut")
    with pytest.raises(ValueError, match="no reading"):
        target_width([], 80)


@pytest.mark.parametrize(("piece", "error"), [(0, ValueError), (-1, ValueError), (0.125, TypeError)])
def test_a_piece_without_thickness_is_no_piece(piece, error):
    with pytest.raises(error):
        DadoSet("odd", "in", 100, 100, chippers=(piece,))
