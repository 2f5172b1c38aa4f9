"""Every length in a drawing of a panel can be picked, and its working tells that length; what cannot stands listed."""

import random
import re
from fractions import Fraction
from xml.etree import ElementTree

import pytest
from ipywidgets import Checkbox

from shoplib.documents.examples import example
from shoplib.live.carcass_panel import carcass_panel, width_panel
from shoplib.live.corner_panel import corner_panel
from shoplib.live.drawer_panel import drawer_panel
from shoplib.live.front_panel import front_panel
from shoplib.live.hardware_panel import hardware_panel
from shoplib.live.joint_panel import joint_panel
from shoplib.live.length_control import LengthControl
from shoplib.live.moving_panel import moving_panel
from shoplib.live.percent_control import PercentControl
from shoplib.live.project_panel import project_panel
from shoplib.live.sag_panel import sag_panel
from shoplib.live.saw_panel import saw_panel
from shoplib.live.screw_panel import screw_panel
from shoplib.live.sheet_panel import sheet_panel
from shoplib.live.stack_panel import stack_panel
from shoplib.live.tape_panel import tape_panel
from shoplib.live.tip_panel import tip_panel
from shoplib.measure import INCH, MM

PANELS = {
    "first": width_panel, "carcass": carcass_panel, "drawer": drawer_panel, "fronts": front_panel,
    "hardware": hardware_panel, "joints": joint_panel, "corners": corner_panel, "tape": tape_panel,
    "calipers": sheet_panel, "saw": saw_panel, "shelf": sag_panel, "tipping": tip_panel,
    "stack": stack_panel,
    "screws": screw_panel, "moving wood": moving_panel,
    "whole case": lambda unit: project_panel(example("under_bench_case"), unit),
}

COUNTED = ("bay", "divider", "drawer", "front", "piece", "rail", "shelf", "slide", "spacer", "runner")
"""What is numbered: "drawer 2" is a name and no length."""

NO_LENGTH = [  # title of the drawing, what is written there, why it is no length or is not asked
    ("", rf"\b(?:{'|'.join(COUNTED)}) \d+", "a name"),
    (r"\d+ pieces", r"\d pieces, \d cuts?", "a count"),
    ("The board under its load", r"drawn \d+ times as large as it is", "how many times, and no length"),
    ("(?:Inset|Overlay) fronts", r"drawn \d+ times as large as they are", "how many times, and no length"),
    ("The (?!case)", r"Marks to [\d/.]+ (?:in|mm); the figures are (?:inches|centimetres: 1 is 10 mm)",
     "how the tape is divided: a ruler, not a size"),
    ("The (?!case)", r"(?:The \w+(?: \w+)?: )?\b(?:nearest mark )?(?<!\d )0 (?:in|mm)\b",
     "the end of the tape: behind it there is nothing"),
    ("Sold as ", r"[sS]old as [\d/.]+ (?:in|mm)", "a name of the yard, and no measured size; it is chosen above"),
]

ALONE = [  # the same for a text that stands alone
    (r"A solid \w+ through the year", r"-?\d+(?:\.\d+)?", "a mark of the scale: a ruler, not a size"),
    ("Hold over thread", r"\d+(?: \d+/\d+|/\d+)?", "a mark of the scale: a ruler, not a size"),
    ("Sag over span", r"\d+(?:\.\d+)?", "a mark of the scale: a ruler, not a size"),
    ("The (?!case)", r"\d+", "a figure of the tape: a ruler, not a size"),
    (r"The case on its side", r"\d", "the number of a slide, where its name has no room"),
    (r"\d+ pieces", r"\d", "the number of a piece, where its name has no room"),
    ("(?:Inset|Overlay) fronts", r"\d", "the number of a front, where its name has no room"),
]

NUMBER = r"\d+(?: \d+)?/\d+|\d+(?:\.\d+)?"
def texts(svg):
    """Each thing written in a drawing: its words, and the name that it is asked by, "" where it has none."""
    def walk(node, ask):
        ask = node.get("data-ask", "") or ask
        if node.get("data-ask") or node.tag.endswith("}text"):
            between = " " if "/told." in ask else ", "  # a line that is broken, or the lines of a label
            yield between.join("".join(part.itertext()) for part in (list(node) or [node])), ask
        else:
            for inner in node:
                yield from walk(inner, ask)

    return list(walk(ElementTree.fromstring(svg), ""))


def unasked(panel, met=None):
    """What is left of the texts that cannot be picked, of each drawing, where a number is still in it.

    Lines are put together, for a long one is broken. `met` takes the exceptions that were made.
    """
    met, left = set() if met is None else met, []
    for drawing in panel.outcome.drawings:
        apart = []
        for words in (words for words, ask in texts(drawing.svg) if not ask):
            made = [one for one in ALONE if re.match(one[0], drawing.title) and re.fullmatch(one[1], words)]
            met.update(made)
            apart += [] if made else [words]
        together = " ".join(apart)
        for one in NO_LENGTH:
            if re.match(one[0], drawing.title) and re.search(one[1], together):
                met.add(one)
                together = re.sub(one[1], "", together)
        left += [(drawing.title, together)] if re.search(r"\d", together) else []
    return left


