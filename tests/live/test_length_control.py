"""The length control without a browser: what it takes, what it refuses, what it tells."""

import pytest

from shoplib.live import LengthControl
from shoplib.measure import INCH, INCH_STYLE, MM, MM_STYLE, LengthError, ureg


def width(**changes) -> LengthControl:
    usual = {"label": "Width", "value": "34 1/2 in", "low": "8 in", "high": "96 in"}
    return LengthControl(**{**usual, **changes})


def typed(control: LengthControl, text: str) -> dict:
    """Type a text that the browser leaves to the kernel; gives the kernel's answer."""
    answers = []
    control.send = lambda content, buffers=None: answers.append(content)
    control._handle_custom_msg({"read": text}, [])
    (answer,) = answers
    return answer


@pytest.mark.parametrize(
    ("text", "ticks"),
    [
        ("31 7/16", 63_881_000), ('31-7/16"', 63_881_000), ("803.3 mm", 64_264_000),
        ("2' 3\"", 27 * INCH), ("60 cm", 600 * MM),
    ],
)
def test_takes_what_is_typed(text, ticks):
    control = width()
    assert typed(control, text) == {"read": text, "problem": ""}
    assert control.ticks == ticks


def test_the_unit_beside_the_box_applies():
    control = width(value="600 mm", low="100 mm", high="2 m", style=MM_STYLE)
    control.enter("803.3")
    assert control.text == "803.3 mm"
    control.enter("31 in")
    assert control.ticks == 31 * INCH


@pytest.mark.parametrize("text", ["abc", "", "12 13", "200 in", "0", "-9", "3/0", "9 lb"])
def test_bad_text_gets_a_sentence_and_the_value_stays(text):
    control = width()
    answer = typed(control, text)
    assert answer["problem"].startswith("Width") and answer["problem"].endswith(".")
    assert control.text == "34 1/2 in"


def test_a_value_outside_the_limits_is_refused_with_both_limits():
    with pytest.raises(LengthError, match=r"^Width goes from 8 in to 96 in here; 97 in is outside\.$"):
        width(value="97 in")
    with pytest.raises(LengthError, match="goes from"):
        width().ticks = INCH


def test_a_number_without_unit_is_refused():
    with pytest.raises(LengthError):
        width(value=34)
    with pytest.raises(LengthError):
        width(value="34")


def test_zero_is_a_value_where_the_limits_begin_with_it():
    control = width(label="Joint depth", value="0 in", low="0 in", high="1 in")
    control.enter("1/4")
    assert typed(control, "0")["problem"] == ""
    assert control.ticks == 0


def test_quantities_are_taken():
    assert width(value=ureg.Quantity(2, "foot")).ticks == 24 * INCH


def test_steps_and_pages():
    assert (width().step, width().page) == (INCH // 64, INCH)
    assert width(step="1/4 in").step == INCH // 4
    metric = width(style=MM_STYLE)
    assert (metric.step, metric.page) == (MM // 10, 10 * MM)


def test_pages_are_a_tenth_of_a_short_range():
    joint = width(label="Joint depth", value="1/4 in", low="1/16 in", high="11/16 in", step="1/32 in")
    assert joint.page == 2 * INCH // 32
    joint.limit("1/16 in", "1/8 in")
    assert joint.page == joint.step
    joint.limit("1/16 in", "40 in")
    assert joint.page == INCH


def test_a_measured_thickness_is_shown_as_the_caliper_shows_it():
    sheet = LengthControl("Sheet", "0.703 in", "0.45 in", "0.85 in", step="0.001 in", measured=True)
    assert sheet.text == "0.703 in" and repr(sheet) == "LengthControl('Sheet', '0.703 in')"
    with pytest.raises(LengthError, match=r"goes from 0\.45 in to 0\.85 in here; 0\.9 in is outside"):
        sheet.enter("0.9")


def test_new_limits_move_the_value_within_them():
    control = width()
    control.limit("8 in", "20 in")
    assert (control.ticks, control.high) == (20 * INCH, 20 * INCH)
    control.limit("30 in", "40 in")
    assert control.ticks == 30 * INCH


def test_another_style_shows_the_same_value():
    control = width()
    control.show_in(MM_STYLE, step="1 mm")
    assert (control.text, control.step, control.unit) == ("876.3 mm", MM, "mm")
    control.show_in(INCH_STYLE)
    assert (control.text, control.step) == ("34 1/2 in", INCH // 64)


def test_changes_are_told_once_each():
    control, told = width(), []
    control.observe(lambda change: told.append(change["new"]), names="ticks")
    control.enter("35 in")
    control.enter("35 in")
    with pytest.raises(LengthError):
        control.enter("4 in")
    assert told == [35 * INCH]


def test_repr_names_label_and_value():
    assert repr(width()) == "LengthControl('Width', '34 1/2 in')"
    assert width()._repr_mimebundle_()[0]["text/plain"] == repr(width())


@pytest.mark.parametrize("text", ["abc", "500 in", "80 mm", "0"])
def test_a_refusal_tells_the_limits_and_what_stays(text):
    problem = typed(width(), text)["problem"]
    assert "`" not in problem and problem.count("from 8 in to 96 in") == 1
    assert problem.endswith("What is drawn still has 34 1/2 in.")


def test_a_value_between_the_steps_stays_exact_behind_its_text():
    control = width()
    control.enter("601 mm")
    assert (control.text, control.ticks) == ("23 21/32 in (+0.005 in)", 601 * MM)
