"""What the page on measuring shows beside its exercises: worked sums, panels, the drill, and what goes wrong."""

from decimal import Decimal

from shoplib.draw.saw_line import saw_line, sawn_strip
from shoplib.draw.scene import Scene
from shoplib.draw.tape import tape
from shoplib.lessons.ask import NOT_CHOSEN, keep, standing_of
from shoplib.lessons.choice import BEFORE_ANY, read_choice, unit_in_use
from shoplib.lessons.drill import DRILL, VERSION, drill_readings
from shoplib.lessons.each_size import why_each
from shoplib.lessons.figure import Figure
from shoplib.lessons.fractions_slipped import rounded_down
from shoplib.lessons.large_type import in_type, large_in_use
from shoplib.lessons.mark_table import MarkTable
from shoplib.lessons.say import Say, caliper_text
from shoplib.lessons.worked import Worked
from shoplib.live.drill_box import DrillBox
from shoplib.live.panel import Panel
from shoplib.live.saw_panel import saw_panel
from shoplib.live.sheet_panel import FIRST, PLACES, sheet_panel
from shoplib.live.tape_panel import halved, tape_panel
from shoplib.measure import INCH, INCH_STYLE, MM, Style, read_length, to_step, write_brief, write_length, write_measured
from shoplib.measure.traced import leaf
from shoplib.model.sheet import Sheet
from shoplib.model.strip import SawSide, cut_at, equal_pieces, marked_without_kerf
from shoplib.tables.plywood import PlywoodLimits, plywood_limits
from shoplib.words.tape import spoken, sum_text

PICTURE = (540.0, 260.0)

STRIP = {"in": ("35 7/8 in", "1/8 in", 3), "mm": ("912 mm", "3 mm", 3)}
"""The worked example: a strip, the kerf, and how many spacers it is to give."""

BOARD = {"in": ("48 in", "12 in", "1/8 in"), "mm": ("1200 mm", "300 mm", "3 mm")}
"""The board that the page saws: its length, the line, the kerf; the saw panel begins with it too."""

READINGS = {"in": ("2 5/8 in", "7 7/16 in", "11 23/32 in"), "mm": ("67 mm", "189 mm", "298.5 mm")}
READING, SIDE = "0.710 in", "14 3/4 in"
"""A sheet as calipers read it, and the side that two such boards come off: the sum of the last exercise."""

HALVES = {"in": ("9 in", "7/8 in", "13 5/8 in", "23 5/16 in"), "mm": ("90 mm", "75 mm", "347 mm", "592.6 mm")}


def tape_reader() -> Panel:
    """The panel of the tape, in the learner's unit."""
    return in_type(tape_panel(unit_in_use()))


def calipers() -> Panel:
    """The panel of the calipers, in the learner's unit."""
    return in_type(sheet_panel(unit_in_use()))


def sawing() -> Panel:
    """The panel of the line and the kerf, in the learner's unit."""
    return in_type(saw_panel(unit_in_use()))


def drill() -> DrillBox:
    """Ten readings off a tape, the learner's own, in the learner's unit."""
    choice = read_choice()
    chosen = choice or BEFORE_ANY
    return DrillBox(
        "Drill: ten readings",
        "Where does the pointer stand? Type what the tape says and press Enter; once it is right, Enter goes on. "
        "There is no clock.",
        chosen.unit,
        lambda turn: drill_readings(chosen.learner, chosen.unit, turn),
        note="" if choice else NOT_CHOSEN,
        standing=standing_of(DRILL, VERSION, chosen.unit),
        keep=lambda judged, done: keep(DRILL, VERSION, judged.kind, done, chosen.unit),
        large=large_in_use(),
    )


