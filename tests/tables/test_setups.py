"""No set-up without its cautions, and every joint with the set-ups that apply to it."""

import re
from pathlib import Path

import pytest

from shoplib.tables.claims import Claim, FactError
from shoplib.tables.joint_facts import JOINT_NAMES
from shoplib.tables.setups import (
    ALWAYS,
    HEADINGS,
    Caution,
    Setup,
    Way,
    all_setups,
    cautions,
    read_cautions,
    read_setups,
    setup,
    setups,
)
from tests.tables.both_units import faults
from tests.tables.changed import changed

DATA = Path(__file__).parents[2] / "data"
CAUTIONS = DATA / "cautions.toml"
EVERY = [one for ways in all_setups().values() for one in ways]
IDS = [f"{one.joint} by {one.way.name}" for one in EVERY]
ALL_FOUR = ["stacked dado set", "single blade in passes", "router", "hand tools"]


def test_each_file_is_a_joint_and_each_joint_a_file():
    assert {path.stem.replace("_", " ") for path in (DATA / "setups").glob("*.toml")} == set(JOINT_NAMES)
    assert all(setups(name) for name in JOINT_NAMES)


@pytest.mark.parametrize(
    ("joint", "ways"),
    [
        ("butt", ["drill"]),
        ("pocket screws", ["drill"]),
        ("dowel", ["drill"]),
        *((joint, ALL_FOUR) for joint in ("rabbet", "dado", "groove", "tongue", "finger", "half lap", "cross lap")),
        ("stopped dado", ["stacked dado set", "router", "hand tools"]),
        ("dovetail", ["hand tools", "router"]),
    ],
)
def test_the_ways_of_a_joint_are_those_that_apply(joint, ways):
    assert [one.way.name for one in setups(joint)] == ways


@pytest.mark.parametrize("one", EVERY, ids=IDS)
def test_a_setup_carries_the_cautions_of_all_its_tools_and_cuts(one):
    told = {caution.of for caution in one.cautions}
    assert told == {ALWAYS, *one.way.tools, *one.way.cuts, *one.cuts}
    for of in told:
        written = [caution for caution in cautions().cautions if caution.of == of]
        assert [caution for caution in one.cautions if caution.of == of] == written


@pytest.mark.parametrize("one", EVERY, ids=IDS)
def test_a_step_is_one_short_sentence(one):
    for heading in HEADINGS:
        for step in getattr(one, heading):
            assert step.say.endswith("."), step.say
            assert not re.search(r"[a-z)][.!?] [A-Z]", step.say), step.say
            assert len(step.say.split()) <= 26, step.say
            assert faults(step.say) == []
            assert step.cited


SAYS = {
    "no guard": ("table saw", "dado", ["Guard and spreader come off only", "go back on straight after"]),
    "held": ("table saw", "dado", ["featherboards", "push blocks"]),
    "widest": ("dado set", "dado", ["never wider and never larger across than the maker of the saw allows"]),
    "none at all": ("dado set", "dado", ["Some saws, and the rules of some countries, allow no dado set"]),
    "stock": ("table saw", "dado", ["long and flat enough to lie firmly"]),
    "freehand": ("table saw", "dado", ["Nothing is cut freehand"]),
    "unplug": ("table saw", "dado", ["Unplug the saw before you change a cutter"]),
    "manual": (ALWAYS, "dado", ["The manual of your own tool", "beside someone who knows it"]),
    "dust": (ALWAYS, "dado", ["eye and ear protection", "dust"]),
    "router": ("router", "dado", ["Feed against the turn of the bit", "no deeper in one pass", "Unplug the router"]),
    "chisel": ("chisel", "dado", ["Both hands stay behind the edge"]),
    "stops": ("stopped cut", "stopped dado", ["both stops and a firm hold"]),
    "on end": ("board on edge or end", "bridle", ["tall fence"]),
    "drill": ("drill", "butt", ["Clamp the board"]),
    "through": ("through cut", "splined mitre", ["guard and riving knife (or spreader) are on"]),
}


@pytest.mark.parametrize(("of", "joint", "phrases"), SAYS.values(), ids=SAYS)
def test_what_has_to_be_said_is_said_wherever_that_tool_is_used(of, joint, phrases):
    using = [one for one in EVERY if of in {ALWAYS, *one.way.tools, *one.way.cuts, *one.cuts}]
    assert joint in {one.joint for one in using}
    for one in using:
        text = " ".join(caution.claim.say for caution in one.cautions)
        assert [phrase for phrase in phrases if phrase not in text] == []


def test_every_cut_on_the_saw_that_takes_off_the_guard_says_so():
    on_the_saw = [one for one in EVERY if "table saw" in one.way.tools]
    assert on_the_saw
    assert all("non-through cut" in {caution.of for caution in one.cautions} for one in on_the_saw)


