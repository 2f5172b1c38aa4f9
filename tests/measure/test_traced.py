"""Numbers that carry their working: they count as plain ones do, and the working adds up to the number."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from shoplib.measure import largest_fitting, mean, narrowest, share, thickest, to_step
from shoplib.measure.traced import Choice, Leaf, Named, Sum, Traced, leaf, named, sum_of

LENGTHS = st.lists(st.integers(1, 10**9), min_size=3, max_size=6)


def _worked(numbers: list[int]) -> list[int]:
    """A little of everything that the solver does with lengths."""
    a, b, c, *_ = numbers
    part, rest = share(sum(numbers), 3, 7)
    return [
        a + b - c, 2 * a - b * 3, -c, abs(a - b), 0 + a, a - 0, c - c, mean(numbers), narrowest(numbers),
        thickest(numbers), part, rest, part * 3 + rest, to_step(a + b, 16, "down"), to_step(c, 16, "up"),
        to_step(c, 16), largest_fitting(numbers, thickest([a, b])), named(a + b, "both") - b,
    ]  # fmt: skip


def again(value: Sum) -> int:
    """The number reckoned anew from the leaves of its working."""
    return value.bare + sum(times * _atom(atom) for atom, times in value.terms)


def _atom(atom) -> int:
    match atom:
        case Leaf():
            return atom.value
        case Named():
            return again(atom.of)
        case Choice("share"):
            return again(atom.among[0]) // (atom.parts * atom.steps) * atom.steps
        case Choice("mean"):
            return atom.value
        case Choice("narrowest"):
            return min(map(again, atom.among))
        case Choice("thickest"):
            return max(map(again, atom.among))
        case Choice("largest fitting"):
            limit, *rest = map(again, atom.among)
            return max(value for value in (rest or [limit]) if value <= limit)
        case Choice("down"):
            return again(atom.among[0]) // atom.steps * atom.steps
        case Choice("up"):
            return -(-again(atom.among[0]) // atom.steps) * atom.steps
        case Choice("nearest"):
            return (2 * again(atom.among[0]) + atom.steps) // (2 * atom.steps) * atom.steps
    raise AssertionError(atom)


@given(LENGTHS)
def test_traced_numbers_count_as_plain_ones(numbers):
    traced = [leaf(number, f"part {i}") for i, number in enumerate(numbers)]
    assert _worked(traced) == _worked(numbers)
    assert [hash(value) for value in _worked(traced)] == [hash(value) for value in _worked(numbers)]


@given(LENGTHS)
def test_the_working_of_a_number_gives_the_number(numbers):
    for value in _worked([leaf(number, f"part {i}") for i, number in enumerate(numbers)]):
        assert again(sum_of(value)) == value


def test_what_cancels_is_gone_and_equal_things_are_gathered():
    width, readings = leaf(1000, "width"), [leaf(90, "first"), leaf(93, "second")]
    inside = width - mean(readings) - mean(readings)
    assert [(getattr(atom, "how", "") or atom.name, times) for atom, times in inside.sum.terms] == [
        ("width", 1), ("mean", -2),
    ]  # fmt: skip
    assert type(inside - width + 2 * mean(readings)) is int


def test_a_bare_number_shows_in_the_working():
    assert (leaf(10, "width") + 3).sum.bare == 3


@pytest.mark.parametrize("lose", [lambda x: x // 2, lambda x: x % 7, lambda x: x / 2, lambda x: int(x)])
def test_what_is_not_a_sum_or_a_choice_loses_its_working(lose):
    assert not isinstance(lose(leaf(10, "width")), Traced)
