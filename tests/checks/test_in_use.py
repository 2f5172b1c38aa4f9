"""Will it hold, will it move: findings on whole projects, one for a kind of part, never a stop."""

import dataclasses
import re
from pathlib import Path

import pytest

from shoplib.checks import check
from shoplib.checks.in_use import IN_USE, check_in_use
from shoplib.documents.project_file import project_from_text, read_project
from shoplib.measure import INCH, MM
from shoplib.model.cabinet import solve
from shoplib.model.movement import moisture_content
from tests.building.cases import measured_unevenly, shipped
from tests.checks.cabinets import board, cabinet, tool_case
from tests.random_projects import project as random_project

FILES = sorted((Path(__file__).parents[2] / "data" / "projects").glob("*.toml"))
TEXTS = {path.stem: path.read_text(encoding="utf-8") for path in FILES}


def found(text):
    return check_in_use(solve(project_from_text(text)))


def of(findings, name):
    return [each for each in findings if each.check == name]


SHELF = """
format = 1
name = "Shelf for wheel boxes"
show = { unit = "in", step = "1/32 in" }
size = { width = "WIDTH", height = "36 in", depth = "12 in" }
carcass = { sheet = "boards", corner = { kind = "rabbet" }, shelf = { kind = "dado", depth = "1/4 in" } }
in_use = { put_in = "15 lb/ft2" }
[sheets.boards]
kind = "KIND"
nominal = "3/4 in"
[[bays]]
kind = "shelves"
shelves = { fixed = 2 }
"""


def shelf(width="36 in", kind="plywood"):
    return SHELF.replace("WIDTH", width).replace("KIND", kind)


@pytest.mark.parametrize("name", TEXTS)
def test_a_shipped_project_is_told_in_few_calm_findings(name):
    findings = found(TEXTS[name])
    assert {each.level for each in findings} <= {"warn", "note"}
    assert 5 <= len(findings) <= 7
    assert len({(each.check, each.boards) for each in findings}) == len(findings)
    for each in findings:
        assert each.text.endswith(".") and 1 <= len(re.findall(r"[a-z)]\. [A-Za-z]", each.text)) + 1 <= 4
        assert not re.search(r"\d{6}", each.text.replace(",", ""). replace("100000", ""))
    assert len(of(findings, "tipping")) == len(of(findings, "weight")) == 1


def test_every_bottom_over_the_limit_is_named_though_each_was_measured_for():
    """What comes to nearly the same is told as one: all eight, and not the one that is a 1/32 in longer."""
    (planned,), (read,) = (
        [each for each in check_in_use(case("under_bench_case")) if "box bottom" in each.text and each.check == "sag"]
        for case in (shipped, measured_unevenly)
    )
    assert planned.level == read.level == "warn"
    assert set(planned.boards) == set(read.boards) and len(read.boards) == 8
    assert "bays 1 and 3: each bridges" in read.text and read.amount >= planned.amount


def test_the_dry_fit_is_not_asked_these():
    """They are told apart, so that panels keep their speed and their words."""
    cabinet_ = solve(project_from_text(TEXTS["under_bench_case"]))
    ours = {each.check for each in check_in_use(cabinet_)}
    assert ours & {each.check for each in check(cabinet_)} == set()


def test_a_long_shelf_is_looked_at_and_a_short_one_noted():
    """72 in of 3/4 in plywood sags some 16 times as much as 36 in, by the fourth power of its span."""
    (long,), (short,) = (of(found(shelf(width)), "sag") for width in ("72 in", "36 in"))
    assert (long.level, short.level) == ("warn", "note")
    assert "shelves 1 and 2" in long.text and "more than the 0.25 in that KCMA A161.1 allows" in long.text
    assert long.amount / short.amount == pytest.approx(16, rel=0.15)
    assert "span shorter" in long.text and "Make" not in short.text


def test_what_lets_in_is_not_free():
    """36 in over all, sides 3/4 in, dadoes 1/4 in deep: 36 - 2 x 3/4 = 34 1/2 in between the sides, by hand."""
    (note,) = of(found(shelf()), "sag")
    assert "each bridges 34 1/2 in and" in note.text


def test_more_put_in_sags_more():
    light, heavy = (of(found(shelf().replace("15 lb/ft2", load)), "sag")[0] for load in ("15 lb/ft2", "45 lb/ft2"))
    assert 2 < heavy.amount / light.amount < 3  # three times the load, and the same own weight
    assert "under 45 lb/ft2" in heavy.text


