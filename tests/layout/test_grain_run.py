"""Parts in the order of their grain: laid out as one, taken apart again, still in order and still sawable."""

from itertools import pairwise
from random import Random

import pytest

from shoplib.layout.grain_run import Run, apart, joined
from shoplib.layout.pieces import Job, Laid, Layout, LayoutError, Part, Placed, Rect, Stock
from shoplib.layout.search import layouts
from tests.layout.judged import judged

FRONTS = (Part("front 1", 400, 150), Part("front 2", 300, 150), Part("front 3", 350, 120))
BOARD = Stock("board", 2400, 190, cost=1)


def places(layout, parts):
    """For each of these parts, the sheet that it lies on and its place."""
    return {one.part: (number, one.at) for number, sheet in enumerate(layout.sheets) for one in sheet.placed
            if one.part in parts}  # fmt: skip


def test_a_row_keeps_its_order_along_one_board_with_one_kerf_between():
    job = Job((*FRONTS, Part("rail", 700, 60, 5)), (BOARD,), kerf=3)
    run = Run((2, 0, 1), name="fronts")
    *_, found = layouts(joined(job, [run]), 1)
    done = apart(job, [run], found)
    assert judged(job, done) == []
    lying = places(done, {0, 1, 2})
    assert len({sheet for sheet, _ in lying.values()}) == 1
    third, first, second = (lying[part][1] for part in run.parts)
    assert first.x == third.x + 350 + 3 and second.x == first.x + 400 + 3
    assert first.y == second.y == third.y


def test_a_stack_lies_side_by_side_across_the_grain():
    stack = (Part("top front", 500, 120), Part("low front", 500, 200))
    job = Job(stack, (Stock("sheet", 1200, 600),), kerf=4)
    run = Run((0, 1), across=True, name="bay 1")
    whole = joined(job, [run])
    assert (whole.parts[0].length, whole.parts[0].width) == (500, 324)
    done = apart(job, [run], next(layouts(whole, 1)))
    assert judged(job, done) == []
    top, low = (places(done, {0, 1})[part][1] for part in (0, 1))
    assert low.y == top.y + 124 and low.x == top.x


def test_a_run_that_was_turned_keeps_its_order():
    painted = (Part("left", 300, 100, may_turn=True), Part("right", 200, 100, may_turn=True))
    job, run = Job(painted, (Stock("sheet", 600, 600),), kerf=2), Run((0, 1), name="row")
    lying = Layout((Laid(0, (Placed(0, Rect(0, 0, 100, 502), turned=True),)),), 0, 0)
    left, right = apart(job, [run], lying).sheets[0].placed
    assert (left.at, right.at) == (Rect(0, 0, 100, 300), Rect(0, 302, 100, 200))
    assert left.turned and right.turned and judged(job, apart(job, [run], lying)) == []


def test_equal_parts_may_stand_in_several_runs_and_alone():
    job = Job((Part("front", 300, 150, 5), Part("rail", 500, 50)), (BOARD,), kerf=3)
    runs = [Run((0, 0), name="bay 1"), Run((0, 0), name="bay 2")]
    whole = joined(job, runs)
    assert [(part.name, part.count) for part in whole.parts] == [("front", 1), ("rail", 1), ("bay 1", 1), ("bay 2", 1)]
    *_, found = layouts(whole, 1)
    assert judged(job, apart(job, runs, found)) == []


def test_more_of_a_part_than_there_are_is_refused():
    with pytest.raises(LayoutError, match="2 of front 1 are to lie in the order of their grain, and there are only 1"):
        joined(Job(FRONTS, (BOARD,)), [Run((0, 0))])


@pytest.mark.parametrize("seed", range(20))
def test_random_runs_stay_sawable_and_in_order(seed):
    random = Random(seed)
    parts = tuple(
        Part(f"part {k}", random.randint(80, 500), random.randint(40, 180), random.randint(1, 3)) for k in range(6)
    )
    job = Job(parts, (BOARD, Stock("short board", 1300, 190, 2)), kerf=random.choice([0, 2, 3]))
    each = [k for k, part in enumerate(parts) for _ in range(part.count)]
    random.shuffle(each)
    runs = [Run(tuple(each[:3]), name="three"), Run(tuple(each[3:5]), name="two")]
    *_, found = layouts(joined(job, runs), 0.3)
    done = apart(job, runs, found)
    assert judged(job, done) == []
    for run in runs:
        assert any(in_order(sheet.placed[start:], run, job.kerf) for sheet in done.sheets
                   for start in range(len(sheet.placed)))  # fmt: skip


def in_order(placed, run, kerf):
    """Whether this run begins with the first of these, each part a kerf behind the one before."""
    row = placed[: len(run.parts)]
    steps = [(later.at.x - one.at.x - one.at.w, later.at.y - one.at.y) for one, later in pairwise(row)]
    return tuple(one.part for one in row) == run.parts and steps == [(kerf, 0)] * (len(run.parts) - 1)
