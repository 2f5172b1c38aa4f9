"""The trial bench without a browser: every control, any order of presses, nothing told too early, cautions first."""

import json
import random
import re

import pytest

from shoplib.draw.scene import Leader
from shoplib.draw.trial_pair import as_cut_views
from shoplib.live.practice_says import cautions
from shoplib.live.trial_panel import TrialPanel, trial_panel
from shoplib.live.trial_says import ways
from shoplib.practice.trial import DRAWN, cut_pair
from shoplib.practice.trial_result import result
from shoplib.practice.trials import TRIALS, trial
from shoplib.tables.setups import cautions as all_cautions
from shoplib.tables.setups import setup
from tests.practice.trials import UNITS, typed

NAMES = [each.name for each in TRIALS]


def press(bench, **content):
    bench.face._handle_custom_msg(content, [])
    return " ".join(bench.face.said["lines"])


def set_up(name, unit="in", learner="Noor", **how):
    """Every scale at what is usual, which any learner can know."""
    bench = trial_panel(name, unit, learner, **how)
    for scale in bench.session.trial.scales:
        text = typed(scale, scale.aim(bench.session.usual, bench.session.plan), bench.style)
        press(bench, press="enter", name=scale.name, text=text)
    assert not any(field["fault"] for field in bench.face.fields)
    return bench


def sent(bench):
    """What the browser has been told."""
    return {key: value for key, value in bench.face.get_state().items() if key[0] != "_" and key != "layout"}


@pytest.mark.parametrize("name", NAMES)
def test_the_cautions_of_the_set_up_stand_above_always_its_first_ones_in_sight(name):
    one = trial(name)
    belongs = {each.of for each in setup(name, one.way).cautions} | set(one.also)
    wanted = [caution.claim.say for caution in all_cautions().of(belongs)]
    bench = set_up(name)
    for _ in range(2):
        told = bench.face.cautions
        assert sorted(line for part in told["all"] for line in part["lines"]) == sorted(wanted) and wanted
        assert told["first"] == [part["lines"][0] for part in told["all"]] and told["heading"].startswith("Read first")
        still = bench.still_html().replace("&gt;", ">").replace("&#x27;", "'")
        assert all(line in still for line in wanted)
        press(bench, press="cut")
    assert [part["heading"] for part in told["all"]] == [part.heading for part in cautions(name, one.way, one.also)]


def test_squaring_an_end_brings_the_cautions_of_the_saw():
    for name in ("butt", "pocket screws"):
        assert "Table saw" in [part["heading"] for part in trial_panel(name).face.cautions["all"]]


@pytest.mark.parametrize("unit", UNITS)
@pytest.mark.parametrize("name", NAMES)
def test_nothing_that_a_learner_could_not_know_is_told_before_it_is_measured(name, unit):
    """Whatever is set, refused, chosen or cut for a test: every bench answers alike until something is measured."""
    states = []
    for learner in range(4):
        bench = set_up(name, unit, f"learner {learner}")
        for scale in bench.session.trial.scales:
            for text in ("400 in", "deep", "0 in", "-1", "9000"):
                press(bench, press="enter", name=scale.name, text=text)
                states.append((learner, json.dumps(sent(bench))))
            text = typed(scale, scale.aim(bench.session.usual, bench.session.plan), bench.style)
            press(bench, press="enter", name=scale.name, text=text)
        for content in ({"press": "test"}, {"press": "lay", "way": DRAWN}, {"press": "test"}):
            press(bench, **content)
            states.append((learner, json.dumps(sent(bench))))
        assert len(bench.session.tests) == 2 and bench.face.result == {} and bench.face.boards == ""
        assert bench.face.log["rows"][-1][-1] == "not tried"
    first = [state for learner, state in states if learner == 0]
    assert all([state for who, state in states if who == learner] == first for learner in range(4))


@pytest.mark.parametrize("unit", UNITS)
@pytest.mark.parametrize("name", NAMES)
def test_what_is_read_and_felt_is_shown_in_words_and_in_the_log(name, unit):
    bench = set_up(name, unit)
    assert press(bench, press="boards") == bench.face.boards != ""
    press(bench, press="test")
    said = press(bench, press="measure")
    felt = press(bench, press="fit")
    row = bench.face.log["rows"][0]
    assert len(row) == len(bench.face.log["head"]) == len(bench.session.trial.scales) + 2
    assert len(set(bench.face.log["head"])) == len(row)
    for scale, cell in zip(bench.session.trial.scales, row[1:], strict=False):
        assert cell.endswith(bench.session.written(scale, bench.session.reading(scale.name, 1).mean)) and said
    assert row[-1] == "; ".join(bench.session.felt_of(1)) and felt
    assert bench.face.which == "Machine 1, boards 1. Test joints so far: 1."


@pytest.mark.parametrize("name", NAMES)
def test_each_way_to_cut_the_pair_is_cut_and_shown_as_the_practice_room_says(name):
    assert list(ways(trial(name))) == ["", *(slip.name for slip in trial(name).slips), DRAWN]
    for way in ways(trial(name)):
        bench = set_up(name)
        press(bench, press="lay", way=way)
        assert press(bench, press="cut").endswith("What came of it stands below.")
        again = cut_pair(set_up(name).session, way).session
        assert bench.session.pair.pair.boards == again.pair.pair.boards and bench.session.slip == again.slip
        done, shown = result(bench.session), bench.face.result
        lines = [line for part in shown["sections"] for line in part["lines"]]
        assert shown["good"] == done.good and {one.said for one in done.came} <= set(lines)
        assert done.slip == "" or done.slip in lines
        assert list(done.practised.said) == shown["sections"][-1]["lines"] and shown["sections"][-1]["steps"]
        assert len(shown["pictures"]) == 2 and all(each["alt"] for each in shown["pictures"])
        before = bench.session
        for content in ({"press": "enter", "name": bench.session.trial.scales[0].name, "text": "1"}, {"press": "test"},
                        {"press": "measure"}, {"press": "fit"}, {"press": "boards"}, {"press": "cut"},
                        {"press": "lay", "way": ""}):
            assert press(bench, **content).startswith("The pair is cut.") and bench.session is before


