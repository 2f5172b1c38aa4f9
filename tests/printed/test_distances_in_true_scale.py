"""What is written beside the lines in true scale, read back from the drawings: the distances and names of plan.json."""

import re
import xml.etree.ElementTree as ET
from dataclasses import replace
from functools import cache

import pytest

from shoplib.checks import check
from shoplib.documents.paper import PAPERS
from shoplib.documents.plan_file import plan_dict
from shoplib.measure import MM
from shoplib.model.cabinet import solve
from shoplib.printed.true_scale.story_stick import story_stick_pages
from shoplib.printed.true_scale.template_pages import template_files, template_pages, templates
from shoplib.printed.typeset.blocks import Table, WholePage
from shoplib.words.naming import and_list, in_short
from tests.printed.cases import NAMES, planned, solved
from tests.printed.glued import SEAM, middle
from tests.printed.lengths import BARE, mm, near
from tests.printed.test_true_scale import (
    SVG,
    WITHIN,
    bottom_of,
    box,
    drawn_in,
    expected_holes,
    heights_told,
    lines_drawn,
    world,
)
from tests.random_projects import project

LENGTH = rf"(?:{BARE})(?: (?:in|mm))?(?: \([+-]\d+\.\d+(?: (?:in|mm))?\))?"
SIDES = {"x": "left", "y": "front", "z": "bottom"}
TINT = "#b9bec5"


def test_a_length_is_read_with_its_rest():
    assert re.fullmatch(LENGTH, "4 5/8 in (-0.003 in)") and re.fullmatch(LENGTH, "59.5 mm")
    assert not re.fullmatch(LENGTH, "59.5 mm from")


def words_in(svg):
    """Every line of words as (x, y upward, whether it is turned, its size, the words)."""
    found = []
    for node in ET.fromstring(svg).iter(f"{SVG}text"):
        turned = re.match(r"translate\((\S+) (\S+)\)", node.get("transform", ""))
        x, y = turned.groups() if turned else (node.get("x"), node.get("y"))
        found.append((float(x), -float(y), bool(turned), float(node.get("font-size")), node.text))
    return found


def unit(cabinet):
    return cabinet.style.unit


def lines_of(edges):
    [upright] = [line for line in edges if abs(line[0][0] - line[1][0]) < WITHIN]
    [level] = [line for line in edges if abs(line[0][1] - line[1][1]) < WITHIN]
    return upright[0][0], level[0][1]


def nearest(rings, at):
    return min(rings, key=lambda ring: abs(middle(ring)[0] - at[0]) + abs(middle(ring)[1] - at[1]))


def side_of(board, way):
    """The name of the side that looks left, to the front or down."""
    own = [axis[1] for axis in board["axes"]].index(way)
    return f"{SIDES[way]} {('end', 'edge')[own]}"


@cache
def files(name):
    cabinet = solved(name)
    return list(zip(templates(cabinet), template_files(cabinet).values(), strict=True))


def beside_lines(words, edges, sides):
    """What is written beside the upright heavy line and over the level one."""
    upright, level = lines_of(edges)
    [one] = [word[4] for word in words if word[2] and abs(word[0] - upright) < 6 and sides[0] in word[4]]
    [other] = [word[4] for word in words if not word[2] and 0 < word[1] - level < 6 and sides[1] in word[4]]
    return one, other


@pytest.mark.parametrize("name", NAMES)
def test_each_hole_of_pulls_and_pegs_is_told_from_the_edges_that_are_heavy(name):
    cabinet, boards, seen = solved(name), {board["name"]: board for board in planned(name)["boards"]}, 0
    for template, svg in files(name):
        kind = {"holes for pulls": "pull", "holes for pegs": "peg"}.get(template.what)
        if not kind:
            continue
        rings, edges, _ = drawn_in(svg)
        words, starts = words_in(svg), lines_drawn(template.lines[0])
        for board in map(boards.get, template.names):
            sides = side_of(board, "y" if kind == "peg" else "x"), side_of(board, "z")
            assert_beside(template, beside_lines(words, edges, sides), sides, unit(cabinet))
            told = told_of_holes(words, rings, lines_of(edges), sides, starts, unit(cabinet))
            assert len(told) == len(rings)
            wanted = expected_holes(board, kind, kind == "peg")
            for across, up, _ in wanted:
                assert any(near(one, across, unit(cabinet))
                           and any(abs(float(mm(other, unit(cabinet))) + more - up) < 0.05 for more in above)
                           for one, (other, above) in told.values())
            if len(starts[1]) > 1:
                heights = re.search(rf"Each row is (.+?) from the {sides[1]}", template.lines[1])[1]
                rows = sorted({up for _, up, _ in wanted})
                for text, row in zip(re.split(", | and ", heights), rows, strict=True):
                    assert near(text, row, unit(cabinet))
            cuts = [cut for cut in board["cuts"] if cut["kind"] == kind]
            [(across, deep)] = {(cut["diameter"], cut["depth"]) for cut in cuts}
            drill = re.search(rf"Drill (the hole|\d+ holes): ({LENGTH}) across, (?:(right through)|({LENGTH}) deep)",
                              template.lines[1])
            assert drill[1] == ("the hole" if len(cuts) == 1 else f"{len(cuts)} holes")
            assert near(drill[2], across, unit(cabinet))
            thick = board["size"][2]
            assert near(drill[4], deep, unit(cabinet)) if drill[4] else deep >= thick - WITHIN
            seen += 1
    assert seen


