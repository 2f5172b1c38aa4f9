"""The order of all work at the saw: job by job, and the joint cuts of a stage right after its last saw cut.

The stages after it wait until the case stands and has been measured, so nothing of theirs comes before: where one sheet
serves several stages, the cuts that wait are a turn of their own, after those joint cuts.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from operator import itemgetter

from shoplib.buying.laid import LaidJob, LaidOut
from shoplib.layout.order import Step
from shoplib.lists.alike_cuts import AlikeCuts, alike_cuts
from shoplib.lists.dado_stops import DadoStop, TwoStops, dado_stops, two_stops

LAST = 1_000_000
"""Later than every stage."""


@dataclass(frozen=True, slots=True)
class Turn:
    """The `cuts` of one job that are made in one go, and the joint cuts that come after them: `stops`, then the mates
    that no one stop serves, then `alike`: notches, holes for screws, pockets and finger sockets.

    `number` is that of the stage with which it is cut. `steps` and `settings` are what is added to the numbers that the
    cuts have in the job; `done` is how many steps and settings there are before them.
    """

    job: LaidJob
    number: int
    cuts: tuple[Step, ...]
    done: tuple[int, int]
    stops: tuple[DadoStop, ...] = ()
    mates: tuple[TwoStops, ...] = ()
    alike: tuple[AlikeCuts, ...] = ()

    @property
    def steps(self) -> int:
        """What is added to the number of a cut."""
        return self.done[0] + 1 - self.cuts[0].number if self.cuts else 0

    @property
    def settings(self) -> int:
        """What is added to the number of its setting."""
        return self.done[1] + 1 - self.cuts[0].setting if self.cuts else 0

    @property
    def first(self) -> bool:
        """Whether no cuts of the same job are made before these."""
        return not self.cuts or self.cuts[0].number == 1

    @property
    def joints(self) -> int:
        """How many joint cuts there are, each a step."""
        return len(self.stops) + len(self.mates) + len(self.alike)

    @property
    def before_joints(self) -> tuple[int, int]:
        """How many steps and settings there are before the first of the joint cuts."""
        if not self.cuts:
            return self.done
        return self.steps + self.cuts[-1].number, self.settings + self.cuts[-1].setting


def turns(found: LaidOut) -> Iterator[Turn]:
    """All turns in their order. Each joint cut has a step and a setting of its own, mates a step only."""
    stops, mates, alike = dado_stops(found.cabinet), two_stops(found.cabinet), alike_cuts(found.cabinet)
    waiting = sorted(_in_turns(found), key=itemgetter(0))  # jobs keep their order within a stage
    counted, done = (0, 0), found.cabinet.first_stage
    for (number, job, cuts), until in zip(waiting, [*(number for number, *_ in waiting[1:]), LAST], strict=True):
        turn = Turn(
            job, number, cuts, counted,
            tuple(stop for stop in stops if done <= stop.stage < until),
            tuple(two for two in mates if done <= _stage(two) < until),
            tuple(cut for cut in alike if done <= cut.stage < until),
        )  # fmt: skip
        yield turn
        steps, settings = turn.before_joints
        counted = steps + turn.joints, settings + len(turn.stops) + len(turn.alike)
        done = until


def _in_turns(found: LaidOut) -> Iterator[tuple[int, LaidJob, tuple[Step, ...]]]:
    """The cuts of each job by the stage with which they are made; a job without any has one turn all the same."""
    for job in found.jobs:
        by_turn = {step.turn: [] for step in job.steps} or {job.ask.stages[0]: []}
        for step in job.steps:
            by_turn[step.turn].append(step)
        yield from ((number, job, tuple(cuts)) for number, cuts in by_turn.items())


def _stage(mates: TwoStops) -> int:
    return max(board.stage for board in mates.boards)


def numbered_steps(found: LaidOut) -> dict[str, list[tuple[int, Step]]]:
    """The steps of each sheet, by its name, each with its number among all."""
    by_sheet: dict[str, list[tuple[int, Step]]] = {sheet.name: [] for sheet in found.sheets}
    for turn in turns(found):
        for step in turn.cuts:
            by_sheet[turn.job.sheets[step.sheet].name].append((turn.steps + step.number, step))
    return by_sheet
