"""What pages show of the trial bench: the learner's own machine, and worked walks at somebody else's."""

import pytest

from shoplib.lessons.choice import BEFORE_ANY, save_unit
from shoplib.lessons.joint_page import stack_of_mine
from shoplib.lessons.large_type import save_large
from shoplib.lessons.practice_shown import practice_bench
from shoplib.lessons.trial_shown import WHOSE, trial_bench, trial_trusted, trial_worked
from shoplib.live.practice_stack import ANY
from shoplib.practice.trial import begin, hidden
from shoplib.practice.trial_result import practised, result
from shoplib.practice.trials import TRIALS

NAMES = [each.name for each in TRIALS]


@pytest.mark.parametrize("name", NAMES)
def test_the_practised_hand_ends_with_all_good(name, unit):
    hand, figure = practised(begin(name, WHOSE, unit)), trial_worked(name, unit)
    assert result(hand.session).good and tuple(figure.words[: len(hand.said)]) == hand.said
    assert figure.words == trial_worked(name, unit).words and figure.alt


@pytest.mark.parametrize("name", NAMES)
def test_who_trusts_the_scales_hears_what_a_practised_hand_needs(name, unit):
    assert trial_trusted(name, unit).words[-1] == (
        f"You cut no test joints; a practised hand cuts {practised(begin(name, WHOSE, unit)).tests} here."
    )


@pytest.mark.parametrize("name", NAMES)
def test_the_walks_play_at_another_machine_than_the_learners(name, unit):
    here, there = begin(name, WHOSE, unit), begin(name, BEFORE_ANY.learner, unit)
    assert [hidden(here, one) for one in here.trial.scales] != [hidden(there, one) for one in there.trial.scales]


def test_the_bench_follows_what_the_learner_chose(own_folder):
    assert trial_bench("rabbet").face.note
    save_unit("mm")
    save_large(True)
    bench = trial_bench("rabbet")
    assert bench.face.note == "" and bench.style.unit == "mm" and "shop-large" in bench.face._dom_classes
    assert bench.session == trial_bench("rabbet").session


def test_what_is_ticked_on_the_stack_panel_is_offered_at_the_practice_bench(own_folder):
    panel, bench = stack_of_mine(), practice_bench()
    assert bench.face.sets[:2] == [ANY, "8 in set, inch sizes"]
    panel.controls["in_chipper_0"].value = False
    mine = "what you ticked of the 8 in set, inch sizes"
    assert bench.face.sets[1] == mine
    bench.enter("stack", "0.706")
    bench.choose_set(mine)
    assert "chippers" in bench.face.arranged
    for name, control in panel.controls.items():
        if name.startswith("in_chipper"):
            control.value = False
    assert bench.face.chosen == mine and bench.face.fields[0]["fault"].startswith("The widest stack")
    for name, control in panel.controls.items():
        if name.startswith(("in_chipper", "in_shim")):
            control.value = True
    assert mine not in bench.face.sets and bench.face.chosen == ANY
    assert practice_bench().face.sets == bench.face.sets
