"""Random projects, solved and judged from their plan.json alone; the shipped ones are judged with the faults.

Two dry-fits that share no code must agree: the project's own, on exact boxes, and the judge's, on
solids. A plan without a stop has no fault; a plan with a fault has a stop that is about wood.
"""

import json
import time
from collections import Counter
from typing import NamedTuple, get_args, get_type_hints

import pytest

from shoplib.checks import check
from shoplib.documents.plan_file import plan_text
from shoplib.model.cabinet import solve
from shoplib.model.project import Back, Base, Bay, Drawers, Fronts, JointChoice
from shoplib.tables.slides import slides
from tests.judge.judge import judge
from tests.random_projects import kinds_in, project_and_refusals

LEAST = 30
"""How often each kind must occur in 300 projects."""
REFUSED = 0.01
"""The largest share of all draws that may be refused for one key: more would leave its kind untried."""
SOUND = 0.4
"""The least share of projects without a stop."""
ABOUT_WOOD = {"overlap", "seating", "travel", "outside", "wood left", "fittings"}
TOLD_BY_BOTH = {"overlap", "seating", "travel", "outside", "fittings"}
"""Checks of the project that the judge makes as well; how much wood a cut leaves is not its matter."""


def _choices(record):
    return set(get_args(get_type_hints(record)["kind"]))


EVERY = {
    "base": _choices(Base),
    "back": _choices(Back),
    "corner": _choices(JointChoice) - {"drawer lock"},
    "box corner": _choices(JointChoice) - {"dado"},  # which is a rabbet at the end of a side
    "box back": {"as the front", "butt", "dado", "tongue"},
    "shelf": {"butt", "dado", "tongue", "pocket screws"},
    "bay": _choices(Bay),
    "slide": set(slides()),
    "front": _choices(Fronts),
    "heights": set(get_args(get_type_hints(Drawers)["heights"])),
    "shelves": {"fixed", "at", "set back", "shallow", "loose"},
    "drawers in a bay": {"up to 4", "5 to 8"},
    "rail": {"at", "under the top"},
}


class Judged(NamedTuple):
    """One random project: its number, its kinds, the checks that say stop, the judge's faults, draws refused."""

    seed: int
    boards: int
    kinds: dict
    stops: set
    faults: list
    refused: list


class Run(NamedTuple):
    projects: list
    seconds: float


@pytest.fixture(scope="module")
def run(count):
    """All the projects judged, and how long the judge alone took."""
    projects, seconds = [], 0.0
    for seed in range(count(150, 5_000)):
        drawn, refused = project_and_refusals(seed)
        cabinet = solve(drawn)
        findings = check(cabinet)
        plan = json.loads(plan_text(cabinet, findings))
        stops = {finding["check"] for finding in plan["findings"] if finding["level"] == "stop"}
        start = time.perf_counter()
        faults = judge(plan)
        seconds += time.perf_counter() - start
        projects.append(Judged(seed, len(plan["boards"]), kinds_in(drawn), stops, faults, refused))
    return Run(projects, seconds)


def test_a_plan_without_a_stop_has_no_fault(run):
    wrong = {p.seed: p.faults for p in run.projects if not p.stops and p.faults}
    assert not wrong, f"{len(wrong)} plans: {list(wrong.items())[:5]}"


def test_a_fault_is_a_stop_about_wood(run):
    """What the judge finds, the project's own dry-fit has found."""
    wrong = {p.seed: (p.faults, p.stops) for p in run.projects if p.faults and not p.stops & ABOUT_WOOD}
    assert not wrong, f"{len(wrong)} plans: {list(wrong.items())[:5]}"


def test_a_stop_about_wood_is_a_fault(run):
    """What the project's own dry-fit stops for, the judge finds."""
    wrong = {p.seed: p.stops for p in run.projects if p.stops & TOLD_BY_BOTH and not p.faults}
    assert not wrong, f"{len(wrong)} plans: {list(wrong.items())[:5]}"


def test_each_kind_occurs_and_enough_are_sound(run, capsys):
    seen = Counter((what, kind) for p in run.projects for what, kinds in p.kinds.items() for kind in kinds)
    sound = sum(not p.stops for p in run.projects)
    stops = Counter(stop for p in run.projects for stop in p.stops)
    faulty = sum(bool(p.faults) for p in run.projects)
    with capsys.disabled():
        print(
            f"\n{len(run.projects)} random projects, {sum(p.boards for p in run.projects)} boards, ", end=""
        )
        print(f"judged in {run.seconds:.1f} s: {sound} without a stop, {faulty} with a fault the judge tells")
        print("  stops by check:", ", ".join(f"{check} {n}" for check, n in stops.most_common()) or "none")
        for what in EVERY:
            print(f"  {what}:", ", ".join(f"{kind} {seen[what, kind]}" for kind in sorted(EVERY[what])))
    least = LEAST * len(run.projects) // 300
    rare = {(what, kind) for what, kinds in EVERY.items() for kind in kinds if seen[what, kind] < least}
    assert not rare, f"fewer than {least} times: {sorted(rare)}"
    assert sound >= SOUND * len(run.projects)


def test_few_draws_are_refused_and_none_often_for_one_key(run, capsys):
    """A project that is drawn anew because it was refused leaves what it was refused for untried."""
    keys = Counter(key for p in run.projects for key in p.refused)
    draws = len(run.projects) + keys.total()
    with capsys.disabled():
        told = ", ".join(f"{key} {n}" for key, n in keys.most_common()) or "none"
        print(f"\n{draws} draws, {keys.total()} refused: {told}")
    assert {key: n for key, n in keys.items() if n > REFUSED * draws} == {}


@pytest.mark.parametrize("seed", [2216, 4088])
def test_slides_higher_than_their_boxes_are_told_by_both(seed):
    """Rare among the random projects: boxes so low that their slides stand in the shelf or strip beside them."""
    cabinet = solve(project_and_refusals(seed, others=False)[0])
    findings = check(cabinet)
    assert "fittings" in {finding.check for finding in findings if finding.level == "stop"}
    assert any(fault.startswith("hardware: slide") for fault in judge(json.loads(plan_text(cabinet, findings))))
