"""The build order as it is printed: its numbers are those of the plan, its boxes those of to_measure.toml."""

import io
import json
import re
import tomllib
from dataclasses import replace

import pypdf
import pytest

from shoplib.building.order import build_order
from shoplib.buying.fittings import fitting_lines
from shoplib.buying.laid_out import laid_out
from shoplib.checks import check
from shoplib.checks.in_use import check_in_use
from shoplib.documents.paper import PAPERS
from shoplib.documents.plan_file import plan_text
from shoplib.documents.to_measure import to_measure_text
from shoplib.lists.writing import Writing
from shoplib.measure import MM, write_brief
from shoplib.model.board import CASE
from shoplib.model.cabinet import solve
from shoplib.model.placement import Placement
from shoplib.printed.build.drawers import runs
from shoplib.printed.build.pages import build_pages
from shoplib.printed.plan.board_pages import board_pages
from shoplib.printed.plan.cover import reading_pages
from shoplib.printed.plan.sheet_pages import sheet_pages
from shoplib.printed.typeset.blocks import Beside, Framed, Heading, Table, ToFillIn, Together, ToTick, as_data, told
from shoplib.printed.typeset.set_in_type import set_in_type
from shoplib.printed.typeset.stamp import Stamp
from shoplib.start.cli import parser
from shoplib.start.place import Place
from shoplib.tables.coverage import coverage
from shoplib.words.naming import boards_in_short
from tests.building.cases import SHIPPED, shipped
from tests.random_projects import project


def pages_of(cabinet):
    return build_pages(cabinet, check(cabinet), check_in_use(cabinet))


def flat(blocks):
    """Every block, those inside others too."""
    for block in blocks:
        yield block
        if isinstance(block, Together | Framed):
            yield from flat(block.blocks)
        if isinstance(block, Beside):
            for column in block.columns:
                yield from flat(column)


def words(blocks):
    return json.dumps(as_data(blocks), ensure_ascii=False)


def steps_of(blocks):
    """The blocks of each step, under its heading."""
    steps = []
    for block in blocks:
        heading = block.blocks[0] if isinstance(block, Together) else block
        if isinstance(heading, Heading) and heading.text.startswith("Step "):
            steps.append([])
        if steps:
            steps[-1].append(block)
    return steps


@pytest.mark.parametrize("name", SHIPPED)
def test_diagonals_are_those_of_the_plan(name):
    """Both where the case is glued and where the boxes are: the sentence and the length of plan.json."""
    cabinet = shipped(name)
    findings = check(cabinet)
    planned = [f["text"] for f in json.loads(plan_text(cabinet, findings))["findings"] if f["check"] == "diagonals"]
    told = words(build_pages(cabinet, findings, ()))
    assert planned
    for text in planned:
        size = re.search(r"should measure (.*?);", text)[1]
        amount = next(f.amount for f in findings if f.check == "diagonals" and f.text == text)
        assert size == write_brief(amount, cabinet.style)
        if not text.startswith("Both diagonals of the back") or any(s.kind == "back" for s in build_order(cabinet)):
            assert text.partition(";")[0] in told


@pytest.mark.parametrize("name", SHIPPED)
def test_what_is_measured_is_what_to_measure_asks_for(name):
    cabinet = shipped(name)
    asked = tomllib.loads(to_measure_text(cabinet))["measured"]
    names = {*asked["depths"], *asked["openings"]}
    steps = build_order(cabinet)
    lines = {2: set(), 3: set()}
    for step, blocks in zip(steps, steps_of(pages_of(cabinet)), strict=True):
        if step.measures:
            lines[step.measures] |= {line.partition(" (planned")[0] for block in flat(blocks)
                                     if isinstance(block, ToFillIn) for line in block.lines}
    assert lines[2] | lines[3] == names
    assert {*asked["depths"]} <= lines[2]


