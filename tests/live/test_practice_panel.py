"""The practice bench without a browser: each control at both ends, any order of presses, nothing told too early, and
what is shown is what the practice room says.
"""

import json
import random

import pytest

from shoplib import practice
from shoplib.checks.wood_left import LEAST
from shoplib.draw.practice_case import case_as_cut
from shoplib.live.practice_panel import FIELDS, PracticePanel, practice_panel
from shoplib.live.practice_says import HEAD, WAYS, cautions
from shoplib.live.practice_stack import ANY, SAW, arranged, sets_for
from shoplib.measure import INCH_STYLE, read_length, write_brief, write_measured
from shoplib.model.dado_stack import nearest_stack
from shoplib.practice.bench import USUAL
from shoplib.practice.plan import LEVELS, SIDES
from shoplib.practice.session import NARROWEST, WIDEST
from shoplib.tables.dado_sets import DadoSet, dado_sets
from shoplib.tables.setups import setup

UNITS = ("in", "mm")
GOOD = {"in": {"stack": "0.706", "depth": "1/4", "bottom": "1 1/2", "shelf": "9"},
        "mm": {"stack": "17.8", "depth": "6", "bottom": "40", "shelf": "230"}}


def press(bench, **content):
    bench.face._handle_custom_msg(content, [])
    return bench.face.said["text"]


def set_up(unit="in", learner="Noor", **how):
    bench = practice_panel(unit, learner, **how)
    for name, text in GOOD[unit].items():
        press(bench, press="enter", name=name, text=text)
    return bench


def sent(bench):
    """What the browser has been told, without the drawings, which show shapes and no sizes of their own."""
    state = {key: value for key, value in bench.face.get_state().items() if key[0] != "_" and key != "layout"}
    state["picture"] = state["picture"]["alt"]
    return state


def said_of_result(bench):
    return [line for part in bench.face.result["sections"] for line in part["lines"]]


def test_the_cautions_of_the_stacked_set_stand_above_always():
    of_setup = [caution.claim.say for caution in setup("dado", "stacked dado set").cautions]
    bench = set_up()
    for _ in range(2):
        told = [line for part in bench.face.cautions["all"] for line in part["lines"]]
        assert sorted(told) == sorted(of_setup) and told
        assert all(line in bench.still_html().replace("&gt;", ">") for line in told)
        assert bench.face.cautions["first"] == [part["lines"][0] for part in bench.face.cautions["all"]]
        press(bench, press="cut")
    assert [part.heading for part in cautions()] == [part["heading"] for part in bench.face.cautions["all"]]


@pytest.mark.parametrize("unit", UNITS)
def test_nothing_that_a_learner_could_not_know_is_told_before_it_is_measured(unit):
    """Whatever is set, refused, laid or cut for a test: every bench answers alike until something is measured."""
    states = []
    for learner in range(8):
        bench = set_up(unit, f"learner {learner}")
        for name in FIELDS:
            for text in ("0.65 in", "16 mm", "0.6 in", "400 in", "0.01 in", "deep", GOOD[unit][name]):
                press(bench, press="enter", name=name, text=text)
                states.append((learner, json.dumps(sent(bench))))
        for content in ({"press": "set", "name": "8 in set, inch sizes"}, {"press": "other"},
                        {"press": "down", "down": True}, {"press": "lay", "way": "wrong face", "side": "left side"},
                        {"press": "test"}, {"press": "test"}):
            press(bench, **content)
            states.append((learner, json.dumps(sent(bench))))
        assert bench.face.log["rows"][-1][4:] == ["-", "-", "-", "not tried"] and bench.face.result == {}
    first = [state for learner, state in states if learner == 0]
    assert all([state for who, state in states if who == learner] == first for learner in range(8))


