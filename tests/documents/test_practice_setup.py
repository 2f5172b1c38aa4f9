"""What a practice sheet says to set: never what the tool cannot do, and the number that is really set."""

import re
from math import radians, sin

import pytest

from shoplib.documents.practice_cuts import cut_rows
from shoplib.documents.practice_pieces import practice_stock
from shoplib.documents.practice_setup import setup_rows
from shoplib.documents.practice_sheet import sheet_data
from shoplib.documents.practice_tools import suited_values, usual_tools
from shoplib.joints import JOINTS, joint
from shoplib.joints.bench_pair import CannotCut
from shoplib.live.bench_rows import bench_rows
from shoplib.measure import INCH_STYLE, MM, MM_STYLE, read_length
from shoplib.model.sheet import Sheet
from shoplib.tables.setups import setup, setups

STYLES = {"in": INCH_STYLE, "mm": MM_STYLE}
SHEET = {"in": "3/4 in", "mm": "19 mm"}
STACK, BLADE = "stacked dado set", "single blade in passes"
SIZE = r"(\d[\d./ ]* (?:in|mm))"
REACH = {(STACK, "in"): "2 in", (STACK, "mm"): "50 mm", (BLADE, "in"): "3 in", (BLADE, "mm"): "75 mm"}
"""Half of 8 in (200 mm) and of 10 in (250 mm), less 2 in (50 mm) for flange and table: common practice, no source."""


def told(name, way, unit="in", thick="", readings=()):
    """What is set, as a table, and the pair."""
    kind, style = joint(name), STYLES[unit]
    sheet = Sheet("sheet", "plywood", read_length(thick or SHEET[unit]), readings)
    stock, chosen = practice_stock(kind, sheet, sheet, style), setup(name, way)
    pair = kind.build(stock, suited_values(kind, stock, chosen, usual_tools(style)))
    return dict(setup_rows(pair, cut_rows(pair), chosen, usual_tools(style))), pair


def said_in(name, way):
    one = setup(name, way)
    return " ".join(claim.say for claim in (*one.reference, *one.stops, *one.order))


@pytest.mark.parametrize("thick", ["1/2 in", "18 mm", "1 1/2 in", "60 mm"])
@pytest.mark.parametrize("way", [STACK, BLADE])
@pytest.mark.parametrize("kind", [kind for kind in JOINTS if "table saw" in setups(kind.name)[0].way.tools],
                         ids=lambda kind: kind.name)
def test_no_height_is_told_that_stack_or_blade_does_not_reach(kind, way, thick):
    if way not in [one.way.name for one in setups(kind.name)]:
        return
    unit = thick[-2:]
    try:
        rows, _ = told(kind.name, way, unit, thick)
    except CannotCut:
        return
    most = read_length(REACH[way, unit])
    for what in ("Depth to set", "Height of the blade"):
        for part in rows.get(what, "").split("; "):
            if part:
                assert read_length(part.partition(":")[0]) <= most, part


@pytest.mark.parametrize("unit", STYLES)
def test_a_stack_cuts_no_mortise_and_a_shoulder_of_the_edge_with_the_rail_on_edge(unit):
    """A closed mortise asks for lowering the board on a turning stack, which `cautions.toml` forbids."""
    rows, _ = told("mortise and tenon", STACK, unit)
    assert "mortise" not in rows["Depth to set"]
    assert rows["Mortise in the stile"].startswith("not with the stack: no board is dropped on a turning cutter")
    assert "shoulder in the rail, board on edge" in rows["Depth to set"]
    order = said_in("mortise and tenon", STACK)
    assert "a stack cuts no closed mortise" in order and "Stand the rail on edge for the shoulder" in order
    assert "board on edge or end" in {caution.of for caution in setup("mortise and tenon", STACK).cautions}


@pytest.mark.parametrize(("unit", "deep", "cheek"), [("in", "2 3/4 in", "1/4 in"), ("mm", "66 mm", "6.33 mm")])
def test_the_slot_of_a_bridle_is_too_deep_for_a_stack_and_goes_to_a_blade(unit, deep, cheek):
    """2 1/2 in and 1/4 in long, 60 mm and 6 mm long; an 8 in set stands about 2 in out of the table."""
    rows, _ = told("bridle", STACK, unit)
    assert rows["Slot in the stile"].startswith("not with the stack: a stack ")
    assert f"this cut is {deep} deep. Take a single blade" in rows["Slot in the stile"]
    assert rows["Depth to set"] == f"{cheek}: cheek in the rail"
    assert "a single blade where the stack does not reach so deep" in said_in("bridle", STACK)


def test_where_even_the_blade_does_not_reach_the_hand_saw_is_told():
    rows, _ = told("finger", STACK, "in", "3 1/2 in")
    assert "Cut it by hand" in rows["Socket in the side"] and "Depth to set" not in rows
    assert "Cut it by hand" in told("finger", BLADE, "in", "3 1/2 in")[0]["Socket in the side"]


