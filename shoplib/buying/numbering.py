"""The order of all work at the saw: job by job, and the joint cuts of a stage right after its last saw cut.

The stages after it wait until the case stands and has been measured, so nothing of theirs comes before.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from shoplib.buying.laid import LaidJob, LaidOut
from shoplib.layout.order import Step
from shoplib.lists.alike_cuts import AlikeCuts, alike_cuts
from shoplib.lists.dado_stops import DadoStop, TwoStops, dado_stops, two_stops

LAST = 1_000_000
"""Later than every stage."""


@dataclass(frozen=True, slots=True)
class Turn:
    """One job at the saw, and the joint cuts that come after it: `stops`, then the mates that no one stop serves, then
    `alike`: notches, holes for screws and finger sockets.

    `steps` and `settings` say how many there are before the first of the job.
    """

    steps: int
    settings: int
    job: LaidJob
    stops: tuple[DadoStop, ...] = ()
    mates: tuple[TwoStops, ...] = ()
    alike: tuple[AlikeCuts, ...] = ()

    @property
    def joints(self) -> int:
        """How many joint cuts there are, each a step."""
        return len(self.stops) + len(self.mates) + len(self.alike)

    @property
    def before_joints(self) -> tuple[int, int]:
        """How many steps and settings there are before the first of the joint cuts."""
        if not self.job.steps:
            return self.steps, self.settings
        return self.steps + self.job.steps[-1].number, self.settings + self.job.steps[-1].setting


def turns(found: LaidOut) -> Iterator[Turn]:
    """All jobs in their order. Each joint cut has a step and a setting of its own, mates a step only."""
    stops, mates, alike = dado_stops(found.cabinet), two_stops(found.cabinet), alike_cuts(found.cabinet)
    begins = [job.ask.stages[0] for job in found.jobs]
    steps = settings = done = 0
    for job, until in zip(found.jobs, [*begins[1:], LAST], strict=True):
        turn = Turn(
            steps, settings, job,
            tuple(stop for stop in stops if done <= stop.stage < until),
            tuple(two for two in mates if done <= _stage(two) < until),
            tuple(cut for cut in alike if done <= cut.stage < until),
        )  # fmt: skip
        yield turn
        steps, settings = turn.before_joints
        steps, settings = steps + turn.joints, settings + len(turn.stops) + len(turn.alike)
        done = until


def _stage(mates: TwoStops) -> int:
    return max(board.stage for board in mates.boards)


def numbered_steps(found: LaidOut) -> dict[str, list[tuple[int, Step]]]:
    """The steps of each sheet, by its name, each with its number among all."""
    by_sheet: dict[str, list[tuple[int, Step]]] = {sheet.name: [] for sheet in found.sheets}
    for turn in turns(found):
        for step in turn.job.steps:
            by_sheet[turn.job.sheets[step.sheet].name].append((turn.steps + step.number, step))
    return by_sheet
