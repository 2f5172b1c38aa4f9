"""The panel frame without a browser: control values are set, and what is shown is read off."""

import base64
import re
from xml.etree import ElementTree

import ipywidgets
import pytest

from shoplib.live import CannotBuild, Drawing, Group, LengthControl, Outcome, Panel, Table
from shoplib.live import panel as frame
from shoplib.measure import INCH, INCH_STYLE, write_length
from shoplib.model.solved import Finding

SVG = '<svg xmlns="http://www.w3.org/2000/svg"><text>{}</text></svg>'


class Work:
    """A panel's function that counts its calls: a box that must be wider than its two sides."""

    def __init__(self):
        self.calls = []

    def __call__(self, values):
        self.calls.append(values)
        if values.back == "fault":
            raise ZeroDivisionError("no such back")
        if values.width <= 2 * values.sheet:
            raise CannotBuild("The sides leave no room between them.", "Make the box wider.")
        shown = write_length(values.width, INCH_STYLE)
        inside = write_length(values.width - 2 * values.sheet, INCH_STYLE)
        return Outcome(
            [Drawing("Front", SVG.format(shown), f"A box {shown} wide.")],
            [Table("Parts", ["Board", "Length"], [["bottom", inside]])],
            [f"bay {inside} and two sides <= {shown}"],
            [Finding("seat", "note", (), "Sits <well> & true."), Finding("seat", "stop", (), "Overlaps.")],
        )


@pytest.fixture
def work():
    return Work()


@pytest.fixture
def panel(work):
    return Panel("Box", [
        Group("Width and sheet", {
            "width": LengthControl("Width", "30 in", "1 in", "96 in"),
            "sheet": LengthControl("Sheet", "3/4 in", "1/4 in", "1 in"),
        }),
        Group("Back", {"back": ipywidgets.Dropdown(options=["none", "rabbeted", "fault"])}),
        Group("Height", {"height": LengthControl("Height", "20 in", "8 in", "96 in")}),
    ], work)


