"""What a learner has tried and found, kept on disk beside the learner's work.

It outlives the kernel. The file is written whole or not at all; one that cannot be read is put aside
under another name, so that nothing is lost, and a new one is begun.
"""

import json
from collections.abc import Mapping
from dataclasses import asdict, dataclass
from pathlib import Path

from shoplib.documents.atomic import write_files
from shoplib.lessons.choice import workbook_folder

FILE = "progress.json"
ASIDE = "progress-unreadable.json"


@dataclass(frozen=True, slots=True)
class Tried:
    """How one exercise stands: how many answers were judged, and whether one of them was right.

    `version` is that of the exercise: with new numbers it is a new question.
    """

    tries: int = 0
    right: bool = False
    version: int = 1

    def __str__(self) -> str:
        times = "once" if self.tries == 1 else f"{self.tries} times"
        return f"right, tried {times}" if self.right else f"not yet right, tried {times}"


def read_progress(folder: Path | None = None) -> dict[str, Tried]:
    """What was tried, by exercise; nothing where there is no file, or none that can be read."""
    try:
        text = ((folder or workbook_folder()) / FILE).read_text(encoding="utf-8")
    except (OSError, UnicodeDecodeError):
        return {}
    return _read(text) or {}


def note_answer(exercise: str, version: int, right: bool, folder: Path | None = None) -> Tried:
    """Count one answer that was judged, and keep it. What was right once stays right.

    Raises WriteError where the folder cannot be written.
    """
    folder = folder or workbook_folder()
    kept = read_progress(folder)
    before = kept.get(exercise, Tried(version=version))
    if before.version != version:
        before = Tried(version=version)
    now = Tried(before.tries + 1, before.right or right, version)
    _save(folder, kept | {exercise: now})
    return now


def clear_progress(folder: Path | None = None) -> None:
    """Begin anew: forget every exercise. Raises WriteError where the folder cannot be written."""
    folder = folder or workbook_folder()
    if (folder / FILE).exists():
        _save(folder, {})


def _save(folder: Path, kept: Mapping[str, Tried]) -> None:
    files = {FILE: json.dumps({"format": 1, "exercises": {id: asdict(one) for id, one in kept.items()}}).encode()}
    try:
        before = (folder / FILE).read_bytes()
    except OSError:
        before = b""
    if before and _read(before.decode(errors="replace")) is None:
        files[ASIDE] = before
    write_files(folder, files)


def _read(text: str) -> dict[str, Tried] | None:
    """The exercises of the file's text, or None where it is not such a file."""
    try:
        rows = json.loads(text)["exercises"]
        return {id: _checked(Tried(**row)) for id, row in rows.items()}
    except (ValueError, KeyError, TypeError, AttributeError, RecursionError):
        return None


def _checked(tried: Tried) -> Tried:
    if type(tried.tries) is not int or type(tried.right) is not bool or type(tried.version) is not int:
        raise ValueError("not such a row")
    return tried
