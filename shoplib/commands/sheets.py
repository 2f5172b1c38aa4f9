"""`python3 -m shoplib sheets FILE --to FOLDER`: the boards of a project on sheets, the saw cuts, what to buy."""

import sys
import textwrap
from pathlib import Path

from shoplib.buying.laid import LaidOut
from shoplib.buying.list import BuyingList, buying_list
from shoplib.buying.seams import seam_area
from shoplib.buying.spare_parts import SheetSpare, spares
from shoplib.buying.stock_lines import stocked
from shoplib.checks import check
from shoplib.commands.progress import laid_out_told
from shoplib.documents.asked import NotUnderstood, folder_called
from shoplib.documents.atomic import WriteError, write_files
from shoplib.documents.before_cutting import STOPPED as PLAN_STOPPED
from shoplib.documents.board_scenes import file_name
from shoplib.documents.buying_file import UNUSED, buying_csv, buying_text, total_words, unused_words
from shoplib.documents.cut_order_file import cut_order_csv
from shoplib.documents.decimal_comma import with_decimal_point
from shoplib.documents.glossary import words_text
from shoplib.documents.plan_words import findings_text
from shoplib.documents.project_file import ProjectFileError, read_project
from shoplib.documents.sheets_file import sheets_text
from shoplib.documents.sheets_words import cures, lost_parts, section, sheets_words, verdict
from shoplib.draw.pen import draw
from shoplib.draw.sheet_layout import sheet_scenes
from shoplib.layout.pieces import LayoutError
from shoplib.model.cabinet import solve
from shoplib.model.project import ImpossibleProject

LAID_OUT, STOPPED, NOTHING = 0, 1, 2

_ABOUT = {
    "sheets.json": "the layouts and cuts in millimetres, for other programs",
    "cut_order.csv": "the cuts in their order, for a spreadsheet",
    "buying.txt": "what to buy now and later, what to measure first, to read",
    "buying.csv": "what to buy, for a spreadsheet",
}


def run(file: str, to: str, seconds: str = "10") -> int:
    """Lay out, write and tell; return 0 laid out, 1 a check of the plan says stop, 2 nothing is written.

    Better layouts are told while it runs; Ctrl+C takes the best so far, and a second one ends without writing.
    """
    try:
        folder_called(to, "my_sheets")
        cabinet = solve(read_project(file))
        stops = [finding for finding in check(cabinet) if finding.level == "stop"]
        found = laid_out_told(cabinet, seconds)
        left = spares(found)
        files = sheet_files(found, left, bool(stops))
    except (ProjectFileError, ImpossibleProject, LayoutError, NotUnderstood) as fault:
        print(textwrap.fill(str(fault), 79, break_long_words=False, break_on_hyphens=False), file=sys.stderr)
        return NOTHING
    except KeyboardInterrupt:
        print("Stopped; nothing is written.", file=sys.stderr)
        return NOTHING
    try:
        write_files(to, files)
    except WriteError as fault:
        print(textwrap.fill(str(fault), 79, break_long_words=False, break_on_hyphens=False), file=sys.stderr)
        return NOTHING
    judged = verdict(found, left)
    parts = [f"{cabinet.name}\n{judged}\n"]
    if stops:
        parts.append(findings_text(stops))
    parts.append(sheets_words(found, left))
    wanted = _wanted(found, left)
    parts += [section(UNUSED, unused_words(wanted)), f"{total_words(wanted)}\n"]
    parts += [words_text(parts), _where(Path(to), list(files))]
    if stops:
        parts.append("The boards do not go together yet: see under Stop, and buy and cut\nnothing before.\n")
    print("\n".join(filter(None, [*parts, judged])))
    return STOPPED if stops else LAID_OUT


def sheet_files(found: LaidOut, left: tuple[SheetSpare, ...], stopped: bool) -> dict[str, bytes]:
    """File name to content: everything that is written; where a check has `stopped` the plan, what is read says so."""
    wanted = _wanted(found, left)
    files = {
        "sheets.json": sheets_text(found).encode(),
        "cut_order.csv": with_decimal_point(cut_order_csv(found, stopped)),
        "buying.txt": (f"{PLAN_STOPPED}\n\n" * stopped + buying_text(wanted)).encode(),
        "buying.csv": with_decimal_point(buying_csv(wanted)),
    }
    taken: set[str] = set()
    for sheet, scene in sheet_scenes(found):
        files[f"{file_name(f'sheet {sheet.name}', taken)}.svg"] = draw(scene).encode()
    return files


def _wanted(found: LaidOut, left: tuple[SheetSpare, ...]) -> BuyingList:
    first = [*lost_parts(left), *cures(left, found.cabinet.style)]
    return buying_list(found.cabinet, stocked(found.sheets), first, seam_area(found))


def _where(folder: Path, names: list[str]) -> str:
    """What was written, and which drawings in the folder are left from an earlier layout."""
    drawings = [name for name in names if name.endswith(".svg")]
    text = [f"Written into {folder}"]
    text += [f"  {name:15}{about}" for name, about in _ABOUT.items()]
    text.append(f"  {'sheet-*.svg':15}{len(drawings)} drawings, one of each sheet, board or piece")
    left = sorted(path.name for path in folder.glob("sheet-*.svg") if path.name not in names)
    if left:
        many = f" and {len(left) - 3} more" if len(left) > 3 else ""
        text.append(f"Not of these layouts, and best taken out of the folder: {', '.join(left[:3])}{many}.")
    return "\n".join([*text, ""])
