"""A project as the text of a project file, so that what was set with sliders can be kept."""

import dataclasses
import typing
from typing import Any

import tomli_w

from shoplib.documents.project_file import FORMAT, fields_of
from shoplib.measure import Style, write_length, write_measured
from shoplib.model.marks import is_length, usual
from shoplib.model.project import Project


def project_text(project: Project) -> str:
    """TOML that reads back to the same project; keys at their usual value are left out."""
    style = project.style
    table: dict[str, Any] = {
        "format": FORMAT,
        "name": project.name,
        "show": {"unit": style.unit, "step": write_length(style.step, Style(style.unit, style.step))},
    }
    table.update(_table(project, style, given=("name",)))
    return tomli_w.dumps(table)


def _table(record: Any, style: Style, given: tuple[str, ...] = ()) -> dict[str, Any]:
    left_out = {field.name: usual(field, style.unit) for field in dataclasses.fields(record)}
    found = {}
    for name, (kind, _) in fields_of(type(record)).items():
        value = getattr(record, name)
        if name not in given and value is not None and value != left_out[name]:
            found[name] = _written(kind, value, style)
    return found


def _written(kind: Any, value: Any, style: Style) -> Any:
    if dataclasses.is_dataclass(value):
        return _table(value, style)
    if isinstance(value, dict):
        inner = typing.get_args(kind)[1]
        return {
            name: _table(item, style, given=("name",))
            if dataclasses.is_dataclass(item)
            else _written(inner, item, style)
            for name, item in value.items()
        }
    if isinstance(value, tuple):
        inner = typing.get_args(kind)[0]
        return [_written(inner, item, style) for item in value]
    return _length(value, style) if isinstance(value, int) and _holds_length(kind) else value


def _length(ticks: int, style: Style) -> str:
    """A mark of the rule as such, anything else as the decimal that was read off calipers; both read back exactly."""
    return (write_length if ticks % style.step == 0 else write_measured)(ticks, style)


def _holds_length(kind: Any) -> bool:
    return is_length(kind) or any(map(_holds_length, typing.get_args(kind)))
