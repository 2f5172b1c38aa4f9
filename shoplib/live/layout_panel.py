"""A short cut list to lay out on sheets by hand: choose a part, choose where it goes, and see what is left.

The panel shows and sends; what a move does, and why one cannot be made, is said by `layout.by_hand`.
"""

from collections.abc import Callable

from IPython.display import display

from shoplib.draw.layout_by_hand import offcut
from shoplib.draw.letters import LARGE, ORDINARY
from shoplib.layout.best_found import Best, best_found
from shoplib.layout.by_hand import begin, begun_again, cut_off, lay, lay_along, taken_back
from shoplib.layout.hand import Hand, Refused
from shoplib.layout.hand_again import refitted
from shoplib.layout.pieces import Job
from shoplib.live.layout_choice import Chosen, left_to_choose, still_fitting
from shoplib.live.layout_face import layout_face
from shoplib.live.layout_fields import FIELDS, Typed, sentence
from shoplib.live.layout_pictures import Pictures
from shoplib.live.layout_pressed import pressed
from shoplib.live.layout_says import (
    came_of_it,
    checked,
    figures,
    part_row,
    places_to_choose,
    said_of_move,
    starting_job,
    task,
)
from shoplib.live.layout_still import still_html
from shoplib.live.practice_face import UNITS
from shoplib.live.settle import settle
from shoplib.measure import INCH_STYLE, MM_STYLE, LengthError, read_length, write_brief
from shoplib.words.quoted import in_quotes

LOOKED, SOON = 6.0, 1.0
"""So many seconds the best layout is looked for; from the second on it is said that this takes a while."""


