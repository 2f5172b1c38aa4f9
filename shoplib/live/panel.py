"""The frame of every live panel: controls, one handler, a pure function, and what it found.

The function knows nothing of widgets: it gets the values of the controls and returns an Outcome,
or raises CannotBuild. So a panel is tried without a browser by setting the values of its controls.
"""

from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from html import escape
from types import SimpleNamespace

import ipywidgets
from IPython.display import display

from shoplib.draw.letters import LARGE, ORDINARY, drawn_with
from shoplib.live.in_sight import InSight
from shoplib.live.large_type import enlarge
from shoplib.live.length_control import LengthControl
from shoplib.live.picture import Drawing, Picture
from shoplib.live.said import Said, same_length
from shoplib.live.settle import settle
from shoplib.live.table import Table, findings_html, sums_html
from shoplib.live.wake import still_html
from shoplib.live.working_box import NotShown, WorkingBox
from shoplib.model.solved import Finding


class CannotBuild(Exception):
    """These values give nothing that can be built: one sentence says why, one what would mend it.

    `empty` takes away what was shown before, where it would be read as holding for these values too.
    """

    def __init__(self, why: str, mend: str = "", empty: bool = False):
        super().__init__(f"{why} {mend}".strip())
        self.empty = empty


@dataclass(frozen=True, slots=True)
class Group:
    """Controls that unfold together, by the name under which the panel's function gets their values.

    `words` is a line above them that explains what they offer. `others` stand below them and are no numbers
    of the panel, such as buttons.
    """

    title: str
    controls: Mapping[str, ipywidgets.Widget]
    words: str = ""
    others: Sequence[ipywidgets.Widget] = ()


@dataclass(frozen=True, slots=True)
class Outcome:
    """What a panel shows for one set of values: `sums` are the closing sums, each written out.

    `why` gives the working of a size by the name that it carries where it is shown, in a drawing, table, closing sum
    or sentence, and is asked for no other; without it nothing can be asked. `sums_asked` says that it answers for the
    lengths of the closing sums too; of findings and message it answers for the lengths that their texts know (`said`).
    `chosen` says that the first drawing was asked for: it stands beside the controls whatever is moved.
    """

    drawings: Sequence[Drawing]
    tables: Sequence[Table] = ()
    sums: Sequence[str] = ()
    findings: Sequence[Finding] = ()
    message: str = ""
    why: Callable[[str], tuple[str, ...]] | None = None
    sums_asked: bool = False
    chosen: bool = False


