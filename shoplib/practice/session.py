"""A session at the practice bench: a state goes in with an action, and a state comes out with a sentence.

No action raises: what cannot be done leaves the session as it was, and the sentence says what would be right. What a
learner may see is in the sentences, `Session.readings` and `Session.fits`; the kerfs and the saw are the truth behind
them, which nobody sees before the pair is cut.
"""

from dataclasses import dataclass, replace

from shoplib.checks.wood_left import LEAST
from shoplib.measure import INCH, LengthError, read_length, write_brief, write_measured
from shoplib.measure.faults import shown
from shoplib.measure.seeded import below
from shoplib.model.board import Board
from shoplib.practice.bench import USUAL, Bench
from shoplib.practice.caliper import Readings, read
from shoplib.practice.cutting import Kerf, kerf
from shoplib.practice.fit import Felt
from shoplib.practice.plan import LEVELS, SIDES, Plan, Stock, cut_side, plan_for, stock_of
from shoplib.practice.slips import NAMES, slip
from shoplib.practice.spreads import STATED, Spreads
from shoplib.words.amounts import setting
from shoplib.words.naming import and_list

NARROWEST, WIDEST = INCH // 8, INCH * 13 // 16
"""One outer cutter alone, and what the maker of the bench's own saw allows. Manuals of saws give that much (read); the
manual of a real one may give less, or allow no stack at all."""

DRAWN = "drawn"
"""Asks for a slip that is drawn by the learner's seed, which may be none."""

_MOST_READINGS = 9

MEASURED = ("width", "depth", "wall")
"""What of a test cut a caliper reads; the wall is how far the near wall is from the end."""


@dataclass(frozen=True, slots=True)
class TestCut:
    """A dado in an offcut: what was set for it, and what came out (ticks). `spot` is how thick the offcut is."""

    stack: int
    set_depth: int
    fence: int
    kerf: Kerf
    spot: int


@dataclass(frozen=True, slots=True)
class Session:
    """What stands on the bench. Lengths are ticks; None is not set yet.

    `fences` are the settings for the bottom and the shelf, in that order. `fits` are what was felt, with the number of
    the test cut. `sides` are the two real sides once they
    are cut, `kerfs` their dadoes in the order of `SIDES` and `LEVELS`, `slip` what happened to them ("" for nothing).
    """

    bench: Bench
    stack: int | None = None
    depth: int | None = None
    fences: tuple[int | None, int | None] = (None, None)
    pressed: bool = False
    tests: tuple[TestCut, ...] = ()
    readings: tuple[Readings, ...] = ()
    fits: tuple[tuple[int, Felt], ...] = ()
    sides: tuple[Board, Board] | None = None
    kerfs: tuple[Kerf, ...] = ()
    slip: str = ""

    @property
    def plan(self) -> Plan:
        """The case that the pair is for."""
        return plan_for(self.bench)

    @property
    def stock(self) -> Stock:
        """The blanks, which nobody has measured."""
        return stock_of(self.bench)

    def fence(self, dado: str) -> int | None:
        """What the fence is set to for the dado of "bottom" or "shelf"."""
        return self.fences[LEVELS.index(dado)]

    @property
    def sheet_known(self) -> int:
        """How thick the sheet is as far as the learner can know: the mean reading, else what is usual."""
        read = self.reading("sheet")
        return USUAL[self.bench.unit] if read is None else read.mean

    @property
    def tried(self) -> bool:
        """Whether the offcut was tried in the last test cut."""
        return bool(self.fits) and self.fits[-1][0] == len(self.tests)

    def reading(self, size: str, test: int = 0) -> Readings | None:
        """The last readings of "width", "depth" or "wall" of a test cut, or of the "sheet"; None without any."""
        found = [each for each in self.readings if (each.size, each.test) == (size, test)]
        return found[-1] if found else None


@dataclass(frozen=True, slots=True)
class Step:
    """What an action gives: the session after it, a sentence for the learner, and whether it was done."""

    session: Session
    said: str
    done: bool = True


