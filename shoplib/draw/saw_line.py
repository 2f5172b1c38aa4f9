"""A pencil line on a board and the kerf beside it, drawn large; and equal pieces sawn from one board."""

from shoplib.draw.chains import bare, stacked
from shoplib.draw.scene import Chain, Item, Label, Leader, Line, Rect, Scene, Shape, Told
from shoplib.measure import Style, thickest, write_brief
from shoplib.model.strip import SawSide, TwoPieces

_WHERE = {"waste side": "in the waste, beside the line", "on the line": "on the line",
          "keep side": "in the piece to be kept"}


def saw_line(line: int, pieces: TwoPieces, side: SawSide, style: Style) -> Scene:
    """The wood round a line `line` from the left end of a board, with the kerf that the blade left.

    Only a little of the board is drawn at each side; the sizes are those of the whole pieces.
    """
    kept, kerf, rest = pieces
    seen = 6 * kerf
    left, right, high = line - seen, line + seen, 5 * kerf
    items: list[Item] = [
        Shape(((left, 0, kept, high),), "case", "piece to be kept"),
        Shape(((kept + kerf, 0, right, high),), "case", "the rest"),
        Shape(((kept, 0, kept + kerf, high),), "air", "kerf", "x"),
        Line((line, -kerf // 3), (line, high + kerf // 3), "edge"),
        Label((left, 0, kept, high), ("piece to keep", "piece\nto keep")),
        Label((kept + kerf, 0, right, high), ("the rest",)),
        Leader((line, high + kerf // 3), "above", "line"),
        Leader((kept + kerf * 3 // 4, high), "above", "kerf"),
        Chain("below", 0, (left, kept, kept + kerf, right), tuple(_bare(each, style) for each in pieces), 0,
              tuple(pieces)),
        Chain("below", 1, (left, line), (f"marked {_bare(line, style)}",), 0, (line,)),
    ]
    short = line - kept
    told = f"{_sized(short, style)} short of the line" if short else "to the line"
    return Scene(
        f"Sawn {_WHERE[side]}",
        f"Sizes in {_UNITS[style.unit]}, of the whole pieces. Only the wood beside the line, drawn larger than it is.",
        f"A board with a pencil line, {_sized(line, style)} from its left end, and a kerf of {_sized(kerf, style)} "
        f"{_WHERE[side]}. The piece to keep, left of it, is {_sized(kept, style)} long, {told}; the rest, right of it, "
        f"is {_sized(rest, style)} long.",
        (left, -kerf // 3, right, high + kerf // 3),
        tuple(items),
    )


def sawn_strip(board: int, pieces: tuple[int, ...], kerf: int, style: Style, wanted: int = 0) -> Scene:
    """A board sawn from left to right into `pieces`, its kerfs drawn larger than they are.

    With `wanted`, what the last piece lacks of that length is marked.
    """
    high = board // 7
    wide = thickest([kerf, board // 60])
    items: list[Item] = []
    at, stations, texts = 0, [0], []
    for number, piece in enumerate(pieces):
        rect: Rect = (at, 0, at + piece, high)
        items += [Shape((rect,), "case", f"piece {number + 1}"), Label(rect, (f"piece {number + 1}", f"{number + 1}"))]
        at += piece
        stations.append(at)
        texts.append(stacked(bare(piece, style)))
        if number < len(pieces) - 1:
            items.append(Shape(((at, 0, at + wide, high),), "air", "kerf", "x"))
            at += wide
            stations.append(at)
            texts.append("")
    items.append(Chain("below", 0, tuple(stations), tuple(texts), 0))
    end, lacks = at, thickest([wanted - pieces[-1], 0]) if wanted else 0
    if lacks:
        end = at + thickest([lacks, board // 40])
        items += [Shape(((at, 0, end, high),), "clash", "missing", "x"), Leader(((at + end) // 2, high), "above",
                  f"missing {_bare(lacks, style)}", size=lacks)]
    cuts = len(pieces) - 1
    said = f" The last piece lacks {_sized(lacks, style)}." if lacks else ""
    note = f"Sizes in {_UNITS[style.unit]}. Each kerf is {_bare(kerf, style)}, drawn larger than it is."
    return Scene(
        f"{len(pieces)} pieces, {cuts} cut{'' if cuts == 1 else 's'}",
        note,
        f"A board {_sized(board, style)} long, sawn from left to right into {len(pieces)} pieces: "
        f"{', '.join(_sized(piece, style) for piece in pieces)}; each of the {cuts} kerfs is {_sized(kerf, style)}."
        f"{said}",
        (0, 0, end, high),
        tuple(items),
        told=(Told(note, (("each kerf", kerf),)),),
    )


_UNITS = {"in": "inches", "mm": "millimetres"}


def _sized(ticks: int, style: Style) -> str:
    """A rule's mark where the length stands on one, otherwise the decimal that calipers read."""
    return write_brief(ticks, style, decimal=ticks % style.step != 0)


def _bare(ticks: int, style: Style) -> str:
    return _sized(ticks, style).removesuffix(f" {style.unit}")
