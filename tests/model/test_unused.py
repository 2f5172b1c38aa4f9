"""Keys that the project does not use are refused: whoever wrote one thinks that it does something."""

from dataclasses import replace

import pytest

from shoplib.model.cabinet import solve
from shoplib.model.project import Back, Fronts, ImpossibleProject, JointChoice, Rail, Space
from tests.model.plain_case import MM, a_case, drawer_case


def refused(project) -> tuple[str, str]:
    with pytest.raises(ImpossibleProject) as fault:
        solve(project)
    return fault.value.key, fault.value.sentence


def in_carcass(**what):
    return a_case(MM, t=["18"], carcass=what)


def in_drawers(**rule):
    return drawer_case(MM, t=["18"], fronts="none", rule={"count": 3} | rule)


def inset(**fronts):
    case = drawer_case(MM, t=["18"], gap="3")
    return replace(case, fronts=replace(case.fronts, **fronts))


def in_space(**what):
    sizes = (MM.of(700),), (MM.of(900),), (MM.of(600),)
    return a_case(MM, t=["18"], space=Space(*sizes, **what))


TONGUE = JointChoice("dado", MM.of(6), tongue=MM.of(6))

UNUSED = {
    "fronts.reveal": lambda: inset(reveal=MM.of(10)),
    "carcass.back.setback": lambda: in_carcass(back=Back("rabbet", "thin sheet", MM.of(6), MM.of(15))),
    "carcass.stretcher_width": lambda: in_carcass(stretcher_width=MM.of(80)),
    "carcass.overhang_sides": lambda: in_carcass(overhang_sides=MM.of(10)),
    "carcass.overhang_front": lambda: in_carcass(overhang_front=MM.of(10)),
    "carcass.corner.tongue": lambda: in_carcass(corner=TONGUE),
    "carcass.divider.tongue": lambda: in_carcass(divider=TONGUE),
    "carcass.shelf.tongue": lambda: in_carcass(shelf=TONGUE),
    "carcass.rails[2].joint.tongue": lambda: in_carcass(rails=(Rail(MM.of(60)), Rail(MM.of(60), joint=TONGUE))),
    "bays[1].drawers.difference": lambda: in_drawers(difference=MM.of(20)),
    "bays[1].drawers.ratio": lambda: in_drawers(ratio=(3, 2, 1)),
    "bays[1].drawers.given": lambda: in_drawers(given=("rest", MM.of(100), MM.of(100))),
    "bays[1].drawers.strip_width": lambda: in_drawers(strip_width=MM.of(40)),
    "bays[1].drawers.corner.tongue": lambda: in_drawers(corner=JointChoice("rabbet", tongue=MM.of(4))),
    "bays[1].drawers.corner.stop": lambda: in_drawers(corner=JointChoice("rabbet", stop=MM.of(10))),
    "space.room_height": lambda: in_space(room_height=MM.of(2200)),
}


@pytest.mark.parametrize("key", UNUSED)
def test_a_key_that_is_not_used_is_refused_by_its_full_name(key):
    told, sentence = refused(UNUSED[key]())
    assert told == key
    assert sentence.startswith(("only ", "a case that is slid in ", "the corner of a box ")) and sentence.endswith(
        "; take it out"
    )


@pytest.mark.parametrize(
    "used",
    [
        drawer_case(MM, t=["18"], fronts="overlay", gap="3", reveal="10"),
        in_carcass(back=Back("groove", "thin sheet", MM.of(6), MM.of(15))),
        in_carcass(top="stretchers", stretcher_width=MM.of(80)),
        in_carcass(top="over", overhang_sides=MM.of(10), overhang_front=MM.of(10)),
        in_carcass(corner=replace(TONGUE, kind="tongue")),
        in_drawers(heights="stepped", difference=MM.of(20)),
        in_drawers(heights="ratio", ratio=(3, 2, 1)),
        in_drawers(heights="given", given=("rest", MM.of(100), MM.of(100))),
        in_drawers(between="strip", strip_width=MM.of(40)),
        in_drawers(corner=JointChoice("tongue", tongue=MM.of(4))),
        in_space(bring_in="stood up from its back", room_height=MM.of(2200)),
    ],
)
def test_where_it_is_used_it_is_taken(used):
    assert solve(used).boards


@pytest.mark.parametrize("unit", ["in", "mm"])
def test_the_usual_value_of_either_unit_is_no_word_of_the_makers(unit):
    """What a reader of files or a panel fills in, nobody wrote."""
    reveal = Fronts().reveal if unit == "in" else MM.of(3)
    assert solve(inset(reveal=reveal)).boards