def test_a_sheet_without_a_figure_is_said_so():
    (note,) = of(found(shelf(kind="hardboard")), "sag")
    assert note.level == "note" and note.text.startswith("No stiffness of boards stands in the tables here")
    assert of(found(shelf(kind="hardboard")), "weight") == []


def test_solid_wood_without_a_species_takes_the_range_of_all():
    text = of(found(shelf(kind="solid")), "sag")[0].text
    named = of(found(shelf(kind="solid").replace('nominal', 'species = "sugar maple"\nnominal')), "sag")[0].text
    assert "by the range of any wood of the table" in text and " to " in text.split("may sag ")[1].split(" under")[0]
    assert "sugar maple" in named and " to " not in named.split("may sag ")[1].split(" under")[0]


@pytest.mark.parametrize("name", ["under_bench_case", "rolling_stand"])
def test_tipping_always_tells_to_fasten(name):
    (free,) = of(found(TEXTS[name]), "tipping")
    (fastened,) = of(found(TEXTS[name] + '\n[in_use]\nstands = "fastened"\n'), "tipping")
    assert (free.level, fastened.level) == ("warn", "note")
    assert "Fasten it to the building" in free.text and "Keep it fastened" in fastened.text
    for each in (free, fastened):
        assert "no tested product, and local rules decide" in each.text and "from memory" in each.text
        assert "must hold at least " in each.text
    assert ("wherever it stands still" in free.text) == (name == "rolling_stand")


def test_a_case_without_drawers_is_asked_too():
    """Some 35 lb with its middle 6 in behind its edge holds 210 lb in; 10 lb at 36 in is 360: it goes over, by hand."""
    (each,) = of(found(shelf()), "tipping")
    assert each.level == "warn"
    assert each.text.startswith("Closed it stands empty (nothing tips it), and it goes over with 10 lb pulling")
    assert "Fasten it to the building at its top, where the fastening must hold at least " in each.text
    (low,) = of(found(shelf().replace('"36 in", depth = "12 in"', '"18 in", depth = "16 in"')), "tipping")
    assert low.level == "note" and "with 10 lb pulling at its top (held 1." in low.text
    assert "Fasten it to the building at its top. A shop case" in low.text


def test_a_case_that_tips_only_leant_on_says_where_it_stands():
    text = TEXTS["small_parts_wall_case"].replace('stands = "hung"', 'stands = "free"')
    (each,) = of(found(text), "tipping")
    assert each.level == "warn"
    assert re.search(r"it stands empty \(held [\d.]+ times over\), filled with 8.5 lb/ft3 .*, and it", each.text)
    assert "it goes over with 60 lb on one of them besides" in each.text
    assert "smaller than those that the standard is about" in each.text


def test_a_hung_case_pulls_on_its_rail():
    findings = found(TEXTS["small_parts_wall_case"])
    assert of(findings, "tipping")[0].text.startswith("Hung, filled with 15 lb/ft2 and with all its drawers open, the")
    rail = next(each for each in of(findings, "screw hold") if each.boards == ("rail 1",))
    assert "0.60 of it in end grain or an edge (other sources: 0.75)" in rail.text
    free = found(TEXTS["small_parts_wall_case"].replace('stands = "hung"', 'stands = "free"'))
    assert [each for each in of(free, "screw hold") if each.boards == ("rail 1",)] == []


def test_slides_are_told_their_class_and_too_much_is_looked_at():
    """Area of the largest box of the under-bench case: some 20 x 19 in; at 15 lb/ft2 some 40 lb, and the box on top."""
    usual = of(found(TEXTS["under_bench_case"]), "drawer load")[0]
    heavy = of(found(TEXTS["under_bench_case"] + '\n[in_use]\nput_in = "40 lb/ft2"\n'), "drawer load")[0]
    assert usual.level == "note" and "75 lb 100,000 times, and to bear 100 lb standing still" in usual.text
    assert heavy.level == "warn" and "more than the 75 lb that the heaviest class of AWS 2009 runs with" in heavy.text


def test_boxes_on_wood_have_no_class_of_slides():
    assert of(found(TEXTS["small_parts_wall_case"]), "drawer load") == []