def spacers_worked(unit: str) -> Worked:
    """Equal spacers from one strip, and the sum that must close again."""
    say, (length, kerf, count) = Say(unit), STRIP[unit]
    strip, cut = leaf(read_length(length), "the strip"), leaf(read_length(kerf), "kerf")
    each, rest = equal_pieces(strip, count, cut)
    dust = (count - 1) * cut
    return Worked(
        f"{count} equal spacers from a strip of {length}",
        [
            ("cuts between them", f"{count} - 1", str(count - 1)),
            ("gone as dust", f"{count - 1} x {kerf}", say.length(dust)),
            ("wood that is left", f"{length} - {say.length(dust)}", say.length(strip - dust)),
            ("each spacer", f"{say.length(strip - dust)} / {count}", say.length(each)),
            ("close the sum", f"{count} x {say.length(each)} + {count - 1} x {kerf}",
             say.length(count * each + dust + rest)),
        ],
        why_each([("gone as dust", dust), ("wood that is left", strip - dust), ("each spacer", each),
                   ("closed again", count * each + dust + rest)], say.style),
    )


def readings_worked(unit: str) -> Worked:
    """Three readings, step by step, each on a finer tape."""
    marks = ("1/8 in", "1/16 in", "1/32 in") if unit == "in" else ("1 mm", "1 mm", "0.5 mm")
    lines = []
    for text, finest in zip(READINGS[unit], marks, strict=True):
        ticks, style = read_length(text), Style.of(unit, finest)
        lines.append((spoken(ticks, style), sum_text(ticks, style), Say(unit).length(ticks)))
    return Worked("Three readings", lines)


def halves_worked(unit: str) -> Worked:
    """Halves, and the same in the other unit."""
    other = "mm" if unit == "in" else "in"
    lines = []
    for text in HALVES[unit]:
        (_, whole), (_, half) = halved(read_length(text), 1)
        says = Say(unit).length(half)
        lines.append((f"half of {text}", f"{Say(unit).length(whole)} / 2", f"{says}, or {caliper_text(half, other)}"))
    return Worked("Halves", lines)


def sheet_worked(unit: str) -> Worked:
    """The sheet that the caliper panel begins with: its readings, the mean and the thickest."""
    name, texts = FIRST[unit]
    readings = [
        leaf(read_length(text), f"reading {place}", "measured") for place, text in zip(PLACES, texts, strict=True)
    ]
    sheet = Sheet(f"the {name} sheet", "plywood", leaf(read_length(name), "thickness by name"), tuple(readings))
    count = len(sheet.readings)
    mean, most = (caliper_text(size, unit) for size in (sheet.thickness, sheet.thickest))
    thinner = sheet.nominal - sheet.thickness
    less = caliper_text(thinner, unit)
    return Worked(
        f"A sheet sold as {name}",
        [
            *((place, "", caliper_text(reading, unit)) for place, reading in zip(PLACES, sheet.readings, strict=True)),
            ("mean, for sums", f"all {count} added up, / {count}", mean),
            ("thickest, for a slot", "", most),
            ("thinner than its name by", f"{name} - {mean}", less),
        ],
        why_each(
            [("mean", sheet.thickness), ("thickest", sheet.thickest), ("thinner than its name by", thinner)],
            Say(unit).style,
        ),
    )


