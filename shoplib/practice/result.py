"""What came of a session: the dry-fit, the gap, what can be saved, and what a practised hand would have done."""

from dataclasses import dataclass

from shoplib.model.solved import Finding
from shoplib.practice.assembled import GLUED
from shoplib.practice.dry_fit import DryFit, dry_fit, square_said
from shoplib.practice.fit import Felt, small
from shoplib.practice.plan import LEVELS, SIDES
from shoplib.practice.practised import Practised, practised
from shoplib.practice.rescue import MadeAlike, Rescue, made_alike, rescue
from shoplib.practice.session import Session
from shoplib.practice.slips import slip
from shoplib.practice.spreads import told
from shoplib.practice.trouble import Trouble, troubles
from shoplib.words.amounts import ALONG, true_amount


@dataclass(frozen=True)
class Result:
    """Everything that is shown once the pair is cut.

    `fits` are the four dadoes by level board and side, `findings` what the checks say of the case as it goes
    together, `troubles` what is wrong with each side, `rescues` what becomes of it; `alike` is what brings two sides
    together that are each right and not quite alike. `square`, `gap`, `tests` and `slip` are sentences, `rode_up`
    tells where a panel was not flat; `told` is the bench's model, stated openly.
    """

    dry_fit: DryFit
    fits: tuple[tuple[str, str, Felt], ...]
    troubles: tuple[Trouble, ...]
    rescues: tuple[Rescue, ...]
    alike: MadeAlike | None
    square: str
    gap: str
    rode_up: tuple[str, ...]
    tests: str
    slip: str
    practised: Practised
    told: tuple[str, ...]

    @property
    def findings(self) -> tuple[Finding, ...]:
        """What the dry-fit found, check by check."""
        return self.dry_fit.findings

    @property
    def said(self) -> tuple[str, ...]:
        """All of it for the learner, in order: the case, the slip, each trouble and its rescue, the count, the hand."""
        fine = () if self.troubles or self.alike else ("Nothing is wrong with either side.",)
        together = (self.alike.said,) if self.alike else ()
        return tuple(text for text in (
            self.square, self.gap, self.slip, *(trouble.said for trouble in self.troubles), *self.rode_up, *fine,
            *(each.said for each in self.rescues), *together, self.tests, *self.practised.said, *self.told,
        ) if text)


def result(session: Session) -> Result | None:
    """What came of the session; None while the pair is not cut.

    >>> from shoplib.practice.session import cut_pair, set_depth, set_fence, set_stack, start
    >>> from shoplib.practice.spreads import NONE
    >>> session = set_stack(start("Noor", spreads=NONE).session, "0.706 in").session
    >>> result(session) is None
    True
    >>> session = set_fence(set_depth(session, "1/4 in").session, "9 in").session
    >>> done = result(cut_pair(set_fence(session, "1 1/2 in", "bottom").session).session)
    >>> done.findings, done.square
    ((), 'The case is square: both diagonals of its front are alike.')
    """
    if session.sides is None:
        return None
    bench, plan, stock = session.bench, session.plan, session.stock
    left, right = session.sides
    fit = dry_fit(bench, plan, stock, left, right)
    wrong = (*troubles(left, plan, stock, bench.style), *troubles(right, plan, stock, bench.style))
    becomes = (rescue(bench, plan, stock, left, right), rescue(bench, plan, stock, right, left))
    hand = practised(bench)
    alike = None if wrong else made_alike(bench, plan, stock, left, right)
    return Result(
        fit, fit.case.fits, wrong, tuple(each for each in becomes if each), alike, square_said(fit, bench),
        _gap(fit, session), _rode_up(session), _tests(session, hand), slip(session.slip).how if session.slip else "",
        hand, told(bench.spreads, bench.style),
    )


def _gap(fit: DryFit, session: Session) -> str:
    """The widest gap, or the worst clash where something will not go in."""
    style = session.bench.style
    clash = max((f for f in fit.findings if f.check == "overlap"), key=lambda f: f.amount, default=None)
    if clash is not None:
        one, other = clash.boards
        size = true_amount(clash.amount, style)
        return f"It does not go together: {one} and {other} want the same wood, {size} of it."
    if not fit.gaps:
        return "Every board goes home: no gap is wider than glue fills."
    worst = fit.gaps[0]
    return (
        f"The widest gap is {small(worst.amount, style)}, {ALONG[worst.axis]}, between the {worst.boards[0]} and the "
        f"{worst.boards[1]}."
    )


def _rode_up(session: Session) -> tuple[str, ...]:
    """Where a panel was not flat on the table, a sentence for each such dado."""
    style, names = session.bench.style, [(side, level) for side in SIDES for level in LEVELS]
    return tuple(
        f"In the {side} the panel rode up in the middle: there the dado for the {level} is "
        f"{small(cut.deepest - cut.depth, style)} shallower than at its ends."
        for (side, level), cut in zip(names, session.kerfs, strict=True) if cut.deepest - cut.depth > GLUED
    )


def _tests(session: Session, hand: Practised) -> str:
    made, enough = len(session.tests), len(hand.session.tests)
    count = "no test cut" if not made else "one test cut" if made == 1 else f"{made} test cuts"
    return f"You made {count}; a practised hand makes {enough} on this bench."
