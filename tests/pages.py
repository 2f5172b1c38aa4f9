"""All pages of the workbook: the lessons, and a page a joint in the folder beside them."""

from pathlib import Path

NOTEBOOKS = Path(__file__).resolve().parents[1] / "notebooks"
JOINTS = sorted((NOTEBOOKS / "joints").glob("*.ipynb"))
PAGES = [*sorted(NOTEBOOKS.glob("*.ipynb")), *JOINTS]
