"""What a learner chose once for the whole workbook: inches or millimetres.

It is kept in a small file beside the notebooks. Where the file is missing, cut short or cannot be
read, there is no choice yet, and the learner is asked again.
"""

import json
import os
import secrets
from dataclasses import dataclass
from pathlib import Path

from shoplib.documents.atomic import write_files
from shoplib.lessons.say import UNIT_WORDS

FILE = "choice.json"

FOLDER_VARIABLE = "SHOPLIB_WORKBOOK"
"""An environment variable that names another folder for what the workbook remembers."""


@dataclass(frozen=True, slots=True)
class Choice:
    """The `unit` chosen, "in" or "mm", and the `learner` whose numbers the exercises use."""

    unit: str = "in"
    learner: str = "workbook"


BEFORE_ANY = Choice()
"""What stands until a choice is made, and what the notebooks are recorded with."""


JOINT_PAGES = "joints"
"""The folder beside the notebooks that holds a page a joint."""


def workbook_folder() -> Path:
    """Where the workbook remembers things: a hidden folder beside the notebooks; pages of joints share it."""
    here = Path.cwd()
    beside = here.parent if here.name == JOINT_PAGES else here
    return Path(os.environ.get(FOLDER_VARIABLE) or beside / ".workbook")


def read_choice(folder: Path | None = None) -> Choice | None:
    """The choice that was made, or None where there is none that can be read."""
    path = (folder or workbook_folder()) / FILE
    try:
        kept = json.loads(path.read_text(encoding="utf-8"))
    except (OSError, ValueError, RecursionError):
        return None
    if not isinstance(kept, dict) or kept.get("unit") not in list(UNIT_WORDS):
        return None
    learner = kept.get("learner")
    return Choice(kept["unit"], learner) if isinstance(learner, str) and learner else None


def unit_in_use() -> str:
    """The learner's unit, "in" or "mm"; inches until a choice is made."""
    return (read_choice() or BEFORE_ANY).unit


def save_unit(unit: str, folder: Path | None = None) -> Choice:
    """Remember `unit`, whole or not at all; a learner's numbers stay theirs when the unit changes.

    Raises ValueError for a unit other than "in" or "mm", WriteError where the folder cannot be written.
    """
    if unit not in UNIT_WORDS:
        raise ValueError(f'the unit is "in" or "mm", not {unit!r}')
    folder = folder or workbook_folder()
    before = read_choice(folder)
    choice = Choice(unit, before.learner if before else secrets.token_hex(4))
    kept = json.dumps({"format": 1, "unit": choice.unit, "learner": choice.learner})
    write_files(folder, {FILE: kept.encode()})
    return choice