def ticks(number, unit):
    """A number as it is written, exactly: a mixed one too, and one that is too small to be a length by itself."""
    return sum(map(Fraction, number.split())) * (INCH if unit == "in" else MM)


def lengths(words, unit):
    """The lengths that a text tells, in ticks, each with the rest that stands in brackets behind it."""
    if re.fullmatch(r"\([+-][\d.]+\)", words):
        return []  # the second line of a dimension; the first one is a text of its own
    words = words.replace(", (", " (")  # a rest on a line of its own
    for _, other, what in NO_LENGTH:
        behind = rf"(?=[:,;]|$| (?:pull-out|{'|'.join(COUNTED)}))" if what == "a name" else ""
        words = re.sub(other + behind, "", words)  # "front 24 3/16" is no name
    found = re.findall(rf"({NUMBER})(?: (in|mm)\b)?(?: \(([+-][\d.]+)(?: (?:in|mm))?\))?", words)
    return [ticks(number, own or unit) + ticks(rest or "0", own or unit) for number, own, rest in found]


def first_of(line):
    """The size that a line of a working begins with, its rest added: what stands last before the equals sign."""
    number, unit, rest = re.search(
        rf"({NUMBER}) (in|mm)(?: \(([+-][\d.]+) (?:in|mm)\))?$", line.partition(" = ")[0]
    ).groups()
    return ticks(number, unit) + ticks(rest or "0", unit)


def not_told(panel, unit, most):
    """Each asked text with a length that its answer does not begin with; of many, about `most` are asked.

    Where a text tells several, a line of the answer begins with each.
    """
    near, wrong = (INCH // 128 if unit == "in" else MM // 4), []
    asked = [(words, ask) for drawing in panel.outcome.drawings for words, ask in texts(drawing.svg) if ask]
    for words, ask in asked[:: max(1, len(asked) // most)]:
        panel.working.ask(ask)
        sizes, lines = lengths(words, unit), panel.working.lines
        told = [first_of(line) for line in (lines[:1] if len(sizes) == 1 else lines)]
        wrong += [(words, ask, lines) for size in sizes if all(abs(size - one) > near for one in told)]
    return wrong


def set_at_random(panel, draw):
    """Every control somewhere between its limits, and the panel drawn once."""
    with panel.held():
        for control in panel.controls.values():
            if isinstance(control, LengthControl):
                control.ticks = control.low + (control.high - control.low) * draw.randint(0, 64) // 64
            elif isinstance(control, PercentControl):
                control.value = draw.randint(30, 70)
            elif isinstance(control, Checkbox):
                control.value = draw.random() < 0.7
            elif hasattr(control, "options"):
                control.value = draw.choice(control.options)
    panel.put({})


@pytest.mark.parametrize("large", [False, True], ids=["", "large type"])
@pytest.mark.parametrize("unit", ["in", "mm"])
@pytest.mark.parametrize("name", PANELS)
def test_every_length_of_a_drawing_can_be_picked_and_is_told(name, unit, large, count, quick):
    if large != (unit == "mm") and quick:
        pytest.skip("large type in millimetres, ordinary type in inches; with --long each in both")
    panel, draw = PANELS[name](unit), random.Random(23)
    if large:
        panel.enlarge()
    for _ in panel.groups:  # as it unfolds
        assert not unasked(panel)
        assert not not_told(panel, unit, count(10, 30) if len(panel.opened) == 1 else count(3, 6))
        panel.unfold()
    built = 0
    while built < count(1, 3):  # about two thirds of the settings of some panels cannot be built
        set_at_random(panel, draw)
        if not panel.stale:
            built += 1
            assert not unasked(panel)
            assert not not_told(panel, unit, 4)


def test_each_exception_is_met():
    """None is listed that no drawing needs."""
    met = set()
    for name, large in (("fronts", 0), ("hardware", 0), ("tape", 0), ("calipers", 0), ("saw", 0), ("saw", 1),
                        ("shelf", 0), ("screws", 0)):
        panel, draw = PANELS[name]("mm"), random.Random(5)
        if large:
            panel.enlarge()
        for _ in panel.groups[1:]:
            panel.unfold()
        for _ in range(40):
            unasked(panel, met)
            set_at_random(panel, draw)
        if name == "tape":
            panel.enter("pointer", "0 mm")
            unasked(panel, met)
    assert {*NO_LENGTH, *ALONE} - met == set()


def test_the_words_round_a_drawing_tell_all_their_sizes_and_a_rounded_one_says_so():
    """67 mm halved is 33.5, which a tape of whole millimetres reads as 34; the dado is 17.5 + 0 wide and 6 deep."""
    tape, joint = tape_panel("mm"), joint_panel("mm")
    tape.unfold()
    tape.working.ask("drawing/1/told.0")
    assert tape.working.lines == [
        "half, at the nearest mark 34 mm = 33.5 mm (half of pointer 67 mm), to the nearest whole 1 mm"
    ]
    joint.working.ask("drawing/0/told.0")
    assert [line.partition(" = ")[0] for line in joint.working.lines] == [
        "width of the cut 17.5 mm", "thickest reading of case sheet 17.5 mm", "depth of the cut 6 mm",
    ]
    joint.enter("kind", "butt")  # which has no such line
    assert joint.working.lines == []