@pytest.mark.parametrize(("unit", "deep", "cheek"), [("in", "2 3/4 in", "1/4 in"), ("mm", "66 mm", "6.33 mm")])
def test_a_cheek_sawn_upright_wants_the_length_of_the_tongue_and_its_shoulder_what_the_cheek_loses(unit, deep, cheek):
    """Common practice, no source: upright in the carrier the blade stands as high as the cheek is long."""
    rows, _ = told("bridle", BLADE, unit)
    assert rows["Height of the blade"] == (
        f"{deep}: slot in the stile, cheek in the rail, board upright; {cheek}: shoulder in the rail, board flat"
    )
    text = said_in("bridle", BLADE)
    assert "for every cut" not in text and "Turn the board round for the other wall" in text
    assert "the other face for the other" in text


@pytest.mark.parametrize("name", ["bridle", "rabbet", "tongue"])
def test_what_is_sawn_off_upright_lies_on_the_outer_side(name):
    """Common practice, no source: waste between blade and fence is caught and thrown."""
    cautions = [caution.claim.say for caution in setup(name, BLADE).cautions]
    assert any("never lies between blade and fence or carrier" in one for one in cautions)


@pytest.mark.parametrize(("name", "wide"), [("rabbet", 19 * MM + MM // 20), ("tongue", 0)])
def test_rabbet_and_tongue_have_a_height_for_shoulder_and_cheek_each(name, wide):
    rows, pair = told(name, BLADE, "mm")
    heights = {cut: read_length(part.partition(":")[0]) for part in rows["Height of the blade"].split("; ")
               for cut in part.partition(": ")[2].split(", ")}
    [cut] = [row for row in cut_rows(pair) if row.kind == "rabbet"]
    assert heights[f"shoulder of the rabbet in the {cut.board}"] == cut.deep
    assert heights[f"cheek of the rabbet in the {cut.board}"] == (wide or pair.values["depth"] - pair.values["end gap"])


def test_a_rabbet_wider_than_any_stack_is_cut_in_two():
    """The saws of the manuals that were read take 13/16 in; a mate of 1 in is wider."""
    rows, _ = told("rabbet", STACK, "in", "1 in")
    assert any("no stack is wider than that" in text for text in rows.values())
    assert not any("no stack is wider" in text for text in told("rabbet", STACK)[0].values())


@pytest.mark.parametrize(("unit", "high", "slot", "fence", "toe"), [
    ("mm", 9.63, "7.6 mm", 10.49, 20.85), ("in", 0.3878, "19/64 in", 0.3950, 0.8097),
])
def test_a_leaning_blade_is_set_by_its_tip_and_the_fence_is_told(unit, high, slot, fence, toe):
    """Worked by hand: heel 3, kerf 3.02, slot 7.6 mm of 19: (3 + 3.02 + 7.6) / 1.41421; 19 - 1.41421 x 6.02; 19 x
    1.41421 - 6.02. In inches 0.125, 0.126, 0.296875 of 0.75."""
    rows, _ = told("splined mitre", BLADE, unit)
    nearly = 0.006 if unit == "mm" else 0.0006

    def number(text):
        return float(text.split()[0])

    assert number(rows["Height for the slot"]) == pytest.approx(high, abs=nearly)
    assert f"the slot is {slot} deep" in rows["Height for the slot"]
    assert number(rows["Fence for the slot"]) == pytest.approx(fence, abs=nearly)
    begins = re.search(rf"the slot begins {SIZE} from the long point", rows["Fence for the slot"])[1]
    assert number(begins) == pytest.approx(toe, abs=nearly)
    assert "Depth to set" not in rows and "Height of the blade" not in rows


def test_a_mitre_too_thick_for_the_leaning_blade_is_not_told_as_a_setting():
    """60 mm at 45 degrees are 84.85 mm along the blade; one of 250 mm stands about 75 mm out."""
    rows, _ = told("splined mitre", BLADE, "mm", "60 mm")
    assert "84.9 mm deep" in rows["Mitre on the side"] and "Height for the slot" not in rows


def test_the_long_point_is_at_the_upper_face_when_the_slot_is_cut():
    text = said_in("splined mitre", BLADE)
    assert "its long point is at the upper one" in text and "a fence that is higher than the board is thick" in text
    assert "touches the table" not in text


@pytest.mark.parametrize(("unit", "off"), [("mm", "0.02 mm"), ("in", "0.001 in")])
def test_a_kerf_that_is_off_by_less_than_a_fence_moves_is_one_pass(unit, off):
    """A blade of 3 mm and a slot of 3.02 mm: common practice, no source, fits the spline to the kerf."""
    rows, _ = told("splined mitre", BLADE, unit)
    [text] = [text for what, text in rows.items() if what.startswith("Passes for ")]
    assert text == f"1: the kerf is the width but for {off}, and no fence is moved by that; fit the spline to it"
    [bit] = [text for what, text in told("splined mitre", "router", unit)[0].items() if what.startswith("Bit for ")]
    assert "second pass" not in bit and "fit the spline to it" in bit


@pytest.mark.parametrize("way", [STACK, BLADE, "router", "hand tools"])
def test_a_lap_is_as_long_as_its_mate_is_wide_and_what_is_left_long(way):
    """1/16 in left long: Noyes, Handwork in Wood (1910), p. 156 (read)."""
    rows, _ = told("half lap", way)
    words = "2 9/16 in: 2 1/2 in, the width of the mate, and 1/16 in left long"
    assert rows["End to shoulder, rail and stile"] == words
    if way in (STACK, BLADE):
        assert "the width of the mate and what is left long" in said_in("half lap", way)


@pytest.mark.parametrize(("thick", "run", "pocket", "longest", "screw", "reach"), [
    ("18.2 mm", 35.16, 26.06, 24.3, "19 mm", 9.56), ("0.703 in", 1.3581, 1.0143, 0.9218, "3/4 in", 0.3925),
])
def test_pocket_screws_have_collar_screw_and_reach_on_sheet_and_bench(thick, run, pocket, longest, screw, reach):
    """Worked by hand: 9.1 / sin 15 degrees, less the web of 9.1; 9.1 + 18.2 - 3 for the screw, of those sold the
    longest under it; (19 - 9.1) x cos 15 degrees. In inches 0.3515 / sin 15 degrees, web 11/32, spare 1/8.

    That 15 degrees and half the thickness are usual is from memory, no source.
    """
    unit = thick[-2:]
    rows, pair = told("pocket screws", "drill", unit, thick)
    nearly = 0.01 if unit == "mm" else 0.001
    found = [float(size) for size in re.findall(r"[\d.]+(?= (?:in|mm))", rows["Collar"])[:2]]
    assert found == pytest.approx([pocket, run], abs=nearly)
    assert re.search(rf", {screw}: ", rows["Screw"])
    assert float(re.search(r"stands ([\d.]+)", rows["Screw"])[1]) == pytest.approx(reach, abs=nearly)
    per = MM if unit == "mm" else read_length("1 in")
    sizes = [row.ticks / per for row in bench_rows(joint("pocket screws"), pair)]
    by_hand = [run, pocket, longest, read_length(screw) / per, reach]
    assert sizes[:5] == pytest.approx(by_hand, abs=nearly)
    thickness = read_length(thick) / per
    assert run == pytest.approx(thickness / 2 / sin(radians(15)), abs=nearly)


def test_where_no_screw_is_sold_so_short_none_is_told():
    kind = joint("pocket screws")
    thick, thin = (Sheet(name, "plywood", size * MM) for name, size in (("thick", 18), ("thin", 7)))
    pair = kind.build(practice_stock(kind, thick, thin, MM_STYLE))
    rows = dict(setup_rows(pair, cut_rows(pair), setup("pocket screws", "drill"), usual_tools(MM_STYLE)))
    assert rows["Screw"].startswith("none is sold so short: ")
    assert not any("screw sold" in row.what for row in bench_rows(kind, pair))


def test_unlike_readings_are_told_on_the_sheet():
    """18.1 and 17.2 mm: the thin place stands 0.9 mm loose; past 1/16 in the bench has the same sentence (PS 1)."""
    kind, style = joint("dado"), MM_STYLE

    def words(*readings):
        sheet = Sheet("sheet", "plywood", 18 * MM, tuple(map(read_length, readings)))
        pair = kind.build(practice_stock(kind, sheet, sheet, style))
        data = sheet_data(kind, pair, setup("dado", STACK), "", "a4", usual_tools(style))
        return " ".join(data["sheets"])

    assert "where it measures 17.2 mm it stands 0.9 mm loose in a cut for the thickest" in words("18.1 mm", "17.2 mm")
    assert "lie 1.8 mm apart, which one sheet does not" in words("18.1 mm", "16.3 mm")
    assert "unlike" not in words("18.1 mm", "18.3 mm", "18.2 mm")


def test_the_slope_of_a_dovetail_is_one_in_so_many():
    """1 in 8: Fairham, Woodwork Joints (1920), p. 134 (read)."""
    kind = joint("dovetail")
    sheet = Sheet("sheet", "plywood", 19 * MM)
    pair = kind.build(practice_stock(kind, sheet, sheet, MM_STYLE))
    chosen = sheet_data(kind, pair, setup("dovetail", "hand tools"), "", "a4", usual_tools(MM_STYLE))["chosen"]
    assert "slope of the tails: 1 in 8" in chosen


def test_the_dado_of_a_drawer_side_stands_in_by_the_slot_less_the_fit_as_the_table_says():
    _, pair = told("drawer lock", STACK, "in", "3/4 in")
    [dado] = [cut for cut in pair.by_name["side"].cuts if cut.kind == "dado"]
    assert dado.low[0] == pair.values["groove"] - pair.values["fit"]
    assert "as far from the end as the slot is wide, less the fit" in said_in("drawer lock", STACK)
    for way in (STACK, BLADE):
        assert "a narrow one with the mitre gauge behind it" in said_in("drawer lock", way)


def test_a_rabbet_is_nailed_through_the_board_that_enters():
    """Griffith, Essentials of Woodworking (1908), p. 107 (read): through the side, which enters, into the front."""
    assert "Nail through the board that enters into the rabbeted one" in said_in("rabbet", "hand tools")
