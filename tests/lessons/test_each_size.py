"""Every size of a worked figure tells why, down to what was measured or chosen: in its line, or in the fold below it.

"Any size in a panel, table or drawing can be asked" (the issue). The workings come from the numbers of the figure
itself, so what is checked here is that none is missing, that each stands beside the size that is shown, and that no
number in it is without a name.
"""

import ast
import html
import re
from fractions import Fraction
from functools import cache

import nbformat
import pytest

from shoplib.draw import pen
from shoplib.draw.scene import Chain, Label, Leader, Running
from shoplib.lessons import (
    each_size,
    fronts_shown,
    hardware_shown,
    hold_shown,
    joint_page,
    page_01,
    page_02,
    page_03,
    practice_shown,
    sheets_shown,
    trial_shown,
    wrong_box,
)
from shoplib.lessons.figure import Figure
from shoplib.lessons.worked import Worked
from shoplib.measure import INCH, INCH_STYLE, MM, MM_STYLE, read_length, write_brief
from shoplib.measure.traced import Choice, Leaf, sum_of
from shoplib.words.working import leaves
from tests.notebook_checks import EXPECTED
from tests.pages import JOINTS
from tests.test_notebooks import ROOT

PAGES = [*sorted((ROOT / "notebooks").glob("0*.ipynb")), *JOINTS]
TOLD_ELSEWHERE = {
    "01 readings_worked": "a tape read step by step: each line is its whole sum",
    "01 halves_worked": "half of a given length: each line is its whole sum",
    "01 limits_worked": "rows of PS 1, looked up",
    "01 decimals_worked": "from a decimal to a mark: each line is its whole sum",
    "01 wrong_half": "a drawn tape; the words below say what is halved",
    "04 square_worked": "the lean is no sum of lengths: its line gives the rule and its three readings",
    "04 leaning": "drawn from the three readings of the table above, and the lean that its last line works out",
    "08 buying_worked": "things to buy, by the names that they are sold under: it tells how many and what they cost",
    **dict.fromkeys(("sp in_section", "sp too_deep", "sp too_short"),
                    "half of the fit that was set, seen along a slant: no sum of lengths"),
    "sp degrees_worked": "angles are no sums of lengths: each line gives its rule",
    "da practised_hand": "what a saw left, drawn by chance: its words tell the readings that were taken",
    "da trusting_the_scales": "what a saw left, drawn by chance: its words tell each dado by how much it is off",
}
"""The figures with a size that the fold does not tell, each with the reason."""

OF_CHANCE = ("trial_worked", "trial_trusted")
"""On the page of any joint: what a machine left, drawn by chance; the words tell what was read, and what is off."""

LENGTH = re.compile(r"(?<![\d./])(?:\d+ )?\d+(?:/\d+|\.\d+)? (?:in|mm)\b(?: \([+-][\d.]+ (?:in|mm)\))?")
NO_SIZE = re.compile(r"(?:down to the next|to the nearest|marks of|screw,) (?:\d+ )?\d+(?:/\d+|\.\d+)? (?:in|mm)")
"""The marks that something is rounded to, and what a metric screw is called."""
NUMBERED = re.compile(r"(?:dowel|board|spline) \d")
"""A name that ends in a number, which is no size."""


def figures(page, unit):
    """The compared figures of a page in one unit, each by the number of the page and the name of its function."""
    names = {}
    for cell in nbformat.read(page, as_version=4).cells:
        if cell.cell_type != "code":
            continue
        *before, last = ast.parse(cell.source).body
        exec(compile(ast.Module(before, []), page.name, "exec"), names)
        if EXPECTED not in cell.metadata.get("tags", ()):
            continue
        call = ast.unparse(last)
        if f"'{'mm' if unit == 'in' else 'in'}'" in call:
            continue
        shown = eval(call, names)
        if isinstance(shown, Worked | Figure):
            yield f"{page.stem[:2]} {call.partition('(')[0]}", shown