def test_front_screws_that_are_asked_too_much():
    usual, heavy = (found(TEXTS["under_bench_case"] + extra) for extra in ("", '\n[in_use]\nput_in = "60 lb/ft2"\n'))
    front = [next(e for e in of(each, "screw hold") if "front" in e.boards[0]) for each in (usual, heavy)]
    assert [each.level for each in front] == ["note", "warn"]
    assert "enough for one that sticks" in front[0].text and "the front may come off" in front[1].text


def test_no_formula_for_particleboard():
    text = TEXTS["under_bench_case"].replace(
        '[sheets."front sheet"]\nkind = "plywood"', '[sheets."front sheet"]\nkind = "particleboard"'
    )
    told = [each.text for each in of(found(text), "screw hold")]
    assert any("how hard screws are to pull out of particleboard stands in no table here" in each for each in told)
    assert not any("of the front of" in each for each in told)


STOCK = '[sheets."{name}"]\nkind = "solid"\nnominal = "{thick}"\nspecies = "{species}"\n\n[carcass]'


def solid_fronts(gap, species="sugar maple", extra=""):
    text = TEXTS["rolling_stand"].replace('gap = "3 mm"', f'gap = "{gap}"')
    text = text.replace('kind = "overlay"\nsheet = "case sheet"', 'kind = "overlay"\nsheet = "front stock"')
    stock = STOCK.format(name="front stock", thick="18 mm", species=species)
    return text.replace("[carcass]", stock, 1) + extra


def test_solid_fronts_close_a_small_gap_and_not_a_wide_one():
    """Sugar maple .00353 (read), from 8.5 to 12.0 % of moisture: half of what both fronts grow goes into the gap."""
    (close,), (wide,) = (of(found(solid_fronts(gap)), "movement") for gap in ("1 mm", "6 mm"))
    assert (close.level, wide.level) == ("warn", "note")
    heights = [solve(project_from_text(solid_fronts("1 mm"))).by_name[name].width / MM for name in close.boards]
    needed = sum(heights) * 0.00353 * (moisture_content(70, 65) - moisture_content(70, 45)) / 2
    assert f"they press on each other. Plan it more than {needed:.2f} mm" in close.text
    assert close.amount / MM == pytest.approx(1 - needed, abs=0.001) and wide.amount > 0
    assert "made at 45 % humidity, in a room of up to 65 %" in wide.text


def test_a_drier_range_lets_a_small_gap_be():
    drier = "\n[in_use]\nmade = 45\ndriest = 40\ndampest = 45\n"
    assert of(found(solid_fronts("1 mm", extra=drier)), "movement") == []


def test_solid_fronts_of_a_wood_without_a_figure():
    (each,) = of(found(solid_fronts("3 mm", species="shagbark hickory")), "movement")
    assert each.level == "note" and "Write the species of front stock" in each.text


def solid_bottoms(slack, bottom="groove"):
    text = TEXTS["rolling_stand"].replace('bottom_slack = "1 mm"', f'bottom_slack = "{slack}"')
    text = text.replace('bottom = "under back"', f'bottom = "{bottom}"')
    text = text.replace('bottom_sheet = "thin sheet"', 'bottom_sheet = "bottom stock"')
    return text.replace("[carcass]", STOCK.format(name="bottom stock", thick="6 mm", species="American beech"), 1)


def test_a_solid_bottom_needs_room_across_its_grain():
    """Beech .00431, 8.5 to 12.0 %: 1.5 % of a bottom some 500 mm deep is some 7 mm, and 1 mm is left."""
    (tight,) = of(found(solid_bottoms("1 mm")), "movement")
    assert tight.level == "warn" and "more room, or let it run out under a low back" in tight.text
    assert tight.amount > 0


def test_a_solid_bottom_that_runs_out_under_the_back_is_free():
    assert of(found(solid_bottoms("1 mm", "under back")), "movement") == []


def solid_back(made, depth="5/16 in", gap="1/32 in"):
    """The case under the bench with a solid back, its grain upright, in a room of 35 to 65 %."""
    text = TEXTS["under_bench_case"].replace(
        'sheet = "thin sheet"\ndepth = "5/16 in"\nfit = "0.010 in"\nend_gap = "1/32 in"',
        f'sheet = "back stock"\ndepth = "{depth}"\nfit = "0.010 in"\nend_gap = "{gap}"',
    )
    stock = STOCK.format(name="back stock", thick="1/4 in", species="sugar maple")
    return text.replace("[carcass]", stock, 1) + f"\n[in_use]\nmade = {made}\ndriest = 35\ndampest = 65\n"


