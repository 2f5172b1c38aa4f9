"""How few sheets the layouts need: `python tests/bench/sheets.py FILE --seconds S [--limit N] [--turn] [--layouts OUT]`.

FILE holds one instance a line, as told in `tests/bench/instances/README.md`. Seconds are those that one core worked
(`time.process_time`), so that other programs do not count. By set, the first part of the id, it prints the sheets that
this search used and those of `rectpack` (its guillotine ways, the best of all), the fewest known, the lower bound that
the search itself proved, how many instances came to the fewest known, how many layouts are invalid by the judge, which
knows coordinates alone (`tests/judge/sheets.py`), and the median of the seconds. Sums are over the instances whose
fewest is known; those without are counted on a line of their own. Exit 1 where a layout is invalid.
"""

import argparse
import json
import os
import statistics
import sys
import time
from collections.abc import Iterator
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
from tests.judge.sheets import Bought, Lying, Wanted, faults  # noqa: E402

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
    """The instance as the search gets it: sheets without end that cost 1 each, no kerf."""
    parts = [Part(str(i), w, h, count, turn) for i, (w, h, count) in enumerate(instance["parts"])]
    return Job(tuple(parts), (Stock("sheet", *instance["sheet"], cost=1),))


def run(instance: dict, seconds: float, turn: bool) -> tuple[Result, Layout]:
    job = job_of(instance, turn)
    begun = time.process_time()
    *_, best = layouts(job, seconds, time.process_time)
    took = time.process_time() - begun
    known = (instance["may_turn" if turn else "as_given"] or {}).get("fewest_known")
    wanted = [Wanted(part.length, part.width, part.count, part.may_turn) for part in job.parts]
    lying = [(on.stock, [Lying(one.part, *one.at) for one in on.placed]) for on in best.sheets]
    bad = faults(wanted, [Bought(*instance["sheet"])], 0, lying)
    return Result(instance["id"], len(best.sheets), best.bound, known, library(job), bad, took), best


def library(job: Job) -> int:
    """The fewest sheets of all guillotine ways of `rectpack`, whatever time they take."""
    fewest = sum(part.count for part in job.parts)
    for way, order in product(WAYS, ORDERS):
        packer = rectpack.newPacker(
            mode=rectpack.PackingMode.Offline, bin_algo=rectpack.PackingBin.BFF, pack_algo=way, sort_algo=order,
            rotation=job.parts[0].may_turn,
        )
        for part in job.parts:
            for _ in range(part.count):
                packer.add_rect(part.length, part.width)
        packer.add_bin(job.stock[0].length, job.stock[0].width, count=fewest)
        packer.pack()
        if len(packer.rect_list()) == sum(part.count for part in job.parts):
            fewest = min(fewest, len(packer))
    return fewest


def table(results: list[Result]) -> Iterator[str]:
    """The figures by set, and all together."""
    yield f"{'set':12}{'instances':>10}{'sheets':>8}{'library':>9}{'known':>7}{'bound':>7}{'reached':>9}{'invalid':>9}{'median s':>10}"
    known = [result for result in results if result.known is not None]
    groups = {}
    for result in known:
        groups.setdefault("_".join(result.name.split("_")[:2]) if "_" in result.name else "orders", []).append(result)
    rest = [result for result in results if result.known is None]
    for name, group in [*groups.items(), ("all", known), ("none known", rest)]:
        if group:
            at = sum(one.sheets <= one.known for one in group) if group is not rest else "-"
            fewest = sum(one.known for one in group) if group is not rest else "-"
            yield (
                f"{name:12}{len(group):10}{sum(one.sheets for one in group):8}{sum(one.baseline for one in group):9}"
                f"{fewest:>7}{sum(one.bound for one in group):7}{at:>9}{sum(bool(one.faults) for one in group):9}"
                f"{statistics.median(one.seconds for one in group):10.2f}"
            )


def _place(one) -> dict:
    return {"part": one.part, "x": one.at.x, "y": one.at.y, "w": one.at.w, "h": one.at.h}


if __name__ == "__main__":
    sys.exit(main())
