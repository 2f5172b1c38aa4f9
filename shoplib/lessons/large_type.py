"""Large type for a projector, chosen once for the whole workbook: kept beside the unit, and honoured by every page.

It is kept in a small file of its own. Where that is missing, cut short or cannot be read, the type is ordinary.
"""

import json
from pathlib import Path

from shoplib.documents.atomic import write_files
from shoplib.draw.letters import LARGE, ORDINARY
from shoplib.lessons.choice import workbook_folder
from shoplib.live.kept_choice import KeptChoice
from shoplib.live.panel import Panel

FILE = "type.json"
TYPES = {False: "ordinary", True: "large, for a projector"}


def large_in_use(folder: Path | None = None) -> bool:
    """Whether the learner, or more likely a teacher, chose large type."""
    try:
        kept = json.loads(((folder or workbook_folder()) / FILE).read_text(encoding="utf-8"))
    except (OSError, ValueError, RecursionError):
        return False
    return isinstance(kept, dict) and kept.get("large") is True


def save_large(large: bool, folder: Path | None = None) -> None:
    """Remember the type, whole or not at all. Raises WriteError where the folder cannot be written."""
    kept = json.dumps({"format": 1, "large": large})
    write_files(folder or workbook_folder(), {FILE: kept.encode()})


def choose_type() -> KeptChoice[bool]:
    """The question of the start page, ordinary or large type; the answer holds for all notebooks."""
    large = large_in_use()
    return KeptChoice("type", "Type", TYPES, large, save_large, large=large)


def letters_in_use() -> float:
    """The size of the letters in drawings, for `draw.letters.drawn_with`."""
    return LARGE if large_in_use() else ORDINARY


def in_type(panel: Panel) -> Panel:
    """The panel in the type that was chosen."""
    if large_in_use():
        panel.enlarge()
    return panel


def sized(html: str) -> str:
    """HTML of the page in the type that was chosen."""
    return f'<div style="font-size: {LARGE}em">{html}</div>' if large_in_use() else html
