"""Practice benches of the joints set to whatever a test wants."""

from shoplib.measure import write_measured
from shoplib.practice.trial import begin, hidden, set_scale
from shoplib.practice.trial_spreads import DEGREE, SPREADS

UNITS = ("in", "mm")


def typed(scale, size, style):
    return str(size / DEGREE) if scale.sort == "angle" else write_measured(size, style)


def aimed(name, unit="in", off=SPREADS, learner="Noor", **more):
    """The bench set by its hidden errors, so that only what changes from cut to cut is left; `more` is added to scales.
    """
    session = begin(name, learner, unit, off)
    for scale in session.trial.scales:
        size = scale.aim(session.stock, session.plan) - hidden(session, scale) + more.get(scale.name, 0)
        step = set_scale(session, scale.name, typed(scale, size, session.style))
        assert step.done, step.said
        session = step.session
    return session
