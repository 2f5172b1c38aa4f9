"""The optional keys that say how a case is used: read, refused in one sentence, saved as they were written."""

import dataclasses

import pytest

from shoplib.documents.project_file import ProjectFileError, project_from_text
from shoplib.documents.project_text import project_text
from shoplib.model.cabinet import solve
from shoplib.model.project import ImpossibleProject, InUse

CASE = """
format = 1
name = "Shelf for wheel boxes"
show = { unit = "mm", step = "0.5 mm" }
size = { width = "900 mm", height = "800 mm", depth = "300 mm" }
carcass = { sheet = "boards" }
in_use = { IN_USE }
[sheets.boards]
kind = "KIND"
nominal = "19 mm"
species = "SPECIES"
[[bays]]
kind = "shelves"
shelves = { fixed = 1 }
"""


def text(in_use: str = "", kind: str = "solid", species: str = "sugar maple") -> str:
    return CASE.replace("IN_USE", in_use).replace("KIND", kind).replace("SPECIES", species)


def test_what_is_said_nothing_of_is_usual():
    assert project_from_text(text()).in_use == InUse("15 lb/ft2", "free", 45, 35, 65)
    assert "in_use" not in project_text(project_from_text(text()))


def test_what_is_written_is_saved_again_as_it_was_written():
    given = 'put_in = "100 kg/m2", stands = "fastened", made = 50, driest = 40, dampest = 60'
    project = project_from_text(text(given))
    again = project_text(project)
    assert 'put_in = "100 kg/m2"' in again and 'species = "sugar maple"' in again
    assert project_from_text(again) == project


@pytest.mark.parametrize(
    ("given", "sentence"),
    [
        ('put_in = "15 lb"', "in_use.put_in: `15 lb` cannot be read: a load is a weight on an area"),
        ("put_in = 15", "in_use.put_in: a load is text with a unit, such as `15 lb/ft2` or `75 kg/m2`"),
        ("made = 20", "in_use.made: relative humidity is a whole number of percent from 30 to 73, not 20"),
        ("made = true", "in_use.made: relative humidity is a whole number of percent from 30 to 73, not true or false"),
        ('dampest = "65 %"', "in_use.dampest: relative humidity is a whole number of percent from 30 to 73, not text"),
        ('stands = "loose"', 'in_use.stands: "loose" is not a choice here; write one of "free", "fastened", "hung"'),
        ("anchored = true", "in_use.anchored: there is no such key; the keys here are dampest, driest, made, put_in, "),
    ],
)
def test_anything_else_is_refused(given, sentence):
    with pytest.raises(ProjectFileError) as refused:
        project_from_text(text(given))
    assert str(refused.value).startswith(sentence)


@pytest.mark.parametrize(
    ("changed", "key", "sentence"),
    [
        ({"in_use": "driest = 70, dampest = 50"}, "in_use.driest", "70 % is damper than the dampest, 50 %"),
        ({"in_use": 'stands = "hung"'}, "in_use.stands", "a case is hung by a rail"),
        ({"species": "red oak"}, 'sheets."boards".species',
         'no table knows "red oak"; is it one of "northern red oak", "red oak, commercial"?'),
        ({"species": "zzz"}, 'sheets."boards".species', 'no table knows "zzz"; write a name such as "sugar maple"'),
        ({"kind": "plywood"}, 'sheets."boards".species', "only solid wood has one"),
    ],
)  # fmt: skip
def test_what_cannot_be_is_refused_with_its_key(changed, key, sentence):
    with pytest.raises(ImpossibleProject) as refused:
        solve(project_from_text(text(**changed)))
    assert refused.value.key == key and sentence in refused.value.sentence


def test_every_species_that_is_offered_is_taken():
    project = project_from_text(text(species="northern red oak"))
    for name in ("northern red oak", "red oak, commercial", "sassafras", "mahogany (Swietenia)"):
        sheet = dataclasses.replace(project.sheets["boards"], species=name)
        assert solve(dataclasses.replace(project, sheets={"boards": sheet})).boards
