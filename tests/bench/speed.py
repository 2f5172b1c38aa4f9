"""How fast the core is, measured in one run: `python tests/bench/speed.py [--rounds N]`.

Prints median and 95th percentile in milliseconds for the under-bench case, the limit each is held to,
and the ratio of one slider move to the same picture made by a fresh matplotlib figure. Exit 1 where a
limit is missed. Whole commands are timed as fresh processes.
"""

import argparse
import io
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path

ROOT = Path(__file__).parents[2]
CASE = ROOT / "data" / "projects" / "under_bench_case.toml"
WARM_UP = 5


def main() -> int:
    """Measure, print, judge."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--rounds", type=int, default=60)
    rounds = parser.parse_args().rounds
    from shoplib.checks import check
    from shoplib.documents.project_file import read_project
    from shoplib.draw.elevation import front_elevation
    from shoplib.draw.section import section_side
    from shoplib.live.project_panel import project_panel
    from shoplib.measure import INCH
    from shoplib.model.cabinet import solve

    project = read_project(CASE)
    print(f"{len(solve(project).boards)} boards, {rounds} rounds")
    missed = []

    def report(name: str, times: list[float], limit: float | None, which: str = "median") -> None:
        median, high = statistics.median(times), sorted(times)[int(len(times) * 0.95)]
        value = median if which == "median" else high
        state = "" if limit is None else f"limit {limit:g} ({which}): {'met' if value <= limit else 'MISSED'}"
        print(f"{name:42} median {median:8.2f} ms   p95 {high:8.2f} ms   {state}")
        if limit is not None and value > limit:
            missed.append(name)

    report("solve", timed(lambda: solve(project), rounds), 3)
    fresh = iter([solve(project) for _ in range(rounds + WARM_UP)])
    report("dry-fit", timed(lambda: check(next(fresh)), rounds), 10)
    panel = project_panel(str(CASE))
    control = panel.controls["width"]
    positions = iter(range(rounds + WARM_UP))

    def move() -> None:
        control.ticks = 58 * INCH + next(positions) * (INCH // 32)

    moves = timed(move, rounds)
    report("one slider move in the kernel", moves, 20, "p95")
    cabinet = solve(project)
    scenes = [front_elevation(cabinet, cabinet.style), section_side(cabinet, cabinet.style)]
    figures = timed(lambda: [matplotlib_picture(scene) for scene in scenes], max(5, rounds // 6))
    report("the same picture, fresh matplotlib figure", figures, None)
    ratio = statistics.median(figures) / statistics.median(moves)
    print(f"{'ratio of the two':42} {ratio:.1f} times   limit 8: {'met' if ratio >= 8 else 'MISSED'}")
    if ratio < 8:
        missed.append("ratio")
    with tempfile.TemporaryDirectory() as folder:
        plan = [sys.executable, "-m", "shoplib.commands", "plan", str(CASE), folder]
        report("plan with all drawings, whole process", processes(plan, 5), 3000)
    first = "import shoplib; from shoplib.live.carcass_panel import carcass_panel; carcass_panel('in')"
    report("import and first live panel, whole process", processes([sys.executable, "-c", first], 7), 1500)
    return 1 if missed else 0


def timed(work: Callable[[], object], rounds: int) -> list[float]:
    """Milliseconds of each round, after a warm-up."""
    for _ in range(WARM_UP):
        work()
    found = []
    for _ in range(rounds):
        start = time.perf_counter()
        work()
        found.append((time.perf_counter() - start) * 1000)
    return found


def processes(command: list[str], rounds: int) -> list[float]:
    """Milliseconds of a whole fresh process, the first one left out (cold disk)."""
    found = []
    for _ in range(rounds + 1):
        start = time.perf_counter()
        subprocess.run(command, cwd=ROOT, check=True, stdout=subprocess.DEVNULL)
        found.append((time.perf_counter() - start) * 1000)
    return found[1:]


def matplotlib_picture(scene: object) -> bytes:
    """Rectangles, labels and dimension lines of a scene in a fresh figure, as PNG."""
    from matplotlib.figure import Figure
    from matplotlib.patches import Rectangle

    figure = Figure(figsize=(7, 5))
    axes = figure.add_subplot()
    (left, bottom, right, top) = scene.bounds
    for item in scene.items:
        kind = type(item).__name__
        if kind == "Shape":
            for x0, y0, x1, y1 in item.rects:
                axes.add_patch(Rectangle((x0, y0), x1 - x0, y1 - y0, facecolor="wheat", edgecolor="black"))
        elif kind == "Label":
            x0, y0, x1, y1 = item.room
            axes.text((x0 + x1) / 2, (y0 + y1) / 2, "\n".join(item.texts), ha="center", va="center", fontsize=6)
        elif kind == "Chain":
            level = item.side in ("below", "above")
            off = (item.row + 1) * 0.05 * (top - bottom)
            for a, b, text in zip(item.at, item.at[1:], item.texts, strict=False):
                ends = [(a, bottom - off), (b, bottom - off)] if level else [(left - off, a), (left - off, b)]
                axes.annotate("", *ends, arrowprops={"arrowstyle": "<->"})
                (p, q), (r, s) = ends
                axes.text((p + r) / 2, (q + s) / 2, text, fontsize=6, ha="center")
    axes.set_xlim(left - (right - left) * 0.3, right)
    axes.set_ylim(bottom - (top - bottom) * 0.3, top)
    axes.set_aspect("equal")
    buffer = io.BytesIO()
    figure.savefig(buffer, format="png")
    return buffer.getvalue()


if __name__ == "__main__":
    raise SystemExit(main())
