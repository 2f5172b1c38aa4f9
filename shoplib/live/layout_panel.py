"""A short cut list to lay out on sheets by hand: choose a part, choose where it goes, and see what is left.

The panel shows and sends; what a move does, and why one cannot be made, is said by `layout.by_hand`.
"""

from collections.abc import Callable, Mapping
from html import escape
from pathlib import Path

import anywidget
from IPython.display import display
from traitlets import Bool, Dict, Int, List, Unicode

from shoplib.draw.layout_by_hand import offcut, sheet_by_hand, sheet_to_take
from shoplib.draw.letters import LARGE, ORDINARY, drawn_with
from shoplib.draw.pen import draw
from shoplib.draw.scene import Scene
from shoplib.layout.best_found import Best, best_found
from shoplib.layout.by_hand import begin, begun_again, cut_off, lay, lay_along, taken_back
from shoplib.layout.hand import Hand, Refused
from shoplib.layout.hand_again import refitted
from shoplib.layout.pieces import Job, Rect
from shoplib.live.exercise_box import EXERCISE_CSS, sent_picture, typed_line
from shoplib.live.layout_says import (
    KINDS,
    NEW,
    WAYS,
    came_of_it,
    changed_sheet,
    checked,
    figures,
    fits,
    part_row,
    places_to_choose,
    said_of_move,
    starting_job,
    task,
)
from shoplib.live.picture import Drawing
from shoplib.live.practice_face import UNITS
from shoplib.live.settle import settle
from shoplib.live.wake import left_behind
from shoplib.live.whole_lengths import script
from shoplib.measure import INCH_STYLE, MM_STYLE, LengthError, read_length, write_brief, write_length
from shoplib.model.possible import no_such_kerf
from shoplib.words.quoted import in_quotes

FIELDS = {"kerf": "Kerf", "trim": "Trim, each edge"}
"""What can be typed of saw and sheet, by name."""

_WAKE = "To lay parts out here: menu Run, then Run All Cells."

LOOKED, SOON = 6.0, 1.0
"""So many seconds the best layout is looked for; from the second on it is said that this takes a while."""

PICTURE = (460.0, 300.0)
"""What the drawing of a sheet is fitted to, in its own units."""


