"""A project whose lengths carry their working, so that every size solved from it can say why.

`solve(traced(project))` gives the same cabinet, number for number; its sizes end in the names given here.
"""

import dataclasses
import types
import typing
from functools import cache
from typing import Any

from shoplib.measure.traced import Kind, leaf
from shoplib.model.marks import is_length
from shoplib.model.project import Back, JointChoice, Project
from shoplib.tables.slides import Slide

Path = tuple[str | int, ...]
"""The way to a value: names of fields and of tables, and numbers of rows from 1."""

PLACES = {
    "size": "the case",
    "space": "the space",
    "space.blocks": "block {0}",
    "carcass": "the case",
    "carcass.corner": "the case corners",
    "carcass.divider": "the dividers",
    "carcass.shelf": "the shelves",
    "carcass.back": "the back",
    "carcass.rails": "rail {0}",
    "carcass.rails.joint": "rail {0}",
    "base": "the base",
    "bays": "bay {0}",
    "bays.drawers": "bay {0}",
    "bays.drawers.corner": "the box corners, bay {0}",
    "bays.drawers.back_corner": "the back of the boxes, bay {0}",
    "bays.shelves": "bay {0}",
    "bays.pull_out": "bay {0}",
    "fronts": "the fronts",
    "pulls": "the pulls",
    "edging": "edging {0}",
    "sheets": "the sheet {0}",
    "sheets.sizes": "size {1} of {0}",
    "sheets.on_hand": "piece {1} of {0} in the shop",
    "cutting": "the cutting",
    "measured.openings": "{0}",
    "measured.parts": "{0}",
    "measured.openings_again": "{0}",
    "slides": "{0}",
}
"""What each record of a project is about, by its key; {0} is the number or name on the way to it."""

NAMES = {
    "size.width": "case width",
    "size.height": "case height",
    "size.depth": "case depth",
    "space.width": "width of the space, reading {0}",
    "space.height": "height of the space, reading {0}",
    "space.depth": "depth of the space, reading {0}",
    "space.clearance_width": "clearance in width",
    "space.clearance_height": "clearance in height",
    "space.clearance_depth": "clearance in depth",
    "space.floor_fall": "fall of the floor",
    "space.room_height": "height of the room",
    "space.door_width": "width of the door",
    "space.door_height": "height of the door",
    "carcass.overhang_sides": "overhang of the top at the sides",
    "carcass.overhang_front": "overhang of the top at the front",
    "base.setback": "toe room",
    "bays.drawers.difference": "difference from drawer to drawer, bay {0}",
    "bays.drawers.given": "given height of drawer {1}, bay {0}",
    "bays.drawers.bottom_up": "height of the bottom's underside in the box",
    "bays.drawers.bottom_depth": "groove depth for the bottom",
    "bays.drawers.bottom_fit": "fit of the bottom",
    "bays.drawers.bottom_slack": "slack of the bottom",
    "bays.drawers.room_above": "room above the box",
    "bays.shelves.at": "given height of shelf {1}, bay {0}",
    "bays.shelves.setbacks": "setback of shelf {1}, bay {0}",
    "bays.shelves.depths": "depth of shelf {1}, bay {0}",
    "bays.pull_out.room": "room for what hangs on the panel",
    "fronts.gap": "gap between fronts",
    "fronts.around": "gap around the fronts",
    "fronts.reveal": "reveal",
    "sheets.nominal": "nominal thickness of {0}",
    "sheets.readings": "reading {1} of {0}",
    "sheets.length": "length of the sheet {0}",
    "sheets.width": "width of the sheet {0}",
    "measured.openings.front": "opening of {0} measured at the front",
    "measured.openings.back": "opening of {0} measured at the back",
    "measured.openings_again.front": "opening of {0} measured again at the front",
    "measured.openings_again.back": "opening of {0} measured again at the back",
    "measured.depths": "depth of {0} as measured",
    "measured.parts.length": "length of {0} as measured",
    "measured.parts.width": "width of {0} as measured",
    "slides.side": "room of {0} at each side",
    "slides.below": "room of {0} below the box",
    "slides.above": "room of {0} above the box",
    "slides.narrow": "what {0} forgives",
    "slides.lengths": "length of {0}, size {1}",
}
"""Names of their own, where the field and what it is about would not read well together."""


