"""What stands in data/joints: every joint complete, every figure with its source, and the sums in it right.

The values held against here are those of the named books, read in a copy, unless the line says another mark.
"""

import math
import re
from fractions import Fraction
from pathlib import Path

import pytest

from shoplib.joints.bench_pair import stock_of
from shoplib.joints.butt import pilot_depth
from shoplib.measure import INCH, INCH_STYLE, MM, MM_STYLE, read_length
from shoplib.tables.claims import MARKS, Claim, FactError, titles
from shoplib.tables.joint_facts import (
    GLUE_KINDS,
    JOINT_NAMES,
    Rule,
    RuleValue,
    all_joint_facts,
    joint_facts,
    read_joint_facts,
)
from tests.tables.both_units import exact, faults, inches
from tests.tables.changed import changed

ROOT = Path(__file__).parents[2]
EVERY = list(all_joint_facts().values())


def every_claim(facts):
    """(place, claim) of everything that a joint claims."""
    for heading in ("resists", "weak", "use", "grain", "strength"):
        yield from ((heading, one) for one in getattr(facts, heading))
    yield from (("glue", face.claim) for face in facts.glue)
    yield from ((f"fault {fault.name}", fault.cause) for fault in facts.faults)
    yield from ((f"rule {rule.about}", value.claim) for rule in facts.rules for value in rule.values)


def every_text(facts):
    yield facts.summary
    yield from (part.what for part in facts.parts)
    yield from (fault.looks for fault in facts.faults)
    yield from (one.say for _, one in every_claim(facts))
    yield from (value.why for rule in facts.rules for value in rule.values)


def test_each_file_is_a_joint_and_each_joint_a_file():
    files = {path.stem.replace("_", " ") for path in (ROOT / "data" / "joints").glob("*.toml")}
    assert files == set(JOINT_NAMES) == {facts.name for facts in EVERY}
    assert [facts.name for facts in EVERY] == list(JOINT_NAMES)
    assert len(JOINT_NAMES) == 17


@pytest.mark.parametrize("facts", EVERY, ids=JOINT_NAMES)
def test_a_joint_is_complete_and_marked(facts):
    assert facts.title and facts.also and facts.summary.endswith(".")
    assert len({part.name for part in facts.parts}) == len(facts.parts) >= 4
    assert len(facts.faults) >= 3
    assert {face.kind for face in facts.glue} <= set(GLUE_KINDS)
    for place, one in every_claim(facts):
        assert one.mark in MARKS, place
        assert one.cited, place


@pytest.mark.parametrize("facts", EVERY, ids=JOINT_NAMES)
def test_a_part_is_explained_in_one_line(facts):
    for part in facts.parts:
        assert part.what.endswith(".") and ". " not in part.what.replace("p. ", "p."), part.name
        assert len(part.what) <= 120, part.name


@pytest.mark.parametrize("facts", EVERY, ids=JOINT_NAMES)
def test_inches_and_millimetres_stand_together_and_agree(facts):
    assert [fault for text in every_text(facts) for fault in faults(text)] == []


@pytest.mark.parametrize("facts", EVERY, ids=JOINT_NAMES)
def test_the_numbers_of_a_value_are_those_that_it_says(facts):
    for rule in facts.rules:
        for value in rule.values:
            if not isinstance(value.low, int):
                continue
            said = [exact(one) for one in inches(value.claim.say)]
            for end in {value.low, value.high}:
                assert Fraction(end, INCH) in said or f"({end / MM:g} mm)" in value.claim.say, value.claim.say


