"""Every key of a project file is saved and read again, and left out it is a round number of the project's unit."""

import dataclasses
import tomllib
import typing

import pytest

from shoplib.documents.project_file import ProjectFileError, fields_of, project_from_text
from shoplib.documents.project_text import project_text
from shoplib.measure import INCH, MM, Style
from shoplib.model.marks import usual
from shoplib.model.project import Project

UNITS = {"in": Style("in", INCH // 32), "mm": Style("mm", MM // 2)}

BARE = """
format = 1
name = "Rack for frames"
show = {{ unit = "{unit}", step = "{step}" }}
size = {{ width = "{size}", height = "{size}", depth = "{size}" }}
carcass = {{ sheet = "ply", back = {{ kind = "groove", sheet = "ply" }} }}
{more}
[sheets.ply]
kind = "plywood"
nominal = "{thick}"
"""


def bare(unit: str, more: str = "") -> str:
    rest = {"in": ("1/32 in", "30 in", "3/4 in"), "mm": ("0.5 mm", "800 mm", "18 mm")}[unit]
    return BARE.format(unit=unit, step=rest[0], size=rest[1], thick=rest[2], more=more)


OTHER = {
    "load": "20 lb/ft2", "percent": 50, "weight": "61 lb", "price": "12.50", "pack price": "9.80 for 100", "share": 17,
}  # fmt: skip
"""A value for each mark that is no length."""


class Unlike:
    """Values of any key that are never the usual ones; lengths all differ from one another."""

    def __init__(self, unit: str) -> None:
        self.unit, self.count = unit, 0

    def record(self, cls, **given):
        fields = [field for field in dataclasses.fields(cls) if field.name in fields_of(cls)]
        values = {f.name: self.value(fields_of(cls)[f.name][0], usual(f, self.unit), f.name) for f in fields}
        return cls(**(values | given))

    def value(self, kind, usually, name):
        origin, inner = typing.get_origin(kind), typing.get_args(kind)
        if origin is typing.Annotated and inner[1] in OTHER:
            return OTHER[inner[1]]
        if origin is typing.Annotated:
            self.count += 1
            return (100 + self.count) * MM + self.count
        if origin is typing.Literal:
            return next(word for word in reversed(inner) if word != usually)
        if origin is tuple:
            return (self.value(inner[0], None, name), self.value(inner[0], None, name))
        if origin is dict:
            names = {"name": "one"} if dataclasses.is_dataclass(inner[1]) and "name" in fields_of(inner[1]) else {}
            return {"one": self.record(inner[1], **names) if names or dataclasses.is_dataclass(inner[1])
                    else self.value(inner[1], None, name)}  # fmt: skip
        if inner:
            return self.value(next(one for one in inner if one is not type(None)), usually, name)
        if dataclasses.is_dataclass(kind):
            return self.record(kind)
        return 7 if kind is int else f"a {name}"


def written_keys(cls, table, path="") -> set[str]:
    """The keys of this record that the table leaves out, at any depth."""
    missing = set()
    for name, (kind, _) in fields_of(cls).items():
        if name not in table:
            missing.add(f"{path}{name}")
            continue
        for record in _records(kind):
            value = table[name]
            for item in value if isinstance(value, list) else [value]:
                rows = item.values() if typing.get_origin(kind) is dict else [item]
                for row in rows:
                    named = {"name": ""} if typing.get_origin(kind) is dict else {}
                    missing |= written_keys(record, row | named, f"{path}{name}.")
    return missing


def _records(kind) -> list[type]:
    if dataclasses.is_dataclass(kind):
        return [kind]
    return [record for inner in typing.get_args(kind) for record in _records(inner)]


@pytest.mark.parametrize("unit", UNITS)
def test_every_key_is_saved_and_read_again(unit):
    project = dataclasses.replace(Unlike(unit).record(Project, style=UNITS[unit]), style=UNITS[unit])
    text = project_text(project)
    assert written_keys(Project, tomllib.loads(text)) == set()
    assert project_from_text(text) == project


def test_a_key_that_is_not_saved_would_be_seen():
    text = project_text(Unlike("mm").record(Project, style=UNITS["mm"]))
    table = tomllib.loads(text)
    del table["bays"][1]["drawers"]["corner"]["stop"]
    assert written_keys(Project, table) == {"bays.drawers.corner.stop"}


@pytest.mark.parametrize("unit", UNITS)
def test_a_length_that_is_left_out_is_a_round_number_of_the_unit(unit):
    """1/16 in is no whole number of millimetres: no project shown in one system takes its rest from the other."""
    more = "bays = [{kind = 'drawers', drawers = {}}, {kind = 'shelves', shelves = {}}, {kind = 'pull-out'," \
        " pull_out = {}}]\nfronts = {}\npulls = {}"  # fmt: skip
    found = {}

    def look(record, path=""):
        for field in dataclasses.fields(record):
            value = getattr(record, field.name)
            if dataclasses.is_dataclass(value):
                look(value, f"{path}{field.name}.")
            elif field.metadata and isinstance(value, int):
                found[f"{path}{field.name}"] = value

    project = project_from_text(bare(unit, more))
    look(project)
    for number, bay in enumerate(project.bays):
        look(bay, f"bays[{number}].")
    assert len(found) == 27
    step = INCH // 16 if unit == "in" else MM
    assert {name: value for name, value in found.items() if value <= 0 or value % step} == {}
    again = project_from_text(project_text(project))
    assert again == project


def test_each_length_with_a_usual_value_has_one_in_either_unit():
    """A length of the records that starts from inches has a twin in millimetres beside it, and one that is near."""
    for record in {record for record in _all_records(Project)}:
        for field in dataclasses.fields(record):
            if isinstance(field.default, int) and field.default > 100:
                assert "mm" in field.metadata, f"{record.__name__}.{field.name}"
                assert 0.75 <= field.metadata["mm"] / field.default <= 1.3, f"{record.__name__}.{field.name}"


def _all_records(cls) -> set[type]:
    found = {cls}
    for kind, _ in fields_of(cls).values():
        for record in _records(kind):
            found |= _all_records(record)
    return found


@pytest.mark.parametrize(
    ("readings", "mixed"),
    [
        ('"61 1/4 in", "61 1/8 in"', False),
        ("""'61 1/4"', "5' 1 1/8 in\"""", False),
        ('"1555 mm", "155.4 cm", "1.553 m"', False),
        ('"61 1/4 in", "1554 mm"', True),
        ('"1554 mm", "1553 mm", "5 ft 1 in"', True),
        (""""1.55 m", '61 1/8"'""", True),
    ],
)
def test_readings_of_one_size_stand_in_one_system(readings, mixed):
    more = f'space = {{ width = [{readings}], height = ["800 mm"], depth = ["800 mm"] }}'
    if mixed:
        with pytest.raises(ProjectFileError, match=r"^space\.width: `.*` is in inches and `.*` is metric; write all"):
            project_from_text(bare("in", more))
    else:
        assert len(project_from_text(bare("in", more)).space.width) > 1


def test_caliper_readings_of_one_sheet_stand_in_one_system():
    text = bare("mm") + 'readings = ["17.8 mm", "0.703 in"]\n'
    with pytest.raises(ProjectFileError, match=r'^sheets\."ply"\.readings: `0\.703 in` is in inches'):
        project_from_text(text)