class _Face(anywidget.AnyWidget):
    """What the browser draws; see layout_panel.js."""

    _esm = script("practice_parts.js", "layout_panel.js")
    _css = EXERCISE_CSS + "".join(
        Path(__file__).with_name(f"{name}_panel.css").read_text(encoding="utf-8") for name in ("practice", "layout")
    )

    title = Unicode().tag(sync=True)
    note = Unicode().tag(sync=True)
    task = Unicode().tag(sync=True)
    unit = Unicode().tag(sync=True)
    unit_word = Unicode().tag(sync=True)
    parts = List().tag(sync=True)
    part = Int(0).tag(sync=True)
    turned = Bool(False).tag(sync=True)
    places = List().tag(sync=True)
    place = Unicode().tag(sync=True)
    ways = List().tag(sync=True)
    way = Unicode().tag(sync=True)
    kinds = List().tag(sync=True)
    strip = Dict().tag(sync=True)
    fields = List().tag(sync=True)
    pictures = List().tag(sync=True)
    figures = Dict().tag(sync=True)
    best_shown = Bool(False).tag(sync=True)
    said = Dict().tag(sync=True)
    result = Dict().tag(sync=True)


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
        self._unit, self._seconds, self._letters = unit, seconds, LARGE if large else ORDINARY
        self.hand = begin(checked(job), INCH_STYLE if unit == "in" else MM_STYLE)
        self.best: Best | None = None
        self._faults: dict[str, str] = {}
        self._typed: dict[str, str] = {}
        self._turn, self._drawn = 0, {}
        self.face = _Face(
            title="A sheet laid out by hand", note=note, task=task(self.hand), unit=unit, unit_word=UNITS[unit],
            ways=[list(way) for way in WAYS.items()], kinds=[list(kind) for kind in KINDS.items()],
            strip={"name": "strip", "label": "Width of the strip", "typed": "", "stands": "", "fault": ""},
        )
        self.face.add_class("shop-practice-widget")
        if large:
            self.face.add_class("shop-large")
        self.face.on_msg(self._press)
        self._look_for_best()
        self._choose_left()
        self._say("Choose a part and where it goes, then lay it. Dashed in the drawing: where it would lie.")

    def __repr__(self) -> str:
        return f"LayoutPanel({sum(self.hand.to_lay)} still to lay, {len(self.hand.sheets)} in use)"

    def choose_part(self, number: int) -> str:
        """Which kind of part is laid next, from 0."""
        self.face.part, self.face.turned = number, self.face.turned and self.hand.job.parts[number].may_turn
        return self._chosen()

    def turn(self, turned: bool) -> str:
        """Whether it is turned, its grain across that of the sheet."""
        self.face.turned = turned
        return self._chosen()

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
        return self._laid(lay, self._where())

    def lay_along(self) -> str:
        """Lay the chosen part, and as many more of it as the strip holds."""
        return self._laid(lay_along, self._where())

    def point(self, name: str) -> str:
        """Lay the chosen part where the drawing was pointed at."""
        letter = next((one.letter for one in self.hand.places if offcut(one) == name), "")
        if not letter and name != "new sheet":
            return self._say("That is not free: point at a place with a small letter.")
        return self._laid(lay, letter or self._where())

    def cut_strip(self, way: str, typed: str) -> str:
        """Cut a strip off the chosen place, without laying anything in it yet."""
        try:
            size = read_length(typed, what="width of the strip", unit=self._unit)
        except LengthError as fault:
            return self._refused_strip(typed, _sentence(fault))
        moved = cut_off(self.hand, self._where(), way, size)
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
        self._typed[name] = typed
        try:
            size = read_length(typed, what=FIELDS[name].lower(), unit=self._unit, zero=True)
        except LengthError as fault:
            return self._fault(name, _sentence(fault))
        none = no_such_kerf(size, self.hand.style) if name == "kerf" else ""
        if none:
            return self._fault(name, _sentence(none + "."))
        moved = refitted(self.hand, **{name: size})
        if isinstance(moved, Refused):
            return self._fault(name, moved.said)
        hand, told = moved
        self._faults.pop(name, None)
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
        told = "".join(f"<li>{escape(part['text'])}</li>" for part in self.face.parts)
        sent = [sent_picture(Drawing("", one["svg"], one["alt"])) for one in self.face.pictures]
        drawn = "".join(f'<figure><img alt="{escape(one["alt"])}" src="{one["source"]}"/></figure>' for one in sent)
        return left_behind(f"<p><strong>{escape(self.face.title)}.</strong> {_WAKE}</p><p>{escape(self.face.task)}</p>"
                           f"<ul>{told}</ul>{drawn}")

    def _chosen(self) -> str:
        """After another part or its turning: the place stays as long as it fits."""
        place = self.hand.place(self.face.place)
        if place is None or not fits(self.hand, place, self.face.part, self.face.turned):
            self._choose_place()
        return self._say()

    def _where(self) -> str | int:
        place = self.face.place
        return int(place.removeprefix(NEW)) if place.startswith(NEW) else place

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
            self._faults.clear()
        self.best = self.best and self.best.or_by_hand(hand)
        self._choose_left()

    def _look_for_best(self) -> None:
        """Most are proven soon; where one is not, the page says so before it is looked for longer."""
        job, style = self.hand.job, self.hand.style
        self.best = best_found(job, style, min(SOON, self._seconds))
        if self.best and not self.best.proven and self._seconds > SOON:
            self._tell(f"Looking for the best layout of these parts; that takes {self._seconds:g} seconds at most.")
            self.best = best_found(job, style, self._seconds)

    def _choose_left(self) -> None:
        """A part that is still to lay, the same as before where there are more of it, and a place for it."""
        if not self.hand.to_lay[self.face.part]:
            self.face.part = next((n for n, left in enumerate(self.hand.to_lay) if left), self.face.part)
            self.face.turned = False
        self._choose_place()

    def _choose_place(self) -> None:
        """The first of the places that the part fits into; a new sheet where there is none."""
        for value, _ in places_to_choose(self.hand, self.face.part, self.face.turned):
            place = self.hand.place(value)
            if place is None or fits(self.hand, place, self.face.part, self.face.turned):
                self.face.place = value
                return
        self.face.place = ""

    def _refused_strip(self, typed: str, said: str) -> str:
        self._show_strip(typed, in_quotes(said))
        return self._say(said)

    def _show_strip(self, typed: str, fault: str) -> None:
        self.face.strip = {**self.face.strip, "typed": typed, "fault": fault}

    def _fault(self, name: str, said: str) -> str:
        self._faults[name] = in_quotes(said)
        return self._say(said)

    def _say(self, *lines: str) -> str:
        """Show everything as it is now, and these sentences; they are said again even where they are the same."""
        face, hand = self.face, self.hand
        with face.hold_sync():
            face.parts = [part_row(hand, number) for number in range(len(hand.job.parts))]
            face.places = [list(one) for one in places_to_choose(hand, face.part, face.turned)]
            face.fields = [self._field(name) for name in FIELDS]
            face.pictures = self._pictures()
            face.figures = figures(hand, self.best)
            face.result = came_of_it(hand, self.best)
            said = self._tell(*lines)
        return " ".join(said)

    def _tell(self, *lines: str) -> list[str]:
        self._turn += 1
        said = [in_quotes(line) for line in lines]
        self.face.said = {"lines": said, "turn": self._turn}
        return said

    def _field(self, name: str) -> dict[str, str]:
        """Kerf or trim, as it stands and as it was typed last."""
        size = self.hand.job.kerf if name == "kerf" else self.hand.job.stock[0].trim_ends
        typed = self._typed.get(name, write_length(size, self.hand.style, unit=False))
        return {"name": name, "label": FIELDS[name], "typed": typed, "fault": self._faults.get(name, ""),
                "stands": f"stands at {write_brief(size, self.hand.style)}" if name in self._faults else ""}

    def _pictures(self) -> list[dict[str, str]]:
        """The sheet with the chosen place first, or the one that the last part went on, then the others; of the best
        layout all, as they are numbered.
        """
        with drawn_with(self._letters):
            if self.face.best_shown:
                return [self._picture(sheet_by_hand(self.best.hand, n)) for n in range(len(self.best.hand.sheets))]
            hand, place = self.hand, self.hand.place(self.face.place)
            first = [place.sheet] if place else [changed_sheet(hand.before, hand)] if hand.done and hand.before else []
            part = self._next(place.at) if place else None
            drawn = [self._picture(sheet_by_hand(hand, n, self.face.place, part)) for n in first]
            if self.face.place.startswith(NEW) and not hand.done:
                stock = self._where()
                drawn.append(self._picture(sheet_to_take(hand, stock, self._next(hand.job.stock[stock].usable))))
            return drawn + [self._picture(sheet_by_hand(hand, n)) for n in range(len(hand.sheets)) if n not in first]

    def _next(self, place: Rect) -> Rect | None:
        """Where the part would lie in a place; None where it is too large for it."""
        wide, high = self.hand.size_of(self.face.part, self.face.turned)
        can = wide <= place.w and high <= place.h and self.hand.to_lay[self.face.part]
        return Rect(place.x, place.y, wide, high) if can else None

    def _picture(self, scene: Scene) -> dict[str, str]:
        """Drawn once as long as nothing of it changes."""
        drawn = self._drawn.get(scene)
        if drawn is None:
            if len(self._drawn) > 40:
                self._drawn.clear()
            drawn = self._drawn[scene] = {"svg": draw(scene, PICTURE), "alt": scene.alt}
        return drawn

    def _press(self, _face: _Face, content: object, _buffers: object) -> None:
        """What was pressed, chosen or typed on the page; what is none of that changes nothing."""
        if not isinstance(content, Mapping):
            return
        keys: dict[str, Callable[[], str]] = {
            "lay": self.lay, "along": self.lay_along, "back": self.take_back, "again": self.start_again,
            "best": self.show_best, "mine": self.back_to_mine,
        }
        pressed = content.get("press")
        if self.face.best_shown and pressed not in ("again", "mine"):
            return
        if isinstance(pressed, str) and pressed in keys:
            keys[pressed]()
        elif pressed == "enter" and content.get("name") in list(FIELDS):
            self.enter(content["name"], typed_line(content.get("text", "")))
        elif pressed == "part" and content.get("part") in range(len(self.hand.job.parts)):
            self.choose_part(int(content["part"]))
        elif pressed == "turn" and isinstance(content.get("turned"), bool):
            self.turn(content["turned"])
        elif pressed == "way" and content.get("way") in list(WAYS):
            self.choose_way(content["way"])
        elif pressed == "place" and [content.get("place")] in [[value] for value, _ in self.face.places]:
            self.choose_place(content["place"])
        elif pressed == "point" and isinstance(content.get("name"), str):
            self.point(content["name"])
        elif pressed == "strip" and content.get("way") in list(KINDS):
            self.cut_strip(content["way"], typed_line(content.get("text", "")))


def _sentence(fault: object) -> str:
    said = str(fault)
    return f"{said[:1].upper()}{said[1:]}"


def layout_panel(
    unit: str = "in", job: Job | None = None, *, seconds: float = LOOKED, large: bool = False, note: str = "",
) -> LayoutPanel:
    """A job to lay out by hand, in inches or millimetres; without one, a small case of the bicycle workshop.

    >>> layout_panel("mm")
    LayoutPanel(14 still to lay, 0 in use)
    """
    return LayoutPanel(job or starting_job(unit), unit, seconds=seconds, large=large, note=note)
