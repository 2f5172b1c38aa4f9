"""A table for a spreadsheet that writes 12.5, and for one that writes 12,5.

The latter takes a comma for the decimal sign, parts the cells of a CSV file by semicolons, and reads 12.5 as a
day in May. So it gets a file of its own. Lengths in inches keep their point, as inch rules and calipers have it.
"""

import csv
import io
import re

_NAMES = ("names", "sheet")
"""Columns of names, which may hold a length: `birch 6.5 mm`."""

_NUMBER = re.compile(r"([+-]?\d+)\.(\d+)")
_MILLIMETRES = re.compile(r"(\d+)\.(\d+)(?= mm\b)")
"""A length with its unit, in a sentence."""


def with_decimal_point(table: str) -> bytes:
    r"""The CSV text as it is, for a spreadsheet that writes 12.5.

    Where it has a sign beyond ASCII, an accent in a name, it begins with the mark of UTF-8 (a byte order mark): without
    it some spreadsheets show two signs for one.

    >>> with_decimal_point("birch"), with_decimal_point("hêtre")[:3]
    (b'birch', b'\xef\xbb\xbf')
    """
    return table.encode("ascii" if table.isascii() else "utf-8-sig")


def with_decimal_comma(table: str) -> bytes:
    r"""The CSV text `table` anew: cells parted by semicolons, a decimal comma in numbers and in millimetres.

    It begins with the mark by which spreadsheets know UTF-8 (a byte order mark), and its lines end as RFC 4180 asks.
    What has a name keeps it, whatever is in it. Three decimals get a fourth, for 565,539 might be read as more than
    half a million.

    >>> table = 'names,length,length_mm\nfront 1.1,601.5 mm,601.5\nshelf,0.703 in,565.539\n'
    >>> with_decimal_comma(table).decode("utf-8-sig").splitlines()
    ['names;length;length_mm', 'front 1.1;601,5 mm;601,5', 'shelf;0.703 in;565,5390']
    """
    out = io.StringIO()
    writer = csv.writer(out, delimiter=";")
    head, *rows = csv.reader(io.StringIO(table))
    writer.writerow(head)
    for row in rows:
        writer.writerow([cell if name in _NAMES else _with_comma(cell) for name, cell in zip(head, row, strict=True)])
    return out.getvalue().encode("utf-8-sig")


def _with_comma(cell: str) -> str:
    number = _NUMBER.fullmatch(cell)
    return _comma(number) if number else _MILLIMETRES.sub(_comma, cell)


def _comma(number: re.Match[str]) -> str:
    whole, decimals = number.groups()
    return f"{whole},{decimals}{'0' if len(decimals) == 3 else ''}"
