"""The practice bench on the page: measure the sheet, set the saw, cut tests, feel the fit, and then cut the pair.

The bench shows and sends; what is cut and what comes of it is done in `shoplib.practice`, and no size that a learner
could not measure leaves the kernel before the pair is cut.
"""

from collections.abc import Callable, Mapping
from dataclasses import replace

from traitlets import Bool, List, Unicode

from shoplib import practice
from shoplib.draw.letters import drawn_with
from shoplib.draw.practice_case import case_as_cut
from shoplib.draw.practice_cut import last_test_cut
from shoplib.draw.practice_side import side_to_cut
from shoplib.live.practice_base import PracticeBase
from shoplib.live.practice_face import UNITS, PracticeFace, sent_cautions, sent_scene, sent_sections
from shoplib.live.practice_says import HEAD, WAYS, came_of_it, cautions, fits_table, log, model
from shoplib.live.practice_stack import ANY, Arranged, arranged, sets_for
from shoplib.live.whole_lengths import script
from shoplib.measure import LengthError, Style, read_length, write_brief
from shoplib.model.dado_stack import CannotStack
from shoplib.practice import Session, Step
from shoplib.practice.plan import SIDES
from shoplib.tables.dado_sets import DadoSet
from shoplib.words.amounts import setting
from shoplib.words.quoted import in_quotes

FIELDS = {
    "stack": "Stack, width", "depth": "Depth", "bottom": "Fence for the bottom", "shelf": "Fence for the shelf",
}
"""What is typed, by name: the fence goes from the lower end to the near wall of the dado."""

PICTURE, RESULT = (240.0, 190.0), (230.0, 180.0)
"""What the drawing of a test cut and those of the result are fitted to, in their own units."""

_CUT = "The pair is cut. Take another sheet, or another saw, for the next one."


class _Face(PracticeFace):
    """What the browser draws; see practice_panel.js."""

    _esm = script("practice_parts.js", "practice_panel.js")

    task = Unicode().tag(sync=True)
    unit = Unicode().tag(sync=True)
    unit_word = Unicode().tag(sync=True)
    sheet = Unicode().tag(sync=True)
    sets = List().tag(sync=True)
    chosen = Unicode().tag(sync=True)
    arranged = Unicode().tag(sync=True)
    other = Unicode().tag(sync=True)
    pressed = Bool(False).tag(sync=True)
    sides = List().tag(sync=True)
    side = Unicode().tag(sync=True)