def told_of_holes(words, rings, heavy, sides, starts, unit):
    """By hole, what is written beside it: how far from the upright edge, and how far from the level edge or, with the
    lines on which it is laid, above each of them. What is written is checked against the drawing."""
    told = {}
    for x, y, _, _, text in words:
        if found := re.fullmatch(rf"({LENGTH}) (?:from {sides[0]}|(from {sides[1]})|(above each line))", text):
            ring = middle(nearest(rings, (x, y - 3)))
            if found[3]:
                assert len(starts[1]) > 1 and near(found[1], ring[1] - heavy[1], unit), text
            elif found[2]:
                assert len(starts[1]) == 1 and near(found[1], ring[1] - heavy[1] + starts[1][0], unit), text
            else:
                assert near(found[1], starts[0][0] + abs(ring[0] - heavy[0]), unit), text
            here = told.setdefault(ring, [None, None])
            here[bool(found[2] or found[3])] = (found[1], starts[1] if found[3] else [0]) if found[2] or found[3] else (
                found[1])
    return told


def assert_beside(template, beside, sides, unit):
    """Both heavy lines say what they lie on, in the words of the head."""
    drawn = dict(zip(sides, lines_drawn(template.lines[0]), strict=True))
    flush = []
    for side, text in zip(sides, beside, strict=True):
        lengths = drawn[side]
        if lengths == [0]:
            assert text == f"{side}: flush with this line"
            flush.append(side)
        elif len(lengths) == 1:
            far = re.fullmatch(rf"on the line ({LENGTH}) from the {side}", text)
            assert near(far[1], lengths[0], unit)
        else:
            assert text == f"on each line drawn from the {side}"
    many = sum(len(lengths) for lengths in drawn.values() if lengths != [0])
    lines = "that line" if many == 1 else "those lines"
    told = f"flush with the {and_list(flush)}{f', and on {lines}' if many else ''}." if flush else f"on {lines}."
    assert f"its heavy lines {told}" in template.lines[0]
    assert told.removesuffix(".") in template.alt


@pytest.mark.parametrize("name", ["finger_jointed_drawers", "rolling_stand", "under_bench_case", "wheel_wall_drawers"])
def test_each_template_for_slides_tells_the_setback_and_the_height_for_every_drawer(name):
    cabinet, plan, seen = solved(name), planned(name), 0
    boards = {board["name"]: board for board in plan["boards"]}
    floor = bottom_of(plan)
    for template, svg in files(name):
        if template.what != "slides and runners":
            continue
        _, edges, [(low, high)] = drawn_in(svg)
        upright, _ = lines_of(edges)
        words = words_in(svg)
        front, lower = beside_lines(words, edges, ("front edge", "lower edge"))
        assert front == "front edge: flush with this line"
        what, back = re.fullmatch(rf"(slide|wood runner), front end set back ({LENGTH})", next(
            word[4] for word in words if "set back" in word[4])).groups()
        assert near(back, min(abs(low[0] - upright), abs(high[0] - upright)), unit(cabinet))
        assert lower == f"lower edge of the {what}: on the spacer block, or on its line"
        there = riding_on(plan, boards, what)
        for height, whose in heights_told(template):
            groups = [group for group, at, setback in there if abs(at - floor - height) < 0.05
                      and near(back, setback, unit(cabinet))]
            assert whose == and_list(in_short(dict.fromkeys(groups)))
            seen += len(groups)
        assert ("where your own slide has its holes" in template.alt) == (what == "slide")
        assert set(re.findall(r"from the (\w+ \w+)\)", " ".join(template.lines))) == {"front edge"}
    assert seen == len(riding_on(plan, boards, "slide")) + len(riding_on(plan, boards, "wood runner"))