class Panel:
    """Groups of controls that open one at a time, beside what `work` makes of their values.

    `work` gets an object with one attribute for each control (ticks of a LengthControl, `value` of any
    other widget), and `opened`, the titles of the groups open so far.

    >>> from shoplib.measure import INCH_STYLE, write_length
    >>> def work(values):
    ...     if values.width < values.depth:
    ...         raise CannotBuild("The case is deeper than wide.", "Make it wider.")
    ...     return Outcome([Drawing("Top", "<svg/>", f"{write_length(values.width, INCH_STYLE)} wide")])
    >>> panel = Panel("Case", [
    ...     Group("Width", {"width": LengthControl("Width", "30 in", "8 in", "96 in")}),
    ...     Group("Depth", {"depth": LengthControl("Depth", "20 in", "8 in", "36 in")})], work)
    >>> panel.enter("width", "10 in")
    >>> panel.message
    'The case is deeper than wide. Make it wider.'
    >>> panel.outcome.drawings[0].alt
    '30 in wide'
    """

    def __init__(self, title: str, groups: Sequence[Group], work: Callable[[SimpleNamespace], Outcome]):
        self.title = title
        self.groups = tuple(groups)
        self.outcome: Outcome | None = None
        self._work = work
        self._open = 1
        self._letters = ORDINARY
        self._held = False
        self._first, self._unfolded = "", 1
        self.controls = {name: control for group in self.groups for name, control in group.controls.items()}
        self.picture, self.more = Picture(), Picture()
        self.working = WorkingBox(self._explain)
        self._tables, self._sums, self._findings = (ipywidgets.HTML() for _ in range(3))
        self._boxes = [_box(group) for group in self.groups]
        self._next = ipywidgets.Button(layout=ipywidgets.Layout(width="auto"))
        self._next.on_click(lambda _button: self.unfold())
        left = ipywidgets.VBox([*self._boxes, self._next]).add_class("shop-panel-controls")
        # What is found and the further drawings stand in two places: in_sight.js shows each in one of them.
        beside = ipywidgets.VBox([self._findings, self.more]).add_class("shop-panel-beside")
        right = ipywidgets.VBox([self.picture, self.working, beside]).add_class("shop-panel-picture")
        stage = ipywidgets.Box([left, right]).add_class("shop-panel-stage")
        found, more = (ipywidgets.VBox([part]).add_class("shop-panel-under") for part in (self._findings, self.more))
        below = ipywidgets.VBox([self._tables, found, self._sums, more]).add_class("shop-panel-below")
        self.widget = ipywidgets.VBox([stage, below, InSight()]).add_class("shop-panel")
        self._fold()
        for control in self.controls.values():
            control.observe(self._follow, names=_trait(control))
        self._follow()

    def __repr__(self) -> str:
        return f"Panel({self.title!r})"

    @property
    def opened(self) -> tuple[str, ...]:
        """The titles of the groups that are open."""
        return tuple(group.title for group in self.groups[: self._open])

    @property
    def values(self) -> SimpleNamespace:
        """The values of all controls, and `opened`."""
        found = {name: getattr(control, _trait(control)) for name, control in self.controls.items()}
        return SimpleNamespace(**found, opened=self.opened)

    @property
    def message(self) -> str:
        """The line above the picture."""
        return self.picture.message

    @property
    def stale(self) -> bool:
        """Whether the picture is the last that could be drawn, not what was asked for."""
        return self.picture.stale

    def enter(self, name: str, value) -> None:
        """Set a control as a learner would: a length as text, anything else as the control's value."""
        control = self.controls[name]
        if isinstance(control, LengthControl):
            control.enter(value)
        else:
            control.value = value

    def enlarge(self) -> None:
        """Show the panel in large type, for a projector: controls, tables, and the letters of its drawings."""
        self._letters = LARGE
        enlarge(self.widget)
        self._follow()

    def put(self, values: Mapping[str, object]) -> None:
        """Set many controls at once, to ticks or to the control's value, and show what comes of it once.

        Raises what a control raises for a value outside its limits; then none is set.
        """
        before = {name: getattr(self.controls[name], _trait(self.controls[name])) for name in values}
        with self.held():
            try:
                self._set(values)
            except Exception:
                self._set(before)
                raise
        self._follow()

    @contextmanager
    def held(self) -> Iterator[None]:
        """Inside, controls may be set one after another and nothing follows; whoever sets them sees to that."""
        before, self._held = self._held, True
        try:
            yield
        finally:
            self._held = before

    def _set(self, values: Mapping[str, object]) -> None:
        for name, value in values.items():
            setattr(self.controls[name], _trait(self.controls[name]), value)

    def unfold(self) -> None:
        """Open the next group of controls and go to its first one."""
        if self._open == len(self.groups):
            return
        self._open += 1
        self._fold()
        self._follow()
        opened = self.groups[self._open - 1]
        next(iter((*opened.controls.values(), *opened.others))).focus()

    def _fold(self) -> None:
        for index, box in enumerate(self._boxes):
            box.layout.display = "" if index < self._open else "none"
        if self._open < len(self.groups):
            title = self.groups[self._open].title
            self._next.description = f"Next: {title[:1].lower()}{title[1:]}"
        else:
            self._next.layout.display = "none"

    def _follow(self, _change=None) -> None:
        """The one handler: values in, everything shown anew, in the same breath."""
        if self._held:
            return
        try:
            with drawn_with(self._letters):
                outcome = self._work(self.values)
        except CannotBuild as refusal:
            if refusal.empty:
                self._tables.value = self._sums.value = self._findings.value = ""
                self.picture.drawings = []
                self.more.show([])
            self.picture.dim(str(refusal))
            return
        except Exception as fault:
            self.picture.dim(f"This is a fault in the workbook, not in your numbers: {fault!r}")
            raise
        self._first, self._unfolded = self._beside(outcome), self._open
        before, self.outcome = self.outcome, outcome
        drawings = sorted(outcome.drawings, key=lambda each: each.title != self._first)
        self.picture.show(drawings[:1], outcome.message)
        self.more.show(drawings[1:])
        self._tables.value = "".join(table.html() for table in outcome.tables)
        self._sums.value = sums_html(outcome.sums, outcome.sums_asked)
        self._findings.value = findings_html(outcome.findings)
        if self.working.asked:
            said = (Said(tuple(each.findings), each.message) for each in (before, outcome))
            self.working.ask(same_length(self.working.asked, *said))

    def _beside(self, outcome: Outcome) -> str:
        """The title of the drawing that stands beside the controls: it shows what the last move changed."""
        titles = [each.title for each in outcome.drawings]
        if not titles or self.outcome is None or outcome.chosen:
            return titles[0] if titles else ""
        before = {each.title: each.svg for each in self.outcome.drawings}
        if titles[0] != next(iter(before), ""):
            return titles[0]
        new = [title for title in titles if title not in before]
        if new and self._open > self._unfolded:
            return new[0]
        changed = [each.title for each in outcome.drawings if before.get(each.title) != each.svg]
        if self._first in titles and (self._first in changed or not changed):
            return self._first
        return changed[0] if changed else titles[0]

    def _explain(self, name: str) -> tuple[str, ...]:
        """The working of a size that is shown; raises NotShown where it is not.

        That is looked up here, so that whatever goes wrong in the working itself is heard of.
        """
        if self.outcome is None or self.outcome.why is None or f'data-ask="{name}"' not in self._shown():
            raise NotShown(f"the panel shows no size {name!r}")
        with drawn_with(self._letters):  # a drawing in larger letters may be another one
            return self.outcome.why(name)

    def _shown(self) -> str:
        """What stands on the panel, as text that names the sizes that can be picked."""
        drawn = "".join(drawing.svg for drawing in self.outcome.drawings)
        said = "".join(f'data-ask="message/{number}"' for number in range(len(self.picture.asked)))
        return said + drawn + self._tables.value + self._sums.value + self._findings.value

    def _ipython_display_(self) -> None:
        """Show the living panel, and leave a still picture of it in the notebook."""
        settle()
        display({**self.widget._repr_mimebundle_(), "text/plain": self.title}, raw=True)
        if self.outcome is not None:
            still = still_html(self.title, self.outcome.drawings)
            display({"text/html": still, "text/plain": f"Still picture of {self!r}"}, raw=True)


def _trait(control: ipywidgets.Widget) -> str:
    return "ticks" if isinstance(control, LengthControl) else "value"


def _box(group: Group) -> ipywidgets.VBox:
    words = f'<p class="shop-words">{escape(group.words)}</p>' if group.words else ""
    heading = ipywidgets.HTML(f'<p class="shop-heading">{escape(group.title)}</p>{words}')
    return ipywidgets.VBox([heading, *group.controls.values(), *group.others]).add_class("shop-panel-group")
