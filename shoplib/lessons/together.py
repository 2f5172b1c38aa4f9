"""A learner's sizes made into boards, put together and dry-fitted: whether the set is right, and what is wrong."""

from collections.abc import Mapping
from dataclasses import dataclass

from shoplib.checks import check
from shoplib.draw.misfits import CLASH, Misfit, misfits, outside
from shoplib.lessons.exercise import Twin
from shoplib.lessons.set_exercise import Asked
from shoplib.lists.consequences import consequences
from shoplib.lists.refit import refit
from shoplib.measure import INCH, MM
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


_OUTSIDE = (("wide", "narrow"), ("deep", "shallow"), ("high", "low"))


def put_together(planned: Cabinet, given: Mapping[Asked, int]) -> Together:
    """Cut the boards to the sizes given (ticks) and put them together; what is not given is as planned.

    Right is any set with the outside and the gaps of its joints within `WIDEST` and no clash. Two numbers that
    were each rounded to a mark of the rule may meet by one mark: so much is no clash.
    """
    sizes: dict[str, tuple[int, int, int]] = {}
    for one, ticks in given.items():
        for name in one.boards:
            board = planned.by_name[name]
            sizes[name] = one.resized(board, sizes.get(name, board.size), ticks)
    built = refit(planned, sizes)
    before, after = check(planned), check(built.cabinet)
    known = {finding.text for finding in before}
    new = [finding for finding in after if finding.text not in known]
    widest, mark = WIDEST.of(planned.style.unit), planned.style.step
    where = misfits(built.cabinet, planned)
    far = tuple(one for one in where if one.amount > (mark if one.kind == CLASH else widest))
    size = outside(built.cabinet, planned).size
    off = tuple(one - other for one, other in zip(size, planned.outside.size, strict=True))
    small = all(abs(by) <= widest for by in off)
    right = small and not far and all(_allowed(finding, widest, mark) for finding in new)
    told = [one for one in consequences(built, planned, before, after) if not one.startswith("the cabinet comes ")]
    says = (*_outside_in_words(off, widest, planned), *_in_words(told, far, planned, given))
    gap, clash = (
        max((one.amount for one in where if (one.kind == CLASH) is clash), default=0) for clash in (False, True)
    )
    return Together(built.cabinet, far, says, right, gap, clash, size)


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
    """Each gap and clash of a joint told by the board that was cut wrong, then the other consequences."""
    joints, says = [], list(told)
    for misfit in far:
        if not misfit.joint:
            continue
        one, other = misfit.boards
        joints.append(_joint_in_words(misfit, planned, given))
        says = [
            sentence for sentence in says
            if not sentence.startswith((f"{one} and {other} overlap by", f"{other} and {one} overlap by"))
            and not (sentence.startswith(f"{one} ") and f" of {other}" in sentence)
        ]
    return tuple(dict.fromkeys([*joints, *says]))


def _joint_in_words(misfit: Misfit, planned: Cabinet, given: Mapping[Asked, int]) -> str:
    one, other = (_the(name) for name in misfit.boards)
    size = how_much(misfit.amount, planned.style)
    asked = next((a for a in given if misfit.boards[0] in a.boards and a.world == misfit.axis), None)
    off = given[asked] - asked.right(planned) if asked else 0
    over = misfit.amount if misfit.kind == CLASH else -misfit.amount
    if asked and off * over > 0:
        return f"{one} is {size} too {asked.too(over)} for its {misfit.joint} in {other}"
    if misfit.kind == CLASH:
        return f"{one} has {size} too little room in {other}, and they clash"
    return f"{one} ends {size} short of its place in {other}, and a gap stays open"


def _the(name: str) -> str:
    return name if any(sign.isdigit() for sign in name) else f"the {name}"


def due_to(one: Asked, whole: Together, planned: Cabinet, given: Mapping[Asked, int]) -> tuple[str, ...]:
    """What of the dry-fit's words would not be said if this one size were as planned."""
    without = put_together(planned, {each: ticks for each, ticks in given.items() if each is not one})
    return tuple(sentence for sentence in whole.says if sentence not in without.says)