def riding_on(plan, boards, what):
    """Of each slide or runner the drawer, the height of its lower edge, and how far it is set back."""
    if what == "slide":
        return [(slide["group"], slide["low"][2], slide["low"][1] - box(boards[slide["on"]])[0][1])
                for slide in plan["hardware"] if slide["what"] == "slide"]
    on = {joint["enters"]: joint["receives"] for joint in plan["joints"]}
    groups = {board["group"] for board in plan["boards"]} - {"case"}
    return [(next(group for group in groups if name.startswith(f"{group} ")), box(board)[0][2],
             box(board)[0][1] - box(boards[on[name]])[0][1])
            for name, board in boards.items() if board["role"] == "runner"]


def deeper(cabinet):
    """Pins of the tables go in as deep as they are thick: here 3 mm deeper, so that no size stands for another."""
    boards = tuple(
        replace(board, cuts=tuple(
            replace(cut, depth=cut.depth + 3 * MM) if cut.kind == "shelf pin" else cut for cut in board.cuts
        )) for board in cabinet.boards
    )
    return replace(cabinet, boards=boards)


@pytest.mark.parametrize("seed", [1, 2, 14])
def test_each_hole_for_a_shelf_pin_is_told_from_the_bottom_and_the_nearer_edge_with_its_drill(seed):
    cabinet = deeper(solve(project(seed)))
    plan = plan_dict(cabinet, check(cabinet))
    floor, seen = bottom_of(plan), 0
    boards = {board["name"]: board for board in plan["boards"]}
    for template, svg in zip(templates(cabinet), template_files(cabinet).values(), strict=True):
        if template.what != "holes for shelf pins":
            continue
        rings, edges, _ = drawn_in(svg)
        upright, level = lines_of(edges)
        words = words_in(svg)
        line = re.search(rf"Draw a line ({LENGTH}) from the upper face", template.alt)
        start, told = float(mm(line[1], unit(cabinet))) if line else 0, {}
        for x, y, _, _, text in words:
            if found := re.fullmatch(rf"({LENGTH}) (above the bottom|from the edge)", text):
                ring = middle(nearest(rings, (x, y - 3)))
                up = ring[1] - level + start
                away = up if found[2] == "above the bottom" else abs(ring[0] - upright)
                assert near(found[1], away, unit(cabinet)), text
                told.setdefault(ring, {})[found[2]] = found[1]
        assert len(told) == len(rings) and all(len(both) == 2 for both in told.values())
        named = set()
        for name in template.names:
            low, high = box(boards[name])
            edges_of = set(re.findall(rf"{name} \([^()]*?, from the (\w+) edge\)", " ".join(template.lines)))
            assert edges_of
            for edge in edges_of:
                places = {(round(cut["centre"][2] != 0), *world(boards[name], cut["centre"])[1:])
                          for cut in boards[name]["cuts"] if cut["kind"] == "shelf pin"}
                rows = [(y - low[1] if edge == "front" else high[1] - y, z - floor) for _, y, z in places]
                for both in told.values():
                    assert any(near(both["from the edge"], back, unit(cabinet))
                               and near(both["above the bottom"], up, unit(cabinet)) for back, up in rows), (name, edge)
            named |= edges_of
            sizes = {(cut["diameter"], cut["depth"]) for cut in boards[name]["cuts"] if cut["kind"] == "shelf pin"}
            drill = re.search(rf"Drill ({LENGTH}) across, ({LENGTH}) deep", " ".join(template.lines))
            assert any(near(drill[1], across, unit(cabinet)) and near(drill[2], deep, unit(cabinet))
                       for across, deep in sizes)
            seen += 1
        [flush] = [word[4] for word in words if word[2] and word[4].endswith(": flush with this line")]
        assert {f"{edge} edge" for edge in named} == set(flush.partition(": ")[0].split(" and "))
    assert seen


def numbered(text):
    """The numbers in "1", "1 and 3", "1 to 4": each told once."""
    if found := re.fullmatch(r"(\d+) to (\d+)", text):
        return list(range(int(found[1]), int(found[2]) + 1))
    return [int(number) for number in re.findall(r"\d+", text)]