@pytest.mark.parametrize("name", SHIPPED)
def test_each_step_names_its_boards(name):
    """The table at the head names them, and a caution stands in a frame before the first line of each cut and lift."""
    cabinet = shipped(name)
    blocks = pages_of(cabinet)
    glance = next(block for block in blocks if isinstance(block, Table))
    steps = build_order(cabinet)
    assert [row[2] for row in glance.rows] == [
        boards_in_short(cabinet.by_name[one] for one in step.boards) for step in steps
    ]
    headings = [block.blocks[0].text for block in blocks if isinstance(block, Together)
                and isinstance(block.blocks[0], Heading)]
    assert headings == [f"Step {number}. {title}" for number, title, _ in glance.rows]
    assert [int(row[0]) for row in glance.rows] == list(range(1, len(steps) + 1))
    framed = ("cut the case", "trim", "joints", "dry run", "back", "place", "measure", "box", "hang boxes", "pull-outs",
              "strips", "fronts", "pulls", "load")
    for step, of_step in zip(steps, steps_of(blocks), strict=True):
        if step.kind in framed:
            first = next(b for b in flat(of_step) if not isinstance(b, Heading | Together))
            assert isinstance(first, Framed), step.kind


@pytest.mark.parametrize("paper", PAPERS.values(), ids=PAPERS)
@pytest.mark.parametrize("name", SHIPPED)
def test_it_is_set_in_type(name, paper):
    """Every heading of a step comes back from the PDF, once, in order."""
    cabinet = shipped(name)
    pdf = set_in_type("Plan set", pages_of(cabinet), Stamp(cabinet.name, "2222-3333"), paper, "Measure.")
    text = "\n".join(page.extract_text() for page in pypdf.PdfReader(io.BytesIO(pdf)).pages)
    numbers = [int(n) for n in re.findall(r"^Step (\d+)\.", text, re.MULTILINE)]
    assert numbers == list(range(1, len(build_order(cabinet)) + 1))


def test_random_projects_are_told(count):
    """Every kind of case has words; a number is never told by its ticks, a word never missing."""
    for seed in range(count(6, 150)):
        told = words(pages_of(solve(project(seed))))
        assert not re.search(r"\d{6,}|None|  |\{|\bnan\b", told.replace('": null', "").replace('{"', "")), seed


def step_words(name, kind, found=None, cabinet=None):
    """The words of the first step of a kind."""
    cabinet = cabinet or shipped(name)
    blocks = build_pages(cabinet, (), (), found)
    return next(words(of_step) for step, of_step in zip(build_order(cabinet), steps_of(blocks), strict=True)
                if step.kind == kind)


@pytest.mark.parametrize("name", SHIPPED)
def test_no_drawer_is_pulled_before_something_stops_it(name):
    """One that runs on wood or on a shelf comes right out of the case: the step that pulls it says so first."""
    told, slides = step_words(name, "hang boxes"), any(f.what == "slide" for f in shipped(name).hardware)
    assert ("comes right out" in told) is not slides
    assert slides or told.index("comes right out") < told.index("Pull each out")


def test_the_step_that_sets_a_board_with_no_cut_to_hold_it_tells_its_place():
    """The toe board where the 3 in deep notches of the sides end, the rail under the top and before the back."""
    cabinet = shipped("under_bench_case")
    goes = [words(of_step) for step, of_step in zip(build_order(cabinet), steps_of(pages_of(cabinet)), strict=True)
            if step.kind == "glue"]
    assert ["Place of toe board" in told for told in goes] == [False, True]
    assert "its front face 3 in behind the front edge, where the notch ends; its top edge against bottom." in goes[1]
    rail = step_words("finger_jointed_drawers", "glue")
    assert "its top edge against top and its back face against back. Draw its lines before you spread glue." in rail


def test_a_butted_divider_has_its_place_on_bottom_and_top():
    """No cut holds it: by plan.json from the left end of each, where it is set out before the glue is on."""
    drawn = shipped("under_bench_case").project
    butt = replace(drawn.carcass.divider, kind="butt", depth=None)
    cabinet = solve(replace(drawn, carcass=replace(drawn.carcass, divider=butt)))
    divider, bottom, top = (cabinet.by_name[name].box for name in ("divider 1", "bottom", "top"))
    assert bottom.low[0] == top.low[0]
    right = Writing(cabinet.style).length(divider.low[0] - bottom.low[0])
    place = f"Place of divider 1 on bottom and top: its left face {right} to the right of the left end, its front edge"
    assert f"{place} flush with the front edge" in step_words("", "glue", cabinet=cabinet)
    drawn_pages = words(board_pages(cabinet, (), PAPERS["letter"]))
    assert drawn_pages.count("Place of divider 1 on bottom and top: its left face ") >= 2  # at itself and at these


