"""Reads a cut list that was typed, or edited in a spreadsheet: a table in a text file (CSV).

Columns stand in any order, under our own headings or the usual ones ("part", "qty", "L", "material"),
parted by commas, semicolons or tabs. Sizes are text with a unit; a column whose heading names the
unit (`length_mm`, `Width (in)`) may hold plain numbers. Name, length and width are needed. One line may
name several boards, parted by semicolons, commas or new lines in the cell.
"""

import csv
import io
import re
from dataclasses import dataclass
from pathlib import Path

from shoplib.lists.typed import Said, TypedRow
from shoplib.measure import LengthError, read_length

LARGEST_FILE = 2_000_000
"""Bytes; a list of a thousand boards has a tenth of that."""

_HEADINGS = {
    "names": "name names part parts board boards piece item description label",
    "count": "count qty quantity pieces pcs no number amount",
    "length": "length long len l",
    "width": "width wide w",
    "thickness": "thickness thick t th",
    "sheet": "sheet material stock",
    "stage": "stage",
    "edging": "edging edges banding",
    "cuts": "cuts joinery machining",
    "grain": "grain",
}
_COLUMNS = {word: column for column, words in _HEADINGS.items() for word in words.split()}
_COLUMNS |= {f"cut {size}": size for size in ("length", "width", "thickness")}
_COLUMNS |= {"finished length": "finished_length", "finished width": "finished_width"}
_SIZES = ("length", "width", "thickness", "finished_length", "finished_width")
_NEEDED = ("names", "length", "width")
_UNIT = re.compile(r'(?:^|[\s_(\[])(?:in\s+)?(mm|millimet(?:re|er)s?|in|inch|inches|")\s*[)\]]?\s*$', re.IGNORECASE)
_LINES_ABOVE = 20
"""A title and notes may stand above the headings, this many lines at most."""


class ListError(ValueError):
    """Nothing of the list can be read; the text is one sentence with the number of the line."""


@dataclass(frozen=True, slots=True)
class HandList:
    """The rows of a list, and a sentence for each cell or line that cannot be read.

    A row keeps what can be read of it.
    """

    rows: tuple[TypedRow, ...]
    unreadable: tuple[str, ...] = ()


Heading = tuple[str, str | None, str]
"""What a column holds, the unit that its heading names, and the heading itself."""


def read_hand_list(path: str | Path) -> HandList:
    """The list in a file.

    Raises ListError: the file cannot be opened, is not UTF-8, has no headings or no rows, or its
    quotation marks leave open where cells end.
    """
    path = Path(path)
    try:
        with path.open("rb") as file:
            data = file.read(LARGEST_FILE + 1)
    except OSError as fault:
        raise ListError(f"{path} cannot be opened ({fault.strerror}); give the path of a CSV file.") from None
    if len(data) > LARGEST_FILE:
        raise ListError(f"{path.name} is larger than any cut list; give the CSV file of the list itself.")
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError as fault:
        line = data[: fault.start].count(b"\n") + 1
        raise ListError(
            f"line {line} of {path.name} is not UTF-8 text; save the list from the spreadsheet as `CSV UTF-8`."
        ) from None
    return parse_hand_list(text)


def parse_hand_list(text: str) -> HandList:
    r"""The list in a text.

    >>> row, = parse_hand_list("Part;Qty;L;W (mm)\nleft side;1;860 mm;580,5\n").rows
    >>> row.names, row.count, row.length[0].ticks == 860 * 80_000, row.width[0].text
    (('left side',), 1, True, '580,5')
    >>> print(*parse_hand_list("part,qty,l,w\nside,two,1 m,1 m\ntop,1,2 m,\n").unreadable, sep="\n")
    line 2, count: `two` is no count; write a whole number such as `2`.
    line 3 (top) has no width; give it, or take the line out.
    """
    # Every kind of line end becomes one: csv would count a lone carriage return as part of a line.
    text = text.replace("\r\n", "\n").replace("\r", "\n")
    separator, skip = _separator(text)
    records = _records(text, separator, skip)
    if not records:
        raise ListError("the list is empty; it needs a line of headings, such as `names,length,width`, and rows.")
    (line, cells), *rest = records
    headings = _headings(line, cells)
    readers = [_RowReader(at, cells, headings) for at, cells in rest if any(cells)]
    if not readers:
        raise ListError(f"line {line} holds the headings and no rows follow it; add a line for each board.")
    rows = [reader.read() for reader in readers]
    return HandList(
        tuple(row for row in rows if row is not None),
        tuple(sentence for reader in readers for sentence in reader.unreadable),
    )


def _separator(text: str) -> tuple[str, int]:
    """The sign between the cells, and the number of lines above the headings."""
    lines = text.split("\n")[:_LINES_ABOVE]
    for number, line in enumerate(lines):
        for sign in ",;\t":
            held = {_heading(cell)[0] for cell in next(csv.reader([line], delimiter=sign), [])}
            if held.issuperset(_NEEDED):
                return sign, number
    first = next((number for number, line in enumerate(lines, 1) if line.strip()), 1)
    raise ListError(
        f"line {first} should hold the headings: one each for the names, the length and the width, "
        "such as `names,count,length,width`."
    )