def decimals_worked() -> Worked:
    """A caliper reading on two rules, and the sum of the whole set, that ends on no mark."""
    lines = []
    for finest in (32, 64):
        mark = to_step(read_length(READING), INCH // finest) // (INCH // finest)
        marked = write_length(mark * INCH // finest, INCH_STYLE)
        times = f"{Decimal(_behind(READING)) * finest:.1f}"
        how = f"{_behind(READING)} x {finest} = {times}, so {mark}"
        lines.append((f"{READING}, marks of 1/{finest} in", how, marked))
    between = read_length(SIDE) - 2 * read_length(READING)
    on_rule = to_step(between, INCH // 64)
    tops, says = on_rule % INCH // (INCH // 64), caliper_text(between, "in")
    how = f"{_behind(says)} x 64 = {Decimal(_behind(says)) * 64:.1f}, so {tops}"
    lines += [
        ("between two boards", f"{caliper_text(read_length(SIDE), 'in')} - 2 x {READING}", says),
        (says, how, write_length(on_rule, INCH_STYLE)),
    ]
    return Worked(f"From a decimal to a mark: {READING}, and {SIDE} - 2 x {READING}", lines)


def _behind(text: str) -> str:
    """What stands behind the point of a length, as a decimal: `13.330 in` gives `0.330`."""
    return "0." + text.removesuffix(" in").partition(".")[2]


def sixteenths() -> MarkTable:
    """The sixteenths of an inch as decimals."""
    return MarkTable("Sixteenths of an inch as decimals", [
        (write_length(top * INCH // 16, INCH_STYLE), write_measured(top * INCH // 16, INCH_STYLE))
        for top in range(1, 16)
    ])


def limits_worked() -> Worked:
    """What PS 1 lets the sheets of its commonest names be (NIST Voluntary Product Standard PS 1, PS 1-09/-19)."""
    rows = plywood_limits()
    names = ("1/4 in", "1/2 in", "23/32 in", "3/4 in")
    return Worked(
        "PS 1, unsanded, where water is 9 % of the weight of the dry wood",
        [(f"sold as {name}", "", _from_to(rows[read_length(name)])) for name in names],
    )


def _from_to(row: PlywoodLimits) -> str:
    return f"{write_measured(row.least, INCH_STYLE)} to {write_measured(row.greatest, INCH_STYLE)}"


def sides_worked(unit: str) -> Worked:
    """One line, one kerf, three places for the blade."""
    say, (board, line, kerf), lines, sizes = Say(unit), BOARD[unit], [], []
    for side, called in (("waste side", "on the waste side"), ("on the line", "on the line"),
                         ("keep side", "on the keep side")):
        kept, cut, rest = cut_at(*_board(unit), side)
        lines.append((called, f"{say.length(kept)} + {say.length(cut)} + {say.length(rest)}",
                      say.length(kept + cut + rest)))
        sizes += [(f"{called}: piece to keep", kept), (f"{called}: the rest", rest),
                  (f"{called}: together", kept + cut + rest)]
    return Worked(f"A board of {board}, a line at {line}, a kerf of {kerf}", lines, why_each(sizes, say.style))


def _board(unit: str) -> tuple[int, int, int]:
    """The board of the page, its line and the kerf, in ticks that carry their names."""
    board, line, kerf = (
        leaf(read_length(text), name) for text, name in zip(BOARD[unit], ("board", "line", "kerf"), strict=True)
    )
    return board, line, kerf


def wrong_side(side: SawSide) -> Figure:
    """The board of the page sawn on another side of its line: the picture, and what that does."""
    unit = unit_in_use()
    board, line, kerf = _board(unit)
    pieces, style = cut_at(board, line, kerf, side), Say(unit).style
    short = Say(unit).length(line - pieces.kept)
    return _figure(saw_line(line, pieces, side, style), [
        f"The piece to keep is {short} short, and no saw puts wood back. The rest is as much too long."
    ])


def strip_without_kerfs() -> Figure:
    """A strip marked in three equal parts, kerfs forgotten."""
    unit = unit_in_use()
    (length, count), said = (("36 in", 3) if unit == "in" else ("900 mm", 3)), BOARD[unit][2]
    board, (_, _, kerf), style = leaf(read_length(length), "strip"), _board(unit), Say(unit).style
    pieces = marked_without_kerf(board, count, kerf)
    lacks = pieces[0] - pieces[-1]
    return _figure(sawn_strip(board, pieces, kerf, style, pieces[0]), [
        f"{count - 1} cuts of {said} came out of the last piece: it is {write_brief(lacks, style)} shorter than the "
        "others."
    ])


def wrong_half() -> Figure:
    """Half of an odd top number taken by halving the top: where that stands on the tape."""
    unit = unit_in_use()
    whole = INCH * 7 // 8 if unit == "in" else 75 * MM
    style = Style("in", INCH // 16) if unit == "in" else Style("mm", MM // 2)
    (_, _), (_, half) = halved(whole, 1)
    wrong, say = rounded_down(whole, unit), Say(unit)
    scene = tape(half, style, "half")
    return _figure(scene, [
        f"Half of {say.length(whole)} is {say.length(half)}. Whoever says {say.length(wrong)} is "
        f"{say.length(half - wrong)} short, and has two ends that differ by {say.length(2 * (half - wrong))}."
    ])


def _figure(scene: Scene, words: list[str]) -> Figure:
    return Figure.of(scene, PICTURE, words, Say(unit_in_use()).style)
