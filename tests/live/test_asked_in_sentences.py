"""Every length that a finding or the line above the picture tells can be asked, and says what it rests on."""

import random
import re
from dataclasses import replace

import pytest

from shoplib.documents.examples import PROJECTS, example
from shoplib.documents.project_file import read_project
from shoplib.live.carcass_panel import carcass_panel, outcome_of, width_panel
from shoplib.live.corner_panel import corner_panel
from shoplib.live.drawer_panel import drawer_panel
from shoplib.live.front_panel import front_panel
from shoplib.live.hardware_panel import hardware_panel
from shoplib.live.joint_panel import joint_panel
from shoplib.live.length_control import LengthControl
from shoplib.live.moving_panel import moving_panel
from shoplib.live.panel import CannotBuild
from shoplib.live.percent_control import PercentControl
from shoplib.live.project_panel import project_panel
from shoplib.live.sag_panel import sag_panel
from shoplib.live.said import Said, said, same_length, why_said
from shoplib.live.saw_panel import saw_panel
from shoplib.live.screw_panel import screw_panel
from shoplib.live.sheet_panel import sheet_panel
from shoplib.live.table import findings_html
from shoplib.live.tape_panel import tape_panel
from shoplib.live.tip_panel import tip_panel
from shoplib.live.wake import still_html
from shoplib.measure import INCH, MM, MM_STYLE, write_brief
from shoplib.measure.noted import Sentence, Stands, noting
from shoplib.measure.traced import leaf
from shoplib.model.project import Measured, Opening
from shoplib.model.solved import Finding
from tests.live.picked import picked
from tests.random_projects import project

UNITS = pytest.mark.parametrize("unit", ["in", "mm"])
PANELS = {
    "first": width_panel, "carcass": carcass_panel, "joint": joint_panel, "corner": corner_panel,
    "drawer": drawer_panel, "fronts": front_panel, "hardware": hardware_panel, "saw": saw_panel,
    "sheet": sheet_panel, "tape": tape_panel, "shelf": sag_panel,
    "tipping": tip_panel, "screws": screw_panel, "moving wood": moving_panel,
} | {path.stem: lambda unit, name=path.stem: project_panel(example(name), unit) for path in PROJECTS.glob("*.toml")}

LENGTH = re.compile(r"(?<![\d./])\d[\d./]*(?: \d+/\d+)? (?:in|mm)\b(?! bays? )")
"""A length as anybody would find it in a sentence; "drawers 1 to 4 in bays 1 and 3" is none."""


def unfolded(name, unit):
    panel = PANELS[name](unit)
    for _ in panel.groups[1:]:
        panel.unfold()
    return panel


MARKS = re.compile("[\ue000-\ue002]")
"""What the writers set round a length while notes are taken: nobody is ever shown it."""


def all_text(panel):
    """Everything that a panel shows or says, its still picture on a saved page included."""
    drawings = panel.outcome.drawings
    return "".join((
        *(f"{one.title}{one.svg}{one.alt}" for one in drawings), panel.message, panel._tables.value, panel._sums.value,
        panel._findings.value, still_html(panel.title, drawings), *panel.working.lines,
    ))


def assert_told(outcome, seen):
    """Each length of each sentence that was not `seen` yet; gives how many there were."""
    count = 0
    told = [(f"finding/{number}", finding.text) for number, finding in enumerate(outcome.findings)]
    for name, text in [*told, ("message", outcome.message)]:
        words = re.sub(r"\d+", "0", text)
        if words in seen:
            continue
        seen.add(words)
        asked = [text[start:end] for start, end, _ in text.lengths]
        assert len(LENGTH.findall(" ".join(asked))) == len(LENGTH.findall(text)), (text, asked)
        for number, length in enumerate(asked):
            first, *further = outcome.why(f"{name}/{number}")
            assert first.startswith(f"this length {length} = "), (text, first)
            # It ends in what was measured, chosen or looked up, by its name, or in a limit that says its source.
            assert re.search(r"[a-z]{3}", first.partition(" = ")[2]), (text, first)
            assert "nothing that you measured" not in first, (text, first)
            assert not any(line.endswith("; ") for line in further)
            count += 1
    return count