@pytest.mark.parametrize("unit", UNITS)
def test_what_is_read_is_shown_in_words_and_in_the_log(unit):
    bench = set_up(unit)
    press(bench, press="sheet")
    assert bench.face.sheet.startswith("The sheet, at spots a hand apart, reads")
    thickest = write_brief(bench.session.reading("sheet").thickest, bench.style, decimal=True)
    assert bench.face.sheet.endswith(f"The thickest is {thickest}.")
    press(bench, press="test")
    said = press(bench, press="measure")
    felt = press(bench, press="fit")
    means = [write_brief(bench.session.reading(size, 1).mean, bench.style, decimal=True) for size in practice.MEASURED]
    assert all(f"the mean is {mean}" in said for mean in means)
    row = bench.face.log["rows"][0]
    assert row[4:7] == means and row[7] in felt and len(row) == len(HEAD)
    assert bench.face.which == "Saw 1, sheet 1. Test cuts so far: 1."
    assert means[0].split()[0] in bench.face.picture["alt"]


@pytest.mark.parametrize("unit", UNITS)
def test_every_field_at_both_ends_and_past_them(unit):
    plan, least = practice.start("Noor", unit=unit).session.plan, "0.001 in"
    deepest = USUAL[unit] - LEAST
    ends = {"stack": (write_measured(NARROWEST, INCH_STYLE), write_measured(WIDEST, INCH_STYLE)),
            "depth": (least, write_measured(deepest, INCH_STYLE)),
            "bottom": ("0 in", write_measured(plan.height - read_length("1 in"), INCH_STYLE)),
            "shelf": ("0 in", write_measured(plan.height - read_length("1 in"), INCH_STYLE))}
    past = {"stack": ("0.12 in", "0.82 in"), "depth": ("0 in", "0.65 in"), "bottom": ("-1 in", "15.1 in"),
            "shelf": ("-1 in", "15.1 in")}
    for name, texts in ends.items():
        bench = set_up(unit)
        for text in texts:
            press(bench, press="enter", name=name, text=text)
            field = next(each for each in bench.face.fields if each["name"] == name)
            assert field["fault"] == "" and field["stands"].startswith("stands at "), (name, text)
            again = set_up(unit)
            press(again, press="enter", name=name, text=text)
            press(again, press="test")
            press(again, press="cut")
            assert again.face.result["sections"]
        stood = field["stands"]
        for text in (*past[name], "wide", "1/0 in", "7 kg", "<b>"):
            said = press(bench, press="enter", name=name, text=text)
            field = next(each for each in bench.face.fields if each["name"] == name)
            assert said == field["fault"] and said.endswith(".") and "`" not in said and field["stands"] == stood
            assert "First mend" in press(bench, press="test") and "First mend" in press(bench, press="cut")
            assert bench.session.tests == () and bench.session.sides is None
        press(bench, press="enter", name=name, text="")
        assert "First mend" not in press(bench, press="test") and len(bench.session.tests) == 1


@pytest.mark.parametrize("unit", UNITS)
@pytest.mark.parametrize("way", WAYS)
@pytest.mark.parametrize("side", SIDES)
def test_each_way_to_lay_a_side_is_cut_and_shown_as_the_practice_room_says(unit, way, side):
    bench = set_up(unit)
    press(bench, press="lay", way=way, side=side)
    press(bench, press="cut")
    done = practice.result(bench.session)
    assert bench.session == practice.cut_pair(set_up(unit).session, way, side).session
    model = [line for part in bench.face.model for line in part["lines"]]
    assert set(done.said) - {"Nothing is wrong with either side."} <= {*said_of_result(bench), *model}
    assert set(done.told) <= set(model)
    ours = {"Nothing is wrong with it.", "Both sides have that alike, so the case goes together: nothing needs doing."}
    assert set(said_of_result(bench)) - ours <= set(done.said)
    assert bench.face.result["good"] == done.dry_fit.clean
    fits = [(level, where, felt.said(bench.style)) for level, where, felt in done.fits]
    assert [tuple(row) for row in bench.face.result["fits"]["rows"]] == fits
    scenes = case_as_cut(bench.session, done)
    assert [each["alt"] for each in bench.face.result["pictures"]] == [scene.alt for scene in scenes]
    deepest = max((clash for clash in done.dry_fit.clashes), key=lambda clash: clash.amount, default=None)
    if deepest:
        assert any("clash" in scene.alt and all(name in scene.alt for name in deepest.boards) for scene in scenes)


