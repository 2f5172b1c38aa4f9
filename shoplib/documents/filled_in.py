"""A to_measure.toml that somebody has written readings into is not lost when it is written anew."""

import tomllib
from collections.abc import Iterator, Mapping
from pathlib import Path

from shoplib.documents.last_print import kept_as
from shoplib.documents.to_measure import TO_MEASURE


def filled_in_by_hand(folder: Path, files: Mapping[str, bytes]) -> dict[str, bytes]:
    """The to_measure.toml of `folder` by a name to keep it under, if it has a reading that the one in `files` has not.

    One that cannot be read counts as filled in, with a slip: it is kept as well.

    >>> filled_in_by_hand(Path("no_such_folder"), {"to_measure.toml": b""})
    {}
    """
    place = folder / TO_MEASURE
    if TO_MEASURE not in files or not place.is_file() or place.is_symlink():
        return {}
    there = place.read_bytes()
    return {kept_as(folder, TO_MEASURE): there} if _has_more(there, files[TO_MEASURE]) else {}


def _has_more(there: bytes, new: bytes) -> bool:
    try:
        read = tomllib.loads(there.decode("utf-8-sig"))
    except ValueError:
        return True
    return not set(_readings(read)) <= set(_readings(tomllib.loads(new.decode())))


def _readings(table: Mapping, *above: str) -> Iterator[tuple[str, ...]]:
    """Each text that is filled in, behind the keys that lead to it."""
    for key, value in table.items():
        if isinstance(value, Mapping):
            yield from _readings(value, *above, key)
        elif value:
            yield (*above, key, str(value))
