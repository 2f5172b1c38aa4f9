"""A session at the trial bench: set the scales, cut a test joint, measure it, feel it, and then cut the pair.

As at the bench of the dado a state goes in with an action, and a state comes out with a sentence; nothing raises. What
a learner may see is in the sentences, `TrialSession.readings` and `TrialSession.felt`; the joints are the truth behind
them, which nobody sees before the pair is cut.
"""

from collections.abc import Callable
from dataclasses import dataclass, replace
from functools import partial

from shoplib.joints.bench_pair import CannotCut, Pair, Stock, Values
from shoplib.measure import INCH, MM, LengthError, Style, read_length, to_step
from shoplib.measure.seeded import bell, below
from shoplib.practice.bench import Bench
from shoplib.practice.caliper import Readings, read
from shoplib.practice.trial_angle import read_angle
from shoplib.practice.trial_felt import felt_said
from shoplib.practice.trial_kind import Made, Scale, Stood, Trial
from shoplib.practice.trial_spreads import DEGREE, PROTRACTOR, SPREADS, TrialSpreads, degrees
from shoplib.practice.trial_stand import stood
from shoplib.practice.trial_stock import trial_plan, trial_stock
from shoplib.practice.trials import trial
from shoplib.words.amounts import setting
from shoplib.words.naming import and_list

DRAWN = "drawn"
"""Asks for a slip that is drawn by the learner's seed, which may be none."""

BOARDS = ("entering", "receiving")


@dataclass(frozen=True, slots=True)
class Tested:
    """A test joint in offcuts: what the scales stood at, and what came out."""

    at: tuple[int, ...]
    made: Made
    stood: Stood


@dataclass(frozen=True, slots=True)
class TrialSession:
    """What stands on the bench. Lengths are ticks, angles parts of a degree; None is not set yet.

    `at` are the settings in the order of the scales. `felt` has what was felt of a test joint, by its number. `made`
    and `pair` are the real pair once it is cut, `slip` what happened to it ("" for nothing).
    """

    name: str
    bench: Bench
    off: TrialSpreads = SPREADS
    at: tuple[int | None, ...] = ()
    tests: tuple[Tested, ...] = ()
    readings: tuple[Readings, ...] = ()
    felt: tuple[tuple[int, tuple[str, ...]], ...] = ()
    made: Made | None = None
    pair: Stood | None = None
    slip: str = ""

    @property
    def trial(self) -> Trial:
        """What is practised."""
        return trial(self.name)

    @property
    def style(self) -> Style:
        """How lengths are written here."""
        return self.bench.style

    @property
    def plan(self) -> dict[str, int]:
        """What the pair is to be."""
        return trial_plan(self.name, self.bench.unit)

    @property
    def usual(self) -> Stock:
        """The boards as they are usually found."""
        return trial_stock(self.name, self.bench.unit)

    @property
    def stock(self) -> Stock:
        """The boards as they are, which nobody has measured."""
        usual, bench = self.usual, self.bench
        whole = bench.shift(bench.spreads.sheet, "sheet")
        if self.trial.kind.group > 1:  # solid boards are planed together
            return trial_stock(self.name, bench.unit, *[usual.enters.nominal + whole] * 2)
        return trial_stock(self.name, bench.unit, *(
            sheet.nominal + whole + bench.shift(bench.spreads.spot, "board", which)
            for sheet, which in zip((usual.enters, usual.receives), BOARDS, strict=True)
        ))

    @property
    def known(self) -> Stock:
        """The boards as far as the learner can know them: as they were read, else as they usually are."""
        found = [self.reading(which) for which in BOARDS]
        return trial_stock(self.name, self.bench.unit, *(None if one is None else one.mean for one in found))

    def set_to(self, name: str) -> int | None:
        """What a scale stands at."""
        return dict(zip((scale.name for scale in self.trial.scales), self.at, strict=True))[name]

    def reading(self, size: str, test: int = 0) -> Readings | None:
        """The last readings of a scale's size in a test joint, or of the "entering" or the "receiving" board."""
        found = [each for each in self.readings if (each.size, each.test) == (size, test)]
        return found[-1] if found else None

    def felt_of(self, test: int) -> tuple[str, ...]:
        """What was felt of a test joint; nothing where it was not tried."""
        return dict(self.felt).get(test, ())

    def written(self, scale: Scale, size: int) -> str:
        """A setting or a size of this scale in words."""
        return degrees(size) if scale.sort == "angle" else setting(size, self.style)


@dataclass(frozen=True, slots=True)
class TrialStep:
    """What an action gives: the session after it, a sentence for the learner, and whether it was done."""

    session: TrialSession
    said: str
    done: bool = True


def begin(name: str, learner: str, unit: str = "in", off: TrialSpreads = SPREADS) -> TrialSession:
    """A learner comes to the bench of a joint, and finds the same machine each time.

    >>> begin("rabbet", "Noor") == begin("rabbet", "Noor"), begin("rabbet", "Noor").at
    (True, (None, None))
    """
    bench = Bench(learner, f"trial/{name}", unit, off.sheet)
    return TrialSession(name, bench, off, (None,) * len(trial(name).scales))