def _records(text: str, separator: str, skip: int) -> list[tuple[int, list[str]]]:
    """Each record with the number of the line that it begins in."""
    lines = text.split("\n")[skip:]
    reader = csv.reader(io.StringIO("\n".join(lines)), delimiter=separator, strict=True)
    records, begins = [], skip + 1
    while True:
        try:
            cells = next(reader)
        except StopIteration:
            return records
        except csv.Error:
            raise ListError(
                f'line {begins}: a quotation mark stands alone; put `"` round a whole cell, and double the ones in it.'
            ) from None
        if any(cell.strip() for cell in cells):
            records.append((begins, [_unguarded(cell.strip()) for cell in cells]))
        begins = skip + reader.line_num + 1


def _unguarded(cell: str) -> str:
    """Without the apostrophe that keeps a spreadsheet from taking the cell for a formula."""
    return cell[1:] if cell[:1] == "'" and cell[1:].lstrip()[:1] in tuple("=+-@") else cell


def _heading(text: str) -> Heading:
    """What a heading means; an empty column name for one that is not read.

    >>> _heading("Length (mm)")[:2], _heading("width_mm")[:2], _heading("Qty.")[:2], _heading("colour")[:2]
    (('length', 'mm'), ('width', 'mm'), ('count', None), ('', None))
    """
    unit = _UNIT.search(text)
    base = text[: unit.start()] if unit else text
    words = " ".join(re.findall(r"[a-z]+", base.lower()))
    column = _COLUMNS.get(words, "")
    if unit is None or column not in _SIZES:
        return column, None, text.strip()
    return column, "mm" if unit[1].lower().startswith("m") else "in", text.strip()


def _headings(line: int, cells: list[str]) -> list[Heading]:
    headings = [_heading(cell) for cell in cells]
    seen: dict[tuple, str] = {}
    for column, unit, text in headings:
        if column and (column, unit) in seen:
            raise ListError(
                f"line {line}: the columns `{seen[column, unit]}` and `{text}` mean the same; keep one of them."
            )
        seen[column, unit] = text
    return headings


class _RowReader:
    """Reads one line, and keeps a sentence for each thing in it that cannot be read."""

    def __init__(self, line: int, cells: list[str], headings: list[Heading]) -> None:
        self._line, self._cells, self._headings = line, cells, headings
        self.unreadable: list[str] = []

    def read(self) -> TypedRow | None:
        """The row, as far as it can be read; None where it names no board."""
        line = self._line
        sizes: dict[str, list[Said]] = {size: [] for size in _SIZES}
        words: dict[str, str] = {}
        filled = set()
        shifted = any(self._cells[len(self._headings) :])
        if shifted:
            self.unreadable.append(
                f"line {line} has {len(self._cells)} cells under {len(self._headings)} headings; "
                "put a cell that holds the separating sign in quotation marks."
            )
        for cell, (column, unit, heading) in zip(self._cells, self._headings, strict=False):
            if column in _SIZES and cell:
                filled.add(column)
                if not shifted:
                    sizes[column] += self._said(cell, unit, heading)
            elif column:
                words[column] = cell
        names = tuple(name for name in (part.strip() for part in re.split("[;,\n]", words.get("names", ""))) if name)
        if not names:
            self.unreadable.append(f"line {line} has no name; write which board it is, such as `left side`.")
            return None
        if shifted:  # nothing after the stray sign stands under its own heading
            return TypedRow(line, names, (), ())
        for size in ("length", "width"):
            if size not in filled:
                missing = f"line {line} ({_short(names[0])}) has no {size}; give it, or take the line out."
                self.unreadable.append(missing)
        count = self._number(words.get("count", ""), "count")
        stage = self._number(words.get("stage", ""), "stage")
        kept = {column: words.get(column, "") for column in ("sheet", "edging", "cuts", "grain")}
        said = {size: tuple(found) for size, found in sizes.items()}
        return TypedRow(line, names, count=count, stage=stage, **said, **kept)

    def _said(self, cell: str, unit: str | None, heading: str) -> list[Said]:
        try:
            return [Said(heading, cell, read_length(cell, what=f"line {self._line}, {heading}", unit=unit))]
        except LengthError as fault:
            self.unreadable.append(str(fault))
            return []

    def _number(self, text: str, what: str) -> int | None:
        if not text:
            return None
        match = re.fullmatch(r"(\d{1,4})(?:[.,]0+)?(?: ?x)?", text, re.ASCII)
        if match is None or int(match[1]) == 0:
            self.unreadable.append(
                f"line {self._line}, {what}: `{_short(text)}` is no {what}; write a whole number such as `2`."
            )
            return None
        return int(match[1])


def _short(text: str) -> str:
    shown = "".join(sign if sign.isprintable() else "?" for sign in text)
    return shown if len(shown) <= 40 else shown[:40] + "..."
