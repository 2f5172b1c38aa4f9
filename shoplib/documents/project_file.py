"""Project files: TOML in, a `Project` out, every refusal one sentence with the key's full name.

TOML is read with the standard library, so a project file can run no code. The fields of the records
in `shoplib.model.project` are the keys of the file; this module knows only how to read each kind.
"""

import dataclasses
import re
import tomllib
import types
import typing
from functools import cache
from pathlib import Path
from typing import Any

from shoplib.documents import toml_faults
from shoplib.documents.not_read_yet import without_unread
from shoplib.measure import LengthError, Style, read_length
from shoplib.measure.faults import shown
from shoplib.model.marks import Reading, Thing, usual
from shoplib.model.project import Project
from shoplib.model.season import HUMIDITIES

FORMAT = 1
MOST = 60
"""More drawers, bays or readings than this are a slip of the hand, not a cabinet."""

_OWN_WORDS = {"format", "show"}
_NOT_IN_FILE = {"style", "rounding", "slides"}
_PRICE = re.compile(r"\d{1,7}(?:[.,]\d{1,2})?", re.ASCII)
_PACK_PRICE = re.compile(_PRICE.pattern + r" for [1-9]\d{0,5}", re.ASCII)
_METRIC = ("mm", "cm", "m", "metre", "metres", "meter", "meters")


class ProjectFileError(ValueError):
    """The file cannot be read as a project; the message is one sentence."""


def read_project(path: str | Path) -> Project:
    """Read a project file.

    Raises ProjectFileError with one sentence: what is wrong, under which key, and what would be right.
    """
    path = Path(path)
    try:
        text = path.read_bytes().decode("utf-8-sig")
    except FileNotFoundError:
        raise ProjectFileError(f"{path.name}: there is no such file; check the name and the folder") from None
    except IsADirectoryError:
        raise ProjectFileError(f"{path.name}: this is a folder; name the project file inside it") from None
    except UnicodeDecodeError:
        raise ProjectFileError(f"{path.name}: this is not UTF-8 text; save it again as UTF-8") from None
    except OSError as error:
        raise ProjectFileError(f"{path.name}: the file cannot be opened ({error.strerror})") from None
    return project_from_text(text, path.name)


def project_from_text(text: str, name: str = "project") -> Project:
    """Read a project from TOML text; `name` stands in front of what is wrong with the file as a whole.

    >>> project_from_text("")
    Traceback (most recent call last):
    ...
    shoplib.documents.project_file.ProjectFileError: project: the file is empty; a project begins with format = 1
    """
    if not text.strip():
        raise ProjectFileError(f"{name}: the file is empty; a project begins with format = 1")
    try:
        table = tomllib.loads(text)
    except tomllib.TOMLDecodeError as error:
        raise ProjectFileError(f"{name}: {toml_faults.told(text, error)}") from None
    except ValueError:  # a number of over 4300 digits, which the standard reader passes on to int()
        raise ProjectFileError(
            f"{name}: a number in it has thousands of digits; write a length as text with a unit"
        ) from None
    except RecursionError:
        raise ProjectFileError(f"{name}: the lists are nested too deep to be a project") from None
    if table.get("format") != FORMAT or type(table["format"]) is not int:
        raise ProjectFileError(f'format: write "format = {FORMAT}" in the first line, the only format there is')
    style = _style(table.get("show"))
    rest = {key: value for key, value in table.items() if key not in _OWN_WORDS}
    if "measured" in rest:
        rest["measured"] = without_unread(rest["measured"])
    return Project(style=style, **_values(Project, rest, "", style.unit, extra=_OWN_WORDS))


def _style(show: Any) -> Style:
    right = 'write [show] with unit = "in" and step = "1/32 in", or unit = "mm" and step = "0.5 mm"'
    if not isinstance(show, dict):
        raise ProjectFileError(f"show: it says how lengths are shown; {right}")
    for key in show:
        if key not in ("unit", "step"):
            raise ProjectFileError(f"show.{key}: there is no such key; {right}")
    unit, step = show.get("unit"), show.get("step")
    if not isinstance(unit, str) or not isinstance(step, str):
        raise ProjectFileError(f"show: both unit and step are needed as text; {right}")
    try:
        return Style.of(unit, step)
    except ValueError as error:
        raise ProjectFileError(f"show: {error}") from None


@cache
def fields_of(cls: type) -> dict[str, tuple[Any, bool]]:
    """For each key of a record: what it holds, and whether it may be left out."""
    hints = typing.get_type_hints(cls, include_extras=True)
    found = {}
    for field in dataclasses.fields(cls):
        if field.name in _NOT_IN_FILE:
            continue
        optional = field.default is not dataclasses.MISSING or field.default_factory is not dataclasses.MISSING
        found[field.name] = (hints[field.name], optional)
    return found


