"""A sheet with its saw cuts: each has the number that it has in the order, and what comes off its name."""

from collections.abc import Sequence

from shoplib.buying.laid import LaidSheet
from shoplib.draw.chains import unit_note
from shoplib.draw.look import fill_of
from shoplib.draw.scene import EdgeText, Item, Label, Scene, Shape
from shoplib.draw.scene import Rect as Flat
from shoplib.draw.sheet_layout import LEFT, SAW_CUT, flat, numbered, trim_of
from shoplib.layout.order import Piece, Step
from shoplib.layout.pieces import Rect
from shoplib.measure import Style
from shoplib.words.naming import and_list


def cuts_drawn(sheet: LaidSheet, steps: Sequence[Step], style: Style, called: str = "") -> Scene:
    """The sheet flat, with parts by their letters, and on each kerf the number of the setting that makes it.

    `steps` are those of this sheet, `called` what they call it: `sheet 1`. A piece that comes off to be cut further has
    its name at the edge of the sheet, or, where it reaches none, in the parts that come out of it.
    """
    stock = sheet.stock
    called = called or sheet.name
    items: list[Item] = [Shape(((0, 0, stock.length, stock.width),), SAW_CUT, "what the saw takes")]
    trims = [step for step in steps if step.kind == "trim"]
    if trims:
        items.append(Shape(trim_of(sheet), LEFT, "trimmed off", "\\"))
    for rest in sheet.sawn.offcuts:
        name = f"offcut {sheet.kept[rest]}" if rest in sheet.kept else "offcut"
        items.append(Shape((flat(rest),), LEFT, name, "/"))
        if rest in sheet.kept:
            items.append(Label(flat(rest), (name,), plate=True))
    off = [piece for step in steps if step.kind != "trim" for piece in step.off if _is_cut_further(piece, called)]
    edges = [(piece, side) for piece in off if (side := _side(piece.at, stock.usable))]
    inside = [piece for piece in off if not _side(piece.at, stock.usable)]
    for one in sheet.pieces:
        of = next((_own(piece, called) for piece in reversed(inside) if _within(one.placed.at, piece.at)), "")
        texts = (f"{one.letter}\nof {of}", one.letter) if of else (one.letter,)
        items += [Shape((flat(one.placed.at),), fill_of(one.board), f"{one.letter}: {one.name}"),
                  Label(flat(one.placed.at), texts)]
    for piece, side in edges:
        items.append(EdgeText(_at_edge(piece.at, stock.length, stock.width), side, _own(piece, called)))
    items += [numbered(cut, step.setting, sheet) for step in steps if step.kind != "trim" for cut in step.cuts]
    by = and_list([str(setting) for setting in dict.fromkeys(step.setting for step in trims)])
    first = [f"Hatched at the edges: trimmed off first, by {by}."] if trims else []
    return Scene(
        f"Cuts of {called}",
        unit_note(style, "The numbers on the cuts are those of the settings in the table."),
        f"{_said(sheet, steps, called)} {' '.join(first)}".strip(),
        (0, 0, stock.length, stock.width),
        tuple(items),
        tuple(first),
    )


def _is_cut_further(piece: Piece, called: str) -> bool:
    return piece.part is None and piece.mark.startswith(f"{called}, ")


def _own(piece: Piece, called: str) -> str:
    """The name of a piece on its own sheet: `piece 2`."""
    return piece.mark.removeprefix(f"{called}, ")


def _side(at: Rect, usable: Rect) -> str:
    """The edge of the sheet at which a piece ends, so that its name can stand there; empty where it ends at none."""
    ends = {
        "right": at.x + at.w == usable.x + usable.w, "left": at.x == usable.x,
        "below": at.y == usable.y, "above": at.y + at.h == usable.y + usable.h,
    }  # fmt: skip
    long = ("right", "left", "below", "above") if at.w >= at.h else ("below", "above", "right", "left")
    return next((side for side in long if ends[side]), "")


def _at_edge(at: Rect, length: int, width: int) -> Flat:
    """A piece taken on to the edges of the sheet, trim and all, both ways: its name stands outside."""
    return (0, at.y, length, at.y + at.h) if at.w >= at.h else (at.x, 0, at.x + at.w, width)


def _within(part: Rect, piece: Rect) -> bool:
    return (piece.x <= part.x and part.x + part.w <= piece.x + piece.w
            and piece.y <= part.y and part.y + part.h <= piece.y + piece.h)


def _said(sheet: LaidSheet, steps: Sequence[Step], called: str) -> str:
    """The cuts in words, setting by setting."""
    told = []
    for step in steps:
        if step.kind != "trim":
            off = [next(one.letter for one in sheet.pieces if one.placed.at == piece.at) if piece.part is not None
                   else _own(piece, called) for piece in step.off]
            told.append(f"{step.setting}, {step.kind} of {step.piece.mark}: {and_list(off)}")
    return f"{called.capitalize()}, seen flat, with its cuts by number and what comes off at each. {'; '.join(told)}."
