"""Random cut lists all the way: laid out, judged by coordinates, chosen, cut, put in order, and no square tick lost."""

from collections import Counter
from random import Random

import pytest

from shoplib.layout.choose import best_for
from shoplib.layout.cut_tree import sawn
from shoplib.layout.order import cut_order
from shoplib.layout.pieces import Job, Part, Stock
from shoplib.layout.search import layouts
from shoplib.layout.shop_cost import WISHES
from shoplib.measure import INCH, MM
from tests.layout.judged import judged
from tests.layout.test_cut_tree import check
from tests.layout.test_order import replayed

LISTS, LISTS_LONG, CHUNKS = 200, 2_000, 8


def a_list(random):
    """Parts of a case or two, in inches or millimetres, with what a shop has lying about."""
    unit = random.choice([INCH // 16, MM, MM // 2, INCH // 64 + random.randint(0, 40)])
    long, wide = random.choice([(96 * INCH, 48 * INCH), (60 * INCH, 60 * INCH), (2440 * MM, 1220 * MM)])
    trim = random.choice([0, INCH // 4, 10 * MM])
    parts = tuple(
        Part(
            f"part {n}",
            random.randint(60 * MM // unit, (wide if turn else long) * 2 // (3 * unit)) * unit,
            random.randint(30 * MM // unit, 600 * MM // unit) * unit,
            random.choice([1, 1, 2, 2, 4, 8]),
            turn,
        )
        for n in range(random.randint(1, 12))
        for turn in [random.random() < 0.3]
    )
    stock = [Stock("sheet", long, wide, None, 4000, trim, trim)]
    if random.random() < 0.4:
        stock.append(Stock("half", long // 2, wide, None, 2300, trim, trim))
    if random.random() < 0.4:
        trims = random.choice([(0, 0), (trim, 0)])
        stock.append(Stock("offcut", 40 * INCH, 23 * INCH, random.randint(1, 3), 0, *trims))
    return Job(parts, tuple(stock), random.choice([0, 2 * MM, INCH // 8, 3 * MM]))


@pytest.mark.parametrize("chunk", range(CHUNKS))
def test_each_list_is_laid_out_and_cut(chunk, count):
    random = Random(1_000 + chunk)
    for _ in range(count(LISTS, LISTS_LONG) // CHUNKS):
        job = a_list(random)
        found = list(layouts(job, 0.02))
        for layout in found:
            assert judged(job, layout) == []
            assert layout.cost >= layout.bound
            assert layout.cost == sum(job.stock[laid.stock].cost for laid in layout.sheets)
        wish = random.choice(WISHES)
        choice = best_for(wish, job, found)
        assert choice.layout.cost == min(layout.cost for layout in found)
        assert judged(job, choice.layout) == []
        for laid, cuts in zip(choice.layout.sheets, choice.sheets, strict=True):
            assert cuts == sawn(job, laid, wish)
            check(job, laid, cuts)
        lifts = random.choice([None, 20 * 12 * 12 * INCH**2])
        sheets = choice.layout.sheets
        lying = Counter(mark for mark, *_ in replayed(job, sheets, cut_order(job, sheets, choice.sheets, lifts)))
        assert {part.name: part.count for part in job.parts} == {
            mark: number for mark, number in lying.items() if mark.startswith("part")
        }