class PracticePanel(PracticeBase):
    """One learner's practice bench. What is pressed on the page can be called from a cell too; each gives a sentence.

    `own` is the learner's own dado set, where it is known; `large` shows all in large type, `note` stands above.

    >>> bench = PracticePanel("in", "Noor")
    >>> bench.test_cut()
    'Set the stack, the depth and the fence for the shelf first.'
    >>> bench.enter("depth", "3/16")
    'The depth scale stands at 3/16 in.'
    >>> bench
    PracticePanel('in', 'Noor', saw 1, sheet 1, 0 test cuts)
    """

    labels, cut = FIELDS, _CUT

    def __init__(self, unit: str, learner: str, own: DadoSet | None = None, *, large: bool = False, note: str = ""):
        super().__init__(unit, learner, large)
        self._own, self._sets = own, sets_for(unit, own)
        self._put_up(_Face(
            title="Practice bench: two sides, four dadoes", unit=unit, unit_word=UNITS[unit], note=note,
            cautions=sent_cautions("a stacked dado set", cautions()), sets=list(self._sets),
            ways=[list(way) for way in WAYS.items()], sides=list(SIDES),
        ))
        self._begin()

    def __repr__(self) -> str:
        saw, sheet = self._machines, self.session.bench.used_up + 1
        tests = len(self.session.tests)
        return f"PracticePanel({self._unit!r}, {self._learner!r}, saw {saw}, sheet {sheet}, {tests} test cuts)"

    @property
    def style(self) -> Style:
        """How lengths are written here."""
        return self.session.bench.style

    def measure_sheet(self) -> str:
        """Read the sheet at five spots."""
        return self._step(practice.measure_sheet(self.session))

    def choose_set(self, name: str) -> str:
        """Build the stack from this set, or with `ANY` from whatever it takes."""
        if self._done:
            return self._say(_CUT)
        self.face.chosen, self._second = name, False
        if self._typed["stack"]:
            return self._set("stack", self._set_stack())
        return self._say("Type the width that you want, and what comes nearest to it goes on the arbor.")

    def take_own(self, own: DadoSet | None) -> None:
        """Offer this set as the learner's own, None for no set; a stack that was built from the one before is built
        anew, or stands as wide as it is typed.
        """
        chose_own = self._own is not None and self.face.chosen == self._own.name
        self._own, self._sets = own, sets_for(self._unit, own)
        self.face.sets = list(self._sets)
        if chose_own and not self._done:
            self.choose_set(ANY if own is None else own.name)

    def take_other(self) -> str:
        """Put on the next best arrangement instead of the best, or the best again."""
        if self._done:
            return self._say(_CUT)
        if self._arranged is None or self._arranged.other is None:
            return self._say("There is no other arrangement to put on.")
        self._second = not self._second
        return self._set("stack", self._set_stack())

    def press_down(self, pressed: bool) -> str:
        """Whether push blocks press each panel down right over the cutter."""
        return self._step(practice.press_down(self.session, pressed))

    def lay(self, way: str, side: str) -> str:
        """How a side of the pair goes over the cutter: one of `WAYS`, and which side."""
        if self._done:
            return self._say(_CUT)
        self.face.way, self.face.side = way, side
        return self._say(f"The {side} goes over the cutter {WAYS[way]}.")

    def test_cut(self) -> str:
        """Cut a dado in an offcut, at the fence setting for the shelf."""
        return self._mended() or self._step(practice.test_cut(self.session))

    def measure(self) -> str:
        """Read width, depth and near wall of the last test cut, each three times."""
        if self._done or not self.session.tests:
            return self._step(practice.measure(self.session, "width"))
        said = []
        for size in practice.MEASURED:
            step = practice.measure(self.session, size)
            self.session = step.session
            said.append(step.said)
        return self._say(" ".join(said))

    def try_fit(self) -> str:
        """Try the other end of the offcut in the last test cut."""
        return self._step(practice.try_fit(self.session))

    def cut_pair(self) -> str:
        """Cut both sides, put the case together dry, and show what came of it."""
        refused = self._mended()
        if refused:
            return refused
        step = practice.cut_pair(self.session, self.face.way, self.face.side)
        return self._step(replace(step, said=f"{step.said} What came of it stands below.") if step.done else step)

    def cut_another(self) -> str:
        """A new sheet at the same saw, which stands as it was set."""
        step = practice.another_sheet(self.session)
        self.session = step.session
        return self._say(step.said)

    def new_saw(self) -> str:
        """Another saw, with nothing set, and another sheet."""
        self._begin()
        return self._say("This is another saw: what you found out about the last one is no good here.")

    @property
    def _done(self) -> bool:
        return self.session.sides is not None

    def _begin(self) -> None:
        begun = practice.start(self._next_machine("saw"), unit=self._unit)
        self.session: Session = begun.session
        self._arranged: Arranged | None = None
        self._second = False
        self.face.task, self.face.model = begun.said, sent_sections(model(self.session))
        self.face.chosen, self.face.way, self.face.side = ANY, "", SIDES[-1]
        self._say("")

    def _step(self, step: Step) -> str:
        if self._done:
            return self._say(_CUT)
        self.session = step.session
        return self._say(step.said)

    def _set_field(self, name: str, typed: str) -> Step:
        if name == "stack":
            return self._set_stack()
        if name == "depth":
            return practice.set_depth(self.session, typed, unit=self._unit)
        return practice.set_fence(self.session, typed, name, unit=self._unit)

    def _set_stack(self) -> Step:
        """The stack as it is typed, or what the chosen set comes nearest to."""
        owned, typed, self._arranged = self._sets[self.face.chosen], self._typed["stack"], None
        if owned is None:
            return practice.set_stack(self.session, typed, unit=self._unit)
        try:
            wanted = read_length(typed, what="stack", unit=self._unit)
            found = arranged(wanted, owned, self.style, self._second)
        except (LengthError, CannotStack) as fault:
            said = str(fault)
            return Step(self.session, f"{said[:1].upper()}{said[1:]}", False)
        step = practice.set_stack(self.session, found.on)
        if step.done:
            self._arranged = found
        return step

    def _stands(self, name: str) -> str:
        ticks = getattr(self.session, name) if name in ("stack", "depth") else self.session.fence(name)
        return "" if ticks is None else f"stands at {setting(ticks, self.style)}"

    def _say(self, said: str) -> str:
        """Show everything as it is now, and this sentence; it is said again even where it is the same."""
        self._turn += 1
        said, face, session = in_quotes(said), self.face, self.session
        with face.hold_sync():
            face.which = (f"Saw {self._machines}, sheet {session.bench.used_up + 1}. Test cuts so far: "
                          f"{len(session.tests)}.")
            read = session.reading("sheet")
            face.sheet = "" if read is None else (
                f"{read.said(session.bench)} The thickest is {write_brief(read.thickest, self.style, decimal=True)}."
            )
            face.fields = [
                {"name": name, "label": label, "typed": self._typed[name], "stands": self._stands(name),
                 "fault": self._faults.get(name, "")}
                for name, label in FIELDS.items()
            ]
            face.arranged = self._arranged.said if self._arranged else ""
            face.other = self._arranged.other_said if self._arranged else ""
            face.pressed = session.pressed
            face.log = {"head": list(HEAD), "rows": [list(row) for row in log(session)]}
            if session is not self._shown:
                self._draw()
            face.said = {"text": said, "turn": self._turn}
        return said

    def _draw(self) -> None:
        """The last test cut, or the side that is to be cut; and what came of the pair once it is cut."""
        session, self._shown = self.session, self.session
        with drawn_with(self._letters):
            self.face.picture = sent_scene(last_test_cut(session) or side_to_cut(session), PICTURE)
            done = practice.result(session)
            self.face.result = {} if done is None else {
                "good": done.dry_fit.clean,
                "heading": "It goes together." if done.dry_fit.clean else "It wants mending.",
                "pictures": [sent_scene(scene, RESULT) for scene in case_as_cut(session, done)],
                "sections": sent_sections(came_of_it(done)),
                "fits": {"head": ["Board", "Dado in the", "Fit"],
                         "rows": [list(row) for row in fits_table(done, self.style)]},
            }

    def _keys(self) -> dict[str, Callable[[], str]]:
        return {
            "sheet": self.measure_sheet, "other": self.take_other, "test": self.test_cut, "measure": self.measure,
            "fit": self.try_fit, "cut": self.cut_pair, "another": self.cut_another, "saw": self.new_saw,
        }

    def _press_more(self, pressed: object, content: Mapping) -> None:
        if pressed == "set" and content.get("name") in list(self._sets):
            self.choose_set(content["name"])
        elif pressed == "down" and isinstance(content.get("down"), bool):
            self.press_down(content["down"])
        elif pressed == "lay" and content.get("way") in list(WAYS) and content.get("side") in SIDES:
            self.lay(content["way"], content["side"])


def practice_panel(
    unit: str = "in", learner: str = "workbook", own: DadoSet | None = None, *, large: bool = False, note: str = "",
) -> PracticePanel:
    """The practice bench of a learner, in inches or millimetres; `own` is the dado set that the learner has.

    >>> practice_panel("mm", "Noor").measure_sheet()[:50]
    'The sheet, at spots a hand apart, reads 17.84, 17.'
    """
    return PracticePanel(unit, learner, own, large=large, note=note)