def noted(monkeypatch, unit):
    """From now on the pages show this unit: gives the scenes that are drawn and the sizes whose working is told, each
    after the text that it is told of, as they come."""
    shown = (page_01, page_02, page_03, wrong_box, fronts_shown, hardware_shown, hold_shown, joint_page, practice_shown,
             sheets_shown, trial_shown)
    for module in shown:
        monkeypatch.setattr(module, "unit_in_use", lambda: unit)
    scenes, page, asked, told = [], pen._page, [], each_size.working_of
    monkeypatch.setattr(pen, "_page", lambda scene, *rest, **how: scenes.append(scene) or page(scene, *rest, **how))
    monkeypatch.setattr(
        each_size, "working_of",
        lambda size, shown, style: asked.append((shown, size)) or told(size, shown, style),
    )
    return scenes, asked


@pytest.fixture(scope="module")
def all_in(tmp_path_factory):
    """In a unit: every compared figure with its scene, and every size whose working was told. They are made once."""
    @cache
    def found(unit):
        with pytest.MonkeyPatch.context() as monkeypatch:
            monkeypatch.setenv("SHOPLIB_WORKBOOK", str(tmp_path_factory.mktemp("kept")))
            scenes, asked = noted(monkeypatch, unit)
            made = [
                (name, shown, scenes.pop() if scenes else None)
                for page in PAGES for name, shown in figures(page, unit)
            ]
        return made, asked

    return found


