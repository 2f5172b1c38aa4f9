"""Lines under `[measured]` that are still as to_measure.toml gave them: nothing between the quotes."""

from typing import Any


def without_unread(measured: Any) -> Any:
    """The `measured` table of a project file without the lines in which nothing is filled in.

    A line that is filled in by half stays, and so does what is no table: the reader tells what is wrong with it.

    >>> without_unread({"depths": {"bay 1": "", "bay 2": "19 3/4 in"}})
    {'depths': {'bay 2': '19 3/4 in'}}
    >>> without_unread({"openings": {"bay 1 drawer 1": {"front": " ", "back": ""}}})
    {'openings': {}}
    """
    if not isinstance(measured, dict):
        return measured
    return {
        heading: {name: line for name, line in lines.items() if not _unread(line)} if isinstance(lines, dict) else lines
        for heading, lines in measured.items()
    }


def _unread(line: Any) -> bool:
    if isinstance(line, dict):
        return bool(line) and all(_unread(value) for value in line.values())
    return isinstance(line, str) and not line.strip()
