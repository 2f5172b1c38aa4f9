"""What a learner has tried and found, kept on disk beside the learner's work.

It outlives the kernel. The file is written whole or not at all; one that cannot be read is put aside
under another name, so that nothing is lost, and a new one is begun.
"""

import json
from collections.abc import Mapping
from dataclasses import asdict, dataclass
from pathlib import Path

from shoplib.documents.atomic import WriteError, write_files
from shoplib.lessons.choice import workbook_folder
from shoplib.lessons.say import UNIT_WORDS

FILE = "progress.json"
ASIDE = "progress-unreadable.json"


@dataclass(frozen=True, slots=True)
class Tried:
    """How one exercise stands: how many answers were judged, and whether one of them was right.

    `version` is that of the exercise: with new numbers it is a new question. `unit` is the one that its numbers
    were in, at the last right answer or else the last one; empty in files from before it was kept.

    >>> print(Tried(3, True, unit="in"), "/", Tried(3, True, unit="in").told("mm"))
    right, tried 3 times / right with its numbers in inches, tried 3 times
    """

    tries: int = 0
    right: bool = False
    version: int = 1
    unit: str = ""

    def __str__(self) -> str:
        return self.told(self.unit)

    def told(self, unit: str) -> str:
        """How it stands for whoever works in `unit`: in the other one, the numbers were others."""
        times = "once" if self.tries == 1 else f"{self.tries} times"
        other = f" with its numbers in {UNIT_WORDS[self.unit]}" if self.unit and self.unit != unit else ""
        return f"{'right' if self.right else 'not yet right'}{other}, tried {times}"


def read_progress(folder: Path | None = None) -> dict[str, Tried]:
    """What was tried, by exercise; nothing where there is no file, or none that can be read."""
    try:
        return _read(_kept(folder or workbook_folder())) or {}
    except WriteError:
        return {}


def note_answer(exercise: str, version: int, right: bool, folder: Path | None = None, unit: str = "") -> Tried:
    """Count one answer that was judged, with its numbers in `unit`, and keep it. What was right once stays right.

    Raises WriteError where the folder cannot be written, or what is kept there cannot be read just now.
    """
    folder = folder or workbook_folder()
    kept = _read(_kept(folder)) or {}
    before = kept.get(exercise, Tried(version=version))
    if before.version != version:
        before = Tried(version=version)
    now = Tried(
        before.tries + 1, before.right or right, version, before.unit if before.right and not right else unit
    )
    _save(folder, kept | {exercise: now})
    return now


def clear_progress(folder: Path | None = None) -> None:
    """Begin anew: forget every exercise. Raises WriteError where the folder cannot be written."""
    folder = folder or workbook_folder()
    if (folder / FILE).exists():
        _save(folder, {})


def _save(folder: Path, kept: Mapping[str, Tried]) -> None:
    files = {FILE: json.dumps({"format": 1, "exercises": {id: asdict(one) for id, one in kept.items()}}).encode()}
    before = _kept(folder)
    if before and _read(before) is None:
        files[ASIDE] = before
    write_files(folder, files)


def _kept(folder: Path) -> bytes:
    """The file as it lies there; empty where there is none. Raises WriteError where the system will not give it.

    A file that is only held by another program at this moment must not be taken for none, and be replaced.
    """
    try:
        return (folder / FILE).read_bytes()
    except (FileNotFoundError, NotADirectoryError):
        return b""
    except OSError as fault:
        raise WriteError(f"{folder / FILE} cannot be read just now ({fault.strerror}); nothing was changed.") from None


def _read(content: bytes) -> dict[str, Tried] | None:
    """The exercises of the file's content, or None where it is not such a file."""
    try:
        rows = json.loads(content.decode(errors="replace"))["exercises"]
        return {id: _checked(Tried(**row)) for id, row in rows.items()}
    except (ValueError, KeyError, TypeError, AttributeError, RecursionError):
        return None


def _checked(tried: Tried) -> Tried:
    kinds = ((tried.tries, int), (tried.right, bool), (tried.version, int))
    if any(type(value) is not kind for value, kind in kinds) or tried.unit not in ("", *UNIT_WORDS):
        raise ValueError("not such a row")
    return tried
