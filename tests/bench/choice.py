"""What a choice among layouts gains: `python tests/bench/choice.py [FILE] [--seconds S] [--wish WISH]`.

Over the lists of the file (`cabinets.jsonl` where none is given), at the fewest sheets that the search finds: the mean
largest offcut, as parts of a sheet, and the mean stages and settings of the first such layout, of the chosen one, and
of `rectpack` with the same number of sheets: its guillotine way that comes first, and the best of all its ways. All are
cut by `sawn`. Lists for which `rectpack` needs more sheets are left out of all means and counted. Seconds are those
that one core worked (`time.process_time`). Exit 1 where a layout is invalid by the judge.
"""

import argparse
import json
import os
import statistics
import sys
import time
from collections.abc import Iterator
from itertools import product
from pathlib import Path

os.environ.setdefault("OMP_NUM_THREADS", "1")
ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

import rectpack  # noqa: E402

from shoplib.layout.choose import Choice, best_for, weighed  # noqa: E402
from shoplib.layout.offcuts import Least  # noqa: E402
from shoplib.layout.pieces import Job, Laid, Layout, Placed, Rect  # noqa: E402
from shoplib.layout.search import layouts, pool  # noqa: E402
from shoplib.layout.shop_cost import WISHES, Wish  # noqa: E402
from tests.bench.sheets import ORDERS, WAYS, job_of  # noqa: E402
from tests.layout.judged import judged  # noqa: E402

LEAST = Least(12 * 16, 4 * 16)
"""Sixteenths of an inch, as the lists are written."""


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("file", type=Path, nargs="?", default=Path(__file__).parent / "instances" / "cabinets.jsonl")
    parser.add_argument("--seconds", type=float, default=1.0, help="for the search, and again for the choice")
    parser.add_argument("--wish", choices=WISHES, default="largest offcut")
    given = parser.parse_args()
    rows, dearer, bad = [], 0, []
    for line in given.file.read_text(encoding="utf-8").splitlines():
        instance = json.loads(line)
        job = job_of(instance, False)
        cheapest, chosen = chosen_of(job, given.wish, given.seconds)
        bad += [f"{instance['id']}: {fault}" for fault in judged(job, chosen.layout)]
        first = weighed(job, cheapest, given.wish, LEAST)
        library = [one for one in _of_library(job) if len(one.sheets) <= len(cheapest.sheets)]
        sheet = job.stock[0].length * job.stock[0].width
        if not library:
            dearer += 1
            continue
        its_first, its_best = (best_for(given.wish, job, some, LEAST, 60.0) for some in (library[:1], library))
        rows.append([
            (each.shop.offcut / sheet, each.shop.stages, each.shop.rips, each.shop.settings)
            for each in (first, chosen, its_first, its_best)
        ])
        print(instance["id"], len(cheapest.sheets), *(f"{offcut:.3f}/{stages}/{rips}/{settings}"
              for offcut, stages, rips, settings in rows[-1]), chosen.among)
    print(f"{len(rows)} lists; with {dearer} more the library needs more sheets")
    names = "first", "chosen", "library, first", "library, best"
    for name, figures in zip(names, zip(*rows, strict=True), strict=True):
        means = [statistics.mean(column) for column in zip(*figures, strict=True)]
        print("{:14} largest offcut {:.3f} of a sheet, stages {:.2f}, rip settings {:.2f}, settings {:.2f}".format(
            name, *means))
    for fault in bad:
        print(f"INVALID {fault}")
    return int(bool(bad))


def chosen_of(job: Job, wish: Wish, seconds: float) -> tuple[Layout, Choice]:
    """The cheapest layout as the search first finds it, and the one chosen among those that cost the same."""
    *_, cheapest = layouts(job, seconds, time.process_time)
    found = [cheapest, *pool(job, cheapest.cost, seconds, time.process_time)]
    return cheapest, best_for(wish, job, found, LEAST, seconds, time.process_time)


def _of_library(job: Job) -> Iterator[Layout]:
    """Every guillotine way, the parts each way round where they all may turn."""
    pieces = sum(part.count for part in job.parts)
    turning = all(part.may_turn for part in job.parts)
    for way, order in product(WAYS, ORDERS):
        packer = rectpack.newPacker(bin_algo=rectpack.PackingBin.BFF, pack_algo=way, sort_algo=order, rotation=turning)
        for number, part in enumerate(job.parts):
            for _ in range(part.count):
                packer.add_rect(part.length + job.kerf, part.width + job.kerf, rid=number)
        packer.add_bin(job.stock[0].length + job.kerf, job.stock[0].width + job.kerf, count=pieces)
        packer.pack()
        if len(packer.rect_list()) == pieces:
            yield _layout(job, packer)


def _layout(job: Job, packer) -> Layout:
    on: dict[int, list[Placed]] = {}
    for sheet, x, y, w, h, part in packer.rect_list():
        at = Rect(x, y, w - job.kerf, h - job.kerf)
        on.setdefault(sheet, []).append(Placed(part, at, at.w != job.parts[part].length))
    sheets = tuple(Laid(0, tuple(placed)) for placed in on.values())
    return Layout(sheets, len(sheets), 1)


if __name__ == "__main__":
    sys.exit(main())