def put(control, stream):
    if isinstance(control, LengthControl):
        control.ticks = stream.choice([control.low, control.high, stream.randint(control.low, control.high)])
    elif isinstance(control, PercentControl):
        control.value = stream.randint(control.low, control.high)
    elif hasattr(control, "options"):
        control.value = stream.choice([value for _, value in control._options_full])


@UNITS
@pytest.mark.parametrize("name", PANELS)
def test_every_length_of_a_sentence_says_what_it_rests_on(name, unit):
    stream, seen = random.Random(f"{name} {unit}"), set()
    panel = unfolded(name, unit)
    found = 0
    for _ in range(15):
        found += assert_told(panel.outcome, seen)
        assert not MARKS.search(all_text(panel))
        put(stream.choice(list(panel.controls.values())), stream)
    assert found or name in ("first", "carcass", "tipping")  # the boards of a plain case only count; a chest is weighed


@pytest.mark.parametrize("first", range(0, 24, 6))
def test_every_length_in_findings_of_random_cases(first):
    seen, found = set(), 0
    for seed in range(first, first + 6):
        try:
            found += assert_told(outcome_of(project(seed)), seen)
        except CannotBuild:
            continue
    assert found > 20


@pytest.mark.parametrize("off", [INCH // 8, -INCH // 3, INCH])
def test_every_length_in_findings_about_what_was_measured(off):
    plan = read_project(example("under_bench_case"))
    clear = plan.size.width // len(plan.bays)
    read = Measured({"bay 1 drawer 1": Opening(clear + off, clear + 2 * off)}, {"bay 1": plan.size.depth - INCH - off})
    outcome, seen = outcome_of(replace(plan, measured=read)), set()
    assert any(finding.check == "as measured" for finding in outcome.findings)
    assert assert_told(outcome, seen) > 5


@UNITS
def test_a_panel_offers_just_these_lengths_and_answers_them(unit):
    panel = unfolded("drawer", unit)
    panel.enter("back", f"{panel.controls['back'].low / INCH} in")
    names = [name for name, _ in picked(panel._findings.value, "finding/")]
    texts = [finding.text for finding in panel.outcome.findings]
    assert names == [f"finding/{k}/{j}" for k, text in enumerate(texts) for j in range(len(text.lengths))]
    assert len(names) > 2
    message = panel.outcome.message
    assert panel.picture.asked == [[start, end] for start, end, _ in message.lengths] and len(message.lengths) == 1
    for name in [*names, "message/0"]:
        panel.working.ask(name)
        assert panel.working.asked == name
        assert panel.working.lines
    for name in ("message/1", "finding/0/99", "finding/99/0"):
        panel.working.ask(name)
        assert (panel.working.asked, panel.working.lines) == ("", [])


def test_a_finding_is_worked_out_down_to_what_was_chosen():
    panel = joint_panel("in")
    panel.enter("depth", "3/8 in")
    (finding,) = [each for each in panel.outcome.findings if each.check == "wood left"]
    assert finding.text.startswith("left side and right side: 0.328 in of wood is left")
    panel.working.ask("finding/0/0")
    assert panel.working.lines[0].endswith("thickness of case sheet 0.703 in - dado depth of the shelves 3/8 in")


def test_a_limit_of_a_check_says_where_it_comes_from():
    panel = joint_panel("in")
    panel.enter("depth", "5/8 in")
    number, finding = next((k, each) for k, each in enumerate(panel.outcome.findings) if "1/8 in or so" in each.text)
    which = [finding.text[start:end] for start, end, _ in finding.text.lengths].index("1/8 in")
    panel.working.ask(f"finding/{number}/{which}")
    assert panel.working.lines == [
        "this length 1/8 in = the least wood that holds 0.11811 in, to the nearest whole 1/64 in",
        "the least wood that holds 0.11811 in: fixed by the workbook; common practice, no source",
    ]


def test_an_open_answer_stays_with_its_finding_and_closes_where_it_is_said_no_more():
    """A dado 5/8 in deep leaves too little wood, which is told first: the finding about the fit moves down."""
    panel = unfolded("joint", "in")
    panel.enter("fit", "0 in")
    texts = [finding.text for finding in panel.outcome.findings]
    number = next(k for k, text in enumerate(texts) if "must be forced in" in text)
    panel.working.ask(f"finding/{number}/0")
    shown = list(panel.working.lines)
    assert "the usual fit" in shown[0]
    panel.enter("depth", "5/8 in")
    assert "must be forced in" not in panel.outcome.findings[number].text
    assert panel.working.asked == f"finding/{number + 1}/0" and panel.working.lines == shown
    panel.enter("fit", "0.01 in")
    assert (panel.working.asked, panel.working.lines) == ("", [])


def test_an_open_answer_about_the_message_follows_its_length():
    panel = unfolded("drawer", "in")
    panel.working.ask("message/0")
    first = list(panel.working.lines)
    panel.enter("front", "15 in")
    assert panel.working.asked == "message/0" and panel.working.lines[0] != first[0]
    wide = panel.message.removeprefix("The box is ").partition(" wide")[0]
    assert panel.working.lines[0].startswith(f"this length {wide} = ")


def test_a_finding_answers_by_the_number_that_it_is_shown_with():
    """The gravest stands first on the panel, whatever was found first."""
    def say():
        with noting() as notes:
            found = [
                Finding(name, level, (), f"{write_brief(leaf(size, name), MM_STYLE)} of it", 0)
                for name, level, size in (("small", "note", MM), ("mean", "warn", 2 * MM), ("large", "stop", 3 * MM))
            ]
        return said(notes, found, "")

    told = say()
    why = why_said(told, say, MM_STYLE)
    for name, length in picked(findings_html(told.findings), "finding/"):
        assert why(name)[0].startswith(f"this length {length} = ")
    assert why("finding/0/0") == ("this length 3 mm = large 3 mm",)


def test_findings_that_read_alike_keep_their_order_and_others_their_names():
    def told(*findings):
        return Said(
            tuple(Finding(check, "note", boards, Sentence(f"{size}, so long", (Stands(0, 4, None),)), 0)
                  for check, boards, size in findings), Sentence(""),
        )

    one, other, longer = ("fit", ("a",), "3 mm"), ("gap", ("a",), "3 mm"), ("fit", ("a",), "4 mm")
    assert same_length("finding/1/0", told(one, longer), told(other, longer, one)) == "finding/2/0"
    assert same_length("finding/1/0", told(one, longer), told(one, other)) == ""
    assert same_length("finding/0/0", told(one), told(("fit", ("b",), "3 mm"))) == ""
    assert same_length("table/0/2", told(one), told()) == "table/0/2"


def test_a_sentence_that_tracing_changes_is_no_answer():
    """Rather a fault that is heard of than the working of another length."""
    def told(text):
        return Said((), Sentence(text, (Stands(0, 4, leaf(3 * MM, "gap")),)))

    with pytest.raises(LookupError, match="said otherwise"):
        why_said(told("3 mm, not more"), lambda: told("3 mm, and more"), MM_STYLE)("message/0")


def test_a_refusal_has_no_marks_and_offers_nothing():
    panel = drawer_panel("in")
    panel.enter("depth", "8 in")
    assert panel.stale and LENGTH.search(panel.message)
    assert not MARKS.search(panel.message) and panel.picture.asked == []
    panel.working.ask("message/0")
    assert panel.working.lines == []


def test_nothing_is_traced_while_a_slider_moves(monkeypatch):
    panel = unfolded("carcass", "in")
    monkeypatch.setattr("shoplib.live.carcass_panel.traced", lambda _: pytest.fail("traced on a move"))
    panel.enter("width", "30 in")
    assert not panel.stale