def test_every_slip_can_be_chosen_and_one_can_be_left_to_chance():
    assert set(WAYS) == {"", practice.DRAWN, *practice.SLIP_NAMES}


def test_after_the_pair_is_cut_nothing_more_is_cut_or_set():
    bench = set_up()
    assert press(bench, press="cut").endswith("What came of it stands below.")
    session, result = bench.session, bench.face.result
    for content in ({"press": "enter", "name": "depth", "text": "0.3"}, {"press": "set", "name": ANY},
                    {"press": "test"}, {"press": "measure"}, {"press": "fit"}, {"press": "sheet"}, {"press": "cut"},
                    {"press": "other"},
                    {"press": "down", "down": True}, {"press": "lay", "way": "wrong face", "side": "left side"}):
        assert press(bench, **content).startswith("The pair is cut.")
    assert bench.session is session and bench.face.result == result


@pytest.mark.parametrize("unit", UNITS)
def test_another_sheet_at_the_same_saw_and_another_saw(unit):
    bench = set_up(unit)
    press(bench, press="test")
    press(bench, press="cut")
    saw, sheet = bench.session.bench.saw, bench.session.bench.sheet
    press(bench, press="another")
    assert bench.face.which == "Saw 1, sheet 2. Test cuts so far: 0."
    assert bench.session.bench.saw == saw and bench.session.bench.sheet != sheet
    assert all(field["stands"] for field in bench.face.fields) and bench.face.result == {}
    assert bench.face.log["rows"] == [] and bench.face.sheet == ""
    press(bench, press="cut")
    assert bench.session.sides is not None
    press(bench, press="saw")
    assert bench.face.which == "Saw 2, sheet 1. Test cuts so far: 0."
    assert bench.session.bench.saw != saw and bench.face.result == {}
    assert not any(field["stands"] or field["typed"] for field in bench.face.fields)


@pytest.mark.parametrize("unit", UNITS)
def test_a_set_offers_what_the_model_finds_nearest_and_the_next_best(unit):
    for name, owned in dado_sets().items():
        bench = set_up(unit)
        wanted = GOOD[unit]["stack"]
        press(bench, press="set", name=name)
        choice = nearest_stack(read_length(wanted, unit=unit), owned, SAW)
        assert bench.session.stack == choice.best.width
        assert write_brief(choice.best.width, bench.style, decimal=True) in bench.face.arranged
        assert write_brief(choice.next_best.width, bench.style, decimal=True) in bench.face.other
        press(bench, press="other")
        assert bench.session.stack == choice.next_best.width
        press(bench, press="other")
        assert bench.session.stack == choice.best.width
        press(bench, press="set", name=ANY)
        assert bench.session.stack == read_length(wanted, unit=unit) and bench.face.arranged == ""


def test_what_a_set_cannot_make_is_refused_with_the_amounts():
    bench = set_up()
    press(bench, press="set", name="8 in set, inch sizes")
    said = press(bench, press="enter", name="stack", text="7/8")
    assert said == ("The maker of this saw allows a stack of 13/16 in, and this cut is 7/8 in wide: cut it in two "
                    "passes with a narrower stack, or with a router.")
    assert bench.face.other == "" and press(bench, press="other") == "There is no other arrangement to put on."


def test_the_learners_own_set_stands_first():
    own = DadoSet("mine", "in", read_length("6 in"), read_length("1/8 in"), (read_length("1/8 in"),) * 3)
    assert list(sets_for("in", own))[:2] == [ANY, "mine"]
    bench = set_up(own=own)
    assert press(bench, press="set", name="mine").startswith("The widest stack that this set makes is 5/8 in")
    press(bench, press="enter", name="stack", text="5/8")
    assert bench.session.stack == read_length("5/8 in")
    assert arranged(read_length("5/8 in"), own, INCH_STYLE).said == (
        "Outer cutters 2 x 0.125 in; chippers 0.125 in, 0.125 in and 0.125 in: 0.625 in, just what is wanted."
    )


