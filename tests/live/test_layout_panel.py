"""The panel of a sheet laid out by hand, without a browser: every control, any order of presses, nothing lost."""

import json
import random
import re
from dataclasses import replace

import pytest

from shoplib.layout.best_found import Best, best_found
from shoplib.layout.hand_sawn import shop_cost_by_hand
from shoplib.layout.pieces import Job, LayoutError, Part, Stock
from shoplib.live.layout_panel import FIELDS, LayoutPanel, layout_panel
from shoplib.live.layout_says import KINDS, WAYS, came_of_it, least_sheets, starting_job
from shoplib.measure import INCH, write_length
from tests.layout.test_by_hand import sums, whole

SHELF = Part("shelf", 30 * INCH, 12 * INCH, 4, may_turn=True)
ONE_SHEET = Job((SHELF,), (Stock("plywood", 64 * INCH, 30 * INCH, cost=1),), INCH // 8)


def press(panel, **content):
    panel.face._handle_custom_msg(content, [])
    return " ".join(panel.face.said["lines"])


def chosen(panel):
    return panel.face.part, panel.face.place, panel.face.turned


def figure(panel, name):
    return next(row[1:] for row in panel.face.figures["rows"] if row[0] == name)


def test_a_whole_sheet_laid_out_by_what_is_pressed_with_its_figures_at_each_step():
    panel = layout_panel("in", ONE_SHEET)
    assert panel.face.places == [["new 0", "a new sheet: plywood, 64 in x 30 in"]]
    assert figure(panel, "Sheets in use") == ["0", "1 (any layout buys at least 1)"]
    assert press(panel, press="lay") == "Laid on sheet 1: 1 x shelf, freed by a rip at 12 in and a crosscut at 30 in."
    # 64 - 30 - 1/8 along the strip, 30 - 12 - 1/8 beside it
    assert panel.face.places[0] == ["a", "a: further along this strip, 33 7/8 in x 12 in"]
    assert panel.face.places[1] == ["b", "b: a new strip beside it, 64 in x 17 7/8 in"]
    assert panel.face.parts == [{"text": "A shelf, 30 in x 12 in; may be turned: 3 of 4 to lay", "left": 3}]
    assert figure(panel, "Free area on them")[0] == "10.77 sq ft"  # (33 7/8 x 12 + 64 x 17 7/8) / 144
    assert figure(panel, "Largest offcut")[0] == "64 in x 17 7/8 in" and figure(panel, "Cuts, trimming too")[0] == "2"
    assert panel.face.result == {}
    press(panel, press="along")
    press(panel, press="place", place="a" if panel.hand.place("a").at.w == 64 * INCH else "b")
    said = press(panel, press="along")
    assert said.endswith("All parts lie: what came of it stands below.") and panel.hand.done
    assert panel.face.result["good"] and panel.face.result["heading"] == "As few sheets as the best found."
    assert panel.face.result["lines"][:2] == ["All parts lie on 1 sheet.", "No layout can buy fewer."]
    assert panel.face.places == [] and figure(panel, "Fence settings")[0] == "2"
    assert figure(panel, "Times that pieces are turned")[0] == "1"  # ripped, turned about, crosscut


def test_a_part_that_is_laid_out_leaves_the_choice_to_the_next_and_its_place():
    panel = layout_panel("in")
    press(panel, press="along")
    assert panel.hand.to_lay[0] == 0 and panel.face.part == 1
    assert panel.face.place == "a" and panel.face.places[0][0] == "a"
    press(panel, press="part", part=2)
    assert chosen(panel)[:2] == (2, "a")  # it fits there as well
    press(panel, press="lay")
    assert panel.hand.to_lay == (0, 1, 2, 2, 4, 2)


def test_a_part_that_is_taken_back_is_chosen_again_and_starting_again_begins_with_the_first():
    panel = layout_panel("in")
    press(panel, press="part", part=4)
    press(panel, press="turn", turned=True)
    press(panel, press="way", way="crosscut")
    press(panel, press="along")
    assert panel.hand.to_lay[4] == 1 and chosen(panel)[0] == 4  # one did not go into the strip
    press(panel, press="along")
    assert chosen(panel)[0] == 0
    press(panel, press="back")
    assert chosen(panel)[0] == 4 and chosen(panel)[2] and panel.hand.to_lay[4] == 1
    press(panel, press="again")
    assert chosen(panel) == (0, "new 0", False) and panel.face.way == ""


def test_what_is_refused_leaves_everything_as_it_was():
    panel = layout_panel("in")
    press(panel, press="along")
    before, choice = panel.hand, chosen(panel)
    assert press(panel, press="part", part=0) is not None
    assert press(panel, press="lay") == "Nothing is left to lay of the side: all 2 of them lie already."
    press(panel, press="part", part=1)
    press(panel, press="turn", turned=True)
    assert press(panel, press="lay").startswith("The top, 34 in x 15 in, cannot be turned: its grain runs along its 34")
    press(panel, press="turn", turned=False)
    assert press(panel, press="point", name="side") == "That is not free: point at a place with a small letter."
    assert panel.hand is before and chosen(panel) == choice


def test_a_place_that_is_pointed_at_in_the_drawing_takes_the_part():
    panel = layout_panel("in")
    assert "new sheet</title>" in panel.face.pictures[0]["svg"]
    press(panel, press="point", name="new sheet")
    assert panel.hand.to_lay[0] == 1
    for letter in "ab":
        assert f"<title>offcut {letter}</title>" in panel.face.pictures[0]["svg"]
    press(panel, press="point", name="offcut b")
    assert panel.hand.to_lay[0] == 0 and panel.hand.sheets[0].placed[1].at.y > 15 * INCH


@pytest.mark.parametrize(("unit", "kerf", "stands"), [("in", "3/16", "3/16 in"), ("mm", "3.2", "3.2 mm"),
                                                      ("in", "4 mm", "5/32 in."), ("mm", "1/8 in", "3.2 mm.")])
def test_kerf_and_trim_are_typed_as_the_shop_writes_them(unit, kerf, stands):
    panel = layout_panel(unit)
    press(panel, press="lay")
    assert press(panel, press="enter", name="kerf", text=kerf).startswith(f"Kerf: {stands}")
    assert whole(panel.hand) == [] and len(panel.hand.sheets[0].placed) == 1
    assert panel.best is not None and panel.best.hand.job.kerf == panel.hand.job.kerf
    press(panel, press="back")
    assert panel.hand.job.kerf == starting_job(unit).kerf
    assert panel.face.fields[0]["typed"] == write_length(panel.hand.job.kerf, panel.hand.style, unit=False)


@pytest.mark.parametrize(("name", "text", "said"), [
    ("kerf", "thick", "Kerf: “thick” has no number"), ("kerf", "-1/8", "Kerf: “-1/8” is negative"),
    ("kerf", "", "Kerf: the text is empty"),
    ("kerf", "6 in", "No saw takes 6 in at a cut, and 1/2 in is the most"),
    ("kerf", "30 mm", "at a cut, and 1/2 in is the most"), ("kerf", "0", "Every saw takes some wood at a cut"),
    ("trim", "30 in", "A trim of 30 in on each edge leaves nothing of the plywood, 96 in x 48 in."),
])
def test_what_cannot_be_set_stays_in_its_field_with_a_sentence(name, text, said):
    panel = layout_panel("in")
    press(panel, press="lay")
    before = panel.hand
    assert said in press(panel, press="enter", name=name, text=text)
    field = next(each for each in panel.face.fields if each["name"] == name)
    assert field["typed"] == text and field["fault"] and field["stands"].startswith("stands at 1/")
    assert "`" not in field["fault"] and panel.hand is before
    press(panel, press="enter", name=name, text="1/8")
    assert not any(each["fault"] for each in panel.face.fields)


def test_a_wider_trim_sends_back_what_does_not_fit_and_says_so():
    panel = layout_panel("in", Job((replace(SHELF, count=2, may_turn=False),), ONE_SHEET.stock, INCH // 8))
    press(panel, press="along")
    assert panel.hand.done
    said = press(panel, press="enter", name="trim", text="2 in")
    assert "does not fit into offcut a, 29 7/8 in x 12 in: it is 1/8 in too long. It is back in the list." in said
    assert panel.hand.to_lay == (1,) and panel.face.result == {}
    assert press(panel, press="back") == "The last move is taken back." and panel.hand.done


def test_what_is_true_of_several_parts_is_said_once():
    """15 shelves of 12 in, five in each of three strips of 61 in; a wider blade sends the last of each strip back."""
    sheet = Stock("plywood", 61 * INCH, 30 * INCH, cost=1)
    panel = layout_panel("in", Job((Part("shelf", 12 * INCH, 9 * INCH, 15),), (sheet,), INCH // 8))
    while not panel.hand.done:
        press(panel, press="along")
    assert len(panel.hand.sheets) == 1
    press(panel, press="enter", name="kerf", text="3/8 in")
    told = panel.face.said["lines"]
    assert panel.hand.to_lay == (3,) and len(told) == 2
    assert told[1].endswith("3 of them are back in the list.")


def test_the_sheet_that_the_last_part_went_on_stays_beside():
    two = Job((Part("shelf", 60 * INCH, 28 * INCH, 2),), ONE_SHEET.stock, INCH // 8)
    panel = layout_panel("in", two)
    press(panel, press="lay")
    press(panel, press="lay")
    assert panel.hand.done and len(panel.hand.sheets) == 2
    assert [each["alt"][:8] for each in panel.face.pictures] == ["Sheet 2,", "Sheet 1,"]


def test_a_strip_cut_off_first():
    panel = layout_panel("in")
    assert press(panel, press="strip", way="rip", text="16 1/8 in") == "Cut on sheet 1: a rip at 16 1/8 in."
    assert panel.face.places[0][1] == "a: further along this strip, 95 1/2 in x 16 1/8 in"
    said = press(panel, press="strip", way="crosscut", text="100 in")
    assert said == "A crosscut at 100 in cuts nothing off offcut a, which is 95 1/2 in long."
    refused = panel.face.strip
    assert refused["typed"] == "100 in" and refused["fault"] == said
    press(panel, press="strip", way="crosscut", text="410 mm")
    assert panel.face.strip["typed"] == panel.face.strip["fault"] == ""
    press(panel, press="strip", way="crosscut", text="100 in")
    press(panel, press="again")
    assert panel.face.strip["fault"] == ""  # what it was said of is no more


@pytest.mark.parametrize("unit", ["in", "mm"])
def test_the_case_to_begin_with_goes_on_one_sheet_but_not_by_laying_it_in_order(unit):
    panel = layout_panel(unit, seconds=60)  # more than it takes, on a machine that is busy with something else too
    assert least_sheets(panel.hand.job, panel.best) == 1 and panel.best.cost == 1
    assert whole(panel.best.hand) == []
    while not panel.hand.done:
        press(panel, press="along")
    assert len(panel.hand.sheets) == 2
    assert panel.face.result["heading"] == "It can be done with fewer sheets." and not panel.face.result["good"]
    assert panel.face.result["lines"][1] == "The search found a layout that buys 1 sheet, 1 fewer."


def test_a_layout_by_hand_that_is_better_than_the_best_is_the_best():
    panel = layout_panel("in", ONE_SHEET)
    on_one = panel.best
    panel.best = replace(on_one, cost=2)  # as a search finds it that is stopped early
    while not panel.hand.done:
        press(panel, press="along")
    assert len(panel.hand.sheets) == 1 and on_one.proven
    assert panel.face.result["heading"] == "Fewer sheets than the search found." and panel.face.result["good"]
    told = panel.face.result["lines"]
    assert told[:3] == [
        "All parts lie on 1 sheet.", "The search found none that buys fewer than 2 sheets: this is the best now.",
        "No layout can buy fewer.",
    ]  # fmt: skip
    assert "offcut" not in " ".join(told)  # neither of two sheets nor of itself
    assert panel.best.hand is panel.hand and figure(panel, "Sheets in use") == ["1", "1 (any layout buys at least 1)"]
    press(panel, press="again")
    assert press(panel, press="best").startswith("This is the best layout: one of yours")
    assert len(panel.face.pictures) == 1


def test_offcuts_are_compared_only_where_as_many_sheets_are_in_use():
    stock = (Stock("offcut", 31 * INCH, 25 * INCH, count=1), *ONE_SHEET.stock)
    job = replace(ONE_SHEET, stock=stock, parts=(replace(SHELF, count=3),))

    def laid(*where):
        panel = layout_panel("in", job)
        for place in where:
            press(panel, press="place", place=place)
            press(panel, press="lay")
        while not panel.hand.done:
            press(panel, press="lay")
        return panel.hand

    on_one, on_two = laid("new 1"), laid("new 0", "new 1")
    assert [len(hand.sheets) for hand in (on_one, on_two)] == [1, 2]
    compared = {
        len(hand.sheets): [line for line in came_of_it(hand, Best(on_one, shop_cost_by_hand(on_one), 1, 1))["lines"]
                           if "largest offcut" in line]
        for hand in (replace(on_one, steps=()), on_two)
    }  # fmt: skip
    assert len(compared[1]) == 1 and compared[2] == []


def test_a_search_that_ends_by_itself_is_given_time_and_one_that_takes_long_is_announced(monkeypatch):
    given, told = [], []

    def looked(job, style, seconds):
        given.append(seconds)
        found = best_found(job, style, 0.2)
        return replace(found, least=0)

    monkeypatch.setattr("shoplib.live.layout_panel.best_found", looked)
    panel = layout_panel("in", ONE_SHEET)
    assert given == [1.0, 6.0]
    panel.face.observe(lambda change: told.append(change["new"]["lines"][0]), "said")
    press(panel, press="enter", name="kerf", text="1/4")
    assert told == ["Looking for the best layout of these parts; that takes 6 seconds at most.", "Kerf: 1/4 in."]
    given.clear()
    layout_panel("in", ONE_SHEET, seconds=0.3)
    assert given == [0.3]


def test_one_of_the_best_is_shown_and_ones_own_kept():
    panel = layout_panel("in")
    press(panel, press="lay")
    mine, drawn = panel.hand, panel.face.pictures
    assert press(panel, press="best").endswith("Yours is kept.")
    assert panel.face.best_shown and len(panel.face.pictures) == len(panel.best.hand.sheets)
    kerf = {"press": "enter", "name": "kerf", "text": "1"}
    for content in ({"press": "lay"}, {"press": "point", "name": "offcut a"}, kerf):
        press(panel, **content)
        assert panel.hand is mine
    press(panel, press="mine")
    assert not panel.face.best_shown and panel.face.pictures == drawn and panel.hand is mine
    press(panel, press="best")
    assert press(panel, press="again") == "All parts are back in the list."
    assert not panel.face.best_shown and panel.hand.sheets == () and panel.hand.before is mine
    press(panel, press="back")
    assert panel.hand is mine


def test_a_job_that_no_sheet_holds_can_be_tried_and_has_no_best():
    panel = layout_panel("in", replace(ONE_SHEET, parts=(SHELF, replace(SHELF, name="bench top", length=90 * INCH))))
    assert panel.best is None and figure(panel, "Sheets in use") == ["0", "none found"]
    assert press(panel, press="best").startswith("No layout was found") and not panel.face.best_shown
    press(panel, press="lay")
    assert panel.hand.to_lay == (3, 4)


def test_sheets_in_the_shop_are_used_first_by_the_best_and_cost_nothing():
    stock = (Stock("offcut", 31 * INCH, 25 * INCH, count=1), *ONE_SHEET.stock)
    panel = layout_panel("in", replace(ONE_SHEET, stock=stock, parts=(replace(SHELF, count=2),)))
    assert [text for _, text in panel.face.places] == [
        "a new sheet: offcut, 31 in x 25 in, 1 there", "a new sheet: plywood, 64 in x 30 in"
    ]
    press(panel, press="place", place="new 1")
    press(panel, press="along")
    assert panel.face.result["heading"] == "It can be done with fewer sheets."
    press(panel, press="again")
    press(panel, press="place", place="new 0")
    press(panel, press="lay")
    press(panel, press="lay")
    assert panel.face.result["good"] and [row[0] for row in panel.face.places] == []


def test_another_kerf_leaves_the_trim_of_each_stock_as_it_is():
    stock = (Stock("offcut", 31 * INCH, 25 * INCH, count=1), replace(ONE_SHEET.stock[0], trim_ends=INCH, trim_edges=0))
    panel = layout_panel("in", replace(ONE_SHEET, stock=stock))
    press(panel, press="enter", name="kerf", text="1/4")
    assert panel.hand.job.stock == stock and panel.hand.job.kerf == INCH // 4
    press(panel, press="enter", name="trim", text="1/2")
    assert {(one.trim_ends, one.trim_edges) for one in panel.hand.job.stock} == {(INCH // 2, INCH // 2)}


def test_sheets_that_cost_differently_or_a_unit_that_is_none_are_refused():
    with pytest.raises(LayoutError, match="all that are bought must cost the same"):
        layout_panel("in", replace(ONE_SHEET, stock=(*ONE_SHEET.stock, replace(ONE_SHEET.stock[0], cost=2))))
    with pytest.raises(ValueError, match='the unit is "in" or "mm"'):
        layout_panel("yards")


ODD = [{}, {"press": "dance"}, {"press": None}, {"press": ["lay"]}, {"press": "part"}, {"press": "part", "part": 99},
       {"press": "part", "part": "side"}, {"press": "part", "part": [1]}, {"press": "place", "place": ["a"]},
       {"press": "place", "place": "zz"}, {"press": "turn", "turned": "yes"}, {"press": "way", "way": "saw"},
       {"press": "way", "way": ["rip"]}, {"press": "enter"}, {"press": "enter", "name": ["kerf"], "text": "1"},
       {"press": "enter", "name": "kerf", "text": None}, {"press": "point"}, {"press": "point", "name": 3},
       {"press": "strip"}, {"press": "strip", "way": "", "text": "1"}, {"press": "strip", "way": "rip"}, "lay", None]
TEXTS = ["1/8", "3 mm", "0", "-2", "deep", "", "9" * 300, "½ in", "23 5/8 in", "601 mm"]
FEW = ["1/8", "3 mm", "0", "6 in", "9 mm", "x"]  # each other kerf or trim is searched for its best once


def test_any_order_of_presses_raises_nothing_loses_nothing_and_shows_what_stands(count):
    for seed in range(count(40, 600)):
        draw = random.Random(seed)
        panel = layout_panel(draw.choice(["in", "mm"]), large=seed % 7 == 0)
        counts = [part.count for part in panel.hand.job.parts]
        for _ in range(draw.randrange(4, 25)):
            content = draw.choice([
                {"press": draw.choice(["lay", "lay", "along", "along", "back", "again", "best", "mine"])},
                {"press": "part", "part": draw.randrange(len(counts))},
                {"press": "place", "place": draw.choice([value for value, _ in panel.face.places] or [""])},
                {"press": "turn", "turned": draw.random() < 0.5}, {"press": "way", "way": draw.choice(list(WAYS))},
                {"press": "point", "name": f"offcut {draw.choice('abcdefg')}"},
                {"press": "strip", "way": draw.choice(list(KINDS)), "text": draw.choice(TEXTS)},
                {"press": "enter", "name": draw.choice(list(FIELDS)), "text": draw.choice(FEW)},
                draw.choice(ODD),
            ])
            panel.face._handle_custom_msg(content, [])
            hand, face = panel.hand, panel.face
            assert whole(hand) == []
            sums(hand)
            lying = [placed.part for sheet in hand.sheets for placed in sheet.placed]
            assert [lying.count(n) + left for n, left in enumerate(hand.to_lay)] == counts
            assert [row["left"] for row in face.parts] == list(hand.to_lay)
            assert all("`" not in line and line.endswith(".") for line in face.said["lines"])
            assert not re.search(r"\d{6}", " ".join(face.said["lines"]).replace("9" * 40, ""))  # never ticks
            assert bool(face.result) == hand.done
            assert all(each["alt"] for each in face.pictures)
            assert hand.done or face.place in [value for value, _ in face.places]
            state = {key: value for key, value in face.get_state().items() if key[0] != "_"}
            assert state["layout"] and json.dumps({key: value for key, value in state.items() if key != "layout"})


def test_it_stays_readable_without_a_kernel_and_in_large_type():
    plain, large = layout_panel("in"), layout_panel("in", large=True, note="For the class.")
    still = plain.still_html()
    assert "<script" not in still and "data:image/svg" in still and "menu Run, then Run All Cells" in still
    assert plain.face.pictures[0]["alt"] in still and plain.face.task in still
    assert all(part["text"] in still for part in plain.face.parts)
    assert "shop-large" in large.face._dom_classes and large.face.note == "For the class."
    assert large.face.pictures[0]["svg"] != plain.face.pictures[0]["svg"]
    assert isinstance(large, LayoutPanel)


def test_the_drawing_shows_parts_kerf_trim_free_places_and_where_the_next_part_would_lie():
    panel = layout_panel("in")
    press(panel, press="lay")
    svg, alt = panel.face.pictures[0]["svg"], panel.face.pictures[0]["alt"]
    for name in ("side", "kerf", "trimmed off", "offcut a", "offcut b", "where the next part would lie"):
        assert f"<title>{name}</title>" in svg
    assert "kerf, 1/8 in" in svg and "trim, 1/4 in at each edge" in svg
    assert "On it lies 1 side." in alt and "offcut a, 65 3/8 in x 15 in" in alt
    press(panel, press="part", part=2)
    press(panel, press="place", place="b")
    assert "where the next part would lie" in panel.face.pictures[0]["svg"]
