"""What the page of a joint shows of its practice bench: the learner's own, and somebody else's worked walk."""

from shoplib.draw.letters import drawn_with
from shoplib.draw.pen import draw
from shoplib.draw.trial_pair import as_cut_views
from shoplib.lessons.ask import NOT_CHOSEN
from shoplib.lessons.choice import BEFORE_ANY, read_choice, unit_in_use
from shoplib.lessons.figure import Figure
from shoplib.lessons.large_type import large_in_use, letters_in_use
from shoplib.live.trial_panel import TrialPanel, trial_panel
from shoplib.live.trial_says import came_of_it
from shoplib.practice.trial import TrialSession, begin
from shoplib.practice.trial_result import practised, result, trusting

WHOSE = "Ilse"
PICTURE = (420.0, 260.0)


def trial_bench(name: str) -> TrialPanel:
    """The practice bench of the joint of that name with the learner's own machine, in the learner's unit."""
    choice = read_choice()
    chosen = choice or BEFORE_ANY
    return trial_panel(name, chosen.unit, chosen.learner, large=large_in_use(), note="" if choice else NOT_CHOSEN)


def trial_worked(name: str, unit: str | None = None) -> Figure:
    """A practised hand at Ilse's machine: what it measured and set, test joint by test joint, and what came of it.

    >>> trial_worked("rabbet", "in").words[-2:]
    ['The bottom is flush with the end of the side, and the shoulder is closed.', 'The bottom goes home.']
    """
    hand = practised(begin(name, WHOSE, unit or unit_in_use()))
    return _figure(hand.session, hand.said)


def trial_trusted(name: str, unit: str | None = None) -> Figure:
    """The same machine and boards by someone who measures the boards, trusts the scales, and cuts no test joint.

    >>> trial_trusted("groove", "in").words[-1].startswith("You cut no test joints; a practised hand cuts")
    True
    """
    session = trusting(begin(name, WHOSE, unit or unit_in_use()))
    done = result(session)
    tests = next(part for part in came_of_it(session, done) if part.heading == "Test joints")
    return _figure(session, (), tests.lines)


def _figure(session: TrialSession, before: tuple[str, ...], after: tuple[str, ...] = ()) -> Figure:
    """The joint as it was cut, in section, with the words under it."""
    scene = as_cut_views(session)[0]
    words = [*before, *(" ".join(filter(None, (each.said, each.saved))) for each in result(session).came), *after]
    with drawn_with(letters_in_use()):
        return Figure(draw(scene, PICTURE), scene.alt, words)
