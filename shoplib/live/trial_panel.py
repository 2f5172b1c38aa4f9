"""The practice bench of any joint but the dado: set the scales, cut a test joint, measure, feel, then cut the pair.

The bench shows and sends; what is cut and what comes of it is done in `shoplib.practice`, and no size that a learner
could not measure leaves the kernel before the pair is cut.
"""

from collections.abc import Callable, Mapping

from traitlets import List, Unicode

from shoplib.draw.bench_section import bench_section
from shoplib.draw.letters import drawn_with
from shoplib.draw.scene import Scene
from shoplib.draw.trial_pair import as_cut_views
from shoplib.live.practice_base import PracticeBase
from shoplib.live.practice_face import UNITS, PracticeFace, sent_cautions, sent_scene, sent_sections
from shoplib.live.practice_says import cautions
from shoplib.live.trial_says import TOOLS, came_of_it, log, model, ways
from shoplib.live.whole_lengths import script
from shoplib.measure import Style
from shoplib.practice.trial import (
    TrialSession,
    TrialStep,
    another,
    begin,
    cut_pair,
    measure,
    measure_boards,
    set_scale,
    task,
    test_cut,
    try_fit,
)
from shoplib.practice.trial_result import result
from shoplib.practice.trials import trial as trial_of
from shoplib.words.quoted import in_quotes

PICTURE, RESULT = (240.0, 170.0), (230.0, 180.0)
"""What the drawing of the plan and those of the result are fitted to, in their own units."""

_CUT = "The pair is cut. Take new boards, or another machine, for the next one."


class _Face(PracticeFace):
    """What the browser draws; see trial_panel.js."""

    _esm = script("practice_parts.js", "trial_panel.js")

    task = List().tag(sync=True)
    boards = Unicode().tag(sync=True)