def test_a_caution_gives_its_lengths_in_both_units():
    assert [fault for caution in cautions().cautions for fault in faults(caution.claim.say)] == []


def test_a_wrong_millimetre_or_a_unit_alone_would_be_seen():
    assert faults("a groove of 1/4 in (6.4 mm), a slope of 1 in 8") == []
    assert len(faults("a groove of 1/4 in (6.5 mm)")) == 1
    assert len(faults("a groove of 1/4 in")) == len(faults("a groove of 6 mm")) == 1


def test_law_is_marked_as_it_was_read():
    """29 CFR 1910.213(c)(2) from memory, California 8 CCR 4296(a) and Washington WAC 296-806-48012 read."""
    marks = {caution.claim.source: caution.claim.mark for caution in cautions().cautions if "(" in caution.claim.source}
    assert marks["29 CFR 1910.213 (United States, workplaces), (c)(2)"] == "from memory"
    assert marks["California 8 CCR 4296 (workplaces), (a)"] == "read"
    assert marks["Washington WAC 296-806-48012 (workplaces)"] == "read"


@pytest.mark.parametrize("tool", ["router", "table saw", "dado set", "chisel", "drill", ALWAYS, "non-through cut"])
def test_a_tool_that_lost_its_cautions_is_refused_by_name(tmp_path, tool):
    lost = changed(tmp_path, CAUTIONS, f'"{tool}" = [', f'"{tool} that nobody has" = [')
    with pytest.raises(FactError, match=f'cautions.toml: "{tool}" has no cautions, and no set-up is shown without'):
        read_cautions(lost)


def test_a_tool_with_an_empty_list_of_cautions_is_refused(tmp_path):
    begins, rest = '"chisel" = [', CAUTIONS.read_text(encoding="utf-8").partition('"chisel" = [')[2]
    emptied = changed(tmp_path, CAUTIONS, begins + rest.partition("\n]")[0], begins)
    with pytest.raises(FactError, match='"chisel" has no cautions'):
        read_cautions(emptied)


def test_a_way_without_a_tool_is_refused(tmp_path):
    with pytest.raises(FactError, match='"router" names no tool'):
        read_cautions(changed(tmp_path, CAUTIONS, 'tools = ["router"]', "tools = []"))


def test_a_new_tool_needs_its_cautions_first(tmp_path):
    with pytest.raises(FactError, match='"band saw" has no cautions'):
        read_cautions(changed(tmp_path, CAUTIONS, 'tools = ["router"]', 'tools = ["router", "band saw"]'))


def test_no_setup_can_be_made_by_hand_without_its_cautions():
    good = setup("dado", "stacked dado set")
    said = {heading: getattr(good, heading) for heading in HEADINGS}
    assert Setup("dado", good.way, (), good.cautions, **said) == good
    for left_out in {caution.of for caution in good.cautions}:
        kept = tuple(caution for caution in good.cautions if caution.of != left_out)
        with pytest.raises(FactError, match=f'dado by stacked dado set: "{left_out}" has no cautions'):
            Setup("dado", good.way, (), kept, **said)
    with pytest.raises(FactError, match="no cautions"):
        Setup("dado", good.way, (), (), **said)
    with pytest.raises(FactError, match="names no tool"):
        Way("by wishing", ())


def test_cautions_of_another_tool_do_not_do():
    good = setup("dado", "router")
    said = {heading: getattr(good, heading) for heading in HEADINGS}
    of_the_drill = (Caution(ALWAYS, Claim("Read the manual.")), Caution("drill", Claim("Clamp the board.")))
    with pytest.raises(FactError, match='"router" has no cautions'):
        Setup("dado", good.way, (), of_the_drill, **said)


@pytest.mark.parametrize(
    ("old", "new", "sentence"),
    [
        ('way = "router"', 'way = "laser"', '"laser" is no way'),
        ('way = "router"', 'way = "router"\ncuts = ["upside down"]', '"upside down" has no cautions'),
        ('joint = "dado"', 'joint = "groove"', 'of the joint "groove", not of "dado"'),
        ("tear_out = [", "tearout = [", "`tearout` is no key here"),
        ('  { say = "Cut a test dado in an offcut, and try the shelf in it." },\n', "", "nothing stands under test"),
        ('source = "manuals"', 'source = "hearsay"', "`hearsay` is no source"),
    ],
)
def test_a_setup_that_is_not_right_is_refused_in_one_sentence(tmp_path, old, new, sentence):
    path = changed(tmp_path, DATA / "setups" / "dado.toml", old, new)
    with pytest.raises(FactError, match=sentence):
        read_setups(path, "dado", cautions())


def test_a_joint_is_not_cut_in_a_way_that_it_has_not():
    with pytest.raises(KeyError):
        setup("butt", "stacked dado set")
