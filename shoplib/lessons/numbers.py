"""Each learner's own numbers: the givens of an exercise, drawn by its seed, each by its own name."""

from dataclasses import dataclass

from shoplib.lessons.exercise import Exercise, Given, Givens
from shoplib.lessons.say import caliper_text
from shoplib.lessons.set_exercise import SetExercise
from shoplib.measure import INCH_STYLE, MM_STYLE, read_length, write_length
from shoplib.measure.seeded import below, seed_of

ATTEMPTS = 200


@dataclass(frozen=True, slots=True)
class Draw:
    """Draws givens for one `seed` in one `unit`; `attempt` counts draws where two rules came out alike.

    Ranges are texts (low, high, step): the numbers lie on steps that the shop can set or read.
    """

    seed: str
    unit: str
    attempt: int = 0

    def _below(self, name: str, count: int) -> int:
        return below(count, self.seed, str(self.attempt), name)

    def _step(self, name: str, inch: tuple[str, str, str], mm: tuple[str, str, str]) -> int:
        low, high, step = (read_length(text) for text in (inch if self.unit == "in" else mm))
        return low + step * self._below(name, (high - low) // step + 1)

    def tape(self, name: str, what: str, *, inch: tuple[str, str, str], mm: tuple[str, str, str]) -> Given:
        """A size that is read off a tape or a rule."""
        return self.derived(name, what, self._step(name, inch, mm))

    def reading(self, name: str, what: str, *, inch: tuple[str, str, str], mm: tuple[str, str, str]) -> Given:
        """A thickness that is read off the calipers."""
        return self.derived_reading(name, what, self._step(name, inch, mm))

    def pick(self, name: str, what: str, *, inch: tuple[str, ...], mm: tuple[str, ...]) -> Given:
        """One of a few sizes, such as the bits in the drawer."""
        sizes = inch if self.unit == "in" else mm
        return self.derived(name, what, read_length(sizes[self._below(name, len(sizes))]))

    def count(self, name: str, what: str, low: int, high: int) -> Given:
        """A whole number from `low` to `high`."""
        drawn = low + self._below(name, high - low + 1)
        return Given(name, what, drawn, str(drawn))

    def derived(self, name: str, what: str, ticks: int) -> Given:
        """A length that follows from others, written as a rule shows it."""
        return Given(name, what, ticks, write_length(ticks, INCH_STYLE if self.unit == "in" else MM_STYLE))

    def derived_reading(self, name: str, what: str, ticks: int) -> Given:
        """A thickness that follows from others, written as calipers show it."""
        return Given(name, what, ticks, caliper_text(ticks, self.unit))


def givens_for(exercise: Exercise | SetExercise, learner: str, unit: str) -> Givens:
    """The learner's numbers: the first draw in which the answer and all slips stand apart.

    Raises RuntimeError where no draw does, which is a fault of the exercise.
    """
    seed = seed_of(learner, exercise.id, unit, exercise.version)
    for attempt in range(ATTEMPTS):
        givens = Givens(exercise.givens(Draw(seed, unit, attempt)))
        if exercise.apart(givens, unit):
            return givens
    raise RuntimeError(f"{exercise.id}: two rules came out alike in each of {ATTEMPTS} draws ({unit})")