def start(learner: str, exercise: str = "dado", unit: str = "in", spreads: Spreads = STATED) -> Step:
    """A learner comes to the bench. The same learner finds the same saw each time.

    >>> step = start("Noor")
    >>> step.session == start("Noor").session, step.done
    (True, True)
    >>> start("Noor", unit="yards").said
    'Lengths are shown in `in` or `mm`, not in `yards`; the bench stands in inches.'
    """
    known = _is_one(unit, ("in", "mm"))
    who, what = (name if isinstance(name, str) else "" for name in (learner, exercise))
    session = Session(Bench(who, what, unit if known else "in", spreads))
    plan, style = session.plan, session.bench.style
    if not known:
        said = f"Lengths are shown in `in` or `mm`, not in {_named(unit)}; the bench stands in inches."
        return Step(session, said, False)
    return Step(session, (
        f"Two sides {write_brief(plan.height, style)} high and {write_brief(plan.depth, style)} wide lie ready, with "
        f"offcuts of the same sheet. Each gets two dadoes {write_brief(plan.dado, style)} deep: the near wall of the "
        f"one for the bottom {write_brief(plan.bottom_up, style)} from the lower end, of the one for the shelf "
        f"{write_brief(plan.shelf_up, style)}. Make them {write_measured(plan.fit, style)} wider than the sheet is "
        "where it is thickest."
    ))


def another_sheet(session: Session) -> Step:
    """A new sheet at the same saw, which stands as it was set; what was cut and measured is cleared away.

    >>> done = set_stack(start("Noor").session, "0.7 in").session
    >>> step = another_sheet(done)
    >>> step.said, step.session.stack == done.stack
    ('A new sheet lies ready: measure it. The saw stands as you set it.', True)
    """
    new = replace(
        session, bench=replace(session.bench, used_up=session.bench.used_up + 1), tests=(), readings=(), fits=(),
        sides=None, kerfs=(), slip="",
    )
    return Step(new, "A new sheet lies ready: measure it. The saw stands as you set it.")


def set_stack(session: Session, stack, unit: str | None = None) -> Step:
    """Puts a stack on the arbor: a width as text or pint quantity, or a record whose `width` is its width in ticks.

    Here and below `unit` stands in where a text has none: only a control with its unit printed beside it passes it.

    >>> set_stack(start("Noor").session, "1 in").said
    'The stack would be 1 in wide, and this saw takes 13/16 in at most; choose less.'
    """
    style = session.bench.style
    try:
        width = _width_of(stack, unit)
    except LengthError as fault:
        return Step(session, str(fault), False)
    if width > WIDEST:
        return Step(session, (
            f"The stack would be {write_brief(width, style)} wide, and this saw takes {write_brief(WIDEST, style)} at "
            "most; choose less."
        ), False)
    if width < NARROWEST:
        return Step(session, (
            f"The stack would be {write_brief(width, style)} wide, and one cutter alone is "
            f"{write_brief(NARROWEST, style)}; choose more."
        ), False)
    said = f"The stack adds up to {write_brief(width, style, decimal=True)}; what it cuts, a test cut shows."
    return Step(replace(session, stack=width), said)


def set_depth(session: Session, depth, unit: str | None = None) -> Step:
    """Raises the cutter to this depth on the scale: text or a pint quantity.

    >>> set_depth(start("Noor").session, "deep").said
    'depth: `deep` has no number; write a length in digits with its unit, such as `23 5/8 in` or `601.5 mm`.'
    """
    try:
        ticks = read_length(depth, what="depth", unit=unit)
    except LengthError as fault:
        return Step(session, str(fault), False)
    style, left = session.bench.style, session.sheet_known - ticks
    if left < LEAST:
        through = "nothing" if left <= 0 else write_brief(left, style, decimal=True)
        return Step(session, (
            f"A dado {_text(ticks, session)} deep leaves {through} of the side, and "
            f"{write_brief(LEAST, style, decimal=True)} must be left at least; choose less."
        ), False)
    return Step(replace(session, depth=ticks), f"The depth scale stands at {_text(ticks, session)}.")


