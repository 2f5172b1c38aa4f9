"""Where readings of the case as built are written down on paper: at one place each, and all others name it."""

import re

import pytest

from shoplib.documents.paper import PAPERS
from shoplib.documents.to_measure import to_measure_text
from tests.printed.lengths import HIDDEN, UNIT, mm, unit_of
from tests.printed.sets import PROJECTS, plan_set_of, solved

SETS = pytest.mark.parametrize(("project", "paper"), [(one, paper) for one in PROJECTS for paper in PAPERS])


def text_of(project, paper, *titles):
    tagged = plan_set_of(project, paper)
    return " ".join(part.text for title in titles or tagged.begins for part in tagged.under(title))


@SETS
def test_each_reading_is_written_once_for_a_stage_and_in_the_build_order_alone(project, paper):
    """Names and planned sizes are those of to_measure.toml; a front that waits is read for again, with its box in."""
    cabinet, unit = solved(project).cabinet, unit_of(project)
    names = re.findall(r'^"(.+?)" = .*# planned (.+)$', to_measure_text(cabinet), re.MULTILINE)
    everywhere, steps = text_of(project, paper), text_of(project, paper, "Build order")
    assert {name for name, _ in names} == {one.of for one in cabinet.waiting}
    for name, planned in names:
        told = re.findall(rf"{re.escape(name)} \(planned (.+?)\)(?= |$)", steps)
        assert len(told) == sum(one.of == name for one in cabinet.waiting) > 0
        assert everywhere.count(f"{name} (planned ") == len(told)
        assert all(abs(mm(_written(size), unit) - mm(_written(planned), unit)) <= HIDDEN[unit] * UNIT[unit]
                   for size in told)


def _written(size):
    """Without the unit, of the size and of its rest."""
    return re.sub(r" (in|mm)", "", size)


@SETS
def test_cut_list_names_the_step_that_measures_for_a_stage(project, paper):
    tagged, cabinet = plan_set_of(project, paper), solved(project).cabinet
    titles = {part.text for part in tagged.under("Build order") if part.tag == "H2"}
    stage, named = 0, {}
    for part in tagged.under("Cut list"):
        stage = int(part.text.split()[1].strip(":")) if re.match(r"Stage \d: ", part.text) else stage
        if told := re.search(r"What is read stands in step (\d+) of the build order\.", part.text):
            named[stage] = told[1]
    assert sorted(named) == sorted({one.stage for one in cabinet.waiting})
    begins = {2: "Measure the case as built", 3: "Measure again"}
    for stage, step in named.items():
        assert any(title.startswith(f"Step {step}. {begins[stage]}") for title in titles), (stage, step)
