"""The practice case as it was cut: put together dry, with every fault marked where it is."""

from shoplib.draw.dry_fit import View
from shoplib.draw.dry_fit import dry_fit as drawn_dry_fit
from shoplib.draw.look import FROM_ABOVE, FRONT
from shoplib.draw.practice_cut import real_cut
from shoplib.draw.scene import Scene
from shoplib.measure import Style
from shoplib.practice.dry_fit import planned_case
from shoplib.practice.fit import small
from shoplib.practice.result import Result
from shoplib.practice.session import Session
from shoplib.practice.trouble import MOVED
from shoplib.words.amounts import how_much

_FRONT, _PLAN = View(FRONT, "bottom"), View(FROM_ABOVE, "back")


def case_as_cut(session: Session, done: Result) -> tuple[Scene, ...]:
    """The case from the front; from above too where boards clash that way; then the worst dado seen from the end.

    `done` is the result of this session, with the pair cut.

    >>> from shoplib.practice import result
    >>> from shoplib.practice.bench import Bench
    >>> from shoplib.practice.practised import trusting
    >>> session = trusting(Bench("workbook", "dado", "in"))
    >>> [scene.title for scene in case_as_cut(session, result(session))]
    ['Put together dry, as you cut it', 'The dado for the bottom in the left side']
    """
    built = done.dry_fit.case.cabinet
    planned = planned_case(session.bench, session.plan, session.stock).cabinet
    wrong = (*done.dry_fit.clashes, *done.dry_fit.gaps)
    scenes = [drawn_dry_fit(built, planned, wrong, _FRONT, _amount)]
    from_front = [misfit for misfit in wrong if misfit.axis == _FRONT.look.along]
    if from_front:
        scenes.append(drawn_dry_fit(built, planned, from_front, _PLAN, _amount))
    side, level = _worst(done)
    dado = real_cut(session, side, level)
    return (*scenes, *([dado] if dado else []))


def _amount(ticks: int, style: Style) -> str:
    """As the bench says it: what is less than a rule shows well, as the caliper has it."""
    return small(ticks, style) if ticks < MOVED else how_much(ticks, style)


def _worst(done: Result) -> tuple[str, str]:
    """Side and board of the dado to look at: one that is too narrow, else any with a trouble, else the loosest."""
    found = sorted((trouble for trouble in done.troubles if trouble.dado), key=lambda each: each.kind != "narrow")
    if found:
        return found[0].side, found[0].dado
    if not done.fits:
        return "", ""
    level, side, _ = max(done.fits, key=lambda each: each[2].over)
    return side, level