def set_fence(session: Session, distance, dado: str = "shelf", unit: str | None = None) -> Step:
    """Sets the fence for the dado of "bottom" or "shelf": from the lower end to the near wall, text or pint.

    >>> set_fence(start("Noor").session, "9 in", "lid").said
    'There are dadoes for the bottom and the shelf, and none for `lid`.'
    """
    if not _is_one(dado, LEVELS):
        return _no_dado(session, dado)
    try:
        ticks = read_length(distance, what=f"fence for the {dado}", unit=unit, zero=True)
    except LengthError as fault:
        return Step(session, str(fault), False)
    room = session.plan.height - INCH  # the widest stack and what it cuts too wide
    if ticks > room:
        return Step(session, (
            f"At {_text(ticks, session)} the dado could run out of the upper end of the side, which is "
            f"{_text(session.plan.height, session)} high; choose {_text(room, session)} at most."
        ), False)
    fences = tuple(ticks if level == dado else old for level, old in zip(LEVELS, session.fences, strict=True))
    return Step(replace(session, fences=fences), f"The fence scale stands at {_text(ticks, session)} for the {dado}.")


def press_down(session: Session, pressed: bool = True) -> Step:
    """Whether push blocks press each panel down right over the cutter.

    >>> press_down(start("Noor").session).said
    'Push blocks press each panel down right over the cutter.'
    """
    if not isinstance(pressed, bool):
        return Step(session, f"The panels are pressed down or not, True or False, and not {_named(pressed)}.", False)
    said = (
        "Push blocks press each panel down right over the cutter." if pressed
        else "The panels are pushed along and not pressed down: a bowed one rides up."
    )
    return Step(replace(session, pressed=pressed), said)


def measure_sheet(session: Session, times: int = 5) -> Step:
    """Reads the thickness of the sheet at so many spots, each another one.

    >>> measure_sheet(start("Noor", unit="mm").session, 2).said
    'The sheet, at spots a hand apart, reads 17.84 and 17.73 mm; the mean is 17.79 mm.'
    """
    fault = _bad_times(times)
    if fault:
        return Step(session, fault, False)
    after = len(session.readings)
    spots = tuple(session.bench.spot(f"reading {after} {number}") for number in range(times))
    return _measured(session, "the sheet, at spots a hand apart,", spots, "sheet", 0)


def test_cut(session: Session, dado: str = "shelf") -> Step:
    """Cuts a dado in an offcut as everything is set now, with the fence for that dado.

    >>> test_cut(start("Noor").session).said
    'Set the stack, the depth and the fence for the shelf first.'
    """
    if not _is_one(dado, LEVELS):
        return _no_dado(session, dado)
    missing = _not_set(session, (dado,))
    if missing:
        return Step(session, missing, False)
    number = len(session.tests) + 1
    set_to = session.stack, session.depth, session.fence(dado)
    cut = TestCut(*set_to, kerf(session.bench, f"test {number}", *set_to), session.bench.spot(f"offcut {number}"))
    said = f"Test cut {number} is made in an offcut. Measure it, and try an end of the sheet in it."
    return Step(replace(session, tests=(*session.tests, cut)), said)


test_cut.__test__ = False  # no test of ours: pytest goes by the name


def measure(session: Session, what: str, times: int = 3) -> Step:
    """Reads the "width", the "depth" or the "wall" (near wall from the end) of the last test cut so many times.

    >>> measure(start("Noor").session, "width").said
    'There is no test cut to measure; make one first.'
    """
    if not _is_one(what, MEASURED):
        return Step(session, f"A cut has a width, a depth and a wall to measure, and no {_named(what)}.", False)
    fault = _bad_times(times)
    if fault:
        return Step(session, fault, False)
    if not session.tests:
        return Step(session, "There is no test cut to measure; make one first.", False)
    number = len(session.tests)
    size = getattr(session.tests[-1].kerf, what)
    name = "distance of the near wall from the end" if what == "wall" else what
    return _measured(session, f"the {name} of test cut {number}", (size,) * times, what, number)


def try_fit(session: Session) -> Step:
    """Tries an end of the same offcut in the last test cut: what the hand feels, and by how much.

    >>> try_fit(start("Noor").session).said
    'There is no test cut to try; make one first.'
    """
    if not session.tests:
        return Step(session, "There is no test cut to try; make one first.", False)
    number, last = len(session.tests), session.tests[-1]
    felt = Felt(last.kerf.width - last.spot, session.bench.unit)
    said = f"The offcut in test cut {number}: {felt.said(session.bench.style)}. {felt.fit.feels} {felt.fit.do}"
    return Step(replace(session, fits=(*session.fits, (number, felt))), said)


