"""Drawer heights: one column of fronts or openings shared out by the rule of the bay."""

from shoplib.measure import share, to_step
from shoplib.model.project import Drawers, ImpossibleProject


def heights(rule: Drawers, total: int, step: int, key: str, slack: int | None = None) -> tuple[int, ...]:
    """Heights from the bottom up, in ticks, that add up to `total` exactly.

    All are whole steps but the bottom one, which takes what will not divide: the lowest drawer is
    where a little more shows least. A difference that is no whole step goes to the nearest; given heights
    stay as they were given, and may fall short of `total` by less than `slack`
    (as many steps as drawers, where it is left out). "ratio" follows the rule of Varnum, Industrial Arts Design
    (1916), Rule 2c: heights as 7 6 5 4 from the bottom up.

    >>> heights(Drawers(count=3), 31, 1, "bay 1")
    (11, 10, 10)
    >>> heights(Drawers(count=3, heights="stepped", difference=2), 36, 1, "bay 1")
    (14, 12, 10)
    >>> heights(Drawers(count=3, heights="stepped", difference=12), 200, 5, "bay 1")
    (80, 65, 55)
    >>> heights(Drawers(count=4, heights="ratio", ratio=(7, 6, 5, 4)), 44, 1, "bay 1")
    (14, 12, 10, 8)

    Raises ImpossibleProject where a drawer would be left without height.
    """
    n = rule.count
    if rule.heights == "ratio":
        if len(rule.ratio) != n:
            raise ImpossibleProject(
                f"{key}.ratio", f"it needs one number for each of the {n} drawers, from the bottom up"
            )
        if not all(rule.ratio):
            number = rule.ratio.index(0) + 1
            raise ImpossibleProject(f"{key}.ratio[{number}]", "0 leaves this drawer no height; write 1 or more")
        found = [share(total * part, sum(rule.ratio), step)[0] for part in rule.ratio]
    elif rule.heights == "given":
        if len(rule.given) != n:
            raise ImpossibleProject(
                f"{key}.given", f"it needs one height for each of the {n} drawers, from the bottom up"
            )
        found = _given(rule.given, total, n * step if slack is None else slack, key)
    else:
        fall = to_step(rule.difference, step) if rule.heights == "stepped" else 0
        least = share(total - fall * (n * (n - 1) // 2), n, step)[0]
        found = [least + fall * (n - 1 - k) for k in range(n)]
    found[0] += total - sum(found)
    if any(height <= 0 for height in found):
        raise _no_height(rule, found, share(total, n, step)[0] > 0, key)
    return tuple(found)


def _no_height(rule: Drawers, found: list[int], room: bool, key: str) -> ImpossibleProject:
    """Where drawers of one height would have `room`, the rule that makes them unlike is to blame."""
    drawer = 1 + next(k for k, height in enumerate(found) if height <= 0)
    if room and rule.heights == "stepped":
        said = f"it leaves drawer {len(found)} no height; make it smaller, or take fewer drawers"
        return ImpossibleProject(f"{key}.difference", said)
    if room and rule.heights == "ratio":
        said = f"{rule.ratio[drawer - 1]} is so little beside the others that drawer {drawer} has no height; write more"
        return ImpossibleProject(f"{key}.ratio[{drawer}]", said)
    if room and rule.heights == "given":
        return ImpossibleProject(f"{key}.given[{drawer}]", "the others leave this drawer no height; make them lower")
    return ImpossibleProject(f"{key}.count", f"{rule.count} drawers leave no height for one of them; take fewer")


def _given(given: tuple[int | str, ...], total: int, slack: int, key: str) -> list[int]:
    left = total - sum(height for height in given if height != "rest")
    rests = given.count("rest")
    if rests > 1:
        raise ImpossibleProject(f"{key}.given", 'only one drawer may take the "rest"')
    if left < 0 or (not rests and left >= slack):
        more = "more" if left < 0 else "less"
        raise ImpossibleProject(f"{key}.given", f'the heights add up to {more} than the bay has; let one be "rest"')
    return [left if height == "rest" else height for height in given]