def task(session: TrialSession) -> tuple[str, ...]:
    """What is to be cut, a line for each scale.

    >>> task(begin("rabbet", "Noor"))
    ('Width of the rabbet: as wide as the bottom is thick, and 0.002 in more.', 'Depth of the rabbet: 23/64 in.')
    """
    usual, plan = session.usual, session.plan

    def sizes(values: Values) -> dict[str, str]:
        return {name.replace(" ", "_"): setting(value, session.style) for name, value in values.items()}

    return tuple(
        f"{_begin(scale.makes)}: "
        + scale.rule.format(aim=session.written(scale, scale.aim(usual, plan)), **sizes(plan),
                            **sizes(scale.told(usual, plan))) + "."
        for scale in session.trial.scales
    )


def set_scale(session: TrialSession, name: str, text: object, unit: str | None = None) -> TrialStep:
    """Sets a scale: text with its unit or a pint quantity, an angle as a number of degrees.

    `unit` stands in where a text has none: only a control with its unit printed beside it passes it.

    >>> set_scale(begin("rabbet", "Noor"), "depth", "3/8 in").said
    'Depth stands at 3/8 in.'
    >>> set_scale(begin("rabbet", "Noor"), "depth", "3 in").said
    'Depth goes from 15/64 in to 31/64 in at this practice, and not to 3 in.'
    """
    scale = _scale(session, name)
    if scale is None:
        names = and_list([each.name for each in session.trial.scales])
        return TrialStep(session, f"There is nothing called {name!r} to set here; there are {names}.", False)
    label = scale.label.partition(":")[0]
    try:
        size = read_angle(text, label) if scale.sort == "angle" else read_length(
            text, what=label, unit=unit, zero=True, negative=scale.sort == "line"
        )
    except LengthError as fault:
        return TrialStep(session, str(fault), False)
    low, high = limits(session, scale)
    if not low <= size <= high:
        return TrialStep(session, (
            f"{label} goes from {session.written(scale, low)} to {session.written(scale, high)} at this practice, and "
            f"not to {session.written(scale, size)}."
        ), False)
    at = tuple(size if each is scale else old for each, old in zip(session.trial.scales, session.at, strict=True))
    return TrialStep(replace(session, at=at), f"{label} stands at {session.written(scale, size)}.")


