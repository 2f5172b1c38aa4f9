"""A drill: ten readings off a drawn tape, one after another, the same for a learner each time until a new round.

Each reading judges itself, as an exercise does, and never gives its answer away before it is asked for.
"""

from dataclasses import dataclass

from shoplib.draw.pen import draw
from shoplib.draw.tape import tape
from shoplib.lessons.judge import OTHER, RIGHT, SLIP, Feedback, read_answer
from shoplib.lessons.say import UNIT_WORDS
from shoplib.live.picture import Drawing
from shoplib.measure import Style, write_length
from shoplib.measure.seeded import seed_of
from shoplib.measure.tape import tape_parts, tape_steps
from shoplib.words.tape import spoken, sum_text, tape_words

DRILL = "01-drill"
"""The name under which progress keeps it."""

VERSION = 1

MARKS = {
    "in": ("1/8 in",) * 3 + ("1/16 in",) * 4 + ("1/32 in",) * 3,
    "mm": ("1 mm",) * 7 + ("0.5 mm",) * 3,
}
"""The finest marks of each tape, from coarse to fine: ten readings."""

_FIGURES = {"in": 30, "mm": 80}
"""How many figures of a tape the pointer may stand behind."""

_PICTURE = (430.0, 280.0)


@dataclass(frozen=True)
class Reading:
    """One tape with its pointer at `ticks`; the tape has marks to `style`."""

    ticks: int
    style: Style

    @property
    def unit_word(self) -> str:
        """The unit of the tape in words."""
        return UNIT_WORDS[self.style.unit]

    @property
    def picture(self) -> Drawing:
        """The tape, without its reading."""
        scene = tape(self.ticks, self.style, told=False)
        return Drawing(scene.title, draw(scene, _PICTURE), scene.alt)

    @property
    def answer(self) -> str:
        """The reading, for whoever asks for it."""
        return write_length(self.ticks, self.style)

    @property
    def told(self) -> tuple[str, ...]:
        """How the reading is come by, mark by mark."""
        lines = (tape_words(self.ticks, self.style),)
        several = len([step for step in tape_steps(self.ticks, self.style) if step.count]) > 1
        return (*lines, f"{sum_text(self.ticks, self.style)} = {self.answer}") if several else lines

    def check(self, answer: object = None, unit: str | None = None) -> Feedback:
        """Judge an answer; `unit` is the one printed beside the field."""
        read = read_answer(answer, self.style.unit, unit)
        if isinstance(read, Feedback):
            return read
        gave = f"You gave {read.shown}."
        if read.ticks == self.ticks:
            return Feedback(RIGHT, RIGHT, gave, f"{_capital(spoken(self.ticks, self.style))}: so it is.", "")
        for name, ticks, does, look in self._slips():
            if read.ticks == ticks:
                return Feedback(SLIP, name, gave, does, look)
        way = "further along the tape than" if read.ticks > self.ticks else "short of"
        look = "Begin with the last figure before the pointer, then take the longest mark passed, and so on."
        return Feedback(OTHER, OTHER, gave, f"That stands {way} the pointer.", look)

    def _slips(self) -> list[tuple[str, int, str, str]]:
        figure, *_ = tape_parts(self.style)
        off = self.ticks % figure
        back = self.ticks - off + figure - off
        one = write_length(self.style.step, self.style)
        slips = [
            ("next figure", self.ticks + figure, "That is one whole figure too far.",
             "Look to the left of the pointer: which figure was passed last?"),
            ("figure before", self.ticks - figure, "That is one whole figure too little.",
             "Look to the left of the pointer: which figure was passed last?"),
            ("counted back", back, "That counts the marks back from the next figure.",
             "Count from the figure on the left of the pointer, to the right."),
            ("one mark over", self.ticks + self.style.step, f"That is one mark of {one} too far.",
             "Count the shortest marks once more, from the last longer one."),
            ("one mark under", self.ticks - self.style.step, f"That is one mark of {one} too little.",
             "Count the shortest marks once more, from the last longer one."),
        ]
        if self.style.unit == "mm":
            slips.append(("centimetres", self.ticks // 10, "That is the number in centimetres.",
                          "The figures are centimetres: each is 10 mm."))
        return [slip for slip in slips if slip[1] != self.ticks]


def drill_readings(learner: str, unit: str, turn: int = 0) -> tuple[Reading, ...]:
    """The ten readings of a learner; each `turn` gives ten others.

    Each reading stands behind a figure, on one of the finest marks (on one of all marks where these are 1 mm).

    >>> [reading.answer for reading in drill_readings("Noor", "in")][:4]
    ['7 7/8 in', '23 5/8 in', '10 3/8 in', '13 11/16 in']
    """
    found = []
    for number, marks in enumerate(MARKS[unit]):
        style = Style.of(unit, marks)
        seed = int(seed_of(learner, f"{DRILL}/{number}/{turn}", unit, VERSION), 16)
        seed, figure = divmod(seed, _FIGURES[unit])
        part = tape_parts(style)[0]
        beyond = [at for at in range(style.step, part, style.step) if marks == "1 mm" or at // style.step % 2]
        found.append(Reading((figure + 3) * part + beyond[seed % len(beyond)], style))
    return tuple(found)


def _capital(text: str) -> str:
    return text[0].upper() + text[1:]