@pytest.mark.parametrize("unit", UNITS)
@pytest.mark.parametrize("name", NAMES)
def test_what_was_hidden_is_told_as_finely_as_a_caliper_reads(name, unit):
    for learner in range(5):
        bench = set_up(name, unit, f"learner {learner}")
        press(bench, press="cut")
        hidden = next(part for part in bench.face.result["sections"] if part["heading"].startswith("What was hidden"))
        for line in hidden["lines"]:
            digits = re.search(r"\d+\.?(\d*) (?:in|mm|degrees) ", line)
            if digits is None:
                assert line.endswith("as it is set, as near as can be read.")
                continue
            assert len(digits[1]) <= (3 if " in " in line else 2) and not line.split(": ")[1].startswith("0 ")


def test_a_slip_leaves_no_name_on_what_is_not_there():
    """A rabbet in the outer face: where shoulder, cheek and tongue were meant there is whole wood, or nothing."""
    def named(slip):
        session = cut_pair(set_up("rabbet").session, slip).session
        return [item.text for item in as_cut_views(session)[0].items if isinstance(item, Leader)]

    assert named("") == ["shoulder", "cheek", "tongue", "end of the bottom"]
    assert named("wrong face") == ["end of the bottom"]


def test_several_stops_do_not_stand_as_one():
    said = press(set_up("cross lap"), press="enter", name="width", text="2.5")
    assert said.startswith("Distance of the stops stands")


def test_other_boards_at_the_same_machine_and_another_machine():
    bench = set_up("groove")
    press(bench, press="cut")
    stock = bench.session.stock
    assert press(bench, press="another").startswith("New boards lie ready")
    assert bench.face.which == "Machine 1, boards 2. Test joints so far: 0." and bench.face.result == {}
    assert all(field["stands"] for field in bench.face.fields) and bench.session.stock != stock
    press(bench, press="machine")
    assert bench.face.which == "Machine 2, boards 1. Test joints so far: 0."
    assert not any(field["stands"] or field["typed"] for field in bench.face.fields)


def test_what_cannot_be_set_stays_in_its_field_until_it_is_mended():
    bench = set_up("butt")
    for name, text in (("square", "square"), ("collar", "3 in")):
        said = press(bench, press="enter", name=name, text=text)
        field = next(each for each in bench.face.fields if each["name"] == name)
        assert field["fault"] == said and field["typed"] == text and "`" not in said
    assert press(bench, press="test") == (
        "First mend mitre gauge, for the end and collar on the bit: pilot hole: what stands there cannot be set."
    )
    press(bench, press="enter", name="square", text="90")
    press(bench, press="enter", name="collar", text="")
    assert press(bench, press="test").startswith("Test joint 1")
    assert [each["unit"] for each in bench.face.fields] == ["degrees", "in"]


ODD = [{}, {"press": "dance"}, {"press": None}, {"press": ["cut"]}, {"press": "enter"},
       {"press": "enter", "name": "lid"}, {"press": "enter", "name": ["depth"], "text": "1"},
       {"press": "enter", "name": "depth", "text": None}, {"press": "lay", "way": "fly"}, {"press": "lay"},
       {"press": "lay", "way": ["wrong face"]}, "cut", None]


@pytest.mark.parametrize("name", NAMES)
def test_any_order_of_presses_raises_nothing_and_shows_what_stands(name, count):
    scales = [scale.name for scale in trial(name).scales]
    texts = ["0.7", "18 mm", "1/4", "6", "45", "90", "44.9", "0", "-2", "deep", "", "9" * 300, "\u00bd in", "15 in"]
    for seed in range(count(6, 100)):
        draw = random.Random(f"{name} {seed}")
        bench = set_up(name, draw.choice(UNITS), f"learner {seed}")
        for _ in range(draw.randrange(4, 14)):
            content = draw.choice([
                {"press": "enter", "name": draw.choice(scales), "text": draw.choice(texts)},
                {"press": draw.choice(["boards", "test", "measure", "fit", "cut", "another", "machine"])},
                {"press": "lay", "way": draw.choice(list(ways(trial(name))))}, draw.choice(ODD),
            ])
            bench.face._handle_custom_msg(content, [])
            session, face = bench.session, bench.face
            assert all("`" not in line and line.endswith(".") for line in face.said["lines"])
            assert len(face.log["rows"]) == len(session.tests) and bool(face.result) == (session.pair is not None)
            assert [bool(field["stands"]) for field in face.fields] == [at is not None for at in session.at]
            assert json.dumps(face.get_state()["result"]) and face.picture["alt"]


def test_a_joint_or_a_unit_that_is_none_is_refused():
    with pytest.raises(ValueError, match="no practice for 'biscuit'"):
        trial_panel("biscuit")
    with pytest.raises(ValueError, match='the unit is "in" or "mm"'):
        trial_panel("rabbet", "yards")


def test_it_stays_readable_without_a_kernel_and_in_large_type():
    plain, large = trial_panel("rabbet", "in", "Noor"), trial_panel("rabbet", "in", "Noor", large=True)
    still = plain.still_html()
    assert "<script" not in still and all(line in still for line in plain.face.task) and "data:image/svg" in still
    assert "shop-large" in large.face._dom_classes and large.face.picture["source"] != plain.face.picture["source"]
    assert isinstance(large, TrialPanel)