ODD = [{}, {"press": "dance"}, {"press": None}, {"press": ["cut"]}, {"press": "enter"},
       {"press": "enter", "name": "lid"}, {"press": "enter", "name": ["depth"], "text": "1"},
       {"press": "enter", "name": "depth", "text": None},
       {"press": "set", "name": {}}, {"press": "down", "down": "yes"},
       {"press": "lay", "way": "fly", "side": "left side"},
       {"press": "lay", "way": "", "side": "lid"}, {"press": "lay"}]


def test_malformed_presses_raise_nothing_and_cut_nothing():
    bench = set_up()
    before = bench.session
    for content in ODD:
        bench.face._handle_custom_msg(content, [])
        assert bench.session == before
    bench._press(bench.face, "cut", [])
    assert bench.session == before


def any_press(draw):
    text = draw.choice(["0.7", "0.705 in", "18 mm", "17.7", "1/4", "6", "9", "230", "1 1/2", "40", "0", "-2", "deep",
                        "", "9" * 300, "1/0", "\u00bd in", "0.6 in", "15 in", f"{draw.uniform(0, 20):.3f}"])
    plain = draw.choice(["sheet", "other", "test", "measure", "fit", "cut", "another", "saw"])
    return draw.choice([
        {"press": "enter", "name": draw.choice(list(FIELDS)), "text": text}, {"press": plain}, {"press": plain},
        {"press": "set", "name": draw.choice([ANY, *dado_sets()])}, {"press": "down", "down": draw.random() < 0.5},
        {"press": "lay", "way": draw.choice(list(WAYS)), "side": draw.choice(SIDES)}, draw.choice(ODD),
    ])


@pytest.mark.parametrize("unit", UNITS)
def test_any_order_of_presses_raises_nothing_and_shows_what_stands(unit, count):
    for seed in range(count(100, 1_000)):
        draw = random.Random(f"{unit} {seed}")
        bench = set_up(unit, f"learner {seed}") if seed % 2 else practice_panel(unit, f"learner {seed}")
        for _ in range(draw.randrange(4, 20)):
            bench.face._handle_custom_msg(any_press(draw), [])
            session, face = bench.session, bench.face
            assert "`" not in face.said["text"] and (face.said["text"] == "" or face.said["text"].endswith("."))
            assert len(face.log["rows"]) == len(session.tests)
            assert bool(face.result) == (session.sides is not None)
            stand = [session.stack, session.depth, *(session.fence(level) for level in LEVELS)]
            assert [bool(field["stands"]) for field in face.fields] == [each is not None for each in stand]
            assert json.dumps(face.get_state()["result"]) and face.picture["alt"]
            assert face.pressed == session.pressed


def test_bad_text_is_told_kindly_and_the_unit_of_the_bench_applies():
    bench = practice_panel("mm", "Noor")
    assert press(bench, press="enter", name="depth", text="6") == "The depth scale stands at 6 mm."
    assert press(bench, press="enter", name="depth", text="deep") == (
        "depth: \u201cdeep\u201d has no number; write a length in digits with its unit, such as \u201c23 5/8 in\u201d "
        "or \u201c601.5 mm\u201d."
    )
    assert press(bench, press="cut") == "First mend depth: what stands there cannot be set."
    with pytest.raises(ValueError, match='the unit is "in" or "mm"'):
        practice_panel("yards", "Noor")


def test_it_tells_its_model_in_numbers_and_stays_readable_without_a_kernel():
    bench = practice_panel("in", "Noor")
    knows, leaves = bench.face.model
    assert "0.003 in as a rule" in knows["lines"][1] and "wobble" in leaves["lines"][0]
    still = bench.still_html()
    assert "<script" not in still and bench.face.task in still and "data:image/svg" in still


def test_large_type_draws_larger_letters():
    plain, large = practice_panel("in", "Noor"), practice_panel("in", "Noor", large=True)
    assert "shop-large" in large.face._dom_classes and "shop-large" not in plain.face._dom_classes
    assert plain.face.picture["source"] != large.face.picture["source"]
    assert isinstance(large, PracticePanel)