BEGINS = rf"(?:{LENGTH}(?: below| left of it)?|0): "
TOLD = re.compile(rf"({BEGINS}.*?)(?= {BEGINS}|$)")
"""The words of one mark: its lines stand as near to one another as to those of the next."""


WORDS, NAME = 2.8, 3.4
"""The letters of a mark and of the name of a stick, in mm."""


@cache
def sticks(name, paper):
    """What is written on each stick, as it is drawn, by its name: (distance, what is there) from the top down."""
    columns, found = {}, {}
    pages = [block for block in story_stick_pages(solved(name), PAPERS[paper]) if isinstance(block, WholePage)]
    for number, page in enumerate(pages):
        sheet = re.match(r"Story stick(?: \d+)?", page.alt)[0]
        for x, y, turned, size, text in words_in(page.svg):
            if not turned and size in (WORDS, NAME) and not text.startswith(("True scale", "Distances: ")):
                columns.setdefault((sheet, round(x - (2 if size == NAME else 11), 1)), []).append(
                    (number, -y, size, text))
    for lines in columns.values():
        if not any(size == NAME for _, _, size, _ in lines):
            continue  # what stands under a name: from where its stick counts
        for _, _, size, text in sorted(lines):
            if size == NAME:
                here = text
            else:
                found[here] = f"{found[here]} {text}" if here in found else text
    return {stick: TOLD.findall(text) for stick, text in found.items()}


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("name", NAMES)
def test_what_is_written_on_the_sticks_is_where_the_plan_has_it(name, paper):
    cabinet, plan = solved(name), planned(name)
    boards = {board["name"]: board for board in plan["boards"]}
    floor = bottom_of(plan)
    left = min(box(board)[0][0] for board in plan["boards"] if board["role"] == "side")
    seen = 0
    for stick, lines in sticks(name, paper).items():
        if stick == "Spacer blocks":
            continue
        bays = numbered(stick.partition(" ")[2])
        assert bays or stick == "Across"
        assert len(lines) > 3
        for line in lines:
            at, _, names = line.partition(": ")
            found = re.fullmatch(rf"(0|{LENGTH})( below| left of it)?", at)
            for what in names.split("; "):
                for places in [across(what, boards, left)] if stick == "Across" else [
                        up(what, f"bay {bay}", boards, plan, floor) for bay in bays]:
                    assert any(near(found[1], abs(place), unit(cabinet)) and (place < -WITHIN) == bool(found[2])
                               for place in places), (stick, line, places)
                seen += 1
    assert seen > 10


def across(what, boards, left):
    """Where that is, from the left face of the left side, in mm."""
    name, _, side = what.rpartition(", ")
    if name.endswith(" front"):
        fronts = [box(board) for board in boards.values()
                  if board["role"] == "front" and board["name"].startswith(name.removesuffix("front"))]
        ends = [low[0] if side == "left end" else high[0] for low, high in fronts]
        assert side in ("left end", "right end")
        return [end - left for end in ends] if max(ends) - min(ends) < WITHIN else []
    upright = boards[name]["role"] in ("side", "divider")
    assert side in (("left face", "right face") if upright else ("left end", "right end"))
    low, high = box(boards[name])
    return [(low if side.startswith("left") else high)[0] - left]


def up(what, bay, boards, plan, floor):
    """Where that may be in the bay, above the bottom, in mm: a pull-out has two slides. A gap told beside it is the
    plan's."""
    name, _, side = re.sub(r" \(gap .*\)$", "", what).rpartition(", ")
    if found := re.fullmatch(r"(slide|wood runner|wood kicker) of (.+)", name):
        assert side == "lower edge"
        group = f"{bay} {found[2]}"
        lows = {round(item["low"][2] - floor, 6) for item in plan["hardware"]
                if item["what"] == "slide" and item["group"] == group}
        lows |= {round(box(board)[0][2] - floor, 6) for board in boards.values()
                 if board["role"] in ("runner", "kicker") and board["name"].startswith(f"{group} ")}
        return sorted(lows)
    board = boards.get(f"{bay} {name}") or boards[name]
    low, high = box(board)
    if gap := re.search(r"\(gap (.*) (below|above)\)$", what):
        gaps = [one["size"] for one in plan["gaps"] if one["along"] == "z" and board["name"] in one["between"]
                and (box(boards[other(one, board)])[0][2] < low[2]) == (gap[2] == "below")]
        assert len(gaps) == 1 and near(gap[1], gaps[0], "in" if "in" in gap[1] else "mm"), what
        assert (gap[2] == "below") == (side == "lower edge")
    on_edge = board["role"] in ("front", "toe board", "plinth")
    assert side in (("lower edge", "upper edge") if on_edge else ("lower face", "upper face"))
    return [(low if side.startswith("lower") else high)[2] - floor]