class LayoutPanel:
    """One job to lay out by hand. What is pressed on the page can be called from a cell too; each gives a sentence.

    `seconds` is how long a better layout is searched for at most; `large` shows all in large type, `note` stands above.

    >>> panel = layout_panel("in")
    >>> panel.lay()
    'Laid on sheet 1: 1 x side, freed by a rip at 15 in and a crosscut at 30 in.'
    >>> panel.choose_part(0), panel.turn(True), panel.lay()[-50:]
    ('', '', 'runs along its 30 in and must run along the sheet.')
    """

    def __init__(self, job: Job, unit: str, *, seconds: float = LOOKED, large: bool = False, note: str = ""):
        if unit not in UNITS:
            raise ValueError(f'the unit is "in" or "mm", not {unit!r}')
        self._unit, self._seconds = unit, seconds
        self._pictures = Pictures(LARGE if large else ORDINARY)
        self.hand = begin(checked(job), INCH_STYLE if unit == "in" else MM_STYLE)
        self.best: Best | None = None
        self._typed = Typed()
        self._turn = 0
        self.face = layout_face(task(self.hand), unit, large=large, note=note)
        self.face.on_msg(lambda _face, content, _buffers: pressed(self, content))
        self._look_for_best()
        self._choose(left_to_choose(self.hand, self._chosen))
        self._say("Choose a part and where it goes, then lay it. Dashed in the drawing: where it would lie.")

    def __repr__(self) -> str:
        return f"LayoutPanel({sum(self.hand.to_lay)} still to lay, {len(self.hand.sheets)} in use)"

    def choose_part(self, number: int) -> str:
        """Which kind of part is laid next, from 0."""
        self.face.part, self.face.turned = number, self.face.turned and self.hand.job.parts[number].may_turn
        return self._chosen_anew()

    def turn(self, turned: bool) -> str:
        """Whether it is turned, its grain across that of the sheet."""
        self.face.turned = turned
        return self._chosen_anew()

    def choose_way(self, way: str) -> str:
        """Which cut frees it first: one of `WAYS`."""
        self.face.way = way
        return self._say()

    def choose_place(self, place: str) -> str:
        """Where it goes: the letter of a free place, or `new 0` for a new sheet of the first stock."""
        self.face.place = place
        return self._say()

    def lay(self) -> str:
        """Lay the chosen part in the chosen place."""
        return self._laid(lay, self._chosen.where)

    def lay_along(self) -> str:
        """Lay the chosen part, and as many more of it as the strip holds."""
        return self._laid(lay_along, self._chosen.where)

    def point(self, name: str) -> str:
        """Lay the chosen part where the drawing was pointed at."""
        letter = next((one.letter for one in self.hand.places if offcut(one) == name), "")
        if not letter and name != "new sheet":
            return self._say("That is not free: point at a place with a small letter.")
        return self._laid(lay, letter or self._chosen.where)

    def cut_strip(self, way: str, typed: str) -> str:
        """Cut a strip off the chosen place, without laying anything in it yet."""
        try:
            size = read_length(typed, what="width of the strip", unit=self._unit)
        except LengthError as fault:
            return self._refused_strip(typed, sentence(fault))
        moved = cut_off(self.hand, self._chosen.where, way, size)
        if isinstance(moved, Refused):
            return self._refused_strip(typed, moved.said)
        return self._moved(moved)

    def take_back(self) -> str:
        """The last move undone, whatever it was; a part that was laid is chosen again."""
        back, steps = taken_back(self.hand), self.hand.steps
        if isinstance(back, Refused):
            return self._say(back.said)
        if len(steps) > len(back.steps) and steps[-1].part is not None:
            self.face.part, self.face.turned = steps[-1].part, steps[-1].turned
        self._stands(back)
        return self._say("The last move is taken back.")

    def start_again(self) -> str:
        """Everything back in the list."""
        self.face.best_shown, self.face.part, self.face.turned, self.face.way = False, 0, False, ""
        self._stands(begun_again(self.hand) if self.hand.steps else self.hand)
        return self._say("All parts are back in the list.")

    def show_best(self) -> str:
        """The best layout that was found, in place of one's own."""
        if self.best is None:
            return self._say("No layout was found in which these parts fit on the sheets that there are.")
        self.face.best_shown = True
        if self.best.searched is not None:
            return self._say("This is the best layout: one of yours, for it buys less than what the search found.")
        return self._say("This is one of the best layouts, as the search found it. Yours is kept.")

    def back_to_mine(self) -> str:
        """One's own layout again."""
        self.face.best_shown = False
        return self._say("This is your layout, as you left it.")

    def enter(self, name: str, typed: str) -> str:
        """Set kerf or trim, and lay again what is laid."""
        size = self._typed.read(name, typed, self.hand.style)
        if isinstance(size, str):
            return self._fault(name, size)
        moved = refitted(self.hand, **{name: size})
        if isinstance(moved, Refused):
            return self._fault(name, moved.said)
        hand, told = moved
        self._typed.accept(name)
        if hand.job != self.hand.job:
            self._stands(hand)
        stands = f"{FIELDS[name]}: {write_brief(size, hand.style)}."
        all_fit = "All that was laid still fits." if hand.sheets and not told else ""
        return self._say(*[line for line in (stands, *told, all_fit) if line])

    def _ipython_display_(self) -> None:
        """Show the living panel, and leave its task and a picture of the sheet in the notebook."""
        settle()
        display({**self.face._repr_mimebundle_()[0], "text/plain": self.face.title}, raw=True)
        display({"text/html": self.still_html(), "text/plain": f"Still picture of {self.face.title}"}, raw=True)

    def still_html(self) -> str:
        """The panel as plain HTML, for a saved page that is read without a kernel."""
        return still_html(self.face)

    @property
    def _chosen(self) -> Chosen:
        return Chosen(self.face.part, self.face.turned, self.face.place)

    def _choose(self, chosen: Chosen) -> None:
        self.face.part, self.face.turned, self.face.place = chosen.part, chosen.turned, chosen.place

    def _chosen_anew(self) -> str:
        """After another part or its turning."""
        self._choose(still_fitting(self.hand, self._chosen))
        return self._say()

    def _laid(self, act: Callable[..., Hand | Refused], where: str | int) -> str:
        moved = act(self.hand, self.face.part, where, turned=self.face.turned, way=self.face.way or None)
        return self._say(moved.said) if isinstance(moved, Refused) else self._moved(moved)

    def _moved(self, moved: Hand) -> str:
        before, part = self.hand, self.face.part
        self._stands(moved)
        lines = said_of_move(before, moved, part)
        return self._say(*lines, *(["All parts lie: what came of it stands below."] if moved.done else ()))

    def _stands(self, hand: Hand) -> None:
        """Another state: what is chosen must be there in it."""
        other = hand.job != self.hand.job
        self.hand = hand
        self._show_strip("", "")
        if other:
            self._look_for_best()
            self._typed.clear()
        self.best = self.best and self.best.or_by_hand(hand)
        self._choose(left_to_choose(self.hand, self._chosen))

    def _look_for_best(self) -> None:
        """Most are proven soon; where one is not, the page says so before it is looked for longer."""
        job, style = self.hand.job, self.hand.style
        self.best = best_found(job, style, min(SOON, self._seconds))
        if self.best and not self.best.proven and self._seconds > SOON:
            self._tell(f"Looking for the best layout of these parts; that takes {self._seconds:g} seconds at most.")
            self.best = best_found(job, style, self._seconds)

    def _refused_strip(self, typed: str, said: str) -> str:
        self._show_strip(typed, in_quotes(said))
        return self._say(said)

    def _show_strip(self, typed: str, fault: str) -> None:
        self.face.strip = {**self.face.strip, "typed": typed, "fault": fault}

    def _fault(self, name: str, said: str) -> str:
        self._typed.refuse(name, said)
        return self._say(said)

    def _say(self, *lines: str) -> str:
        """Show everything as it is now, and these sentences; they are said again even where they are the same."""
        face, hand = self.face, self.hand
        with face.hold_sync():
            face.parts = [part_row(hand, number) for number in range(len(hand.job.parts))]
            face.places = [list(one) for one in places_to_choose(hand, face.part, face.turned)]
            face.fields = [self._typed.shown(name, hand) for name in FIELDS]
            face.pictures = (
                self._pictures.of_all(self.best.hand) if face.best_shown
                else self._pictures.of_chosen(hand, self._chosen)
            )
            face.figures = figures(hand, self.best)
            face.result = came_of_it(hand, self.best)
            said = self._tell(*lines)
        return " ".join(said)

    def _tell(self, *lines: str) -> list[str]:
        self._turn += 1
        said = [in_quotes(line) for line in lines]
        self.face.said = {"lines": said, "turn": self._turn}
        return said


def layout_panel(
    unit: str = "in", job: Job | None = None, *, seconds: float = LOOKED, large: bool = False, note: str = "",
) -> LayoutPanel:
    """A job to lay out by hand, in inches or millimetres; without one, a small case of the bicycle workshop.

    >>> layout_panel("mm")
    LayoutPanel(14 still to lay, 0 in use)
    """
    return LayoutPanel(job or starting_job(unit), unit, seconds=seconds, large=large, note=note)
