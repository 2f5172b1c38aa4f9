"""Moves of every control of a panel, as a learner would make them, and how long each takes."""

import statistics
import time
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from functools import partial
from itertools import cycle

import ipywidgets

from shoplib.live.length_control import LengthControl
from shoplib.live.panel import Panel
from shoplib.live.percent_control import PercentControl
from shoplib.live.settle import settle

WARM_UP = 5


@dataclass(frozen=True, slots=True)
class Times:
    """Milliseconds of each round: by the clock on the wall, and `own`, the time that this process itself worked.

    On a quiet machine the two are the same; on a busy one `own` leaves out the waiting for other programs.
    """

    wall: list[float]
    own: list[float]

    @property
    def median(self) -> float:
        """Median of the own time."""
        return statistics.median(self.own)

    @property
    def high(self) -> float:
        """95th percentile of the own time."""
        return p95(self.own)


def p95(times: list[float]) -> float:
    """The value that 95 of 100 rounds do not exceed."""
    return sorted(times)[int(len(times) * 0.95)]


def timed(work: Callable[[], object], rounds: int) -> Times:
    """Each round, after a warm-up."""
    for _ in range(WARM_UP):
        work()
    found = Times([], [])
    for _ in range(rounds):
        wall, own = time.perf_counter(), time.process_time()
        work()
        found.own.append((time.process_time() - own) * 1000)
        found.wall.append((time.perf_counter() - wall) * 1000)
    return found


def quietest(work: Callable[[], object], rounds: int) -> Times:
    """The one of three runs with the lowest 95th percentile: what else a machine does can only make it higher."""
    return min((timed(work, rounds) for _ in range(3)), key=lambda times: times.high)


def worst_control(panel: Panel, filled: Mapping[str, object], rounds: int) -> tuple[str, Times]:
    """The control that takes longest to follow, by its median.

    The panel is wholly unfolded and `filled` with these values first. Each slider and list is moved by itself.
    """
    while len(panel.opened) < len(panel.groups):
        panel.unfold()
    panel.put(filled)
    settle()  # as when it is shown
    found = {}
    for name, control in panel.controls.items():
        if isinstance(control, LengthControl | PercentControl | ipywidgets.Dropdown):
            found[name] = _moved(control, timed, max(rounds // 3, 10))
    worst = max(found, key=lambda name: found[name].median)
    return worst, _moved(panel.controls[worst], quietest, rounds)


def _moved(control: ipywidgets.Widget, measure: Callable[..., Times], rounds: int) -> Times:
    """Times of moving one control, which then stands where it stood."""
    trait, stations = _stations(control)
    before = getattr(control, trait)
    times = measure(partial(_move, control, trait, cycle(stations)), rounds)
    setattr(control, trait, before)
    return times


def _move(control: ipywidgets.Widget, trait: str, there: Iterator[object]) -> None:
    setattr(control, trait, next(there))


def _stations(control: ipywidgets.Widget) -> tuple[str, list[object]]:
    """What is moved, and where to: a slider by twenty steps and back, a list to its next entry and back."""
    if isinstance(control, LengthControl):
        steps = range(20) if control.high - control.ticks >= control.ticks - control.low else range(0, -20, -1)
        wanted = [min(max(control.ticks + step * control.step, control.low), control.high) for step in steps]
        stations = list(dict.fromkeys(wanted))
        return "ticks", [*stations[1:], *stations[-2::-1]]
    if isinstance(control, PercentControl):
        up = range(control.value, min(control.value + 5, control.high + 1))
        return "value", [*up[1:], *up[-2::-1]]
    entries = list(control.options)
    here = entries.index(control.value)
    return "value", [entries[here + 1 if here + 1 < len(entries) else here - 1], control.value]