def _values(
    cls: type, table: Any, key: str, unit: str, extra: set[str] = frozenset(), given: tuple[str, ...] = ()
) -> dict:
    """The values of a table, checked key by key; `given` are fields that come from elsewhere.

    A key that is left out has its usual value, a round number of the unit that the project is shown in.
    """
    if not isinstance(table, dict):
        raise ProjectFileError(f"{key}: a table of keys is meant here, not {_kind(table)}")
    fields = {name: kind for name, kind in fields_of(cls).items() if name not in given}
    names = ", ".join(sorted(set(fields) | set(extra)))
    for name in table:
        if name not in fields:
            raise ProjectFileError(f"{_under(key, name)}: there is no such key; the keys here are {names}")
    for name, (_, optional) in fields.items():
        if name not in table and not optional:
            raise ProjectFileError(f"{_under(key, name)}: this key is missing and is needed")
    found = {name: _value(fields[name][0], value, _under(key, name), unit) for name, value in table.items()}
    left_out = [field for field in dataclasses.fields(cls) if field.name in fields and field.name not in table]
    return {field.name: usual(field, unit) for field in left_out} | found


def _value(kind: Any, value: Any, key: str, unit: str) -> Any:
    origin = typing.get_origin(kind)
    if origin is typing.Annotated and (read := _OTHER_MARKS.get(typing.get_args(kind)[1])):
        return read(value, key)
    if origin is typing.Annotated:
        return _length(value, key, zero=typing.get_args(kind)[1] == "room")
    if origin in (typing.Union, types.UnionType):
        return _either(typing.get_args(kind), value, key, unit)
    if origin is typing.Literal:
        return _word(typing.get_args(kind), value, key)
    if origin is tuple:
        return _list(typing.get_args(kind)[0], value, key, unit)
    if origin is dict:
        return _named(*typing.get_args(kind), value, key, unit)
    if dataclasses.is_dataclass(kind):
        return kind(**_values(kind, value, key, unit))
    if kind is int:
        return _count(value, key)
    return _name(value, key)


def _length(value: Any, key: str, zero: bool) -> int:
    if not isinstance(value, str | int | float) or isinstance(value, bool):
        raise ProjectFileError(
            f"{key}: a length is text with a unit, such as `23 5/8 in` or `601.5 mm`, not {_kind(value)}"
        )
    try:
        return read_length(value, what=key, zero=zero)
    except LengthError as error:
        raise ProjectFileError(str(error)) from None


def _load(value: Any, key: str) -> str:
    return _quantity(value, key, "load", "a load is text with a unit, such as `15 lb/ft2` or `75 kg/m2`")


def _weight(value: Any, key: str) -> str:
    return _quantity(value, key, "force", "a weight is text with a unit, such as `50 lb` or `23 kg`")


def _quantity(value: Any, key: str, kind: str, meant: str) -> str:
    """The text itself is kept: what a person wrote is what is saved again."""
    from shoplib.measure.quantity import QuantityError, read_quantity  # pint takes a third of a second to load

    if not isinstance(value, str):
        raise ProjectFileError(f"{key}: {meant}")
    try:
        read_quantity(value, kind)
    except QuantityError as error:
        raise ProjectFileError(f"{key}: {error}") from None
    return value


def _price(value: Any, key: str) -> str:
    """Money is kept as it was written; a float could not say every amount."""
    if not isinstance(value, str) or not (value == "" or _PRICE.fullmatch(value)):
        written = shown(value) if isinstance(value, str) else _kind(value)
        raise ProjectFileError(
            f'{key}: a price is a number in quotes, such as "48.00", without the currency, not {written}'
        )
    return value


def _pack_price(value: Any, key: str) -> str:
    """A price, or one that buys several together."""
    if isinstance(value, str) and _PACK_PRICE.fullmatch(value):
        return value
    try:
        return _price(value, key)
    except ProjectFileError as error:
        raise ProjectFileError(
            f'{error}; several together, as in a box of 100 or a roll of 100 ft or m, are "9.80 for 100"'
        ) from None


def _share(value: Any, key: str) -> int:
    if not isinstance(value, int) or isinstance(value, bool) or not 0 <= value <= 100:
        written = f"{value}"[:20] if isinstance(value, int | float) and not isinstance(value, bool) else _kind(value)
        raise ProjectFileError(f"{key}: a whole number of percent from 0 to 100 is meant here, not {written}")
    return value


def _percent(value: Any, key: str) -> int:
    """Relative humidity, where the movement of wood can be worked out."""
    low, high = HUMIDITIES[0], HUMIDITIES[-1]
    if not isinstance(value, int) or isinstance(value, bool) or value not in HUMIDITIES:
        written = f"{value}"[:20] if isinstance(value, int | float) and not isinstance(value, bool) else _kind(value)
        raise ProjectFileError(
            f"{key}: relative humidity is a whole number of percent from {low} to {high}, not {written}"
        )
    return value