def moved(text, made, air):
    """How much narrower the back is in inches: sugar maple .00353 (Wood Handbook FPL-GTR-190, Table 13-5, read)."""
    width = solve(project_from_text(text)).by_name["back"].width / INCH
    return width * 0.00353 * (moisture_content(70, made) - moisture_content(70, air))


def test_a_solid_back_that_slid_to_one_floor_comes_out_of_the_other_groove():
    """Both grooves together hold 5/16 + 5/16 - 2 x 1/32 = 0.5625 in of it, more than it shrinks: only one lets it go.

    By hand: beside the floor of one groove the other has 1/32 + 1/32 of room, and all that the back shrinks.
    """
    text = solid_back(65)
    shrinks = moved(text, 65, 35)
    (told,) = of(found(text), "movement")
    assert 5 / 16 < shrinks < 2 * 5 / 16 - 2 / 32
    assert (told.level, told.boards) == ("warn", ("back",))
    assert told.amount / INCH == pytest.approx(2 / 32 + shrinks - 5 / 16, abs=0.0001)
    says = re.fullmatch(r"back: .* it shrinks ([\d.]+) in across .* 35 %: .* it comes ([\d.]+) in out of .*", told.text)
    assert [float(said) for said in says.groups()] == pytest.approx([shrinks, told.amount / INCH], abs=0.0006)


@pytest.mark.parametrize(("more", "level"), [(-1, "warn"), (1, "note")])
def test_a_groove_holds_where_it_is_deeper_than_the_room_and_the_shrinking(more, level):
    """1/128 in on either side of depth = 1/32 + 1/32 + what it shrinks."""
    deep = 0.57
    for _ in range(4):  # a deeper groove takes a wider back, which shrinks a little more
        deep = moved(solid_back(65, f"{deep:.4f} in"), 65, 35) + 2 / 32
    (told,) = of(found(solid_back(65, f"{deep + more / 128:.4f} in")), "movement")
    assert told.level == level


def test_a_solid_back_in_grooves_swells_into_the_room_of_both():
    """Made at 55 %, it grows by hand some 0.18 in: the room of both grooves takes that, the room of one does not."""
    text = solid_back(55, "9/16 in", "7/64 in")
    grows, shrinks = -moved(text, 55, 65), moved(text, 55, 35)
    assert 7 / 64 < grows < 14 / 64
    (told,) = of(found(text), "movement")
    says = re.search(r"at most ([\d.]+) in wider in air of 65 % and ([\d.]+) in narrower in air of 35 %", told.text)
    assert told.level == "note"
    assert [float(said) for said in says.groups()] == pytest.approx([grows, shrinks], abs=0.0006)


def test_a_back_that_is_made_in_the_dampest_air_is_not_said_to_grow():
    (told,) = of(found(solid_back(65, "9/16 in", "0 in")), "movement")
    assert "solid, at most 0.5" in told.text and "wider" not in told.text


def test_odd_cabinets_raise_nothing():
    lone = board("shelf", (0, 0, 0), (500, 300, 18), "z", role="fixed shelf")
    side = board("side", (0, 0, 0), (18, 300, 400), "x", role="side")
    for boards in ([], [lone], [side], [lone, side], [lone, lone]):
        assert all(each.level != "stop" for each in check_in_use(cabinet(boards)))
        assert check_in_use(dataclasses.replace(cabinet(boards), project=None)) == ()
    assert check_in_use(tool_case())


@pytest.mark.parametrize("seed", range(40))
def test_any_project_is_told_and_none_is_stopped(seed):
    cabinet_ = solve(random_project(seed))
    findings = check_in_use(cabinet_)
    assert len(of(findings, "tipping")) == 1 and len(findings) <= 10
    names = {each.name for each in cabinet_.boards}
    for each in findings:
        assert each.level in ("warn", "note") and set(each.boards) <= names
        assert each.text[-1] == "." and "  " not in each.text and "None" not in each.text and "nan" not in each.text


def test_each_question_is_asked_once():
    assert len(set(IN_USE)) == len(IN_USE) == 10
    assert all(look(solve(read_project(FILES[0]))) is not None for look in IN_USE)
