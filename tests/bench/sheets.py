"""How few sheets layouts need: `python tests/bench/sheets.py FILE --seconds S [--limit N] [--turn] [--layouts OUT]`.

FILE holds one instance a line, as told in `tests/bench/instances/README.md`. Seconds are those that one core worked
(`time.process_time`), so that other programs do not count. By set, the first part of the id, it prints the sheets that
this search used and those of `rectpack` (its guillotine ways, the best of all), the fewest known, the lower bound that
the search itself proved, how many instances came to the fewest known and to the bound, how many layouts are invalid by
the judge, which knows coordinates alone (`tests/judge/sheets.py`), and the median of the seconds. Instances of which
no fewest is known have lines of their own. Exit 1 where a layout is invalid.
"""

import argparse
import json
import os
import statistics
import sys
import time
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import product
from pathlib import Path

os.environ.setdefault("OMP_NUM_THREADS", "1")
ROOT = Path(__file__).parents[2]
sys.path.insert(0, str(ROOT))

import rectpack  # noqa: E402
from rectpack import guillotine  # noqa: E402

from shoplib.layout.pieces import Job, Layout, Part, Stock  # noqa: E402
from shoplib.layout.search import layouts  # noqa: E402
from tests.judge.sheets import Lying, cuttable  # noqa: E402
from tests.layout.judged import judged  # noqa: E402

WAYS = [
    getattr(guillotine, f"Guillotine{choice}{split}")
    for choice in ("Baf", "Bssf", "Blsf")
    for split in ("Sas", "Las", "Slas", "Llas", "Maxas", "Minas")
]
ORDERS = [rectpack.SORT_AREA, rectpack.SORT_LSIDE, rectpack.SORT_SSIDE, rectpack.SORT_PERI]


@dataclass(frozen=True)
class Result:
    """One instance as it came out."""

    name: str
    sheets: int
    bound: int
    known: int | None
    baseline: int
    faults: list[str]
    seconds: float


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("file", type=Path)
    parser.add_argument("--seconds", type=float, default=3.0, help="most seconds of one core for an instance")
    parser.add_argument("--limit", type=int, help="only so many instances")
    parser.add_argument("--turn", action="store_true", help="parts may turn")
    parser.add_argument("--layouts", type=Path, help="write the layouts to this file, one JSON object a line")
    given = parser.parse_args()
    results, written = [], []
    for line in given.file.read_text(encoding="utf-8").splitlines()[: given.limit]:
        instance = json.loads(line)
        result, best = run(instance, given.seconds, given.turn)
        results.append(result)
        written.append({"id": result.name, "sheets": [[_place(one) for one in on.placed] for on in best.sheets]})
    if given.layouts:
        given.layouts.write_text("".join(json.dumps(one) + "\n" for one in written), encoding="utf-8")
    for line in table(results):
        print(line)
    for result in results:
        for fault in result.faults:
            print(f"INVALID {result.name}: {fault}")
    return int(any(result.faults for result in results))


def job_of(instance: dict, turn: bool) -> Job:
    """The instance as the search gets it: sheets without end that cost 1 each."""
    parts = [
        Part(str(index), length, width, count, turn or any(may_turn))
        for index, (length, width, count, *may_turn) in enumerate(instance["parts"])
    ]
    return Job(tuple(parts), (Stock("sheet", *instance["sheet"], cost=1),), instance.get("kerf", 0))


def run(instance: dict, seconds: float, turn: bool) -> tuple[Result, Layout]:
    job = job_of(instance, turn)
    begun = time.process_time()
    *_, best = layouts(job, seconds, time.process_time)
    took = time.process_time() - begun
    known = (instance.get("may_turn" if turn else "as_given") or {}).get("fewest_known")
    bad = judged(job, best)
    return Result(instance["id"], len(best.sheets), best.bound, known, library(job), bad, took), best


def library(job: Job) -> int:
    """The fewest sheets of all guillotine ways of `rectpack`, whatever time they take.

    It joins free rectangles, and then some of its layouts cannot be sawn from edge to edge: those do not count.
    """
    pieces = fewest = sum(part.count for part in job.parts)
    turning = all(part.may_turn for part in job.parts)
    for way, order in product(WAYS, ORDERS):
        packer = rectpack.newPacker(bin_algo=rectpack.PackingBin.BFF, pack_algo=way, sort_algo=order, rotation=turning)
        for part in job.parts:
            for _ in range(part.count):
                packer.add_rect(part.length + job.kerf, part.width + job.kerf)
        packer.add_bin(job.stock[0].length + job.kerf, job.stock[0].width + job.kerf, count=pieces)
        packer.pack()
        if len(packer.rect_list()) == pieces and len(packer) < fewest and all(map(_cuttable, packer)):
            fewest = len(packer)
    return fewest


def _cuttable(packed: Iterable) -> bool:
    return cuttable([Lying(0, one.x, one.y, one.width, one.height) for one in packed], 0)


def table(results: list[Result]) -> Iterator[str]:
    """The figures by set, and all together."""
    heads = ("set", "instances", "sheets", "library", "known", "reached", "bound", "at bound", "invalid", "median s")
    yield f"{heads[0]:22}" + "".join(f"{head:>10}" for head in heads[1:])
    known = [result for result in results if result.known is not None]
    groups: dict[str, list[Result]] = {}
    for result in results:
        name = result.name.rpartition("_")[0].rpartition("_")[0] or result.name.rpartition("_")[0] or "orders"
        groups.setdefault(name + ("" if result.known is not None else ", none known"), []).append(result)
    for name, group in [*groups.items(), ("all with known", known)]:
        if not group:
            continue
        has = group[0].known is not None
        figures = (
            len(group),
            sum(one.sheets for one in group),
            sum(one.baseline for one in group),
            sum(one.known for one in group) if has else "",
            sum(one.sheets <= one.known for one in group) if has else "",
            sum(one.bound for one in group),
            sum(one.sheets == one.bound for one in group),
            sum(bool(one.faults) for one in group),
            f"{statistics.median(one.seconds for one in group):.2f}",
        )
        yield f"{name:22}" + "".join(f"{figure:>10}" for figure in figures)


def _place(one) -> dict:
    return {"part": one.part, "x": one.at.x, "y": one.at.y, "w": one.at.w, "h": one.at.h}


if __name__ == "__main__":
    sys.exit(main())
