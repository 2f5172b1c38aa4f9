"""The cut list as a table for a spreadsheet (cut_list.csv) and as text for the terminal.

In the table `length`, `width` and `thickness` are the size at the saw, before edging goes on;
`finished_length` and `finished_width` are the size with the edging on.
"""

import csv
import io
import textwrap
from collections.abc import Iterable

from shoplib.building.riding import heights
from shoplib.documents.before_cutting import ALREADY_CUT, before_cutting
from shoplib.documents.cut_notes import cut_notes
from shoplib.documents.fixings import fixings
from shoplib.documents.hardware_page import screw_rows
from shoplib.documents.slides_section import stop_words
from shoplib.documents.standing import standing_words
from shoplib.lists.alike import told_of_each
from shoplib.lists.cut_list import Kind, kinds
from shoplib.lists.row_words import edging_words, joined_words, kind_cut_words, where_words
from shoplib.lists.writing import Writing
from shoplib.measure import to_step, write_length, write_mm
from shoplib.model.board import FRONTS
from shoplib.model.solved import Cabinet, ClosingSum, Finding
from shoplib.words.naming import and_list, boards_in_short, in_short
from shoplib.words.stages import STAGES

COLUMNS = (
    "stage", "count", "names", "sheet",
    "length", "width", "thickness", "length_mm", "width_mm", "thickness_mm", "edging", "cuts",
    "finished_length", "finished_width", "finished_length_mm", "finished_width_mm", "grain", "where",
    "before_cutting",
)  # fmt: skip
"""The columns of cut_list.csv, in order. The first twelve are what other programs may rely on."""

FORMULA_SIGNS = ("=", "+", "-", "@")

_WIDTH = 100


def safe_cell(text: str) -> str:
    """The text with an apostrophe before it where a spreadsheet would take it for a formula.

    >>> safe_cell("=HYPERLINK(1)"), safe_cell(" @home"), safe_cell("left side")
    ("'=HYPERLINK(1)", "' @home", 'left side')
    """
    return f"'{text}" if text.lstrip().startswith(FORMULA_SIGNS) else text


def cut_list_csv(cabinet: Cabinet, findings: Iterable[Finding] = ()) -> str:
    """The text of cut_list.csv: one row for each kind of board, with what must be read before it is cut.

    Lines end in a line feed on every system, cells are quoted only where they must be, and none
    begins with one of `FORMULA_SIGNS`. Save it as UTF-8.
    """
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(COLUMNS)
    findings = tuple(findings)
    for kind in kinds(cabinet):
        before = before_cutting(kind, cabinet, findings) if kind.stage >= cabinet.first_stage else (ALREADY_CUT,)
        cells = [*_cells(kind, cabinet), " ".join(before)]
        writer.writerow([safe_cell(cell) for cell in cells])
    return out.getvalue()


def _cells(kind: Kind, cabinet: Cabinet) -> list[str]:
    exact = Writing(cabinet.style, exact=True)
    length, width, thickness = kind.cut
    finished = kind.finished[:2]
    return [
        str(kind.stage),
        str(kind.count),
        "; ".join(kind.names),
        kind.sheet,
        exact.length(length),
        exact.length(width),
        exact.measured(thickness),
        *(write_mm(ticks) for ticks in kind.cut),
        edging_words(kind, exact),
        "; ".join(kind_cut_words(kind, cabinet, exact)),
        *(exact.length(ticks) for ticks in finished),
        *(write_mm(ticks) for ticks in finished),
        kind.grain,
        where_words(kind, cabinet),
    ]


def cut_list_text(cabinet: Cabinet) -> str:
    """The cut list to read: by stage, with what must be measured first, and the closing sums under it.

    Boards are told by what they are; their names one by one are in the table.
    """
    rows = kinds(cabinet)
    lines = [f"Cut list: {cabinet.name}", "", *_wrapped(sizes_words(cabinet), "")]
    for place in standing_words(cabinet):
        lines += ["", "Where it stands", "", *_wrapped(place, "  ")]
    told: dict[tuple[str, ...], Kind] = {}
    for stage in sorted({kind.stage for kind in rows}):
        lines += ["", f"Stage {stage}: {STAGES[stage]}", ""]
        if stage < cabinet.first_stage:
            lines += [*_wrapped(ALREADY_CUT, "  "), ""]
        to_measure = told_of_each([one.text for one in cabinet.waiting if one.stage == stage])
        if to_measure:
            lines += _wrapped("Do not cut these before measuring", "  ")
            lines += [line for text in to_measure for line in _wrapped(text, "    - ")]
            written = "and writing what you read into the project, under `measured` (the lines are in to_measure.toml)."
            lines += [*_wrapped(written, "  "), ""]
        if again := told_of_each(one.text for one in cabinet.again) if stage == FRONTS else []:
            lines += _wrapped("Do not cut these before measuring again", "  ")
            lines += [*(line for text in again for line in _wrapped(text, "    - ")), ""]
        for kind in rows:
            if kind.stage == stage:
                lines += _entry(kind, cabinet, told)
    lines += _hardware(cabinet)
    if cabinet.sums:
        lines += ["", "Closing sums", ""]
        for chain in cabinet.sums:
            lines += _wrapped(sum_text(chain, cabinet), "  ")
    return "\n".join(lines) + "\n"


