"""What the practice bench tells: its cautions, how a side may lie, the log of test cuts, and what came of it."""

from collections.abc import Iterable
from dataclasses import dataclass

from shoplib.measure import Style, write_brief
from shoplib.practice import DRAWN, MEASURED, Result, Session
from shoplib.practice.plan import SIDES
from shoplib.practice.spreads import left_out, told
from shoplib.tables.setups import Setup, setup
from shoplib.tables.setups import cautions as all_cautions
from shoplib.words.amounts import setting

WAYS = {
    "": "as it should: lower end, inner face down",
    "wrong reference edge": "its upper end to the fence",
    "mirrored pair": "just like the other side, front to the same hand",
    "wrong face": "its outer face down",
    "wrong side of the line": "for the shelf, with the stack under the line",
    "second dado forgotten": "put aside when the fence was moved for the shelf",
    DRAWN: "in a hurry: anything may happen, or nothing",
}
"""How a side may go over the cutter: what the learner chooses, by the slip that comes of it."""

HEAD = ("Test cut", "Stack", "Depth set", "Fence", "Width read", "Depth read", "Wall read", "Fit")


@dataclass(frozen=True, slots=True)
class Section:
    """Some sentences under a heading; `steps` says that they come one after another."""

    heading: str
    lines: tuple[str, ...]
    steps: bool = False


def cautions(
    joint: str = "dado", way: str = "stacked dado set", also: tuple[str, ...] = ()
) -> tuple[Section, ...]:
    """The cautions of a joint cut in that way and of what is used besides, under what they belong to.

    >>> [section.heading for section in cautions()]
    ['Every tool', 'Table saw', 'Dado set', 'Non-through cut']
    """
    of_setup: Setup = setup(joint, way)
    found = all_cautions().of({*(caution.of for caution in of_setup.cautions), *also})
    names = dict.fromkeys(caution.of for caution in found)
    return tuple(
        Section(_begin(name), tuple(each.claim.say for each in found if each.of == name)) for name in names
    )


def model(session: Session) -> tuple[Section, ...]:
    """What the bench knows, with its spreads, and what it leaves out."""
    return (
        Section("What it knows", told(session.bench.spreads, session.bench.style)),
        Section("What it leaves out", left_out()),
    )


def log(session: Session) -> tuple[tuple[str, ...], ...]:
    """A row for each test cut, under `HEAD`: what was set, and what was read and felt as far as it was.

    >>> from shoplib.practice import set_depth, set_fence, set_stack, start, test_cut
    >>> session = set_depth(set_stack(start("Noor").session, "0.7 in").session, "1/4 in").session
    >>> log(test_cut(set_fence(session, "9 in").session).session)
    (('1', '0.7 in', '1/4 in', '9 in', '-', '-', '-', 'not tried'),)
    """
    style, felt = session.bench.style, dict(session.fits)
    rows = []
    for number, cut in enumerate(session.tests, 1):
        read = [session.reading(size, number) for size in MEASURED]
        rows.append((
            str(number), *(setting(size, style) for size in (cut.stack, cut.set_depth, cut.fence)),
            *("-" if each is None else write_brief(each.mean, style, decimal=True) for each in read),
            felt[number].said(style) if number in felt else "not tried",
        ))
    return tuple(rows)


def came_of_it(done: Result) -> tuple[Section, ...]:
    """All that the result tells of this pair, in order; what it tells of the bench itself stands in `model`."""
    sections = [Section("The case, put together dry", (done.square, done.gap, *done.rode_up))]
    if done.slip:
        sections.append(Section("What happened", (done.slip,)))
    sections += [Section(_begin(side), tuple(_of_side(done, side))) for side in SIDES]
    if done.alike:
        sections.append(Section("Both sides", (done.alike.said,)))
    hand = Section("What a practised hand does at this bench, with this sheet", done.practised.said, steps=True)
    return (*sections, Section("Test cuts", (done.tests,)), hand)


def _of_side(done: Result, side: str) -> Iterable[str]:
    found = [trouble.said for trouble in done.troubles if trouble.side == side]
    yield from found or ["Nothing is wrong with it."]
    becomes = [each.said for each in done.rescues if each.side == side]
    yield from becomes
    if found and not becomes:
        yield "Both sides have that alike, so the case goes together: nothing needs doing."


def fits_table(done: Result, style: Style) -> tuple[tuple[str, str, str], ...]:
    """How each board goes into each dado that opens to it: board, side, fit."""
    return tuple((board, side, felt.said(style)) for board, side, felt in done.fits)


def _begin(text: str) -> str:
    return text[:1].upper() + text[1:]
