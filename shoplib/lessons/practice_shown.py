"""What a page shows of the practice bench: the bench of the learner, and two worked walks at somebody else's.

Both walks are played at one bench, Ilse's: so a learner's own saw stays unknown, and the two can be compared.
"""

from dataclasses import replace

from shoplib.draw.letters import drawn_with
from shoplib.draw.pen import draw
from shoplib.draw.practice_case import case_as_cut
from shoplib.lessons.ask import NOT_CHOSEN
from shoplib.lessons.choice import BEFORE_ANY, read_choice, unit_in_use
from shoplib.lessons.figure import Figure
from shoplib.lessons.large_type import large_in_use, letters_in_use
from shoplib.lessons.own_set import offer_ticked
from shoplib.live.practice_panel import PracticePanel, practice_panel
from shoplib.practice import Session, result
from shoplib.practice.bench import Bench
from shoplib.practice.practised import practised, trusting

WHOSE = "Ilse"
PICTURE = (420.0, 320.0)


def practice_bench() -> PracticePanel:
    """The bench with the learner's own saw, in the learner's unit; what was ticked of a dado set is among its sets."""
    choice = read_choice()
    chosen = choice or BEFORE_ANY
    return offer_ticked(
        practice_panel(chosen.unit, chosen.learner, large=large_in_use(), note="" if choice else NOT_CHOSEN)
    )


def practised_hand(unit: str | None = None) -> Figure:
    """A practised hand at Ilse's bench: two test cuts, and a case in which the dry-fit finds nothing.

    >>> practised_hand("in").words[-2:]
    ['Every board goes home: no gap is wider than glue fills.', 'Nothing is wrong with either side.']
    """
    hand = practised(_bench(unit))
    done = result(hand.session)
    return _figure(hand.session, [*hand.said, *done.said[: done.said.index(done.tests)]])


def trusting_the_scales(unit: str | None = None) -> Figure:
    """The same bench by someone who measures the sheet, sets the saw by its scales and makes no test cut.

    >>> trusting_the_scales("in").words[2]
    'The dado for the bottom in the left side is 0.015 in too shallow.'
    """
    session = trusting(_bench(unit))
    done = result(session)
    return _figure(session, list(done.said[: done.said.index(done.tests) + 1]))


def _bench(unit: str | None) -> Bench:
    return Bench(WHOSE, "dado", unit or unit_in_use())


def _figure(session: Session, words: list[str]) -> Figure:
    """The case as it was cut, from the front, with the words under it."""
    scene = replace(case_as_cut(session, result(session))[0], title="Put together dry, as it was cut")
    with drawn_with(letters_in_use()):
        return Figure(draw(scene, PICTURE), scene.alt, words)
