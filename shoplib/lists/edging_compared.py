"""The edging that a typed row asks for, held against that of the plan, edge by edge."""

import re

from shoplib.lists.sides import EDGES, own_side
from shoplib.measure import INCH, MM, LengthError, read_length, write_brief
from shoplib.model.board import Board, Edge
from shoplib.model.solved import Cabinet
from shoplib.words.naming import and_list

_SETTABLE = {"in": INCH // 500, "mm": MM // 20}
_KIND = re.compile(r"\b(?=(?:band|strip)(?:ing|s)?\b)")
_LENGTH = re.compile(r"\d+(?:[ -]\d+/\d+|/\d+|[.,]\d+)?\s*(?:mm\b|in\b|inch\b|\")?")
_FREE_WORDS = re.compile(r"\b(?:(?:band|strip)(?:ing|s)?|on|the|and|edges?|thick|of|with|solid)\b")
_EDGE = re.compile(rf"\b({'|'.join(EDGES)})\b")
_ALL = re.compile(r"\ball (?:round|(?:four |4 )?edges)\b")
_NOTHING = ("", "none", "no", "-")


class EdgingNotRead(ValueError):
    """A cell that does not say which edges are covered, in words that are read here."""


def edging_off(text: str, board: Board, cabinet: Cabinet) -> list[str]:
    """What the cell says otherwise than the plan; an empty one says that no edge is covered.

    Raises EdgingNotRead.
    """
    said = _read(text, cabinet, [edge for edge in EDGES if own_side(board, edge)[0] < 2])
    planned = dict(board.edging)
    style, found = cabinet.style, []
    left_out: dict[Edge, list[str]] = {}
    for edge, meant in planned.items():
        if edge not in said:
            left_out.setdefault(meant, []).append(edge)
            continue
        kind, thickness = said[edge]
        if kind and kind != meant.kind:
            found.append(f"the edging on the {edge} edge is a {kind}, planned a {meant.kind}")
        if thickness is not None and abs(thickness - meant.thickness) > _SETTABLE[style.unit]:
            now, then = (write_brief(one, style, decimal=True) for one in (thickness, meant.thickness))
            found.append(f"the edging on the {edge} edge is {now}, planned {then}")
    for meant, edges in left_out.items():
        what = f"{meant.kind} of {write_brief(meant.thickness, style, decimal=True)}"
        found.append(
            f"no edging on the {_edges(edges)}, planned a {what}; "
            "the size at the saw leaves room for it, so without it the board stays that much smaller"
        )
    extra = [edge for edge in said if edge not in planned]
    if extra:
        found.append(f"edging on the {_edges(extra)}, which the plan leaves bare")
    return found


def _edges(edges: list[str]) -> str:
    return f"{and_list(edges)} edge{'s' * (len(edges) > 1)}"


def _read(text: str, cabinet: Cabinet, every: list[str]) -> dict[str, tuple[str, int | None]]:
    """For each covered edge the kind and thickness of its edging, as far as the cell says them.

    `every` are the edges that the board has.

    >>> from shoplib.model.solved import Cabinet
    >>> _read("band 1 mm on the front and left edges", Cabinet("c", (), {}), [])
    {'front': ('band', 80000), 'left': ('band', 80000)}
    """
    plain = " ".join(text.casefold().split())
    if plain in _NOTHING:
        return {}
    parts = [part for part in _KIND.split(plain) if part.strip()]
    if len(_KIND.findall(plain)) < 2:
        parts = [plain]
    said: dict[str, tuple[str, int | None]] = {}
    for part in parts:
        kind = next((kind for kind in ("band", "strip") if re.search(rf"\b{kind}", part)), "")
        length = _LENGTH.search(part)
        rest = _LENGTH.sub(" ", part, count=1)
        edges = every if _ALL.search(rest) else _EDGE.findall(rest)
        rest = _EDGE.sub(" ", _ALL.sub(" ", rest))
        if not edges or re.search(r"[a-z0-9]", _FREE_WORDS.sub(" ", rest)):
            raise EdgingNotRead(text)
        for edge in edges:
            said[edge] = (kind, _thickness(length, text, cabinet))
    return said


def _thickness(length: re.Match | None, text: str, cabinet: Cabinet) -> int | None:
    if length is None:
        return None
    try:
        return read_length(length[0].strip(), unit=cabinet.style.unit)
    except LengthError:
        raise EdgingNotRead(text) from None
