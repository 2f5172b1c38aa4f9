"""A table for a spreadsheet that writes 12,5 where others write 12.5.

Such a spreadsheet takes a comma for the decimal sign, parts the cells of a CSV file by semicolons, and reads 12.5 as a
day in May. So it gets a file of its own. Lengths in inches keep their point, as inch rules and calipers have it.
"""

import csv
import io
import re

_NUMBER = re.compile(r"([+-]?\d+)\.(\d+)")
_MILLIMETRES = re.compile(r"(\d+)\.(\d+)(?= mm\b)")
"""A length with its unit: the dot in the name `front 1.1` is no decimal sign."""


def with_decimal_comma(table: str) -> bytes:
    r"""The CSV text `table` anew: cells parted by semicolons, a decimal comma in numbers and in millimetres.

    It begins with the mark by which spreadsheets know UTF-8 (a byte order mark), and its lines end as RFC 4180 asks.
    Three decimals get a fourth, for 565,539 might be read as more than half a million.

    >>> table = 'names,length,length_mm\nfront 1.1,601.5 mm,601.5\nshelf,0.703 in,565.539\n'
    >>> with_decimal_comma(table).decode("utf-8-sig").splitlines()
    ['names;length;length_mm', 'front 1.1;601,5 mm;601,5', 'shelf;0.703 in;565,5390']
    """
    out = io.StringIO()
    writer = csv.writer(out, delimiter=";")
    for row in csv.reader(io.StringIO(table)):
        writer.writerow([
            _comma(number) if (number := _NUMBER.fullmatch(cell)) else _MILLIMETRES.sub(_comma, cell) for cell in row
        ])
    return out.getvalue().encode("utf-8-sig")


def _comma(number: re.Match[str]) -> str:
    whole, decimals = number.groups()
    return f"{whole},{decimals}{'0' if len(decimals) == 3 else ''}"
