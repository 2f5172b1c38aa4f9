"""The trial bench of every joint but the dado: exact where nothing is off, by hand where something is, and fair."""

import re
from dataclasses import replace
from math import sqrt

import pytest

from shoplib.checks.pair_fit import fit_pair
from shoplib.joints import JOINTS
from shoplib.joints.splined_mitre import leg
from shoplib.measure import INCH, MM, read_length
from shoplib.practice.bench import Bench
from shoplib.practice.caliper import STEP
from shoplib.practice.spreads import THOU
from shoplib.practice.trial import (
    DRAWN,
    another,
    begin,
    cut_pair,
    hidden,
    limits,
    measure,
    measure_boards,
    planned,
    set_scale,
    task,
    test_cut,
    try_fit,
)
from shoplib.practice.trial_pegs import leaning
from shoplib.practice.trial_result import NO_HARM, came_of, practised, result, trusting
from shoplib.practice.trial_spreads import DEGREE, LEFT_OUT, PERFECT, SPREADS, told
from shoplib.practice.trial_stock import trial_plan, trial_stock
from shoplib.practice.trials import TRIALS, trial
from shoplib.tables.setups import setup
from tests.practice.test_fair import N, faults_of_bell
from tests.practice.trials import UNITS, aimed, typed

NAMES = [each.name for each in TRIALS]
SLIPS = [(each.name, slip.name) for each in TRIALS for slip in each.slips]


def look(session, name):
    """What a look of the pair reads."""
    return next(each for each in session.trial.looks if each.name == name).amount(session.pair)


def pair(name, unit="in", **more):
    return cut_pair(aimed(name, unit, PERFECT, **more)).session


def test_every_joint_but_the_dado_is_practised_here_in_the_order_of_the_bench():
    assert [kind.name for kind in JOINTS if kind.name != "dado"] == NAMES
    with pytest.raises(ValueError, match="no practice for 'dado'"):
        trial("dado")


@pytest.mark.parametrize("name", NAMES)
def test_each_practice_names_a_set_up_and_has_slips_and_scales_of_its_own_name(name):
    one = trial(name)
    assert setup(name, one.way).cautions
    assert len(one.slips) >= (1 if name == "finger" else 2)
    shorts = [scale.label.partition(":")[0].partition(",")[0] for scale in one.scales]
    assert len(set(shorts)) == len(shorts) >= 2


@pytest.mark.parametrize("unit", UNITS)
@pytest.mark.parametrize("name", NAMES)
def test_where_nothing_is_off_the_pair_is_the_planned_one_and_its_dry_fit_exact(name, unit):
    session = pair(name, unit)
    assert session.pair.pair.boards == planned(session).boards
    assert fit_pair(session.pair.pair) == () and session.pair.tight == ()
    assert all(one.good for one in came_of(session)) and result(session).good
    for each in session.trial.looks:
        assert each.amount(session.pair) == (session.plan["fit"] if each.sort == "fit" else 0)