def cut_pair(session: Session, slip_name: str = "", on: str = "right side") -> Step:
    """Cuts the dadoes of both real sides as everything is set now.

    `slip_name` is one of `slips.NAMES`, "" for none, or `DRAWN`; it happens to the side `on`.

    >>> cut_pair(start("Noor").session).said
    'Set the stack, the depth, and the fence for the bottom and the shelf first.'
    """
    if session.sides is not None:
        return Step(session, "The pair is cut already; come to the bench anew for another one.", False)
    if not _is_one(slip_name, ("", DRAWN, *NAMES)):
        return Step(session, f"No slip is called {_named(slip_name)}; there are {and_list(NAMES)}.", False)
    if not _is_one(on, SIDES):
        return Step(session, f"A slip happens to the left side or the right side, not to {_named(on)}.", False)
    missing = _not_set(session, LEVELS)
    if missing:
        return Step(session, missing, False)
    happened = _drawn(session.bench) if slip_name == DRAWN else slip_name
    plan, stock = session.plan, session.stock
    kerfs = {
        side: {level: _real(session, side, level) for level in LEVELS} for side in SIDES
    }
    sides = [cut_side(plan, side, stock, kerfs[side]) for side in SIDES]
    if happened:
        sides = [slip(happened).does(plan, side) if side.name == on else side for side in sides]
    ordered = tuple(kerfs[side][level] for side in SIDES for level in LEVELS)
    done = replace(session, sides=tuple(sides), kerfs=ordered, slip=happened)
    return Step(done, f"Both sides are cut, after {_count(len(session.tests))}. Now put the case together dry.")


def _real(session: Session, side: str, level: str) -> Kerf:
    bench = session.bench
    bow = 0 if session.pressed else bench.bow(side)
    return kerf(bench, f"{side} {level}", session.stack, session.depth, session.fence(level), bow)


def _drawn(bench: Bench) -> str:
    return (*NAMES, "")[below(len(NAMES) + 1, bench.seed_of_sheet, "slip")]


def _width_of(stack, unit: str | None) -> int:
    """The width of a stack that is an arrangement, or text, or a quantity."""
    width = getattr(stack, "width", None)
    if isinstance(width, int) and not isinstance(width, bool):
        return int(width)
    return read_length(stack, what="stack", unit=unit)


def _measured(session: Session, what: str, sizes: tuple[int, ...], size: str, test: int) -> Step:
    readings = read(session.bench, what, sizes, len(session.readings), size, test)
    return Step(replace(session, readings=(*session.readings, readings)), readings.said(session.bench))


def _bad_times(times) -> str:
    if isinstance(times, int) and not isinstance(times, bool) and 1 <= times <= _MOST_READINGS:
        return ""
    return f"Take 1 to {_MOST_READINGS} readings, not {_named(times)}."


def _not_set(session: Session, dadoes: tuple[str, ...]) -> str:
    """What must be set before a cut; empty where all is."""
    lacks = [name for name, value in (("the stack", session.stack), ("the depth", session.depth)) if value is None]
    unset = [dado for dado in dadoes if session.fence(dado) is None]
    if unset:
        lacks.append(f"the fence for the {' and the '.join(unset)}")
    return f"Set {and_list(lacks)} first." if lacks else ""


def _no_dado(session: Session, dado) -> Step:
    return Step(session, f"There are dadoes for the bottom and the shelf, and none for {_named(dado)}.", False)


def _is_one(value, names: tuple[str, ...]) -> bool:
    return isinstance(value, str) and value in names


def _named(value) -> str:
    """A refused value, as it stands in a sentence."""
    short = isinstance(value, str) or (isinstance(value, int) and abs(value) < 10**9)
    return shown(value) if short else f"something that is {type(value).__name__}"


def _text(ticks: int, session: Session) -> str:
    return setting(ticks, session.bench.style)


def _count(tests: int) -> str:
    return "no test cut" if not tests else "one test cut" if tests == 1 else f"{tests} test cuts"