def other(gap, board):
    return gap["between"][gap["between"][0] == board["name"]]


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("name", NAMES)
def test_the_blocks_have_the_sizes_and_the_numbers_of_their_table(name, paper):
    """Whose own numbers `test_spacers.py` checks against the plan."""
    cabinet = solved(name)
    tables = [block for block in story_stick_pages(cabinet, PAPERS[paper]) if isinstance(block, Table)]
    wanted = {row[0]: row[1:3] for table in tables for row in table.rows}
    told = {}
    for line in sticks(name, paper).get("Spacer blocks", []):
        size, _, names = line.partition(": ")
        for one in names.split("; ") if size != "0" else ():
            block, many = re.fullmatch(r"(block \d+), (\d+) pieces?", one).groups()
            told[block] = size, many
    assert told == wanted
    heights = [spacer["height"] for spacer in planned(name)["spacers"]]
    assert all(any(near(size, height, unit(cabinet)) for size, _ in told.values()) for height in heights)


SEAM_WORDS = re.compile(
    r"(Cut)(?: here; glue|;) over ([A-Z]\d+)\.|(Glue) ([A-Z]\d+)(?: on here, up to the line| here)\.")


def read_seam(text):
    """What is done at a seam, and with which page."""
    return tuple(filter(None, SEAM_WORDS.fullmatch(text).groups()))


def place_of(tile):
    return ord(tile[0]) - ord("A"), int(tile[1:]) - 1


def tile(row, column):
    return f"{chr(ord('A') + row)}{column + 1}"


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("name", NAMES)
def test_each_page_says_what_is_cut_and_over_which_it_goes_and_tints_itself_on_the_map(name, paper):
    """A page is cut where it lies on the one before it, on its left or above it; the strip of that stays."""
    cabinet, seen = solved(name), 0
    for page in (*template_pages(cabinet, PAPERS[paper]), *story_stick_pages(cabinet, PAPERS[paper])):
        if not isinstance(page, WholePage):
            continue
        words = words_in(page.svg)
        [title] = [text for _, _, _, size, text in words if size == 3.8]
        tinted = [node for node in ET.fromstring(page.svg).iter(f"{SVG}rect") if node.get("fill") == TINT]
        if ", page " not in title:
            assert not tinted and not any(SEAM_WORDS.match(text) for *_, text in words)
            continue
        own = re.search(r", page ([A-Z]\d+)", title)[1]
        row, column = place_of(own)
        [rect] = tinted
        a, b, w, h = (float(rect.get(key)) for key in ("x", "y", "width", "height"))
        in_tint = [text for x, y, _, _, text in words if a < x < a + w and b < -y < b + h]
        assert in_tint == [own]
        drawn = {text for x, y, _, _, text in words if re.fullmatch(r"[A-Z]\d+", text)}
        wanted = set()
        for before in ((row, column - 1), (row - 1, column)):
            if tile(*before) in drawn and min(before) >= 0:
                wanted.add(("Cut", tile(*before)))
        for after in ((row, column + 1), (row + 1, column)):
            if tile(*after) in drawn:
                wanted.add(("Glue", tile(*after)))
        at_seams = [(x, y, turned, text) for x, y, turned, _, text in words
                    if SEAM_WORDS.match(text)]
        assert {read_seam(text) for *_, text in at_seams} == wanted and len(at_seams) == len(wanted)
        for x, y, turned, text in at_seams:
            ways = [(x if turned else y) - (spot[0] if turned else spot[1]) for spot in seams(page.svg, turned)]
            beyond = min(ways, key=abs)
            outward = -1 if text.startswith("Cut") == turned else 1
            assert 0 < beyond * outward < 6, text
        seen += 1
    assert seen > 1 or name == "wheel_wall_drawers"


def seams(svg, upright):
    """A place on each seam that runs up the paper, or across it; y upward."""
    for node in ET.fromstring(svg).iter(f"{SVG}path"):
        if float(node.get("stroke-width", 0)) == SEAM:
            x, y, u = (float(number) for number in re.findall(r"-?[\d.]+", node.get("d"))[:3])
            if (abs(x - u) < WITHIN) == upright:
                yield x, -y