class TrialPanel(PracticeBase):
    """One learner's practice of one joint. What is pressed can be called from a cell too; each gives a sentence.

    >>> bench = TrialPanel("rabbet", "in", "Noor")
    >>> bench.test_cut()
    'Set the fence and the depth first.'
    >>> bench.enter("depth", "3/8")
    'Depth stands at 3/8 in.'
    >>> bench
    TrialPanel('rabbet', 'in', 'Noor', machine 1, boards 1, 0 test joints)
    """

    cut = _CUT

    def __init__(self, name: str, unit: str, learner: str, *, large: bool = False, note: str = ""):
        super().__init__(unit, learner, large)
        self._name, trial = name, trial_of(name)
        self.labels = {scale.name: scale.label for scale in trial.scales}
        self._ways = ways(trial)
        self._begin_session()
        self._put_up(_Face(
            title=f"Practice bench: {trial.kind.title}", note=note, ways=[list(way) for way in self._ways.items()],
            cautions=sent_cautions(TOOLS[trial.way], cautions(name, trial.way, trial.also)),
        ))
        self._show_new()

    def __repr__(self) -> str:
        boards, tests = self.session.bench.used_up + 1, len(self.session.tests)
        return (f"TrialPanel({self._name!r}, {self._unit!r}, {self._learner!r}, machine {self._machines}, boards "
                f"{boards}, {tests} test joints)")

    @property
    def style(self) -> Style:
        """How lengths are written here."""
        return self.session.style

    def measure_boards(self) -> str:
        """Read the thickness of both boards."""
        return self._step(measure_boards, boards=True)

    def lay(self, way: str) -> str:
        """How the pair is cut: one of the ways that the bench offers."""
        if self._done:
            return self._say(_CUT)
        self.face.way = way
        return self._say(f"The pair is to be cut so: {self._ways[way]}.")

    def test_cut(self) -> str:
        """Cut a test joint in offcuts."""
        return self._mended() or self._step(test_cut)

    def measure(self) -> str:
        """Read every size of the last test joint."""
        return self._step(measure)

    def try_fit(self) -> str:
        """Put the last test joint together."""
        return self._step(try_fit)

    def cut_pair(self) -> str:
        """Cut the pair, put it together dry, and show what came of it."""
        return self._mended() or self._step(lambda session: cut_pair(session, self.face.way),
                                            " What came of it stands below.")

    def cut_another(self) -> str:
        """New boards at the same machine, which stands as it was set."""
        self.session, self._boards = another(self.session), ""
        self.face.way = ""
        return self._say("New boards lie ready: measure them. The machine stands as you set it.")

    def new_machine(self) -> str:
        """Another machine, with nothing set, and other boards."""
        self._begin_session()
        self._show_new()
        return self._say("This is another machine: what you found out about the last one is no good here.")

    @property
    def _done(self) -> bool:
        return self.session.pair is not None

    def _begin_session(self) -> None:
        self.session: TrialSession = begin(self._name, self._next_machine("machine"), self._unit)
        self._boards = ""

    def _show_new(self) -> None:
        self.face.task, self.face.model = list(task(self.session)), sent_sections(model(self.session))
        self.face.way = ""
        self._say("")

    def _step(self, act: Callable[[TrialSession], TrialStep], more: str = "", *, boards: bool = False) -> str:
        if self._done:
            return self._say(_CUT)
        step = act(self.session)
        self.session = step.session
        if boards:
            self._boards = step.said
        return self._say(step.said + more if step.done else step.said)

    def _set_field(self, name: str, typed: str) -> TrialStep:
        return set_scale(self.session, name, typed, unit=self._unit)

    def _stands(self, name: str) -> str:
        scale = next(each for each in self.session.trial.scales if each.name == name)
        size = self.session.set_to(name)
        return "" if size is None else f"stands at {self.session.written(scale, size)}"

    def _say(self, said: str) -> str:
        """Show everything as it is now, and this sentence; it is said again even where it is the same."""
        self._turn += 1
        said, face, session = in_quotes(said), self.face, self.session
        with face.hold_sync():
            face.which = (f"Machine {self._machines}, boards {session.bench.used_up + 1}. Test joints so far: "
                          f"{len(session.tests)}.")
            face.boards = self._boards
            face.fields = [
                {"name": scale.name, "label": scale.label, "typed": self._typed[scale.name],
                 "stands": self._stands(scale.name), "fault": self._faults.get(scale.name, ""),
                 "unit": "degrees" if scale.sort == "angle" else self._unit,
                 "word": "degrees" if scale.sort == "angle" else UNITS[self._unit]}
                for scale in session.trial.scales
            ]
            face.log = log(session)
            if self._shown is None or session.pair is not self._shown.pair:
                self._draw()
            face.said = {"lines": [said] if said else [], "turn": self._turn}
        return said

    def _draw(self) -> None:
        """The pair as it is meant, of boards as they usually are; and what came of it once it is cut."""
        session, self._shown = self.session, self.session
        with drawn_with(self._letters):
            self.face.picture = sent_scene(plan_scene(session), PICTURE)
            done = result(session)
            self.face.result = {} if done is None else {
                "good": done.good,
                "heading": "It goes together." if done.good else "It wants mending.",
                "pictures": [sent_scene(scene, RESULT) for scene in as_cut_views(session)],
                "sections": sent_sections(came_of_it(session, done)),
            }

    def _keys(self) -> dict[str, Callable[[], str]]:
        return {
            "boards": self.measure_boards, "test": self.test_cut, "measure": self.measure, "fit": self.try_fit,
            "cut": self.cut_pair, "another": self.cut_another, "machine": self.new_machine,
        }

    def _press_more(self, pressed: object, content: Mapping) -> None:
        if pressed == "lay" and content.get("way") in list(self._ways):
            self.lay(content["way"])


def plan_scene(session: TrialSession) -> Scene:
    """The pair as it is planned, in section, drawn of boards as they usually are."""
    pair = session.trial.kind.build(session.usual, session.plan)
    return bench_section(pair, "The plan, of boards as they usually are")


def trial_panel(name: str = "rabbet", unit: str = "in", learner: str = "workbook", **how: object) -> TrialPanel:
    """The practice bench of a joint for a learner, in inches or millimetres.

    >>> trial_panel("groove", "mm", "Noor").measure_boards()[:34]
    'The bottom reads 5.71, 5.68 and 5.'
    """
    return TrialPanel(name, unit, learner, **how)