@pytest.mark.parametrize(
    ("joint", "about", "default", "other"),
    [
        # Windsor, Mission Furniture part 3 (1912); Foster (1911) pp. 210-211, worked out from its sizes.
        ("dado", "depth", "1/3", ["1/2", "1/2", None, None]),
        # Fairham pp. 82, 85; Noyes p. 164; Notes on Building Construction; Zerbe p. 45; Windsor parts 2 and 3.
        ("mortise and tenon", "thickness", "1/3", ["1/4", "1/2", "3/7", "2/3"]),
        # Fairham p. 134 (1 in 8, 1 in 6 the limit); Noyes p. 165 (5/8 in 3); Ross (1 in 4).
        ("dovetail", "slope", "1/8", ["1/6", "5/24", "1/4"]),
        # Both common practice.
        ("dowel", "diameter", "1/2", ["1/3"]),
        # Common practice; Wood Handbook ch. 8, from memory.
        ("butt", "hold in end grain", "3/5", ["3/4"]),
        # Foster pp. 315-316; common practice.
        ("rabbet", "depth", "1/2", ["1/2"]),
        # Foster Fig. 148, scaled; common practice.
        ("tongue", "thickness of the tongue", "1/3", ["1/2"]),
    ],
)
def test_where_sources_disagree_all_are_listed_and_one_is_the_default_with_its_reason(joint, about, default, other):
    rule = joint_facts(joint).rule(about)
    assert rule.disagree
    assert rule.default.low == Fraction(default)
    assert rule.default.why
    rest = [value.low if isinstance(value.low, Fraction) else None for value in rule.values if not value.default]
    assert rest == [one and Fraction(one) for one in other]


@pytest.mark.parametrize(
    ("joint", "about", "count"),
    [
        ("dovetail", "slope by wood", 2),  # Building Construction against the trade
        ("dovetail", "baseline", 3),  # Noyes p. 165; Fairham p. 136
        ("dovetail", "lap of a half-blind dovetail", 2),
        ("mortise and tenon", "shoulder undercut", 2),  # Fairham pp. 71-72 against Zerbe p. 108
        ("mortise and tenon", "what is cut first on a tenon", 2),  # by hand, against the US Navy course
        ("mortise and tenon", "slot of a key inside the outer face", 2),  # Noyes p. 163, Griffith p. 96
        ("dowel", "spacing along an edge", 3),  # Fairham p. 96, and two of common practice
        ("butt", "length of screw", 2),
    ],
)
def test_every_known_disagreement_is_told(joint, about, count):
    assert len(joint_facts(joint).rule(about).values) == count


