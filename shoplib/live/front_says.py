"""What the front panel says of the fronts: the line above the picture, the gaps, findings and closing sums."""

from shoplib.live.front_project import IN_LINE, FrontChoices
from shoplib.measure import INCH, MM, Style, write_brief
from shoplib.measure.noted import stated
from shoplib.measure.traced import limit
from shoplib.model.front_face import Face, FrontGap, gaps_of
from shoplib.model.solved import Finding
from shoplib.words.amounts import how_much, setting, true_amount


def message(face: Face, style: Style) -> str:
    """The line above the picture: the lowest front, and the gaps."""
    first = face.pieces[0]
    sizes = {gap.size for gap in gaps_of(face)}
    low, high = (min(sizes), max(sizes)) if sizes else (0, 0)
    told = (
        "it has no neighbour to leave a gap to" if not sizes
        else f"every gap is {setting(low, style)}" if low == high
        else f"gaps from {how_much(low, style)} to {how_much(high, style)}" if low > 0
        else "it does not go together (Stop)"
    )
    return f"Front 1 is {write_brief(first.width, style)} wide and {write_brief(first.height, style)} high; {told}."


def gap_rows(face: Face, style: Style) -> list[tuple[str, str]]:
    """A row for each gap: between what, and how wide, or how large a clash."""
    rows = []
    for gap in gaps_of(face):
        size = setting(gap.size, style) if gap.size > 0 else "closed" if not gap.size else (
            f"clash of {true_amount(-gap.size, style)}"
        )
        rows.append((_named(gap), size))
    return rows


def findings(face: Face, planned: Face, choices: FrontChoices, part: str, over: int, style: Style) -> list[Finding]:
    """What clashes, which gaps came out otherwise than `planned`, and where an error of one part shows.

    `part` is off by `over` ticks; 0 is none.
    """
    gaps = gaps_of(face)
    found = [
        _finding("stop", f"No gap is left {_between(gap)}: {_pressed(gap, style)}.") for gap in gaps if gap.size <= 0
    ]
    if over:
        before = {gap.between: gap.size for gap in gaps_of(planned)}
        off = [_named(gap) for gap in gaps if gap.size != before.get(gap.between, gap.size)]
        found.append(_where_it_shows(off, part, how_much(over, style)))
    if choices.bays == 2 and choices.rows != IN_LINE:
        found.append(_finding("note", "The rows are not in line: the eye finds a step at the divider."))
    if choices.inset and choices.gap < (INCH // 16 if style.unit == "in" else 3 * MM // 2):
        found.append(_finding(
            "note", f"Inset fronts usually have {_usual_gap()} round them: a narrower gap shows every error, and wood "
            "needs room to move.",
        ))
    return found


def _usual_gap() -> str:
    """What inset fronts usually have round them, in both units (common practice, no source)."""
    told = []
    for unit, least, most in (
        ("in", ("1/16", INCH // 16), ("1/8", INCH // 8)), ("mm", ("1.5", 3 * MM // 2), ("3", 3 * MM)),
    ):
        low = stated(least[0], limit(least[1], "the narrowest usual gap round inset fronts"))
        high = stated(f"{most[0]} {unit}", limit(most[1], "the widest usual gap round inset fronts"))
        told.append(f"{low} to {high}")
    return f"{told[0]} ({told[1]})"


def _where_it_shows(off: list[str], part: str, by: str) -> Finding:
    if off:
        names = ", ".join(off[:4]) + (f", and {len(off) - 4} more" if len(off) > 4 else "")
        return _finding(
            "warn", f"One part is {by} off. It shows at {len(off)} gap{'s' if len(off) > 1 else ''}: {names}."
        )
    if part.startswith("divider"):
        return _finding(
            "note", f"The divider stands {by} too far right behind the fronts, where no gap shows it; but one opening "
            "is narrower by as much, and its box does not go in.",
        )
    return _finding(
        "note", f"One part is {by} off. No gap shows it: the outer edge of the fronts does, and a step in the rows "
        "where there are two bays.",
    )


def _finding(level: str, text: str) -> Finding:
    return Finding("fronts", level, (), text)


def _pressed(gap: FrontGap, style: Style) -> str:
    return f"they want {true_amount(-gap.size, style)} of the same room" if gap.size else "they touch"


def _between(gap: FrontGap) -> str:
    one, other = gap.between
    return f"{one} {other}" if one.endswith(" of") else f"between {one} and {other}"


def _named(gap: FrontGap) -> str:
    one, other = gap.between
    return f"{one} {other}" if one.endswith(" of") else f"{one} to {other}"


def sums(face: Face, choices: FrontChoices, style: Style) -> list[str]:
    """The closing sums of bay 1: gaps and fronts up the opening, and across it."""
    told = []
    for which, lengths in zip(("up", "across"), sum_lengths(face, choices), strict=False):
        *terms, total = (
            write_brief(size, style) if what.startswith(("front", "opening")) else setting(size, style)
            for what, size in lengths
        )
        told.append(f"{which}: {' + '.join(terms)} = {total}")
    return told if choices.inset else [f"{told[0]}, the opening and what the fronts cover above and below"]


def sum_lengths(face: Face, choices: FrontChoices) -> list[tuple[tuple[str, int], ...]]:
    """The lengths of each of these sums in their order, each after what it is called."""
    column = face.bay(1)
    gap, around = ("gap", choices.gap), ("gap at the case", choices.around)
    between = [part for piece in column for part in (gap, (f"front {piece.number}, height", piece.height))][1:]
    if not choices.inset:
        return [(*between, ("from the lowest to the highest edge", column[-1].z[1] - column[0].z[0]))]
    return [
        (around, *between, around, ("opening, height", choices.height)),
        (around, ("front, width", column[0].width), around, ("opening, width", choices.width)),
    ]