def read(text):
    """A length as it is shown, in ticks, and by how much it may be off: half of its last digit, or its last mark."""
    whole, _, rest = text.partition(" (")
    number, unit = whole.rsplit(" ", 1)
    ticks = read_length(whole, zero=True)
    if rest:
        sign = -1 if rest[0] == "-" else 1
        return ticks + sign * read_length(rest[1:-1]), INCH // 10_000
    if "." in number:
        digits = len(number.partition(".")[2])
        return ticks, max(Fraction(INCH if unit == "in" else MM, 2 * 10**digits), INCH // 5000)
    return ticks, INCH // 500 + 1 if unit == "in" else MM // 20 + 1  # a shop sets no less: DEVELOPERS.md


def lengths(text):
    return [read(found) for found in LENGTH.findall(text)]


def shown_in(worked):
    """Every length of a table's title and lines; what a title says behind its colon was given, and has no working."""
    told = [worked.title.partition(": ")[0], *(part for line in worked.lines for part in line)]
    return [found for text in told for found in LENGTH.findall(NO_SIZE.sub("", text))]


def shown_on(scene, unit):
    """Every length that a drawing writes at a dimension or a leader, in a label of its own, or in a line round it."""
    style = INCH_STYLE if unit == "in" else MM_STYLE
    for told in scene.told:
        if told.line in (scene.title, scene.note, *scene.legend):
            yield from (write_brief(size, style, decimal=True) for _, size in told.sizes)
    note = re.compile(r"^(?:[a-z ]+ )?(?=\d)(?:(?:\d+ )?\d+/\d+|\d+(?:\.\d+)?)(?: \([+-][\d.]+\))?(?: (?:in|mm))?$")
    for item in scene.items:
        texts = item.texts if isinstance(item, Chain | Running) else [item.text] if isinstance(item, Leader) else []
        if isinstance(item, Label):
            # "1" alone is the number of a part
            texts = item.texts[:1] if re.fullmatch(r"\d+[ .][\d/]+", item.texts[0]) else []
            for _, size in item.sizes:
                yield write_brief(size, style, decimal=True)
        for text in texts:
            text = " ".join(text.split())
            if note.match(text) and not NUMBERED.fullmatch(text):
                yield LENGTH.search(each_size._with_unit(text, unit))[0]


def near(one, others):
    ticks, off = one
    return any(abs(abs(ticks) - abs(other)) <= off + more for other, more in others)


def untold(name, shown, scene, unit):
    """The sizes of a figure that neither begin a working nor have a name in one."""
    heads = [length for line in shown.why for length in lengths(line.partition(" = ")[0])]
    named = [length for line in shown.why for length in lengths(line)]
    if isinstance(shown, Figure):
        if scene is None:  # a chart, whose words tell its sizes
            return [text for text in LENGTH.findall(shown.alt) if not near(read(text), named)]
        return [text for text in shown_on(scene, unit) if not near(read(text), heads)]
    missing = [text for text in shown_in(shown) if read(text)[0] and not near(read(text), named)]
    results = [text for _, how, comes_to in shown.lines if how for text in LENGTH.findall(comes_to)]
    return missing + [text for text in results if read(text)[0] and not near(read(text), heads)]


def test_no_size_of_a_figure_is_without_its_working(unit, all_in):
    without, (made, _) = {}, all_in(unit)
    for name, shown, scene in made:
        missing = untold(name, shown, scene, unit)
        if missing and not name.endswith(OF_CHANCE):
            without.setdefault(name, []).extend(missing)
    assert len(made) > 60
    assert without.keys() == TOLD_ELSEWHERE.keys(), {
        name: found for name, found in without.items() if name not in TOLD_ELSEWHERE
    }


def test_each_working_stands_beside_the_size_that_is_shown(unit, all_in):
    _, asked = all_in(unit)
    assert len(asked) > 250
    mark = INCH // 128 if unit == "in" else MM // 20  # what is too much or too little is told to the nearest mark
    for shown, size in asked:
        ticks, off = lengths(shown)[-1]
        assert abs(ticks - abs(size)) <= max(off, mark), (shown, size)


def test_every_number_of_a_working_has_a_name(unit, all_in):
    """No bare number is left in a sum, and what it ends in says where it comes from."""
    _, asked = all_in(unit)
    for shown, size in asked:
        waiting = [sum_of(size)]
        while waiting:
            total = waiting.pop()
            assert not (total.terms and total.bare), (shown, total)
            for atom, _ in total.terms:
                if not isinstance(atom, Leaf):
                    waiting += atom.among if isinstance(atom, Choice) else [atom.of]
        assert all(one.name and one.kind in ("chosen", "measured", "table") for one in leaves(size)), shown


def test_the_lines_under_a_joint_are_told_by_the_names_of_their_sizes(unit, own_folder, monkeypatch):
    """They stand alone in the fold: a clearance is no dimension of the drawing, and nothing else would tell of it."""
    noted(monkeypatch, unit)
    heads = [line.partition(" = ")[0] for line in page_03.loose().why]
    assert heads[-4:] == {
        "in": ["width of the cut 3/4 in", "depth of the cut 1/4 in", "clearance across the cut 0.046 in",
               "shelf gains 1/4 in"],
        "mm": ["width of the cut 18 mm", "depth of the cut 6 mm", "clearance across the cut 0.5 mm",
               "shelf gains 6 mm"],
    }[unit]
    assert page_01.strip_without_kerfs().why[-1].startswith("each kerf ")


def test_the_bottom_by_hand():
    """34 1/2 - 2 x 0.703 + 2 x 1/4 = 33.594, and each of these by what the lesson calls it."""
    line = next(line for line in page_02.bottom_worked("in").why if line.startswith("bottom"))
    assert line == (
        "bottom, length 33.594 in = case width 34 1/2 in - 2 x thickness of case sheet 0.703 in + 2 x rabbet depth of "
        "the case corners 1/4 in"
    )


def test_it_is_folded_and_read_without_a_kernel():
    """Each saved page has the workings as a closed fold with a list: markup that is shown and read out as it is."""
    for page in PAGES:
        kept = [
            "".join(output.data.get("text/html", "")) for cell in nbformat.read(page, as_version=4).cells
            for output in cell.get("outputs", ()) if EXPECTED in cell.metadata.get("tags", ())
        ]
        folds = [re.search(r"<details><summary>(.*?)</summary><ul>(.*?)</ul></details>", each) for each in kept]
        found = [html.unescape(fold[2]) for fold in folds if fold]
        assert found and all(fold[1] == each_size.HEADING for fold in folds if fold), page.stem
        assert all(" = " in row for fold in found for row in re.findall("<li>(.*?)</li>", fold)[:1])
        assert not any("<details open" in each for each in kept)


def test_a_number_that_is_put_in_bare_is_found(monkeypatch):
    from shoplib.measure.traced import leaf

    _, asked = noted(monkeypatch, "in")
    each_size.why_each([("side", leaf(9 * INCH, "width") - INCH)], INCH_STYLE)
    ((_, size),) = asked
    assert sum_of(size).terms and sum_of(size).bare
