"""The two worked walks of the practice bench end as the page says, in both units, and play at nobody's own saw."""

from shoplib.lessons.choice import BEFORE_ANY, save_unit
from shoplib.lessons.large_type import save_large
from shoplib.lessons.practice_shown import WHOSE, practice_bench, practised_hand, trusting_the_scales
from shoplib.practice import result
from shoplib.practice.bench import Bench
from shoplib.practice.practised import practised, trusting


def test_the_practised_hand_ends_without_a_finding(unit):
    hand, figure = practised(Bench(WHOSE, "dado", unit)), practised_hand(unit)
    assert result(hand.session).findings == ()
    assert tuple(figure.words[: len(hand.said)]) == hand.said and "No gap and no clash" in figure.alt
    assert figure.words[-1] == "Nothing is wrong with either side."


def test_who_trusts_the_scales_has_a_joint_that_is_shallow_or_tight(unit):
    session, figure = trusting(Bench(WHOSE, "dado", unit)), trusting_the_scales(unit)
    assert {trouble.kind for trouble in result(session).troubles} & {"shallow", "narrow"}
    assert any("too shallow" in line or "does not enter" in line for line in figure.words)
    assert "is marked" in figure.alt and session.tests == () and session.pressed
    assert figure.words[-1].startswith("You made no test cut; a practised hand makes 2")


def test_the_walks_play_at_another_bench_than_the_learners():
    for unit in ("in", "mm"):
        assert Bench(WHOSE, "dado", unit).saw != Bench(BEFORE_ANY.learner, "dado", unit).saw


def test_the_bench_follows_what_the_learner_chose(own_folder):
    assert practice_bench().face.note and practice_bench().face.unit == "in"
    save_unit("mm")
    save_large(True)
    bench = practice_bench()
    assert bench.face.note == "" and bench.face.unit == "mm" and "shop-large" in bench.face._dom_classes
    assert bench.session == practice_bench().session
