"""Marks on the fields of a project: what a number stands for, and what it is where nothing is said.

Lengths are ticks. One table of fields then serves for reading, checking and saving a project file.
"""

import dataclasses
import typing
from collections.abc import Callable
from functools import cache
from typing import Annotated, Any, TypeVar

from shoplib.measure.traced import not_whole

Made = TypeVar("Made")

Length = Annotated[int, "length"]
"""A size: more than nothing."""

Room = Annotated[int, "room"]
"""A clearance, allowance or setback: nothing is allowed."""

Reading = Annotated[int, "reading"]
"""A size read with a tape or a caliper, one of several of the same thing: more than nothing."""

Percent = Annotated[int, "percent"]
"""Relative humidity, a whole number of percent."""

Load = Annotated[str, "load"]
"""A weight on an area, as text with a unit: `shoplib.measure.quantity` reads it."""

Weight = Annotated[str, "weight"]
"""What something weighs, as text with a unit: `shoplib.measure.quantity` reads it as a force."""

Share = Annotated[int, "share"]
"""So much over what is needed, a whole number of percent."""

Price = Annotated[str, "price"]
"""An amount of money as text, a plain number such as `48.00`; empty where it is not known."""

PackPrice = Annotated[str, "pack price"]
"""The same, or with the number that it buys together: `9.80 for 100`."""

Thing = Annotated[str, "thing"]
"""The name of something that is bought; unlike other names it may hold a fraction."""


def is_length(kind: Any) -> bool:
    """Whether a mark stands for a length in ticks, and not for a percent or a load.

    >>> is_length(Room), is_length(Percent), is_length(int)
    (True, False, False)
    """
    return typing.get_origin(kind) is Annotated and typing.get_args(kind)[1] in ("length", "room", "reading")


class WholeTicks:
    """A record whose lengths are whole ticks: a float, which would slip past every exact sum, is refused.

    A plain whole number is taken as ticks, for inside the workbook every length is one; text with a unit becomes
    ticks by `read_length`.

    >>> from shoplib.model.project import Fronts
    >>> Fronts(gap=3.5)
    Traceback (most recent call last):
    ...
    TypeError: Fronts.gap: a length is a whole number of ticks, not 3.5; read_length makes one of text
    """

    __slots__ = ()

    def __post_init__(self) -> None:
        """Look at every length once, when the record is made. Raises TypeError."""
        for name in _lengths_of(type(self)):
            value = getattr(self, name)
            several = value.values() if isinstance(value, dict) else value if isinstance(value, tuple) else (value,)
            for one in several:
                if isinstance(one, float | bool):
                    raise TypeError(f"{type(self).__name__}.{name}: {not_whole(one)}")


@cache
def _lengths_of(record: type) -> tuple[str, ...]:
    hints = typing.get_type_hints(record, include_extras=True)
    return tuple(name for name, hint in hints.items() if "Annotated[int" in repr(hint))


def natural(inch: int, mm: int) -> Any:
    """A field whose usual value is a round number in either system: `mm` ticks where lengths are shown in mm.

    The record itself starts from the inch; `usual` gives the value for a unit.
    """
    return dataclasses.field(default=inch, metadata={"mm": mm})


def usual(of: dataclasses.Field, unit: str) -> Any:
    """What a field holds where a project shown in this unit ("in" or "mm") leaves it out; MISSING if it may not.

    >>> from shoplib.model.project import Fronts
    >>> by_name = {field.name: field for field in dataclasses.fields(Fronts)}
    >>> usual(by_name["gap"], "mm"), usual(by_name["kind"], "mm")
    (240000, 'none')
    """
    if of.default_factory is not dataclasses.MISSING:
        return of.default_factory()
    value = of.metadata.get(unit, of.default)
    return _in_unit(value, unit) if dataclasses.is_dataclass(value) else value


def usually(record: Callable[..., Made], unit: str, **given: Any) -> Made:
    """A record with what is given, and the usual value of this unit ("in" or "mm") for all that is not.

    Raises TypeError where something is left out that has no usual value.

    >>> from shoplib.model.project import Pulls
    >>> usually(Pulls, "mm", pitch=7) == Pulls(7, projection=25 * 80_000, hole=5 * 80_000)
    True
    """
    values = {field.name: usual(field, unit) for field in dataclasses.fields(record) if field.name not in given}
    return record(**given, **{name: value for name, value in values.items() if value is not dataclasses.MISSING})


def _in_unit(record: Any, unit: str) -> Any:
    """A record that is itself a usual value: each length that is the usual inch one, at the usual one of this unit."""
    fields = [field for field in dataclasses.fields(record) if unit in field.metadata]
    return dataclasses.replace(
        record, **{field.name: field.metadata[unit] for field in fields if getattr(record, field.name) == field.default}
    )