_OTHER_MARKS = {
    "load": _load, "weight": _weight, "price": _price, "pack price": _pack_price, "percent": _percent, "share": _share,
}  # fmt: skip
"""How a value with a mark that is no length is read."""


def _either(kinds: tuple, value: Any, key: str, unit: str) -> Any:
    """A field of several kinds: a length or one of a few words; None only stands for "left out"."""
    kinds = tuple(kind for kind in kinds if kind is not type(None))
    words = [word for kind in kinds if typing.get_origin(kind) is typing.Literal for word in typing.get_args(kind)]
    if value in words:
        return value
    others = [kind for kind in kinds if typing.get_origin(kind) is not typing.Literal]
    if words and not isinstance(value, str):
        raise ProjectFileError(
            f"{key}: write a length with its unit, or {' or '.join(map(_in_quotes, words))}, not {_kind(value)}"
        )
    try:
        return _value(others[0], value, key, unit)
    except ProjectFileError as error:
        if words:
            told = str(error).removesuffix(".")
            raise ProjectFileError(f"{told}; or write {' or '.join(map(_in_quotes, words))}") from None
        raise


def _word(words: tuple[str, ...], value: Any, key: str) -> str:
    if value not in words or not isinstance(value, str):
        written = f'"{value}"' if isinstance(value, str) else _kind(value)
        raise ProjectFileError(f"{key}: {written[:60]} is not a choice here; write one of {_quoted(words)}")
    return value


def _list(kind: Any, value: Any, key: str, unit: str) -> tuple:
    if not isinstance(value, list):
        raise ProjectFileError(f"{key}: a list in [ ] is meant here, not {_kind(value)}")
    if len(value) > MOST:
        raise ProjectFileError(f"{key}: {len(value)} entries are more than the {MOST} that a cabinet can use")
    found = tuple(_value(kind, item, f"{key}[{number}]", unit) for number, item in enumerate(value, 1))
    if kind == Reading:
        _refuse_mixed(value, key)
    return found


def _refuse_mixed(readings: list[str], key: str) -> None:
    """Readings of one thing stand side by side; where one is in another system, it is most often a slip."""
    metric = [text.rstrip(" .)").lower().endswith(_METRIC) for text in readings]
    if any(metric) and not all(metric):
        inch, mm = metric.index(False), metric.index(True)
        raise ProjectFileError(
            f"{key}: `{readings[inch]}` is in inches and `{readings[mm]}` is metric; "
            "write all readings of one size in one system"
        )


def _named(by: Any, kind: Any, value: Any, key: str, unit: str) -> dict:
    """A table by name; the names of things that are bought may hold a fraction, for they never name a file."""
    if not isinstance(value, dict):
        raise ProjectFileError(f'{key}: a table by name is meant here, such as [{key}."a name"], not {_kind(value)}')
    found = {}
    for name, item in value.items():
        full = f'{key}."{name}"'
        _name(name.replace("/", "") if by == Thing else name, full)
        if not name.strip():
            raise ProjectFileError(f"{full}: a name must not be empty")
        if dataclasses.is_dataclass(kind) and "name" in fields_of(kind):
            found[name] = kind(name=name, **_values(kind, item, full, unit, given=("name",)))
        else:
            found[name] = _value(kind, item, full, unit)
    return found


def _count(value: Any, key: str) -> int:
    if not isinstance(value, int) or isinstance(value, bool):
        raise ProjectFileError(f"{key}: a whole number such as 3 is meant here, not {_kind(value)}")
    if not 0 <= value <= MOST:
        raise ProjectFileError(f"{key}: {value} is out of range; a number from 0 to {MOST} is meant here")
    return value


def _name(value: Any, key: str) -> str:
    """Names go into file names and spreadsheets: no paths, no formulas, one line."""
    if not isinstance(value, str):
        raise ProjectFileError(f"{key}: text in quotes is meant here, not {_kind(value)}")
    if len(value) > 80:
        raise ProjectFileError(f"{key}: this is {len(value)} characters long; use 80 at most")
    if value[:1] in ("=", "+", "-", "@"):
        raise ProjectFileError(f"{key}: a name must not begin with {value[0]}, which a spreadsheet takes for a formula")
    if any(sign in value for sign in '/\\":<>|?*') or not value.isprintable() or ".." in value:
        raise ProjectFileError(f'{key}: a name is one line of words without / \\ : " < > | ? * or ..')
    if key.endswith("name") and not value.strip():
        raise ProjectFileError(f"{key}: a name must not be empty")
    return value


def _under(key: str, name: str) -> str:
    return f"{key}.{name}" if key else name


def _quoted(words: typing.Iterable[str]) -> str:
    return ", ".join(map(_in_quotes, words))


def _in_quotes(word: str) -> str:
    return f'"{word}"'


def _kind(value: Any) -> str:
    names = {
        bool: "true or false",
        int: "a bare number",
        float: "a bare number",
        str: "text",
        list: "a list",
        dict: "a table",
    }
    return names.get(type(value), "a date or time")