E_ = 30 * THOU
BY_HAND = [  # joint, scale, how much it is set too large, look, what that makes of it
    ("rabbet", "fence", E_, "corner", E_),  # the shoulder stands open by what the rabbet is too wide
    ("rabbet", "fence", -E_, "corner", -E_),
    ("rabbet", "depth", -E_, "floor", -E_),  # the bottom stands off by what is missing
    ("rabbet", "depth", E_, "floor", E_),
    ("groove", "stack", -E_, "fit", -E_), ("groove", "stack", E_, "fit", E_),
    ("groove", "fence", E_, "height", E_), ("groove", "fence", -E_, "height", -E_),
    ("groove", "depth", -100 * THOU, "floor", -37_5 * INCH // 10_000),  # 1/16 in of room, and 0.0375 more is missing
    ("stopped dado", "stop", E_, "front", -E_), ("stopped dado", "stop", -E_, "front", E_),
    ("tongue", "tongue", E_, "fit", -E_), ("tongue", "stack", E_, "fit", E_),
    ("tongue", "depth", -E_, "shoulder", -(E_ - INCH // 64)),  # the tongue is 1/64 in short
    ("drawer lock", "fence", -E_, "fit", E_), ("drawer lock", "lip", -E_, "fit", -E_),  # a thin lip, a thick tongue
    ("drawer lock", "lip", E_, "lip", E_),
    ("finger", "stack", E_, "fit", E_), ("finger", "pin", E_, "fit", -E_),  # play = socket less finger
    ("finger", "depth", E_, "ends", E_),
    ("half lap", "depth", E_, "flush", 2 * E_), ("half lap", "depth", -E_, "flush", -2 * E_),  # both boards: double
    ("half lap", "stop", E_, "end of the rail", E_), ("half lap", "stop", -E_, "end of the stile", -E_),
    ("cross lap", "width", E_, "across", E_), ("cross lap", "width", -E_, "up", -E_),
    ("cross lap", "depth", E_, "flush", 2 * E_),
    ("dowel", "bottom", E_, "flush", -E_), ("dowel", "side", E_, "flush", E_),
    ("dowel", "into side", E_, "wood behind", E_),
    ("spline", "stack", E_, "left", E_), ("spline", "height", E_, "flush", 0),  # both alike, and nothing shows
    ("spline", "depth", -E_, "closed", 2 * (E_ - INCH // 64)),  # both grooves: what is missing counts twice
    ("bridle", "wall", E_, "fit", -2 * E_), ("bridle", "cheek", E_, "fit", 2 * E_),  # both faces: double
    ("mortise and tenon", "cheek", E_, "fit", 2 * E_),
    ("dovetail", "line", E_, "fit", -2 * E_), ("dovetail", "gauge", E_, "ends", E_),
    ("butt", "collar", -E_, "pilot", -E_), ("pocket screws", "collar", -E_, "web", -E_),
]


@pytest.mark.parametrize(("name", "scale", "more", "at", "makes"), BY_HAND)
def test_a_known_error_makes_the_gap_that_it_must(name, scale, more, at, makes):
    session = pair(name, **{scale: more})
    fits = {each.name for each in session.trial.looks if each.sort == "fit"}
    assert look(session, at) == makes + (session.plan["fit"] if at in fits else 0)


@pytest.mark.parametrize("unit", UNITS)
def test_a_pilot_hole_as_deep_as_the_screw_reaches_is_too_deep(unit):
    """Thread 2/3 of the screw (Noyes pp. 125-126), hole 2/3 of the thread (US Army course EN5155 p. 1-37), to a step.

    The look says how much deeper it is than that.
    """
    meant = pair("butt", unit)
    step, screw = meant.style.step, meant.plan["screw"]
    deep = meant.at[1]
    assert abs(deep - 4 * screw / 9) <= step / 2 and all(one.good for one in came_of(meant))
    too_deep = screw - meant.stock.receives.thickness
    bored = pair("butt", unit, collar=too_deep - deep)
    assert look(bored, "pilot") == too_deep - deep > 0
    assert [one.good for one in came_of(bored)].count(False) == 1


def test_a_mortise_too_far_in_sets_the_rail_back_by_that_less_half_of_the_play():
    session = pair("mortise and tenon", place=E_)
    assert look(session, "flush") == E_ - session.plan["fit"] // 2


def test_an_angle_that_is_off_opens_the_joint_by_its_tangent_and_a_mitre_by_twice_that():
    """tan(0.5 degrees) = 0.0087269 (table value, from memory)."""
    butt = pair("butt", square=DEGREE // 2)
    assert look(butt, "square") == pytest.approx(0.0087269 * butt.pair.pair.stock.width, abs=INCH // 10_000)
    pocket = pair("pocket screws", square=DEGREE // 2)
    assert look(pocket, "square") == pytest.approx(0.0087269 * pocket.stock.receives_length, abs=INCH // 10_000)
    mitre = pair("splined mitre", tilt=DEGREE // 2)
    thick = mitre.stock.enters.thickness
    for more, sign in ((DEGREE // 2, 1), (-DEGREE // 2, -1)):
        found = look(pair("splined mitre", tilt=more), "mitre")
        along = leaning(thick, 45 * DEGREE + abs(more)) - leaning(thick, 45 * DEGREE - abs(more))
        assert found == pytest.approx(sign * leg(along), rel=0.02)
        # Seen along the mitre: its length, thick * sqrt(2), times the sine of twice the error.
        assert found == pytest.approx(sign * thick * sqrt(2) * 0.0174524, rel=0.02)


@pytest.mark.parametrize("more", [E_, -E_])
def test_a_leaning_blade_that_stands_higher_cuts_deeper_by_the_root_of_two_times_that(more):
    """A right angled triangle with two sides alike: its long side is the root of 2 times a short one."""
    assert look(pair("splined mitre", height=more), "slot") == pytest.approx(sqrt(2) * more, abs=2)


@pytest.mark.parametrize(("unit", "height", "slot", "fence"), [
    ("in", "0.3875 in", "19/64 in", "0.395 in"), ("mm", "9.63 mm", "7.6 mm", "10.49 mm"),
])
def test_the_height_of_the_leaning_blade_is_told_and_not_the_depth_of_the_slot(unit, height, slot, fence):
    """Worked by hand, boards 3/4 in and 19 mm: heel 1/8 in, kerf 0.126 in, slot 19/64 in; 3, 3.02 and 7.6 mm.

    (0.125 + 0.126 + 0.296875) / 1.41421 = 0.3874 in, and 0.75 - 1.41421 x 0.251 = 0.3950 in to the fence, both told
    in half thousandths; (3 + 3.02 + 7.6) / 1.41421 = 9.631 mm, and 19 - 1.41421 x 6.02 = 10.486 mm.
    """
    line = task(begin("splined mitre", "Noor", unit))[1]
    assert f": {height} from the table to the tip, which makes a slot {slot} deep" in line
    assert f"the fence stands {fence} from the blade" in line


def test_the_mortise_of_the_practice_has_the_cautions_of_what_it_is_made_with():
    one = trial("mortise and tenon")
    assert set(one.also) == {"drill", "chisel"}


def test_a_jig_that_is_off_strays_by_its_step_with_each_finger():
    """With the stack 0.004 in and the pin 0.006 in off each step is 0.010 in too long: so is the place of each socket
    more than that of the one before it."""
    session = pair("finger", stack=4 * THOU, pin=6 * THOU)
    meant = planned(session).by_name["side"].cut_boxes
    came = session.pair.pair.by_name["side"].cut_boxes
    strays = sorted((a.low[1] - b.low[1]) for a, b in zip(came, meant, strict=True))
    assert strays == [number * 10 * THOU for number in range(len(strays))]


def test_a_mate_stepped_from_the_other_edge_adds_the_errors_up():
    """Five steps of 0.004 in too much: 0.020 in, and about half of what is too much in a socket besides."""
    one = cut_pair(aimed("finger", off=PERFECT, stack=2 * THOU, pin=2 * THOU)).session
    turned = cut_pair(aimed("finger", off=PERFECT, stack=2 * THOU, pin=2 * THOU), "wrong edge first").session
    assert len(planned(one).by_name["bottom"].cuts) == 5 and abs(look(one, "edges")) < THOU
    assert 20 * THOU <= abs(look(turned, "edges")) <= 22 * THOU


def test_a_wrong_reference_face_counts_an_error_twice():
    for name, slip, scale in (("spline", "wrong face", "height"),
                              ("mortise and tenon", "wrong reference face", "place")):
        session = cut_pair(aimed(name, off=PERFECT, **{scale: 10 * THOU}), slip).session
        right = cut_pair(aimed(name, off=PERFECT, **{scale: 10 * THOU})).session
        assert abs(look(session, "flush")) >= abs(look(right, "flush")) and abs(look(session, "flush")) > 8 * THOU
    session = cut_pair(aimed("dowel", off=PERFECT, bottom=10 * THOU, side=10 * THOU)).session
    turned = cut_pair(aimed("dowel", off=PERFECT, bottom=10 * THOU, side=10 * THOU), "wrong reference face").session
    assert look(session, "flush") == 0 and abs(look(turned, "flush")) == pytest.approx(20 * THOU, abs=2)


@pytest.mark.parametrize("unit", UNITS)
@pytest.mark.parametrize(("name", "slip"), SLIPS)
def test_every_slip_shows_and_is_told_with_what_can_be_saved(name, slip, unit):
    session = aimed(name, unit, PERFECT)
    before, after = cut_pair(session).session, cut_pair(session, slip).session
    assert after.slip == slip
    harmless = (name, slip) in COUNTS_TWICE  # nothing is off here to count twice
    assert harmless or after.pair.pair.boards != before.pair.pair.boards
    done = result(after)
    assert done.good == done.harmless == harmless and done.came
    how = next(each for each in session.trial.slips if each.name == slip)
    assert done.slip == f"{how.how} {NO_HARM if harmless else how.saved}" and done.slip.endswith(".")


TWICE = [  # a slip that counts an error twice, errors that it makes a fault of, and the look at which that is seen
    ("finger", "wrong edge first", {"stack": 3 * THOU, "pin": 3 * THOU}, "edges"),
    ("dowel", "wrong reference face", {"bottom": 10 * THOU, "side": 10 * THOU}, "flush"),
    ("spline", "wrong face", {"height": 10 * THOU}, "flush"),
    ("mortise and tenon", "wrong reference face", {"place": 10 * THOU}, "flush"),
]
COUNTS_TWICE = [(name, slip) for name, slip, _, _ in TWICE]


@pytest.mark.parametrize(("name", "slip", "more", "seen"), TWICE)
def test_a_slip_that_counts_twice_wants_mending_only_where_something_is_off(name, slip, more, seen):
    saved = next(each for each in trial(name).slips if each.name == slip).saved
    done = result(cut_pair(aimed(name, off=PERFECT, **more), slip).session)
    assert not done.good and not done.harmless and done.slip.endswith(saved)
    assert not next(one for one in done.came if one.name == seen).good
    little = {scale: size // 10 for scale, size in more.items()}
    done = result(cut_pair(aimed(name, off=PERFECT, **little), slip).session)
    assert done.good and done.harmless and saved not in done.slip and all(one.saved == "" for one in done.came)


def test_a_slip_can_be_drawn_and_all_of_them_come():
    drawn = {cut_pair(aimed("rabbet", learner=f"learner {number}"), DRAWN).session.slip for number in range(60)}
    assert drawn - {slip.name for slip in trial("rabbet").slips} == {""} and len(drawn) == 4


@pytest.mark.parametrize("unit", UNITS)
@pytest.mark.parametrize("name", NAMES)
def test_a_practised_hand_reaches_the_fit_at_fifty_machines_and_who_trusts_the_scales_does_not(name, unit, count):
    """Half of them set up in inches, the others in millimetres."""
    tests, trusted = [], 0
    many = count(25, 200)
    for number in range(many) if unit == "in" else range(many, 2 * many):
        session = begin(name, f"learner {number}", unit)
        hand = practised(session)
        done = result(hand.session)
        assert done.good, (number, [one.said for one in done.came if not one.good], done.clashes)
        tests.append(hand.tests)
        trusted += result(trusting(session)).good
    assert set(tests) <= {2, 3, 4, 5} and sum(tests) < 3 * many
    assert trusted < many * 3 // 4  # else there would be nothing to learn here


@pytest.mark.parametrize("name", NAMES)
def test_what_is_set_measured_and_cut_repeats_by_seed_and_not_by_learner(name):
    def walk(learner):
        session = aimed(name, learner=learner)
        session = try_fit(measure(test_cut(measure_boards(session).session).session).session).session
        done = cut_pair(session).session
        return done.readings, done.felt, done.pair.pair.boards

    one, again, other = walk("Noor"), walk("Noor"), walk("Ilse")
    assert one == again and one != other
    fresh = another(cut_pair(aimed(name)).session)
    assert fresh.pair is None and fresh.tests == () and fresh.at == aimed(name).at
    assert fresh.stock != aimed(name).stock
    assert all(hidden(fresh, scale) == hidden(aimed(name), scale) for scale in fresh.trial.scales)


@pytest.mark.parametrize("sort", [sort for sort, _ in SPREADS.scales])
def test_scales_are_off_as_stated_and_scatter_as_stated(sort):
    one, scale = next((each, scale) for each in TRIALS for scale in each.scales if scale.sort == sort)
    sessions = [begin(one.name, f"learner {number}") for number in range(N)]
    assert faults_of_bell([hidden(session, scale) for session in sessions], SPREADS.of(sort).always) == []
    off, bench = SPREADS.of(sort).again, Bench("Noor", f"trial/{one.name}", "in")
    drawn = [bench.shift(off, "cut", f"test {number}", scale.cuts[0], scale.name) for number in range(N)]
    assert faults_of_bell(drawn, off) == []
    assert "spread" in faults_of_bell([each * 11 // 10 for each in drawn], off)


def test_a_cut_is_what_is_set_what_the_scale_is_out_and_the_scatter_of_that_cut():
    session = aimed("groove")
    for number in range(1, 4):
        session = test_cut(session).session
        for scale, at in zip(session.trial.scales, session.at, strict=True):
            again = session.bench.shift(SPREADS.of(scale.sort).again, "cut", f"test {number}", "side", scale.name)
            assert session.tests[-1].made.of(scale.name, "side") == at + hidden(session, scale) + again


@pytest.mark.parametrize("unit", UNITS)
def test_readings_stand_on_the_steps_of_caliper_and_protractor(unit):
    session = measure(test_cut(aimed("butt", unit)).session).session
    assert {value % (DEGREE // 20) for value in session.reading("square", 1).values} == {0}
    assert {value % STEP[unit] for value in session.reading("collar", 1).values} == {0}


@pytest.mark.parametrize("unit", UNITS)
@pytest.mark.parametrize("name", NAMES)
def test_each_scale_at_both_ends_is_cut_and_past_them_refused_in_one_sentence(name, unit):
    for scale in trial(name).scales:
        low, high = limits(begin(name, "Noor", unit), scale)
        for size in (low, high):
            session = aimed(name, unit, learner="at the end")
            step = set_scale(session, scale.name, typed(scale, size, session.style))
            assert step.done, step.said
            cut = cut_pair(test_cut(step.session).session)
            assert cut.done or cut.said.endswith(".")
            assert not cut.done or result(cut.session).came
        for size in (low - THOU, high + THOU):
            step = set_scale(session, scale.name, typed(scale, size, session.style))
            assert not step.done and "at this practice, and not to" in step.said and step.session is session


BAD = ["deep", "", "1/0 in", "7 kg", "9" * 300 + " in", "<b>", "5"]


@pytest.mark.parametrize("text", BAD)
def test_bad_input_is_one_sentence_and_changes_nothing(text):
    session = begin("butt", "Noor")
    for name in ("square", "collar"):
        if (name, text) == ("square", "5"):
            continue
        step = set_scale(session, name, text)
        assert not step.done and step.session is session and step.said.count("\n") == 0
    assert not set_scale(session, "height", "1 in").done
    assert cut_pair(session).said == "Set the square and the collar first."
    assert cut_pair(aimed("butt"), "sneeze").said.startswith('No slip is called "sneeze"')
    done = cut_pair(aimed("butt")).session
    assert cut_pair(done).said.startswith("The pair is cut already")


def test_a_length_may_be_a_quantity_and_the_unit_is_asked_for():
    from shoplib.measure import ureg

    session = begin("rabbet", "Noor")
    assert set_scale(session, "depth", ureg.Quantity(9, "mm")).session.set_to("depth") == 9 * MM
    assert set_scale(session, "depth", "3/8", unit="in").session.set_to("depth") == 3 * INCH // 8
    assert "has no unit" in set_scale(session, "depth", "3/8").said


@pytest.mark.parametrize("unit", UNITS)
@pytest.mark.parametrize("name", NAMES)
def test_the_task_tells_nothing_of_the_boards_that_lie_there(name, unit):
    assert task(begin(name, "Noor", unit)) == task(begin(name, "Ilse", unit))
    assert all(line.endswith(".") and "{" not in line for line in task(begin(name, "Noor", unit)))
    lines = told(SPREADS, [scale.sort for scale in trial(name).scales], begin(name, "Noor", unit).style)
    assert "invented" in lines[0] and all(line.endswith((".", ".\"")) or "over twice" in line for line in lines)


def test_every_spread_is_told():
    """Each invented number stands in the sentences: a bench with one of them changed is told otherwise."""
    style, sorts = begin("rabbet", "Noor", "in").style, [sort for sort, _ in SPREADS.scales]
    changed = {
        name: replace(SPREADS, sheet=replace(SPREADS.sheet, **{name: 50 * THOU}))
        for name in ("sheet", "spot", "caliper")
    } | {"protractor": replace(SPREADS, protractor=DEGREE)}
    for sort, off in SPREADS.scales:
        for part in ("always", "again"):
            other = tuple({**dict(SPREADS.scales), sort: replace(off, **{part: 50 * THOU})}.items())
            changed[f"{sort} {part}"] = replace(SPREADS, scales=other)
    assert [name for name, bench in changed.items() if told(bench, sorts, style) == told(SPREADS, sorts, style)] == []


def test_what_is_left_out_is_true_of_a_press_fit():
    """A pair that is pressed in goes home, and its walls give: so it may not be said that wood never gives."""
    session = pair("groove", stack=-3 * THOU)
    assert not session.pair.tight and session.pair.play("fit") < 0
    assert "In a press fit it gives" in " ".join(LEFT_OUT)


def test_what_the_pair_calls_a_fault_is_not_called_flush_at_the_test():
    """Fingers 0.0075 in short read 0.008 in: the limit. A cut that is 0.001 in less deep is past it."""
    said = try_fit(test_cut(aimed("finger", off=PERFECT, depth=-15 * THOU // 2)).session)
    assert "flush outside" not in said.said and "The next cut may be past that" in said.said
    assert "The fingers end 0.008 in under the face outside. Up to 0.008 in a shop lets pass." in said.said
    assert "fingers 0.008 in under the face" in said.session.felt_of(1)
    assert "flush outside, but for 0.002 in." in try_fit(test_cut(aimed("finger", off=PERFECT, depth=2 * THOU)).session
                                                         ).said


@pytest.mark.parametrize("unit", UNITS)
def test_a_size_that_is_written_alike_is_judged_alike(unit):
    limit = next(each for each in trial("finger").looks if each.name == "ends").allow
    judged = {}
    for more in range(-THOU, THOU, THOU // 10):
        ends = next(one for one in came_of(pair("finger", unit, depth=-limit + more)) if one.name == "ends")
        judged.setdefault(ends.short, set()).add(ends.good)
    assert all(len(good) == 1 for good in judged.values()) and {True, False} == set.union(*judged.values())


@pytest.mark.parametrize("name", NAMES)
def test_each_look_says_in_a_few_words_what_it_says_in_a_sentence(name):
    looks = trial(name).looks
    for each in looks:
        good, *sides = each.brief
        assert good
        for brief, (sentence, _) in zip(sides, (each.more, each.less), strict=True):
            assert ("{size}" in brief) == bool(sentence) == bool(brief), each.name
    said = [words for each in looks for words in each.brief if words]
    assert len(set(said)) == len(said)


@pytest.mark.parametrize("unit", UNITS)
@pytest.mark.parametrize("name", NAMES)
def test_the_bench_aims_at_what_the_page_of_the_joint_teaches_or_says_why_not(name, unit):
    usual, plan = trial(name).kind.usual(trial_stock(name, unit)), trial_plan(name, unit)
    other = {key for key, value in plan.items() if value != usual[key]}
    assert other == ({"into side"} if name == "dowel" else set())
    told = " ".join(task(begin(name, "Noor", unit)))
    assert ("a board that lies here may be thinner than usual" in told) == bool(other)


@pytest.mark.parametrize("unit", UNITS)
def test_the_goal_of_the_finger_adds_up_from_the_share_of_the_width(unit):
    session = begin("finger", "Noor", unit)
    for line, sign in zip(task(session), (1, -1), strict=False):
        aim, share, fit = (read_length(found) for found in re.findall(r"\d[\d./ ]*(?:in|mm)", line))
        assert abs(aim - share - sign * fit / 2) <= STEP[unit] / 2 and aim != share
        assert session.stock.width % share == 0 and "share" in line


def test_a_press_fit_gives_and_the_rest_of_the_joint_is_read_all_the_same():
    session = pair("tongue", stack=-2 * THOU, depth=-E_)
    assert session.pair.tight == () and look(session, "shoulder") == -(E_ - INCH // 64)
    assert result(session).clashes == ()


def test_what_is_too_tight_stands_before_the_joint_and_nothing_else_is_told():
    session = pair("groove", stack=-E_)
    assert session.pair.tight == ("fit",)
    bottom, side = (session.pair.pair.by_name[name] for name in ("bottom", "side"))
    assert bottom.box.low[0] == side.box.high[0]
    assert [one.name for one in came_of(session)] == ["fit"]


def test_a_result_counts_the_tests_and_nothing_is_told_before_the_pair_is_cut():
    session = aimed("rabbet")
    assert result(session) is None
    session = test_cut(test_cut(session).session).session
    assert result(cut_pair(session).session).tests == 2
    assert result(replace(session, tests=())) is None
