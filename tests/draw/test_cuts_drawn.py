"""A sheet with its cuts by number: each cut has one, each piece that is cut further its name, nothing on anything."""

from collections import Counter

import pytest

from shoplib.draw.cuts_drawn import cuts_drawn
from shoplib.draw.letters import LARGE, drawn_with
from shoplib.draw.pen import draw
from shoplib.draw.scene import EdgeText, Label, Tag
from shoplib.lessons.sheets_shown import case_sheets, steps
from shoplib.measure import INCH_STYLE, MM_STYLE
from tests.buying.laid import NAMES, laid
from tests.draw.test_pen import outside, overlaps


@pytest.mark.parametrize("name", NAMES)
def test_each_cut_has_its_number_and_each_piece_its_name(name):
    found = laid(name)
    for job in found.jobs:
        for number, sheet in enumerate(job.sheets):
            mine = [step for step in job.steps if step.sheet == number]
            scene = cuts_drawn(sheet, mine, found.cabinet.style)
            cuts = Counter(str(step.setting) for step in mine if step.kind != "trim" for _ in step.cuts)
            assert Counter(item.text for item in scene.items if isinstance(item, Tag)) == cuts
            first = f"{sheet.name}, "
            pieces = {piece.mark.removeprefix(first) for step in mine if step.kind != "trim" for piece in step.off
                      if piece.mark.startswith(first)}
            beside = {item.text for item in scene.items if isinstance(item, EdgeText)}
            within = {line.removeprefix("of ") for item in scene.items if isinstance(item, Label)
                      for line in item.texts[0].split("\n")}
            assert all(piece in scene.alt for piece in pieces)
            if pieces:  # one that is cut once more into named ones is told in the words alone
                assert pieces & (beside | within)


@pytest.mark.parametrize("size", [1.0, LARGE])
@pytest.mark.parametrize("unit", ["in", "mm"])
def test_on_the_page_no_words_lie_on_others_or_off_it(unit, size):
    job = case_sheets(unit)
    for number, sheet in enumerate(job.sheets):
        mine = [step for step in steps(job) if step.sheet == number]
        scene = cuts_drawn(sheet, mine, INCH_STYLE if unit == "in" else MM_STYLE, f"sheet {number + 1}")
        with drawn_with(size):
            svg = draw(scene, (520.0, 430.0))
        assert overlaps(svg) == [] and outside(svg) == []
