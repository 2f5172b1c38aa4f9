"""A sheet with the parts that are cut from it: where each lies, the trim, the saw cuts, and what is left."""

from collections.abc import Iterator

from shoplib.buying.laid_out import LaidSheet, Piece
from shoplib.draw.chains import bare, unit_note
from shoplib.draw.look import fill_of
from shoplib.draw.scene import Chain, EdgeText, Item, Label, Line, Scene, Shape
from shoplib.draw.scene import Rect as Flat
from shoplib.layout.pieces import Rect
from shoplib.measure import Style, to_step, write_brief
from shoplib.words.naming import boards_in_short

SAW_CUT, LEFT = "hardware", "back"
"""Fills: what the blade takes shows as the ground between all that is drawn on it; what is left is hatched."""


def sheet_layout(sheet: LaidSheet, style: Style) -> Scene:
    """The sheet as it lies on the bench: its length, which is the way of its grain, from left to right.

    Each part has the letter of its kind, and its name and size where they have room; the legend has all of them.
    Offcuts worth keeping have small letters. What no part, offcut or trimmed edge covers is what the saw takes.
    """
    stock = sheet.stock
    whole = (0, 0, stock.length, stock.width)
    band = max(stock.length, stock.width) // 24
    kept = sheet.kept
    items: list[Item] = [Shape((whole,), SAW_CUT, "what the saw takes")]
    if trim := _trim(sheet):
        items.append(Shape(trim, LEFT, "trimmed off", "\\"))
    items += _left(sheet, kept, style)
    for piece in sheet.pieces:
        items += _part(piece, style)
    items += [
        Chain("below", 0, (0, stock.length), (bare(stock.length, style),), foot=0),
        Chain("left", 0, (0, stock.width), (bare(stock.width, style),)),
    ]
    items += _grain(sheet, band)
    legend = (*_parts_told(sheet, style), *_rest_told(sheet, kept, style))
    return Scene(
        f"{sheet.name}: {_size(stock.length, stock.width, style)}, {_thick(sheet, style)} thick",
        unit_note(style, f"Sizes are length along the grain × width. Saw cuts of {bare(sheet.kerf, style)} are dark."),
        f"{_said(sheet, style)} {' '.join(legend)}",
        (0, 0, stock.length, stock.width + band),
        tuple(items),
        legend,
    )


def _flat(at: Rect) -> Flat:
    return at.x, at.y, at.x + at.w, at.y + at.h


def _trim(sheet: LaidSheet) -> tuple[Flat, ...]:
    """The strips that are trimmed off, ends first."""
    stock, usable = sheet.stock, sheet.stock.usable
    ends = [(0, 0, usable.x, stock.width), (usable.x + usable.w, 0, stock.length, stock.width)]
    edges = [
        (usable.x, 0, usable.x + usable.w, usable.y),
        (usable.x, usable.y + usable.h, usable.x + usable.w, stock.width),
    ]
    return tuple(ends if stock.trim_ends else []) + tuple(edges if stock.trim_edges else [])


def _left(sheet: LaidSheet, kept: dict[Rect, str], style: Style) -> Iterator[Item]:
    for rest in sheet.sawn.offcuts:
        size = _at_least(rest, style)
        yield Shape((_flat(rest),), LEFT, f"left: {size}", "/")
        if rest in kept:
            called = f"{kept[rest]} left"
            yield Label(
                _flat(rest), (f"{called}\n{size}", f"{called}: {size}", kept[rest]), plate=True, fullest=True
            )


def _part(piece: Piece, style: Style) -> Iterator[Item]:
    board, at = piece.board, piece.placed.at
    size = _size(*_own(piece), style)
    name = piece.name.removeprefix(f"{board.group} ")
    yield Shape((_flat(at),), fill_of(board), f"{piece.letter}: {piece.name}, {size}")
    full = [f"{piece.letter}  {piece.name}\n{size}"]
    if board.group != "case":
        full += [f"{piece.letter}  {board.group}\n{name}\n{size}"]
    yield Label(
        _flat(at), (*full, f"{piece.letter}  {name}\n{size}", f"{piece.letter}\n{size}", f"{piece.letter}  {size}",
                    piece.letter), fullest=True,
    )  # fmt: skip


def _own(piece: Piece) -> tuple[int, int]:
    """Length along its own grain, and width."""
    at = piece.placed.at
    return (at.h, at.w) if piece.placed.turned else (at.w, at.h)


def _grain(sheet: LaidSheet, band: int) -> Iterator[Item]:
    """An arrow along the sheet's grain, above it."""
    length, middle = sheet.stock.length, sheet.stock.width + band // 2
    yield Line((length * 3 // 8, middle), (length * 5 // 8, middle), "grain")
    room = (0, sheet.stock.width, length, sheet.stock.width + band)
    yield EdgeText(room, "above", "grain of the sheet")


def _parts_told(sheet: LaidSheet, style: Style) -> Iterator[str]:
    """A line for each letter: how many, of which boards, how large, and which lie across."""
    by_letter: dict[str, list[Piece]] = {}
    for piece in sorted(sheet.pieces, key=lambda piece: (len(piece.letter), piece.letter)):
        by_letter.setdefault(piece.letter, []).append(piece)
    for called, pieces in by_letter.items():
        names = boards_in_short(piece.board for piece in pieces)
        names = f"stave of {names}" if pieces[0].stave else names
        turned = sum(piece.placed.turned for piece in pieces)
        across = f"; {'all' if turned == len(pieces) else turned} across the sheet" if turned else ""
        yield f"{called}: {len(pieces)} × {names}, {_size(*_own(pieces[0]), style)}{across}."


def _rest_told(sheet: LaidSheet, kept: dict[Rect, str], style: Style) -> Iterator[str]:
    if kept:
        told = [f"{called} {_at_least(rest, style)}" for rest, called in kept.items()]
        yield f"Left, worth keeping: {'; '.join(told)}."
    if len(kept) < len(sheet.sawn.offcuts):
        yield "Hatched without a letter: too small to keep."
    if sheet.stock.trim_ends or sheet.stock.trim_edges:
        stock = sheet.stock
        ends, edges = bare(stock.trim_ends, style), bare(stock.trim_edges, style)
        much = [f"{ends} off each end"] if stock.trim_ends else []
        much += [f"{edges} off each long edge"] if stock.trim_edges else []
        if stock.trim_ends == stock.trim_edges:
            much = [f"{ends} off each edge"]
        yield f"Hatched the other way: trimmed off first, {', '.join(much)}."


def _said(sheet: LaidSheet, style: Style) -> str:
    """What the drawing shows, for those who do not see it."""
    stock = sheet.stock
    size = f"{write_brief(stock.length, style)} long and {write_brief(stock.width, style)} wide"
    return f"{sheet.name}, {size}, seen flat, with {len(sheet.pieces)} parts where they are cut."


def _size(length: int, width: int, style: Style) -> str:
    return f"{bare(length, style)} × {bare(width, style)}"


def _at_least(rest: Rect, style: Style) -> str:
    """What is surely there of an offcut: whole steps."""
    return _size(to_step(rest.w, style.step, "down"), to_step(rest.h, style.step, "down"), style)


def _thick(sheet: LaidSheet, style: Style) -> str:
    return write_brief(sheet.sheet.thickness, style, True)
