"""A learner's sizes made into boards, put together and dry-fitted: whether the set is right, and what is wrong."""

from collections.abc import Mapping
from dataclasses import dataclass, replace

from shoplib.checks import check
from shoplib.checks.misfits import BARE, CLASH, SLIDE, Misfit, misfits, outside
from shoplib.lessons.exercise import Twin
from shoplib.lessons.set_exercise import Asked
from shoplib.lists.consequences import consequences
from shoplib.lists.gives_way import Loose, gives_way, loose_boards
from shoplib.lists.refit import Refit, refit
from shoplib.measure import INCH, MM, to_step
from shoplib.model.box import Point
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.amounts import how_much

WIDEST = Twin(INCH // 32, MM * 4 // 5)
"""What the outside may be off, and a joint may be open, in a set that is right."""


@dataclass(frozen=True)
class Together:
    """What came of it: the cabinet as `built`, where it does not fit, the dry-fit's words, and the verdict.

    `open` is the widest gap, `pressed` the largest clash, in ticks; `outside` width, depth and height.
    """

    built: Cabinet
    misfits: tuple[Misfit, ...]
    says: tuple[str, ...]
    right: bool
    open: int
    pressed: int
    outside: Point


_BY_SIZE = ("outside", "seating", "overlap")
"""The checks whose amount says whether it is too much; of the others any stop is."""

_OUTSIDE = (("wide", "narrow"), ("deep", "shallow"), ("high", "low"))


def put_together(planned: Cabinet, given: Mapping[Asked, int]) -> Together:
    """Cut the boards to the sizes given (ticks) and put them together; what is not given is as planned.

    Right is any set with the outside and the gaps of its joints within `WIDEST` and no clash. Two numbers that
    were each rounded to a mark of the rule may meet by one mark: so much is no clash. What leaves no room for
    rounding, such as slides, is held against the sizes as they are marked out.
    """
    built = _refit(planned, given)
    before = check(planned)
    after = before if built.cabinet == planned else check(built.cabinet)
    widest, mark = WIDEST.of(planned.style.unit), planned.style.step
    on_the_mark = {
        one: one.right(planned) if 2 * abs(ticks - one.right(planned)) <= mark else ticks
        for one, ticks in given.items()
    }
    at_marks = after if on_the_mark == given else check(_refit(planned, on_the_mark).cabinet)
    known = {finding.text for finding in before}
    new = [found for found in after if found.check in _BY_SIZE and found.text not in known]
    new += [found for found in at_marks if found.check not in _BY_SIZE and found.text not in known]
    where = misfits(built.cabinet, planned)
    far = tuple(one for one in where if _too_far(one, widest, mark))
    size = outside(built.cabinet, planned).size
    off = tuple(one - other for one, other in zip(size, planned.outside.size, strict=True))
    small = all(abs(by) <= widest for by in off)
    loose = list(loose_boards(built.cabinet))
    tight = [one for one in loose if 0 <= 2 * one.spare < one.planned]
    right = small and not far and not tight and all(_allowed(finding, widest, mark) for finding in new)
    others = [told for told in _consequences(planned, given, built, before, after) if not _at_one_end(told, loose)]
    says = [*_outside_in_words(off, widest, planned), *_in_words(others, far, planned, given)]
    says += _tight_in_words(tight, planned)
    if not right and not says:
        says = [finding.text.partition(". ")[0] for finding in new if not _allowed(finding, widest, mark)]
    says = [_plain(told, planned, given) for told in says]
    gap, clash = (
        max((one.amount for one in where if (one.kind == CLASH) is clash), default=0) for clash in (False, True)
    )
    return Together(built.cabinet, far, tuple(says), right, gap, clash, size)


def _too_far(misfit: Misfit, widest: int, mark: int) -> bool:
    """Slides leave no room for rounding beyond that of the one number that their box is made by."""
    if SLIDE in misfit.boards:
        return 2 * misfit.amount > mark
    return misfit.amount > (mark if misfit.kind == CLASH else widest)


def _refit(planned: Cabinet, given: Mapping[Asked, int]) -> Refit:
    """The boards at these sizes, and what lies loose between others where it finds room."""
    built = refit(planned, _sizes(planned, given))
    return replace(built, cabinet=gives_way(built.cabinet))


def _at_one_end(told: str, loose: list[Loose]) -> bool:
    """Whether a sentence is about the gap before one end of a board that lies loose: what both have counts."""
    return " too far into the " in told and any(told.removeprefix("the ").startswith(one.board) for one in loose)


_ALONG = ("from left to right", "from front to back", "upright")


def _tight_in_words(tight: list[Loose], planned: Cabinet) -> list[str]:
    """Boards that go in, and have lost more than half of what was to be free round them."""
    style, told = planned.style, []
    for loose in tight:
        left = how_much(loose.spare, style) if to_step(loose.spare, style.step) else "nothing"
        told.append(
            f"{_the(loose.board)} has {left} to spare in its {loose.joint}s, {_ALONG[loose.axis]}, and was to have "
            f"{how_much(loose.planned, style)}: it jams once it swells"
        )
    return told


def _sizes(planned: Cabinet, given: Mapping[Asked, int]) -> dict[str, Point]:
    """Length, width and thickness of every board that one of the given sizes is about."""
    sizes: dict[str, Point] = {}
    for one, ticks in given.items():
        for name in one.boards:
            board = planned.by_name[name]
            sizes[name] = one.resized(board, sizes.get(name, board.size), ticks)
    return sizes


def _consequences(
    planned: Cabinet, given: Mapping[Asked, int], built: Refit, before: tuple[Finding, ...], after: tuple[Finding, ...]
) -> list[str]:
    """What sizes that are off by more than a right set may be would do; smaller differences are not worth a word."""
    widest = WIDEST.of(planned.style.unit)
    by = {one: abs(ticks - one.right(planned)) for one, ticks in given.items()}
    off = {one: ticks for one, ticks in given.items() if by[one] > widest}
    if not off:
        return []
    if any(0 < each <= widest for each in by.values()):  # else the boards are those that were put together
        built = _refit(planned, off)
        after = check(built.cabinet)
    told = consequences(built, planned, before, after)
    return [sentence for sentence in told if not sentence.startswith("the cabinet comes ")]


def _outside_in_words(off: Point, widest: int, planned: Cabinet) -> list[str]:
    return [
        f"the case comes {how_much(abs(by), planned.style)} too {words[by < 0]}"
        for by, words in zip(off, _OUTSIDE, strict=True) if abs(by) > widest
    ]


def _allowed(finding: Finding, widest: int, mark: int) -> bool:
    if finding.level == "note" or (finding.level == "warn" and finding.check not in ("seating", "slide room")):
        return True
    most = {"outside": widest, "seating": widest, "overlap": mark}.get(finding.check, -1)
    return finding.amount is not None and abs(finding.amount) <= most


def _in_words(
    told: list[str], far: tuple[Misfit, ...], planned: Cabinet, given: Mapping[Asked, int]
) -> tuple[str, ...]:
    """Each gap and clash first, that of a joint told by the board that was cut wrong; then the other consequences."""
    own, says, alike = [], list(told), set()
    for misfit in far:
        one, other = misfit.boards
        if other == SLIDE or any((board, misfit.axis, misfit.amount) in alike for board in misfit.boards):
            continue  # the box is told as a whole, with what its slides take; alike gaps are told with the first
        same = [sentence for sentence in says if _about(sentence, misfit)]
        says = [sentence for sentence in says if sentence not in same]
        if any("(likewise " in sentence for sentence in same):
            alike |= {(board, misfit.axis, misfit.amount) for board in misfit.boards}
        size = how_much(misfit.amount, planned.style)
        if misfit.joint:
            own.append(_joint_in_words(misfit, planned, given))
        elif misfit.kind == CLASH:
            own += same[:1] or [f"{_the(one)} and {_the(other)} clash by {size}"]
        else:
            own += same[:1] or [f"the gap between {_the(one)} and {_the(other)} is off by {size}"]
    return tuple(dict.fromkeys([*own, *says]))


def _about(sentence: str, misfit: Misfit) -> bool:
    one, other = misfit.boards
    pairs = f"{one} and {other} ", f"{other} and {one} "
    short = sentence.startswith((f"{one} ", f"the end of {one} ")) and f" of {other}" in sentence
    if misfit.kind == BARE:
        return sentence.startswith((f"the end of {one} misses {other} ", f"{_the(one)} stands "))
    return any(f"{pair}overlap by" in sentence or f"the gap between {pair}" in sentence for pair in pairs) or short


def _joint_in_words(misfit: Misfit, planned: Cabinet, given: Mapping[Asked, int]) -> str:
    one, other = (_the(name) for name in misfit.boards)
    size = how_much(misfit.amount, planned.style)
    asked = next((a for a in given if misfit.boards[0] in a.boards and a.world == misfit.axis), None)
    off = given[asked] - asked.right(planned) if asked else 0
    over = misfit.amount if misfit.kind == CLASH else -misfit.amount
    if misfit.kind == BARE:
        edge = f"the edge of {other} lies bare for {size}"
        mine = asked and off * over > 0
        return f"{one} is {size} too {asked.too(over)}, and {edge}" if mine else f"{edge}: {one} ends short of it"
    if asked and off * over > 0:
        place = f"plain joint with {other}" if misfit.joint == "butt" else f"{misfit.joint} in {other}"
        return f"{one} is {size} too {asked.too(over)} for its {place}"
    if misfit.kind == CLASH:
        return f"{one} has {size} too little room in {other}, and they clash"
    return f"{one} ends {size} short of its place in {other}, and a gap stays open"


def _the(name: str) -> str:
    return name if any(sign.isdigit() for sign in name) else f"the {name}"


def _plain(told: str, planned: Cabinet, given: Mapping[Asked, int]) -> str:
    """The words without the name of the drawer, where the exercise asks about the boards of only one."""
    groups = {planned.by_name[name].group for one in given for name in one.boards}
    group = next(iter(groups)) if len(groups) == 1 else "case"
    if group == "case":
        return told
    return told.replace(f"{group}: ", "").replace(f"{group} has ", "the box has ").replace(f"{group} ", "the ")
