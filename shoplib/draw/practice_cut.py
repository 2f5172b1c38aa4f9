"""A practice cut seen from the end: the dado in true proportion, what is tried in it, and the clearance larger."""

from shoplib.draw.chains import unit_note
from shoplib.draw.scene import Chain, Item, Label, Leader, Rect, Scene, Shape
from shoplib.measure import Style, thickest, write_brief
from shoplib.practice.fit import Felt
from shoplib.practice.plan import LEVELS, SIDES
from shoplib.practice.session import Session

_PART = 24
"""A clearance is drawn at least as wide as the piece in the dado divided by this."""


def last_test_cut(session: Session) -> Scene | None:
    """The last test cut with an end of the offcut in it; None where there is none.

    Its sizes are those that were read with the caliper, and what was not measured has none: the drawing betrays
    nothing. The piece in it is drawn once it was tried.

    >>> from shoplib.practice import set_depth, set_fence, set_stack, start, test_cut
    >>> session = set_fence(set_depth(set_stack(start("Noor").session, "0.7 in").session, "1/4 in").session, "9 in")
    >>> last_test_cut(test_cut(session.session).session).legend
    ('Dado: width not measured yet, depth not measured yet.',)
    """
    if not session.tests:
        return None
    number, last = len(session.tests), session.tests[-1]
    means = [
        None if reading is None else reading.mean
        for reading in (session.reading("width", number), session.reading("depth", number))
    ]
    fit = Felt(last.kerf.width - last.spot, session.bench.unit) if session.tried else None
    return _seen_from_the_end(
        f"Test cut {number}", ("offcut", "other end"), (last.kerf.width, last.kerf.depth, session.plan.sheet),
        tuple(means), fit, session.bench.style,
    )


def real_cut(session: Session, side: str, level: str) -> Scene | None:
    """The dado for "bottom" or "shelf" in one side as it was cut, with that board in it; None while nothing is cut.

    A dado that is not there, or not in the inner face, is None too.
    """
    if session.sides is None or side not in SIDES or level not in LEVELS:
        return None
    board = session.sides[SIDES.index(side)]
    cut = next((each for each in board.cuts if each.for_board == level and each.low[2] == 0), None)
    if cut is None:
        return None
    width, depth = cut.high[0] - cut.low[0], cut.high[2]
    fit = Felt(width - session.stock.of(level), session.bench.unit)
    return _seen_from_the_end(
        f"The dado for the {level} in the {side}", (side, level), (width, depth, board.thickness), (width, depth), fit,
        session.bench.style,
    )


def _seen_from_the_end(
    title: str, names: tuple[str, str], sizes: tuple[int, int, int], shown: tuple[int | None, int | None],
    fit: Felt | None, style: Style,
) -> Scene:
    width, depth, thick = sizes
    reach, floor = 3 * thick // 2, thick - depth
    cut: tuple[Rect, ...] = ((-reach, 0, 0, thick), (0, 0, width, floor), (width, 0, width + reach, thick))
    items: list[Item] = [Shape(cut, "case", names[0]), Label(cut[0], (names[0], names[0].replace(" ", "\n")))]
    top, words, larger = thick, [], ""
    if fit is not None:
        top = 5 * thick // 2
        room = _piece(fit, width, floor, thick, top)
        items += [Shape((room,), "box", names[1]), Label(room, (names[1], names[1].replace(" ", "\n")))]
        over = fit.said(style)
        words.append(f"{names[1][0].upper()}{names[1][1:]} in the dado: {over}.")
        if room[2] != width:
            # Beside the line of the face, so that the leader does not lie on it.
            beside = (floor + thick) // 2 if fit.enters else thick + thick // 8
            items.append(Leader(((room[2] + width) // 2, beside), "right", over))
            larger = " The clearance is drawn larger than it is; all else is in true proportion."
    texts = ["" if size is None else write_brief(size, style, decimal=True) for size in shown]
    bare = [text.removesuffix(f" {style.unit}") for text in texts]
    if texts[0]:
        items.append(Chain("below", 0, (0, width), (bare[0],), 0, (shown[0],)))
    if texts[1]:
        items.append(Chain("left", 0, (floor, thick), (bare[1],), -reach, (shown[1],)))
    told = [f"{what} {text or 'not measured yet'}" for what, text in zip(("width", "depth"), texts, strict=True)]
    words.insert(0, f"Dado: {', '.join(told)}.")
    note = f"Seen from the end. The board runs on to both sides.{larger}"
    return Scene(
        title, unit_note(style, note), f"A board seen from the end, with a dado from above. {' '.join(words)} {note}",
        (-reach, 0, width + reach, top), tuple(items), tuple(words),
    )


def _piece(fit: Felt, width: int, floor: int, thick: int, top: int) -> Rect:
    """The piece against the near wall, with the rest of the dado open; what does not enter stands on its mouth."""
    least = width // _PART
    if not fit.enters:  # drawn on the mouth
        return (0, thick, width + thickest([-fit.over, least]), top)
    return (0, floor, width if fit.over <= 0 else width - thickest([fit.over, least]), top)