def limits(session: TrialSession, scale: Scale) -> tuple[int, int]:
    """How far a scale goes: about as much either way of what is usual, whatever is hidden."""
    usual = scale.aim(session.usual, session.plan)
    inch, mm = scale.reach if any(scale.reach) else (INCH // 8, 3 * MM)
    reach = 3 * DEGREE if scale.sort == "angle" else session.usual.natural(inch, mm)
    return usual - reach, usual + reach


def measure_boards(session: TrialSession) -> TrialStep:
    """Reads the thickness of both boards, three times each.

    >>> measure_boards(begin("rabbet", "Noor", "mm")).said
    'The bottom reads 18.03, 17.99 and 18 mm; the mean is 18.01 mm. The side reads 17.98, 17.98 and 17.98 mm; the mean \
is 17.98 mm.'
    """
    said, stock = [], session.stock
    for which, sheet, name in zip(BOARDS, (stock.enters, stock.receives), board_names(session), strict=True):
        found = read(session.bench, f"the {name}", (sheet.thickness,) * 3, len(session.readings), which)
        session = replace(session, readings=(*session.readings, found))
        said.append(found.said(session.bench))
    return TrialStep(session, " ".join(said))


def board_names(session: TrialSession) -> tuple[str, str]:
    """What the entering and the receiving board are called."""
    joined = session.trial.kind.build(session.usual, session.plan).joints[0]
    return joined.enters, joined.receives


def test_cut(session: TrialSession) -> TrialStep:
    """Cuts a test joint in offcuts as everything is set now.

    >>> test_cut(begin("rabbet", "Noor")).said
    'Set the fence and the depth first.'
    """
    missing = _not_set(session)
    if missing:
        return TrialStep(session, missing, False)
    number = len(session.tests) + 1
    try:
        made, pair = _cut(session, f"test {number}")
    except CannotCut as fault:
        return TrialStep(session, fault.sentence, False)
    tested = Tested(session.at, made, _stood(session, pair))
    said = f"Test joint {number} is cut in offcuts. Measure it, and try it."
    return TrialStep(replace(session, tests=(*session.tests, tested)), said)


test_cut.__test__ = False  # no test of ours: pytest goes by the name


def measure(session: TrialSession) -> TrialStep:
    """Reads every size of the last test joint, three times, or twice on each of two boards.

    >>> measure(begin("rabbet", "Noor")).said
    'There is no test joint to measure; cut one first.'
    """
    if not session.tests:
        return TrialStep(session, "There is no test joint to measure; cut one first.", False)
    number, said = len(session.tests), []
    for scale in session.trial.scales:
        sizes = [session.tests[-1].made.of(scale.name, cut) for cut in scale.cuts]
        sizes *= 3 if len(sizes) == 1 else 2
        after = len(session.readings)
        if scale.sort == "angle":
            found = _read_angles(session, scale, sizes, after, number)
            said.append(_angles_said(found))
        else:
            found = read(session.bench, f"the {scale.makes}", tuple(sizes), after, scale.name, number)
            said.append(found.said(session.bench))
        session = replace(session, readings=(*session.readings, found))
    return TrialStep(session, " ".join(said))


def try_fit(session: TrialSession) -> TrialStep:
    """Puts the last test joint together: what the hand feels and the eye sees.

    >>> try_fit(begin("rabbet", "Noor")).said
    'There is no test joint to try; cut one first.'
    """
    if not session.tests:
        return TrialStep(session, "There is no test joint to try; cut one first.", False)
    number = len(session.tests)
    found = felt_said(session.trial, session.tests[-1].stood, session.style)
    felt = (*session.felt, (number, tuple(short for short, _ in found)))
    return TrialStep(replace(session, felt=felt), " ".join(long for _, long in found))


def cut_pair(session: TrialSession, slip: str = "") -> TrialStep:
    """Cuts the real pair as everything is set now; `slip` is one of the joint's, "" for none, or `DRAWN`.

    >>> cut_pair(begin("rabbet", "Noor"), "haste").said
    'No slip is called "haste"; there are wrong face, wrong end and forgotten.'
    """
    if session.pair is not None:
        return TrialStep(session, "The pair is cut already; take new boards for another one.", False)
    names = [each.name for each in session.trial.slips]
    if slip not in ("", DRAWN, *names):
        return TrialStep(session, f'No slip is called "{slip}"; there are {and_list(names)}.', False)
    missing = _not_set(session)
    if missing:
        return TrialStep(session, missing, False)
    if slip == DRAWN:
        slip = ["", *names][below(len(names) + 1, session.bench.seed_of_sheet, "slip")]
    try:
        made, pair = _cut(session, "pair")
    except CannotCut as fault:
        return TrialStep(session, fault.sentence, False)
    happened = next((each for each in session.trial.slips if each.name == slip), None)
    put = stood(session.trial, happened.does(pair), planned(session), True) if happened else _stood(session, pair)
    tests = len(session.tests)
    count = f"{tests or 'no'} test joint{'' if tests == 1 else 's'}"
    return TrialStep(replace(session, made=made, pair=put, slip=slip), f"The pair is cut, after {count}.")


def another(session: TrialSession) -> TrialSession:
    """New boards at the same machine, which stands as it was set; what was cut and measured is cleared away."""
    bench = replace(session.bench, used_up=session.bench.used_up + 1)
    return TrialSession(session.name, bench, session.off, session.at)


def planned(session: TrialSession) -> Pair:
    """The pair as it is meant, of the boards as they are."""
    return session.trial.kind.make(session.stock, session.plan)


def _stood(session: TrialSession, pair: Pair) -> Stood:
    return stood(session.trial, pair, planned(session))


def hidden(session: TrialSession, scale: Scale) -> int:
    """What a scale is out, the same in every cut; nobody sees it before the pair is cut."""
    return bell(session.off.of(scale.sort).always, session.bench.seed, "scale", scale.name)


def _cut(session: TrialSession, cut: str) -> tuple[Made, Pair]:
    """Sizes = setting + what the scale is out + what one cut differs from the next; and the pair that comes of them."""
    sizes = {}
    for scale, at in zip(session.trial.scales, session.at, strict=True):
        for which in scale.cuts:
            sizes[scale.name, which] = at + hidden(session, scale) + _again(
                session, cut, scale.sort, which, scale.name
            )
    made = Made(sizes, partial(_again, session, cut))
    return made, session.trial.as_cut(session.trial.kind, session.stock, session.plan, made)


def _again(session: TrialSession, cut: str, sort: str, *names: str) -> int:
    return session.bench.shift(session.off.of(sort).again, "cut", cut, *names)


def _read_angles(session: TrialSession, scale: Scale, sizes: list[int], after: int, test: int) -> Readings:
    shift: Callable[[int], int] = lambda number: session.bench.shift(  # noqa: E731
        session.off.protractor, "angle", str(after), str(number)
    )
    values = tuple(to_step(size + shift(number), PROTRACTOR) for number, size in enumerate(sizes))
    return Readings(f"the {scale.makes}", values, scale.name, test)


def _angles_said(found: Readings) -> str:
    bare = [degrees(value).partition(" ")[0] for value in found.values]
    return (f"{_begin(found.what)} reads {', '.join(bare[:-1])} and {degrees(found.values[-1])}; the mean is "
            f"{degrees(found.mean)}.")


def _scale(session: TrialSession, name: object) -> Scale | None:
    return next((each for each in session.trial.scales if each.name == name), None)


def _not_set(session: TrialSession) -> str:
    """What must be set before a cut; empty where nothing must."""
    missing = [scale.name for scale, at in zip(session.trial.scales, session.at, strict=True) if at is None]
    return f"Set {and_list([f'the {name}' for name in missing])} first." if missing else ""


def _begin(text: str) -> str:
    return text[:1].upper() + text[1:]
