"""The last steps at the cabinet: strips, fronts with gap spacers, pulls, loose shelves."""

from shoplib.lists.writing import Writing
from shoplib.model.solved import Cabinet, Gap, Hardware
from shoplib.printed.blocks import Block, Framed, Table, Together, ToTick, Words
from shoplib.printed.build_words import SAW_AGAIN, names_in_short
from shoplib.words.naming import and_list, boards_in_short, in_short


def strips(names: tuple[str, ...], cabinet: Cabinet) -> list[Block]:
    """Strips between the drawers, cut to the opening as measured."""
    return [Framed((Words(SAW_AGAIN, grave=True),)), ToTick((
        f"Cut each to its own opening as measured: {names_in_short(names, cabinet)}. Try it in; it must not push the "
        "uprights apart.",
        "Fix it with the drawers above and below it shut, the same gap over and under it.",
    ))]


def fronts(names: tuple[str, ...], cabinet: Cabinet) -> list[Block]:
    """Fronts set by spacers of the gap, from the bottom up."""
    boards = [cabinet.by_name[name] for name in names]
    edged = [board for board in boards if board.edging]
    held = [h for h in cabinet.hardware if h.what == "front screws" and h.screws]
    lines = [
        f"Cut from the new sizes: {boards_in_short(boards)}. Label each at once, and mark its upper edge."
    ]
    if edged:
        lines.append(f"Glue the edging on {boards_in_short(edged)}, trim it flush, ease the edges.")
    lines += [
        "Cut the gap spacers of the table, two of each, and set the fronts from the bottom up: spacers under, spacers "
        "at the sides, the front pressed to its box with double-sided tape or clamps.",
        "Open it with the front on it, clamp the two with cauls, drill pilot holes from inside, and "
        "drive two screws. Shut it, look at the gaps, correct, then drive the rest.",
        "When all gaps are even, number the fronts, take them off, finish both faces alike, and put them back.",
    ]
    blocks: list[Block] = [ToTick(tuple(lines))]
    cautions = [Words(SAW_AGAIN, grave=True)]
    if held:
        cautions.append(Words(
            f"Screws from inside into the fronts, no longer than these: {_screws(held, cabinet)}. A longer one comes "
            "out of the face that shows, into the hand that holds it. Keep the hand away from where the point comes.",
            grave=True,
        ))
    blocks.insert(0, Framed(tuple(cautions)))
    rows = _spacers(cabinet)
    if rows:
        blocks.append(Together((Words("Gap spacers to cut:"), Table(("spacer", "between"), rows, (1,)))))
    return blocks


def _screws(held: list[Hardware], cabinet: Cabinet) -> str:
    """Each size of screw, and of which drawers."""
    write = Writing(cabinet.style).length
    sizes: dict[str, list[str]] = {}
    for fitting in held:
        for screw in fitting.screws:
            sizes.setdefault(f"{screw.gauge} x {write(screw.length)}", []).append(fitting.group)
    return "; ".join(f"{size} for {and_list(in_short(groups))}" for size, groups in sizes.items())


def _spacers(cabinet: Cabinet) -> tuple[tuple[str, str], ...]:
    """Each size of gap once, and where it is."""
    write = Writing(cabinet.style).length
    alike: dict[str, list[Gap]] = {}
    for gap in cabinet.gaps:
        alike.setdefault(write(gap.size), []).append(gap)
    return tuple((size, "; ".join(_where(gaps, cabinet))) for size, gaps in alike.items())


def _where(gaps: list[Gap], cabinet: Cabinet) -> list[str]:
    """Fronts over one another, fronts beside one another, fronts and the case."""
    told: dict[str, list[str]] = {}
    for gap in gaps:
        one, other = (cabinet.by_name.get(name) for name in gap.between)
        both = all(board is not None and board.role == "front" for board in (one, other))
        where = "fronts and the case" if not both else (
            "fronts over one another" if gap.along == "z" else "fronts beside one another"
        )
        groups = [board.group for board in (one, other) if board is not None and board.role == "front"]
        told.setdefault(where, []).extend(groups)
    return [f"{where} ({and_list(in_short(groups))})" for where, groups in told.items()]


def pulls(cabinet: Cabinet) -> list[Block]:
    """Holes from the template, drilled into waste."""
    return [Framed((Words(
        "Clamp the front and a waste board behind it for drilling; never hold it in the hand. Wear eye protection.",
        grave=True,
    ),)), ToTick((
        "Prick the holes through the template, its centre line on that of the front, and measure one against the "
        "hardware page before you drill any.",
        "Drill from the face that shows into the waste board, then through the box front. Screw the pulls on.",
    ))]


def loose_shelves(names: tuple[str, ...], cabinet: Cabinet) -> list[Block]:
    """What is only laid in."""
    return [ToTick((
        f"Lay in {names_in_short(names, cabinet)} on their pins or battens, and see that each bears at all "
        "four corners.",
    ))]