def _hardware(cabinet: Cabinet) -> list[str]:
    """Heights of slides and runners, stops, screws, and fixings: each part only where the cabinet has any."""
    lines = []
    screws = [
        f"{row.count} {'brads' if row.brads else 'screws'} {row.gauge}, {write_length(row.length, cabinet.style)} "
        f"long, for {row.use}, into the {row.into}"
        for row in screw_rows(cabinet)
    ]
    for title, words in (
        ("Heights to set the slides by", _spacers(cabinet)),
        ("Stops", [line for text in stop_words(cabinet) for line in _wrapped(text, "  ")]),
        ("Screws", [line for text in screws for line in _wrapped(text, "  ")]),
        ("Fixings", [line for text in fixings(cabinet).lines for line in _wrapped(text, "  ")]),
    ):
        if words:
            lines += ["", title, "", *words]
    return lines


def _spacers(cabinet: Cabinet) -> list[str]:
    """Each height once, with the drawers that it is for."""
    writing = Writing(cabinet.style)
    alike: dict[tuple[str, int], list[str]] = {}
    for one in heights(cabinet):
        alike.setdefault((one.what, one.height), []).append(one.group)
    return [
        line
        for (what, ticks), groups in alike.items()
        for line in _wrapped(f"{and_list(in_short(groups))}: {writing.length(ticks)} {what}".rstrip(), "  ")
    ]


def sum_text(chain: ClosingSum, cabinet: Cabinet, exact: bool = True) -> str:
    """A chain of sizes in words, then in numbers, and what is left over if it does not close.

    Not `exact`, as on a screen, it shows nothing finer than a shop can set.
    """
    write = Writing(cabinet.style, exact)
    words = " + ".join(what for what, _ in chain.terms)
    numbers = " + ".join(
        (write.measured if what in chain.measured else write.length)(ticks) for what, ticks in chain.terms
    )
    text = f"{words} = {chain.total[0]}: {numbers} = {write.length(chain.total[1])}"
    if chain.rest == 0:
        return text
    which = "short" if chain.rest > 0 else "over"
    return f"{text}, but they come {write.length(abs(chain.rest))} {which}"


def sizes_words(cabinet: Cabinet) -> str:
    """How the sizes of the list are to be read: what they are of, what is rounded, and what stands in brackets."""
    text = (
        "Sizes are length (along the grain) x width x thickness, as they leave the saw. "
        "Cuts are set out on the finished board, to the near wall of the cut. "
    )
    text += "".join(f"{words} " for words in cut_notes(cabinet))
    rounded = any(to_step(ticks, cabinet.style.step) != ticks for board in cabinet.boards for ticks in board.cut_size)
    if rounded:
        step = write_length(cabinet.style.step, cabinet.style)
        least = "0.002 in" if cabinet.style.unit == "in" else "0.05 mm"
        text += (
            f"Thicknesses, and cuts that take a sheet, are decimals, for a caliper. Other lengths are at the nearest "
            f"{step}; where that is {least} or more off, true size less written size follows in brackets."
        )
    return text.strip()


def _entry(kind: Kind, cabinet: Cabinet, told: dict[tuple[str, ...], Kind]) -> list[str]:
    """One row; `told` has the rows above by their cuts, so that a long set of cuts is written out once."""
    writing = Writing(cabinet.style)
    length, width, thickness = kind.cut
    size = f"{writing.length(length)} x {writing.length(width)} x {writing.measured(thickness)}"
    grain = "grain along the length" if kind.grain == "length" else "grain either way"
    lines = _wrapped(f"{kind.count} x {boards_in_short(kind.boards)}", "  ")
    lines += _wrapped(f"{size}, {kind.sheet}, {grain}", "      ")
    edging = edging_words(kind, writing)
    if edging:
        finished = " x ".join(writing.length(ticks) for ticks in kind.finished[:2])
        lines += _wrapped(f"finished {finished} with edging: {edging}", "      ")
    if kind.mirror_of:
        lines += _wrapped(f"the mirror image of {kind.mirror_of}: lay the two side by side to mark them", "      ")
    cuts = kind_cut_words(kind, cabinet, writing)
    before = told.setdefault(cuts, kind)
    if len(cuts) > 1 and before is not kind and not kind.mirror_of:
        cuts = (f"cuts as in the {boards_in_short(before.boards)} above",)
    for phrase in cuts:
        lines += _wrapped(phrase, "      - ")
    joined = joined_words(kind, cabinet)
    return lines + (_wrapped(f"goes in: {joined}", "      ") if joined else [])


def _wrapped(text: str, indent: str) -> list[str]:
    return textwrap.wrap(text, _WIDTH, initial_indent=indent, subsequent_indent=" " * len(indent) + "  ")
