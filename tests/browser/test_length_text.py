"""The length control's own reader and writer (JavaScript) against the measure room's, in Chromium."""

import random
from pathlib import Path

import pytest

from shoplib import live
from shoplib.measure import (
    INCH,
    INCH_STYLE,
    MM,
    MM_STYLE,
    LengthError,
    Style,
    read_length,
    write_brief,
)

pytestmark = pytest.mark.browser

SCRIPT = (Path(live.__file__).parent / "length_control.js").read_text(encoding="utf-8")
STYLES = [
    Style("in", INCH // 8), Style("in", INCH // 32), INCH_STYLE,
    Style("mm", MM), Style("mm", MM // 5), MM_STYLE,
]
LOAD = """async (source) => {
  window.shop = await import(URL.createObjectURL(new Blob([source], {type: 'text/javascript'})));
}"""


@pytest.fixture(scope="module")
def page(browser):
    page = browser.new_page()
    page.evaluate(LOAD, SCRIPT)
    yield page
    page.close()


def lengths(style: Style, wanted: int) -> list[int]:
    """On steps, between steps, at and beside the half step, and anywhere up to 10 m."""
    chance = random.Random(f"{style}")
    steps = [chance.randrange(10_000 * MM // style.step) * style.step for _ in range(wanted)]
    near = [step + chance.choice((0, 1, -1, style.step // 2, style.step // 2 - 1)) for step in steps]
    return [0, 1, *(abs(each) for each in near), *(chance.randrange(10_000 * MM) for _ in range(wanted))]


@pytest.mark.parametrize("style", STYLES, ids=repr)
@pytest.mark.parametrize("named", [True, False])
def test_writes_as_the_measure_room_writes(page, style, named, count):
    asked = lengths(style, count(1_000, 20_000))
    written = page.evaluate(
        "([asked, unit, finest, named]) => asked.map((each) => shop.write(each, unit, finest, named))",
        [asked, style.unit, style.step, named],
    )
    brief = [write_brief(each, style) for each in asked]
    assert written == [each if named else each.replace(f" {style.unit}", "", 1) for each in brief]


@pytest.mark.parametrize("style", [INCH_STYLE, MM_STYLE], ids=repr)
def test_writes_measured_thicknesses_as_the_measure_room_does(page, style, count):
    asked = lengths(style, count(1_000, 20_000))
    written = page.evaluate(
        "([asked, unit]) => asked.map((each) => shop.writeMeasured(each, unit, true))", [asked, style.unit]
    )
    assert written == [write_brief(each, style, decimal=True) for each in asked]


def texts(wanted: int) -> list[str]:
    """Lengths as people type them, right and wrong, some with a character changed."""
    chance = random.Random("typed lengths")
    units = [
        "", "", " in", "in", '"', "″", "”", " inches", " IN", " inn",
        " mm", "mm", " MM", " cm", " m", " ft", "'",
    ]
    made = []
    for _ in range(wanted):
        whole = chance.randrange(chance.choice((4, 120, 2_000)))
        bottom = chance.choice((2, 3, 8, 16, 32, 64, 128))
        number = chance.choice((
            f"{whole}", f"{whole}.{chance.randrange(20_000)}", f"{whole},{chance.randrange(10)}",
            f"{chance.randrange(bottom + 2)}/{bottom}",
            f"{whole}{chance.choice((' ', '-', ' - ', '  '))}{chance.randrange(bottom + 2)}/{bottom}",
        ))
        text = f"{number}{chance.choice(units)}"
        if chance.random() < 0.3:
            spot = chance.randrange(len(text) + 1)
            text = text[:spot] + chance.choice(" .,-/'\"1xÀ½(+") + text[spot + chance.randrange(2):]
        made.append(text)
    return made


@pytest.mark.parametrize("unit", ["in", "mm"])
def test_never_reads_otherwise_than_the_measure_room(page, unit, count):
    asked = texts(count(4_000, 40_000))
    read = page.evaluate("([asked, unit]) => asked.map((each) => shop.read(each, unit))", [asked, unit])
    quick = 0
    for text, ticks in zip(asked, read, strict=True):
        if ticks is None or ticks > 10_000 * MM:  # no control goes beyond 10 m, so this is left to the kernel
            continue
        quick += 1
        assert ticks == read_length(text, unit=unit, zero=True), text
    assert quick > len(asked) // 10


@pytest.mark.parametrize(
    ("text", "unit"),
    [
        ("31 7/16", "in"), ('31-7/16"', "in"), ("5/8 in", "mm"), ("803.3", "mm"), ("803 mm", "in"),
        ("23.625", "in"),
    ],
)
def test_reads_the_usual_ways_without_the_kernel(page, text, unit):
    read = page.evaluate("([text, unit]) => shop.read(text, unit)", [text, unit])
    assert read == read_length(text, unit=unit)


@pytest.mark.parametrize("text", ["", "abc", "12 13", "3/0", "-4", "1/3", "2 9/8", "0.001 mm", "12 in 5"])
def test_leaves_what_is_not_plain_to_the_kernel(page, text):
    assert page.evaluate("(text) => shop.read(text, 'in')", text) is None
    with pytest.raises(LengthError):
        read_length(text, unit="in", zero=True)