def traced(project: Project) -> Project:
    """The same project, equal in every number, whose lengths carry their names into what is solved from them.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> from shoplib.model.project import Carcass, Project, Size
    >>> from shoplib.model.sheet import Sheet
    >>> plain = Project("box", INCH_STYLE, {"ply": Sheet("ply", "plywood", INCH)}, Size(width=9 * INCH), Carcass("ply"))
    >>> project = traced(plain)
    >>> project == plain, project.size.width.sum.terms[0][0].name
    (True, 'case width')
    """
    return _record(project, ())


def name_of(path: Path, record: Any) -> str:
    """What the value at `path`, a field of `record`, is called in a working.

    Raises KeyError where nobody has named it.
    """
    fields = [part for part in path if isinstance(part, str)]
    key, marks = _key(path)
    if key == "sheets.readings" and len(record.readings) == 1:
        return f"measured thickness of {record.name}"
    if key in NAMES:
        return NAMES[key].format(*marks)
    place = PLACES[key.rpartition(".")[0]].format(*marks)
    field = fields[-1].replace("_", " ")
    if isinstance(record, JointChoice) and field == "depth":
        field = f"{record.kind} depth"
    if isinstance(record, Back) and field == "depth":  # how far the back reaches into a side
        return f"{'rabbet width' if record.kind == 'rabbet' else f'{record.kind} depth'} for the back"
    return f"{field} of {place}"


def _key(path: Path) -> tuple[str, list[str]]:
    """The fields of the way, dotted, and what stands between them: numbers of rows, names in tables."""
    fields, marks, table = [], [], False
    for part in path:
        if isinstance(part, int) or table:
            marks.append(str(part))
            table = False
        else:
            fields.append(part)
            table = part in _TABLES
    return ".".join(fields), marks


_TABLES = {"sheets", "openings", "openings_again", "depths", "parts", "slides"}


def _record(record: Any, path: Path) -> Any:
    hints, found = _hints(type(record)), {}
    for field in dataclasses.fields(record):
        value, kind = getattr(record, field.name), hints[field.name]
        found[field.name] = _value(kind, value, (*path, field.name), record)
    return dataclasses.replace(record, **found)


@cache
def _hints(record: type) -> dict[str, Any]:
    """What its fields are; kept, for it is put together from text each time that it is asked."""
    return typing.get_type_hints(record, include_extras=True)


def _value(kind: Any, value: Any, path: Path, record: Any) -> Any:
    if dataclasses.is_dataclass(value):
        return value if path == ("style",) else _record(value, path)
    origin, inner = typing.get_origin(kind), typing.get_args(kind)
    if origin is dict:
        return {name: _value(inner[1], one, (*path, name), record) for name, one in value.items()}
    if origin is tuple:
        return tuple(_value(inner[0], one, (*path, number), record) for number, one in enumerate(value, 1))
    if origin in (typing.Union, types.UnionType):
        kinds = [one for one in inner if one is not type(None) and typing.get_origin(one) is not typing.Literal]
        plain = value is None or isinstance(value, str) or not kinds
        return value if plain else _value(kinds[0], value, path, record)
    if is_length(kind) or (kind is int and isinstance(record, Slide)):
        return leaf(value, name_of(path, record), _came_from(path), _written_as(path))
    return value


def _came_from(path: Path) -> Kind:
    if path[0] == "slides":
        return "table"
    measured = path[0] == "measured" or path[-2] == "readings" or (path[0] == "space" and isinstance(path[-1], int))
    return "measured" if measured else "chosen"


def _written_as(path: Path) -> str:
    """The key under which the value stands in a project file."""
    text = ""
    for part in path:
        text += f"[{part}]" if isinstance(part, int) else f".{part}"
    return text.removeprefix(".")