@pytest.mark.parametrize("name", SHIPPED)
def test_cuts_that_stop_within_a_board_have_their_caution_wherever_they_are_called_for(name):
    """Read off plan.json: a dado, groove or rabbet that reaches neither end and edge along its run."""
    cabinet = shipped(name)
    plan = json.loads(plan_text(cabinet, ()))
    stopped = {board["name"] for board in plan["boards"] for cut in board["cuts"] if _stops(cut, board["size"])}
    caution = "Never lower a board onto a turning cutter without both stops"
    for step, blocks in zip(build_order(cabinet), steps_of(pages_of(cabinet)), strict=True):
        boards = {board.name for board in cabinet.boards if board.stage == CASE} if step.kind in (
            "cut the case", "joints") else {*step.boards} if step.kind == "box" else set()
        rough = step.kind == "cut the case" and any(one.kind == "joints" for one in build_order(cabinet))
        framed = words([block for block in flat(blocks) if isinstance(block, Framed)])
        assert (caution in framed) == bool(stopped & boards and not rough), step.kind
    found = laid_out(cabinet, 1)
    assert (caution in words(sheet_pages(found, PAPERS["letter"]))) == bool(stopped)


def _stops(cut, size):
    """Whether it ends short along the way that it runs, its longest one in the face of the board."""
    if cut["kind"] not in ("dado", "groove", "rabbet"):
        return False
    run = max((0, 1), key=lambda axis: cut["high"][axis] - cut["low"][axis])
    return cut["low"][run] > 0 or cut["high"][run] < size[run]


def test_what_closes_the_room_for_a_driver_waits_for_the_screws():
    assert "Drive them before top goes on: after it there is no room for the driver." in step_words(
        "finger_jointed_drawers", "glue")


def test_sides_are_mirror_images_only_where_the_cut_list_says_so():
    """The right side of the rolling stand takes two shelves, the left one none: cut alike, the left one is spoilt."""
    stand = step_words("rolling_stand", "cut the case")
    assert "mirror" in stand and "mirror images." not in stand and "mirrored pair" not in stand
    assert "Left side and right side are not mirror images here" in stand
    bench = step_words("under_bench_case", "cut the case")
    assert "Lay left side and right side beside one another like an open book: they are mirror images." in bench
    assert "not mirror images" not in bench


def test_only_what_the_layout_has_in_staves_is_glued_up():
    """By hand from the sheet layout: both sides and the divider come whole from the board of 11 in."""
    cabinet = shipped("wheel_wall_drawers")
    found = laid_out(cabinet, 0)
    in_staves = {piece.board.name for sheet in found.sheets for piece in sheet.pieces if piece.stave}
    assert in_staves == {"bottom", "top"}
    told = step_words("", "trim", found, cabinet)
    assert "Bottom and top: no board is wide enough; glue each up from 2 staves" in told
    assert "no board is wide enough" not in step_words("", "solid wood", found, cabinet)
    assert "no board is wide enough" not in step_words("", "trim", None, cabinet)


def test_rough_boards_become_finished_ones_before_their_joints():
    """An edge jointed, planed whole, glued up, trimmed, and then the joints (common practice, no source)."""
    cabinet = shipped("wheel_wall_drawers")
    kinds = [step.kind for step in build_order(cabinet)][:4]
    assert kinds == ["solid wood", "cut the case", "trim", "joints"]
    ready, cut, trim, joints = (step_words("", kind, None, cabinet) for kind in kinds)
    road = [ready.index(said) for said in (
        "Jointer:", "Planer:", "Before the first saw cut, each board whole", "joint one edge", "Only then make the saw"
    )]
    assert road == sorted(road)
    assert "Trim them to the finished sizes" in trim and "Try each setting" not in trim + cut
    assert "Try each setting" in joints and "Trim them" not in joints + cut
    under_bench = shipped("under_bench_case")
    assert "trim" not in [step.kind for step in build_order(under_bench)]
    assert "Trim them" not in words(pages_of(under_bench))


