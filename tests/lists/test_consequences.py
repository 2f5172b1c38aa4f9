"""Nothing that the dry-fit finds goes unsaid."""

import random
from dataclasses import replace

import pytest

from shoplib.checks import check
from shoplib.lists.consequences import consequences
from shoplib.lists.refit import refit
from shoplib.measure import INCH
from shoplib.model.board import BoxCut
from shoplib.model.cabinet import solve
from tests.random_projects import project


def goes_unsaid(built, planned) -> bool:
    before, after = check(planned), check(built.cabinet)
    known = {finding.text for finding in before}
    new = [finding for finding in after if finding.level in ("stop", "warn") and finding.text not in known]
    return bool(new) and not consequences(built, planned, before, after)


@pytest.mark.parametrize("seed", range(20))
def test_of_boards_an_eighth_of_an_inch_larger_or_smaller(seed):
    planned, stream = solve(project(seed)), random.Random(seed)
    for board in stream.sample(planned.boards, min(6, len(planned.boards))):
        axis, sign = stream.choice([(0, 1), (1, 1), (2, 1), (0, -1), (1, -1)])
        size = list(board.size)
        size[axis] += sign * INCH // 8
        assert not goes_unsaid(refit(planned, {board.name: tuple(size)}), planned), (board.name, axis, sign)


@pytest.mark.parametrize("seed", range(20))
def test_of_cuts_a_thirty_second_too_deep(seed):
    """A dado that is too deep may move nothing: then only the finding of its joint is left to be told."""
    planned, stream = solve(project(seed)), random.Random(seed)
    cuts = [(board, cut) for board in planned.boards for cut in board.cuts if isinstance(cut, BoxCut) and cut.for_board]
    for board, cut in stream.sample(cuts, min(4, len(cuts))):
        deeper = list(cut.low)
        deeper[2] -= INCH // 32
        made = tuple(replace(cut, low=tuple(deeper)) if one is cut else one for one in board.cuts)
        assert not goes_unsaid(refit(planned, {}, {board.name: made}), planned), (board.name, cut)
