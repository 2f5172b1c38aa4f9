"""What came of the pair: the dry-fit look by look, what can be saved, and what a practised hand would have done."""

from dataclasses import dataclass
from functools import cached_property, lru_cache

from shoplib.checks.pair_fit import fit_pair
from shoplib.measure import INCH, MM, Style, mean, to_step
from shoplib.model.solved import Finding
from shoplib.practice.fit import Felt, small
from shoplib.practice.trial import (
    TrialSession,
    TrialStep,
    board_names,
    cut_pair,
    measure,
    measure_boards,
    set_scale,
    test_cut,
    try_fit,
)
from shoplib.practice.trial_felt import judged, looks_of
from shoplib.practice.trial_kind import Look, Scale, Stood
from shoplib.practice.trial_spreads import DEGREE, degrees

NO_HARM = "This time it did no harm, because so little was off; at another machine it may."
"""What is said of a slip that counts an error twice where there is hardly one."""

MOST = 6
"""A practised hand stops after so many test joints, whatever it feels."""


@dataclass(frozen=True, slots=True)
class Came:
    """One thing of the dry-fit: what it is in few words and in a sentence, and what can be saved where it is off."""

    name: str
    good: bool
    short: str
    said: str
    saved: str = ""


@dataclass(frozen=True)
class TrialResult:
    """What came of a pair. `clashes` are what the exact dry-fit finds of wood that two boards want, more than
    a press fit gives. `harmless` is a slip that counts an error twice, where there was hardly any."""

    came: tuple[Came, ...]
    slip: str
    clashes: tuple[Finding, ...]
    tests: int
    practised: "Practised"
    harmless: bool = False

    @property
    def good(self) -> bool:
        """Whether the joint goes together as it was meant."""
        slipped = bool(self.slip) and not self.harmless
        return not slipped and not self.clashes and all(each.good for each in self.came)


@dataclass(frozen=True)
class Practised:
    """How a practised hand went about it at the same machine with the same boards: where it stands when all is right
    for the pair, and what it did.
    """

    ready: TrialSession
    said: tuple[str, ...]

    @cached_property
    def session(self) -> TrialSession:
        """Its session with the pair cut."""
        return _done(cut_pair(self.ready))

    @property
    def tests(self) -> int:
        """How many test joints it cut."""
        return len(self.ready.tests)


def result(session: TrialSession) -> TrialResult | None:
    """What came of the pair; None before it is cut."""
    if session.pair is None:
        return None
    fresh = TrialSession(session.name, session.bench, session.off, (None,) * len(session.at))
    slip = next((each for each in session.trial.slips if each.name == session.slip), None)
    clashes = () if session.pair.tight else tuple(
        each for each in fit_pair(session.pair.pair)
        if each.check == "overlap" and not Felt(-each.amount, session.bench.unit).enters
    )
    came = came_of(session, clashes)
    good = {each.name for each in came if each.good}
    harmless = slip is not None and bool(slip.shows) and not clashes and good.issuperset(slip.shows)
    told = f"{slip.how} {NO_HARM if harmless else slip.saved}" if slip else ""
    return TrialResult(came, told, clashes, len(session.tests), practised(fresh), harmless)


def came_of(session: TrialSession, clashes: tuple[Finding, ...] = ()) -> tuple[Came, ...]:
    """The dry-fit of the pair, look by look."""
    pair, style = session.pair, session.style
    if pair.stopped:
        enters = session.trial.enters
        return (Came("home", False, f"stops {small(pair.stopped, style)} before it is home", (
            f"The {enters.mover} strikes the {enters.against} {small(pair.stopped, style)} before it is home."
        )),)
    if session.slip and clashes:
        return tuple(Came("clash", False, "does not go in", each.text) for each in clashes)
    return tuple(_came(look, pair, style) for look in looks_of(session.trial, pair))


def _came(look: Look, pair: Stood, style: Style) -> Came:
    how, short, said = judged(look, pair, style)
    saved = {"good": "", "more": look.more[1], "less": look.less[1]}[how]
    return Came(look.name, how == "good", short, said, saved)


@lru_cache(maxsize=4)
def practised(session: TrialSession) -> Practised:
    """Plays a practised hand at this machine: boards measured, test joints until the fit is right, then the pair.

    Each test corrects every scale by the mean of what all tests were off; the last one confirms. The order is common
    practice, no source.

    >>> from shoplib.practice.trial import begin
    >>> hand = practised(begin("rabbet", "Noor"))
    >>> hand.tests, result(hand.session).good
    (2, True)
    """
    style, said = session.style, []
    session = measure_boards(session).session
    entering, receiving = board_names(session)
    known, plan = session.known, session.plan
    said.append(f"The {entering} measures {small(known.enters.thickness, style)}, the {receiving} "
                f"{small(known.receives.thickness, style)}.")
    off: dict[str, list[int]] = {scale.name: [] for scale in session.trial.scales}
    for number in range(1, MOST + 1):
        for scale in session.trial.scales:
            wrong = mean(off[scale.name]) if off[scale.name] else 0
            session = _done(set_scale(session, scale.name, _size(scale, scale.aim(known, plan) - wrong, style)))
        session = _done(try_fit(_done(measure(_done(test_cut(session))))))
        told = []
        for scale in session.trial.scales:
            read = session.reading(scale.name, number).mean
            off[scale.name].append(read - session.set_to(scale.name))
            told.append(f"{scale.makes} {_size(scale, read, style)}")
        said.append(f"Test joint {number}: {', '.join(told)}; {'; '.join(session.felt_of(number)) or 'not felt'}.")
        if number > 1 and _right(session):
            break
        said.append(_corrected(session, off, known, plan))
    said.append("The pair is cut at that, nothing moved in between.")
    return Practised(session, tuple(said))


def _right(session: TrialSession) -> bool:
    """Whether the last test joint is well within what the hand wants, so that the next cuts are too."""
    pair, style = session.tests[-1].stood, session.style
    return not pair.tight and all(_well_within(look, look.amount(pair), style) for look in session.trial.looks
                                  if look.felt)


def _well_within(look: Look, amount: int, style: Style) -> bool:
    if look.sort == "gap":
        return abs(amount) * 2 <= look.allow
    step = INCH // 1000 if style.unit == "in" else MM // 40
    return all(Felt(amount + change, style.unit).enters and not Felt(amount + change, style.unit).loose
               for change in (-3 * step // 2, 3 * step // 2))


def _corrected(session: TrialSession, off: dict[str, list[int]], known: object, plan: dict[str, int]) -> str:
    told = []
    for scale in session.trial.scales:
        new = scale.aim(known, plan) - mean(off[scale.name])
        told.append(f"{scale.label.partition(':')[0].partition(',')[0].lower()} to {_size(scale, new, session.style)}")
    return f"So it sets {', '.join(told)}."


def _size(scale: Scale, size: int, style: Style) -> str:
    return degrees(to_step(size, DEGREE // 100)) if scale.sort == "angle" else small(size, style)


def trusting(session: TrialSession) -> TrialSession:
    """The same bench by someone who measures the boards, trusts every scale, and makes no test."""
    session = measure_boards(session).session
    for scale in session.trial.scales:
        text = _size(scale, scale.aim(session.known, session.plan), session.style)
        session = _done(set_scale(session, scale.name, text))
    return _done(cut_pair(session))


def _done(step: TrialStep) -> TrialSession:
    """The session after a step that a practised hand never has refused; ValueError says where it was."""
    if not step.done:
        raise ValueError(step.said)
    return step.session