def test_each_size_to_trim_is_a_line_to_tick():
    """Every rough board once, at the size of the cut list; runners are ripped to theirs.

    What is under 12 in long at rough size, the upright boards of the case, has its width by then.
    """
    cabinet = shipped("wheel_wall_drawers")
    told = zip(build_order(cabinet), steps_of(pages_of(cabinet)), strict=True)
    by_kind = {step.kind: blocks for step, blocks in told}
    for kind, stage in (("trim", 1), ("fronts", 3)):
        lines = [line for block in flat(by_kind[kind]) if isinstance(block, ToTick) for line in block.lines]
        wanted = {}
        for board in cabinet.boards:
            if board.stage == stage and board.sheet == "ash":
                length, width = (write_brief(ticks, cabinet.style) for ticks in board.cut_size[:2])
                upright = board.role in ("side", "divider")  # under 12 in long at rough size: wide enough by then
                size = f"{length} long, {width} wide by now" if upright else f"{length} x {width}"
                wanted.setdefault(size, []).append(board)
        for size, boards in wanted.items():
            names = boards_in_short(boards)
            assert f"{names[0].upper()}{names[1:]}: to {size}." in lines
    trims = [line for line in lines if ": to " in line]
    assert len(trims) == 1


def test_notches_and_stopped_dadoes_stand_in_the_step_that_cuts_them():
    stand = step_words("rolling_stand", "cut the case")
    assert '"dado, stopped 20 mm from the front edge", "18.1 mm", "6 mm", "4"' in stand
    assert '"notch", "2", "bay 2 shelves 1 and 2"' in stand and "Clamp a stop behind" in stand
    wall = step_words("wheel_wall_drawers", "joints")
    assert '"notch", "1", "divider 1"' in wall and '"screw hole", "2", "left side and right side"' in wall
    assert "stopped" not in wall
    # The cleat is held through the panel by three, the front through the cleat by four: each place once.
    holes = step_words("under_bench_case", "pull-outs")
    for board, count in (("panel", 3), ("cleat", 4)):
        assert holes.count(f'"screw hole", "1", "bay 2 pull-out {board}", "11/64 in across"') == count


def test_fingers_have_their_jig_their_trial_and_their_caution():
    told = step_words("finger_jointed_drawers", "box")
    for said in ("begin with a socket", "begin with a finger", "clamped to a jig on the mitre gauge", "fresh backer",
                 "Cut both boards of a corner".lower(), "A pin as wide as the cut", "allow no dado set"):
        assert said in told or said in told.lower(), said
    assert told.index("Cut from the new sizes") < told.index("A pin as wide as the cut") < told.index("brush glue")
    assert "finger" not in step_words("rolling_stand", "box").lower()


def test_what_cuts_the_fingers_is_a_choice_with_its_test():
    """By hand: fingers of 10 mm with a fit of 0.1 mm are sockets of 10.05 mm; the kerf of the project is 3 mm."""
    told = step_words("finger_jointed_drawers", "box")
    assert "Choose what cuts the sockets, 10.05 mm wide" in told
    assert "A single blade cuts 3 mm" in told and "with fingers of 2.95 mm" in told
    assert "put a caliper in it: 10.05 mm" in told and "write a finger 0.05 mm narrower than what you read" in told
    road = [told.index(said) for said in (
        "put a caliper in it", "With a stacked dado set, first in scrap", "Build the stack to the socket",
        "In scrap first: cut both boards of a corner", "cut the boards by the same lines",
        "With a router and a straight bit, first in scrap", "the sled", "With the fingers cut:", "brush glue",
    )]
    assert road == sorted(road)
    assert "Unplug the router before you change the bit" in told and "With the blade alone" not in told