@pytest.mark.parametrize(("screw", "style"), [(9 * INCH // 4, INCH_STYLE), (72 * MM, MM_STYLE)], ids=["in", "mm"])
def test_the_bench_bores_the_pilot_as_deep_as_its_facts_say(screw, style):
    """Noyes pp. 125-126; US Army course EN5155 p. 1-37: the upper end of its range, of that thread."""
    facts = joint_facts("butt")
    thread, deep = facts.rule("length of thread").default, facts.rule("depth of the pilot hole").default
    bench = facts.rule("depth of the pilot hole on the bench").default
    assert thread.low * deep.high == bench.low == bench.high == Fraction(4, 9)
    assert deep.low < deep.high
    assert pilot_depth(stock_of(INCH * 703 // 1000, style=style), {"screw": screw}) == bench.low * screw


def test_disagreements_about_strength_are_told_where_the_joint_is_praised():
    """Wood Handbook ch. 10 (read) against trade books; one trial of dowels against the trade (common practice)."""
    assert "Trade books" in " ".join(one.say for one in joint_facts("groove").strength)
    assert "against the opinion of the trade" in " ".join(one.say for one in joint_facts("dowel").resists)


def test_the_degrees_of_a_slope_are_those_of_its_run():
    for value in joint_facts("dovetail").rule("slope").values:
        degrees = float(re.search(r"\(([\d.]+) degrees\)", value.claim.say)[1])
        assert degrees == pytest.approx(math.degrees(math.atan(value.low)), abs=0.06)


def test_eight_mitres_each_a_tenth_of_a_degree_off():
    """Geometry: 8 x 0.1 = 0.8 degree at the last corner; on 2 in stock 2 sqrt 2 tan 0.8 = 0.0395 in."""
    said = joint_facts("splined mitre").rule("error that adds up").default.claim.say
    assert 2 * math.sqrt(2) * math.tan(math.radians(8 * 0.1)) == pytest.approx(0.0395, abs=5e-5)
    assert "0.8 degree: 0.04 in" in said


def test_an_error_of_the_finger_jig_adds_up_as_said():
    """Geometry: nine fingers, each 0.003 in off, are 0.027 in off at the far edge."""
    said = joint_facts("finger").rule("error that adds up").default.claim.say
    assert "0.003 in" in said and f"{9 * 0.003:.3f} in" in said


def test_strength_was_read_or_is_left_out():
    known = {facts.name: len(facts.strength) for facts in EVERY if facts.strength}
    assert known == {"butt": 1, "groove": 1, "dowel": 2, "mortise and tenon": 1}
    assert {one.mark for facts in EVERY for one in facts.strength} == {"read"}
    spiral = joint_facts("dowel").strength[0].say
    for megapascals, psi in re.findall(r"([\d.]+) MPa \((\d+) psi\)", spiral):
        assert float(megapascals) * 145.038 == pytest.approx(int(psi), abs=0.6)


def test_a_title_that_nothing_names_is_no_source():
    texts = [path.read_text(encoding="utf-8") for path in (ROOT / "data").rglob("*.toml")]
    cited = [source for text in texts for source in re.findall(r'source = "(.*?)"', text)]
    named = {key for source in cited for key in re.findall(r"(?:^|; )(\w+)", source)}
    assert set(titles()) <= named


@pytest.mark.parametrize(
    ("old", "new", "sentence"),
    [
        (', default = true, why = "', ', why = "', r'rule "depth": exactly one value is the default, not 0'),
        ('part = "1/2", of', 'default = true, part = "1/2", of', r"exactly one value is the default, not 3"),
        (', why = "it leaves', ', cause = "it leaves', r"`cause` is no key here"),
        ('source = "M3 dictionary stand"', 'source = "M9 dictionary stand"', r"`M9` is no source of data/sources.toml"),
        ('wall.", mark = "follows"', 'wall.", mark = "sure"', r"marked 'sure'"),
        ('wall.", mark = "follows"', 'wall.", mark = "read"', "names no source"),
        ('wall.", mark = "follows"', 'wall.", source = "F", mark = "common practice"', "one or the other"),
        ('say = "In plywood that rule falls away."', 'say = " "', "says nothing"),
        ("[[fault]]", "[[fualt]]", "`fualt` is no key here"),
        ('kind = "face to face"', 'kind = "glued"', "a glue face of kind 'glued'"),
        ('length = "3/8 in"', 'length = "3/8"', "has no unit"),
        ('summary = "', 'weak_points = "', "`weak_points` is no key"),
        ('title = "Dado joint"\n', "", "`title` is missing"),
        ('of = "thickness of the shelf"', 'of = "thickness of the shelf", length = "1 in"', "not both"),
        (', of = "thickness of the shelf"', "", "`part` needs `of`"),
        ("weak = [", 'strength = [{ say = "It holds 100 kg." }]\nweak = [', "was not read in a source"),
    ],
)
def test_a_file_that_is_not_right_is_refused_with_its_name(tmp_path, old, new, sentence):
    path = changed(tmp_path, ROOT / "data" / "joints" / "dado.toml", old, new)
    with pytest.raises((FactError, ValueError), match=sentence) as refused:
        read_joint_facts(path)
    assert "dado.toml" in str(refused.value)


def test_a_default_among_several_gives_its_reason():
    one, other = RuleValue(Claim("a third"), default=True), RuleValue(Claim("a half"))
    with pytest.raises(FactError, match="says why"):
        Rule("depth", (one, other))
    assert Rule("depth", (one,)).default is one


def test_a_part_is_found_by_its_other_name():
    assert joint_facts("mortise and tenon").part("joggle").name == "horn"
    with pytest.raises(KeyError):
        joint_facts("dado").part("horn")


def test_lengths_are_ticks():
    assert joint_facts("stopped dado").rule("stop").default.low == read_length("1/2 in")