def test_each_change_is_worked_once_at_once(panel, work):
    assert len(work.calls) == 1
    panel.enter("width", "31 in")
    panel.controls["sheet"].ticks = INCH // 2
    panel.enter("back", "rabbeted")
    assert len(work.calls) == 4
    last = work.calls[-1]
    assert (last.width, last.sheet, last.back, last.height) == (31 * INCH, INCH // 2, "rabbeted", 20 * INCH)
    assert panel.picture.drawings[0]["alt"] == "A box 31 in wide."
    assert "30 in" in panel._tables.value
    assert "bay 30 in and two sides &lt;= 31 in" in re.sub("</?span[^>]*>", "", panel._sums.value)


def test_what_cannot_be_built_says_why_and_keeps_the_last_good_picture(panel):
    before = panel.picture.drawings
    panel.enter("sheet", "1 in")
    good = panel.picture.drawings, panel._tables.value
    panel.enter("width", "2 in")
    assert panel.stale
    assert panel.message == "The sides leave no room between them. Make the box wider."
    assert (panel.picture.drawings, panel._tables.value) == good
    panel.enter("width", "30 in")
    assert not panel.stale and panel.message == "" and panel.picture.drawings == before


def test_a_fault_of_ours_is_not_laid_on_the_learner(panel):
    with pytest.raises(ZeroDivisionError):
        panel.enter("back", "fault")
    assert panel.stale and "fault in the workbook" in panel.message and "no such back" in panel.message
    panel.enter("back", "none")
    assert not panel.stale


def test_groups_open_one_at_a_time(panel, work):
    shown = lambda: [box.layout.display != "none" for box in panel._boxes]  # noqa: E731
    assert panel.opened == ("Width and sheet",) and shown() == [True, False, False]
    assert panel._next.description == "Next: back"
    panel._next.click()
    assert panel.opened == ("Width and sheet", "Back") and shown() == [True, True, False]
    assert work.calls[-1].opened == panel.opened
    panel._next.click()
    assert shown() == [True, True, True] and panel._next.layout.display == "none"
    panel.unfold()
    assert len(panel.opened) == 3


def test_findings_come_gravest_first_with_a_word_and_a_shape(panel):
    found = panel._findings.value
    items = re.findall(r'<li class="shop-(\w+)"><span aria-hidden="true">(.)</span> <strong>(\w+):', found)
    assert items == [("stop", "■", "Stop"), ("note", "●", "Note")]
    assert "Sits &lt;well&gt; &amp; true." in found


def test_a_table_names_its_rows_and_columns():
    html = Table("Parts & <cuts>", ["Board", "Length"], [["top", '30 1/2 in'], ["<b>", "a & b"]]).html()
    room = ElementTree.fromstring(html)
    assert (room.get("role"), room.get("tabindex"), room.get("aria-label")) == ("region", "0", "Parts & <cuts>")
    (table,) = room
    assert table.find("caption").text == "Parts & <cuts>"
    assert [cell.get("scope") for cell in table.iter("th")] == ["col", "col", "row", "row"]
    assert ["".join(cell.itertext()) for cell in table.find("tbody").iter("td")] == ["30 1/2 in", "a & b"]


def test_the_saved_output_is_a_living_panel_and_a_still_picture(panel, monkeypatch):
    outputs = []
    monkeypatch.setattr(frame, "display", lambda data, raw: outputs.append(data))
    panel._ipython_display_()
    living, still = outputs
    assert "application/vnd.jupyter.widget-view+json" in living
    assert (living["text/plain"], still["text/plain"]) == ("Box", "Still picture of Panel('Box')")
    root = ElementTree.fromstring(still["text/html"])
    image = root.find(".//img")
    assert image.get("alt") == "A box 30 in wide."
    svg = base64.b64decode(image.get("src").removeprefix("data:image/svg+xml;base64,")).decode()
    assert svg == SVG.format("30 in")
    assert "Run All Cells" in "".join(root.itertext())


def two_views(values):
    """Two drawings, of the width and of the depth; a third once the last group is open."""
    drawings = [
        Drawing("Front", SVG.format(values.width), "The front."),
        Drawing("Side", SVG.format(values.depth), "The side."),
    ]
    if "Pulls" in values.opened:
        drawings.append(Drawing("Pull", SVG.format("pull"), "The pull."))
    return Outcome(drawings, chosen=values.seen == "the front")


def beside(panel):
    assert len(panel.picture.drawings) == 1
    others = [drawing["title"] for drawing in panel.more.drawings]
    assert len(others) == len(panel.outcome.drawings) - 1
    return panel.picture.drawings[0]["title"]


def test_the_drawing_that_a_move_changes_stands_beside_the_controls():
    panel = Panel("Box", [
        Group("Sizes", {
            "width": LengthControl("Width", "30 in", "1 in", "96 in"),
            "depth": LengthControl("Depth", "20 in", "1 in", "96 in"),
            "seen": ipywidgets.Dropdown(options=["what was moved", "the front"]),
        }),
        Group("Pulls", {"pull": ipywidgets.Dropdown(options=["one", "two"])}),
    ], two_views)
    assert beside(panel) == "Front"
    panel.enter("depth", "21 in")
    assert beside(panel) == "Side"
    panel.enter("depth", "22 in")
    assert beside(panel) == "Side"
    panel.enter("width", "31 in")
    assert beside(panel) == "Front"
    panel.put({"width": 32 * INCH, "depth": 23 * INCH})  # both change: the first one stays
    assert beside(panel) == "Front"
    panel.unfold()
    assert beside(panel) == "Pull"  # what was unfolded last
    panel.enter("depth", "24 in")
    assert beside(panel) == "Side"
    panel.enter("seen", "the front")
    panel.enter("depth", "25 in")
    assert beside(panel) == "Front"  # asked for


def test_a_length_in_a_table_stays_whole_and_its_rest_may_go_to_the_next_line():
    rows = [["bottom of 2 boxes", "21 1/8 in (-0.003 in)", "18 mm"]]
    for asked in ((), (1, 2)):
        html = Table("Boards", ("Board", "Length", "Sheet"), rows, asked).html()
        assert re.findall('<span class="shop-whole">(.*?)</span>', html) == ["21 1/8 in", "(-0.003 in)", "18 mm"]
        assert "21 1/8 in (-0.003 in)" in re.sub("<span[^>]*>|</span>", "", html)