def test_a_kerf_as_wide_as_the_socket_cuts_the_fingers():
    """A finger of 4 mm with a fit of 0.1 mm is a socket of 4.05 mm, the kerf: the blade alone, and no other way."""
    drawn = shipped("finger_jointed_drawers").project
    [bay] = drawn.bays
    corner = replace(bay.drawers.corner, finger=4 * MM)
    small = (replace(bay, drawers=replace(bay.drawers, corner=corner, box_sheet="case sheet")),)
    cutting = replace(drawn.cutting, kerf=405 * MM // 100)
    told = step_words("", "box", None, solve(replace(drawn, bays=small, cutting=cutting)))
    assert "The fingers are cut with the blade alone: its kerf in your project, 4.05 mm, is the socket." in told
    assert "With the blade alone, first in scrap" in told and "The kerf is the socket" in told
    assert "dado set" not in told and "router and a straight bit" not in told


def test_screws_into_fronts_are_told_with_their_drawers():
    """A longer screw in the wrong front comes out of its face: each size stands with the drawers that it is for."""
    cabinet = shipped("under_bench_case")
    told = words(pages_of(cabinet))
    assert "No. 8 x 1 in for drawers 1 to 4 in bays 1 and 3; No. 8 x 1 1/4 in for bay 2 pull-out" in told
    assert ("drawers 1 to 4 in bays 1 and 3: 4, one near each corner of the box front; bay 2 pull-out: 4 through the "
            "holes of its cleat") in told
    solid = step_words("wheel_wall_drawers", "fronts")
    assert "drawer 1 in bays 1 and 2: 2 on one line at half the height of the front" in solid


def test_fronts_with_no_gap_under_them_have_a_batten_to_stand_on():
    """By hand: the overlay fronts of the wheel case begin 1/8 in above its underside, as the plan draws them."""
    cabinet = shipped("wheel_wall_drawers")
    low = min(board.box.low[2] for board in cabinet.boards if board.role == "bottom")
    begin = {board.box.low[2] - low for board in cabinet.boards if board.role == "front"}
    told = step_words("wheel_wall_drawers", "fronts")
    [height] = begin
    assert f"stand on: front of drawer 1 in bays 1 and 2 {write_brief(height, cabinet.style)} above" in told
    assert "clamp a straight batten" not in step_words("under_bench_case", "fronts")  # a gap lies under each


def test_pocket_screws_are_not_clamped_for_long():
    drawn = shipped("under_bench_case").project
    pocket = replace(drawn.carcass.corner, kind="pocket screws", depth=None)
    pocketed = solve(replace(drawn, carcass=replace(drawn.carcass, corner=pocket, divider=pocket)))
    told = words(pages_of(pocketed))
    assert "Clamp only while you drive them; the clamps come off at once." in told


def test_the_step_that_cuts_joints_has_pockets_to_tick():
    """In the case and in boxes: every pocket is in a line of its stage, and "pocket" and "web" are explained."""
    drawn = shipped("finger_jointed_drawers").project
    bay = drawn.bays[0]
    corner = replace(bay.drawers.corner, kind="pocket screws", fit=None, finger=None)
    drawers = replace(bay.drawers, corner=corner, box_sheet="case sheet")
    cabinet = solve(replace(drawn, bays=(replace(bay, drawers=drawers),)))
    steps = zip(build_order(cabinet), steps_of(pages_of(cabinet)), strict=True)
    told = {step.kind: words(of_step) for step, of_step in steps if step.kind in ("cut the case", "box")}
    assert "Drill the pockets of rail 1, 4 in all, with the guide" in told["cut the case"]
    per_box = sum(cut.kind == "pocket" for board in cabinet.boards if board.stage == 2 for cut in board.cuts)
    assert per_box and f", {per_box} in all, with the guide" in told["box"]
    explained = dict(reading_pages(cabinet, told["cut the case"])[-1].rows)
    assert {"pocket", "web", "collar"} <= {*explained}


def test_what_cannot_go_together_is_stopped():
    """Two boards in one another: the pages are written all the same, and say so."""
    case = shipped("rolling_stand")
    twin = replace(case.by_name["bottom"], name="twin")
    told = words(pages_of(replace(case, boards=(*case.boards, twin))))
    assert "STOP: no straight move brings" in told and "twin" in told


def test_a_case_without_a_back_is_told_what_holds_it_square():
    drawn = shipped("under_bench_case").project
    none = replace(drawn.carcass.back, kind="none", sheet="")
    bare = solve(replace(drawn, carcass=replace(drawn.carcass, back=none)))
    assert "There is no back to square this case" in words(pages_of(bare))
    assert "There is no back" not in words(pages_of(shipped("under_bench_case")))


@pytest.mark.parametrize("name", SHIPPED)
def test_a_back_with_play_is_not_said_to_square_the_case(name):
    """Geometry: what has play at its ends lies as askew as its play lets it."""
    cabinet = shipped(name)
    loose = any(joint.end_gap for joint in cabinet.joints if joint.enters == "back")
    [said] = [found.text for found in check(cabinet) if found.check == "diagonals" and found.boards == ("back",)]
    assert ("it squares the case" in said, "it has play" in said) == (not loose, loose)


@pytest.mark.parametrize("name", SHIPPED)
def test_the_words_about_boxes_are_of_what_the_project_has(name):
    cabinet = shipped(name)
    what = {fitting.what for fitting in cabinet.hardware}
    told = words(pages_of(cabinet))
    runners = any(board.role == "runner" for board in cabinet.boards)
    where = "between its slides" if "slide" in what else "on its runners" if runners else "in its opening"
    assert f"dry and try it {where} before" in told
    assert "caster" in what or "or its casters locked" not in told
    assert "room beside the slides" not in told and "squares the box" not in told


@pytest.mark.parametrize("name", SHIPPED)
def test_each_glue_up_is_measured_before_its_glue_sets(name):
    """A case that sets out of square in its first glue-up stays so (common practice, no source)."""
    cabinet = shipped(name)
    for step, blocks in zip(build_order(cabinet), steps_of(pages_of(cabinet)), strict=True):
        if step.kind == "glue":
            assert any(isinstance(block, ToFillIn) and block.title.startswith("Diagonals") for block in flat(blocks))


def test_glue_goes_on_as_many_faces_as_are_bought():
    """The row of `data/coverage.toml` counts one of the two faces."""
    assert "one of the two faces" in coverage("glue").what
    assert "all over one of the two faces of each joint" in words(pages_of(shipped("under_bench_case")))


def test_a_case_that_stands_says_through_what_it_is_fastened():
    """Without a rail: brackets, or up into a bench; what to buy them by; codes and trade decide."""
    for name in ("under_bench_case", "rolling_stand", "finger_jointed_drawers"):
        told = words(pages_of(shipped(name)))
        for part in ("into studs or masonry", "bought by what their maker says they hold", "licensed trade"):
            assert part in told
    assert "angle brackets" in words(pages_of(shipped("under_bench_case")))
    assert "through its rail into studs or masonry. Screws into studs: 80 mm long" in words(
        pages_of(shipped("finger_jointed_drawers")))


def test_a_rail_that_stiffens_is_levelled_and_not_hung():
    told = words(pages_of(shipped("finger_jointed_drawers")))
    assert "Level it" in told
    assert "is hung" not in told
    assert "from the pockets in the front face" in told


def test_a_front_gets_one_screw_and_then_what_is_left():
    told = words(pages_of(shipped("small_parts_wall_case")))
    assert "drive one screw. Shut it, look at the gaps, correct, then drive the other." in told
    four = words(pages_of(shipped("under_bench_case")))
    assert "drive one screw. Shut it, look at the gaps, correct, then drive the others." in four


def test_runners_with_no_spacers_are_not_titled_by_them():
    """Those on the bottom itself need none: the title follows the table."""
    glance = {name: [row[1] for block in pages_of(shipped(name)) if isinstance(block, Table) for row in block.rows]
              for name in ("wheel_wall_drawers", "rolling_stand")}
    assert "Runners, by spacers" in glance["wheel_wall_drawers"] and "Slides, by spacers" in glance["rolling_stand"]
    titles = [row[1] for block in pages_of(laid_flat(shipped("wheel_wall_drawers"))) if isinstance(block, Table)
              for row in block.rows]
    assert "Runners" in titles and "Runners, by spacers" not in titles


def laid_flat(cabinet):
    """Its runners on the bottom of the case, where no spacer goes under them."""
    lowest = next(board.box.high[2] for board in cabinet.boards if board.role == "bottom")
    return replace(cabinet, boards=tuple(
        replace(board, placement=Placement((*board.placement.origin[:2], lowest), board.placement.axes))
        if board.role == "runner" else board for board in cabinet.boards))


IN_TURN = ("Cut to the case as measured", "Bore them", "point to point", "Cut a spacer", "Work from the top down",
           "Lay template", "Rest the", "needs no spacer", "Keep the hand out of the line of the driver's bit")
"""What a step of slides and runners says, in the order in which it is done (common practice, no source)."""


@pytest.mark.parametrize(("name", "said"), [
    ("under_bench_case", "3 4 5 6 8"), ("rolling_stand", "3 4 5 6 8"), ("finger_jointed_drawers", "3 4 5 6 8"),
    ("wheel_wall_drawers", "0 1 2 3 4 5 6 8"), ("wheel_wall_drawers, flat", "0 1 2 5 7 8"),
])
def test_slides_and_runners_are_screwed_after_all_that_sets_them(name, said):
    """Nothing is driven before the last line, and nothing is cut, marked or held after it."""
    cabinet = shipped(name.removesuffix(", flat"))
    cabinet = laid_flat(cabinet) if name.endswith("flat") else cabinet
    wood = tuple(board.name for board in cabinet.boards if board.role in ("runner", "kicker"))
    [lines] = [block.lines for block in runs(wood, cabinet) if isinstance(block, ToTick)]
    at = [[number for number, words in enumerate(IN_TURN) if words in line] for line in lines]
    assert " ".join(str(number) for [number] in at) == said
    assert [line for line in lines[:-1] if re.search(r"\b(Screw|[Dd]rive)\b", line)] == []
    assert re.search("Drive one screw in a slot|Screw what is of wood without glue", lines[-1])


def test_the_upper_edge_of_a_toe_board_stays_dry():
    """It is no joint of the plan, so nothing is masked there and nothing is glued."""
    assert "Toe board: glue on its ends only." in words(pages_of(shipped("under_bench_case")))


@pytest.mark.parametrize("name", SHIPPED)
def test_commands_are_told_so_that_they_run_as_they_are_typed(name):
    """Each is read by the command line itself, which ends the program where something is left out."""
    commands = re.findall(r"python3 -m shoplib ([^\u201d]+)\u201d", told(pages_of(shipped(name))))
    assert [command.split()[0] for command in commands] == ["plan", "print"]
    for command in commands:
        assert parser(Place.of_this_copy()).parse_args(command.split()).to


@pytest.mark.parametrize("name", SHIPPED)
def test_words_of_the_bench_are_explained(name):
    """The words that a beginner asked after, wherever they stand in the steps of a project."""
    cabinet = shipped(name)
    text = told(pages_of(cabinet))
    asked = {"pilot hole", "clearance hole", "brad", "nailer", "dado set", "pare", "plumb", "story stick", "caul"}
    there = {word for word in asked if re.search(rf"\b{word}s?\b", text)}
    [table] = [block for block in reading_pages(cabinet, text) if isinstance(block, Table)]
    assert {"pilot hole", "caul"} <= there and there <= {word for word, _ in table.rows}


def test_words_of_the_drawings_of_a_pocket_are_explained():
    """As they stand at the rail of the shipped case that has one."""
    cabinet = shipped("finger_jointed_drawers")
    text = told(board_pages(cabinet, (), PAPERS["a4"]))
    [table] = [block for block in reading_pages(cabinet, text) if isinstance(block, Table)]
    assert {"pockets", "web"} <= set(re.findall(r"[a-z]+", text))
    assert {"pocket", "web"} <= {word for word, _ in table.rows}


@pytest.mark.parametrize("name", SHIPPED)
def test_several_sheets_of_one_kind_are_told_in_words(name):
    """\u201cbox sheets on hand 1 and 2\u201d, whichever are laid out: there is more than one sheet, and one hand."""
    text = told(sheet_pages(laid_out(shipped(name), 0), PAPERS["a4"]))
    heads = re.findall(r"The cuts of (.+?) in their order", text)
    assert heads and not any(re.search(r"hands|ashs|sheet on hand \d+ (?:and|to) \d", head) for head in heads)


def test_a_pull_out_has_its_glue_its_pegs_and_its_slides_before_it_is_hung():
    """What is glued stays bare, what is bought is cut and set (the buying list's 9 pegs of 4 3/8 in, 4 of them out)."""
    cabinet = shipped("under_bench_case")
    told = step_words("under_bench_case", "pull-outs")
    [rod] = [line for line in fitting_lines(cabinet) if line.kind == "peg rod"]
    assert rod.uses.startswith("9 pegs, each 4 3/8 in long")
    turns = ("Bore its peg holes", "Keep finish off", "Glue and screw on", "Cut 9 pegs 4 3/8 in long",
             "Screw the slide members to the panel", "Hang it")
    places = [told.index(turn) for turn in turns]
    assert places == sorted(places)
    bare = told[places[1]:places[2]]
    assert "along the front edge of the panel" in bare and "peg holes" in bare
    assert write_brief(cabinet.by_name["bay 2 pull-out cleat"].thickness, cabinet.style, decimal=True) in bare
    assert "4 in stands out" in told
