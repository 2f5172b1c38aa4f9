"""Record the pages anew after a change: `python -m tests.notebooks.record [page ...]`.

Each page is run from the top by a learner who has chosen nothing yet. What would differ the next time is
left out: living widgets (their still pictures stay), times, and the state of widgets. Recording twice on one
Python changes no byte.
"""

import argparse
import os
import tempfile
from pathlib import Path

import nbformat
from nbclient import NotebookClient

PAGES = Path(__file__).parents[2] / "notebooks"
WIDGET = "application/vnd.jupyter.widget-view+json"


def main() -> None:
    """Record the pages named, or all."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("pages", nargs="*", type=Path, help="all pages where none is named")
    for path in parser.parse_args().pages or [*sorted(PAGES.glob("*.ipynb")), *sorted(PAGES.glob("joints/*.ipynb"))]:
        path.write_text(recorded(path), encoding="utf-8", newline="\n")
        print(f"recorded {path.name}")


def recorded(path: Path) -> str:
    """The page at `path` as it comes out when run now; the file is left as it is."""
    page = nbformat.read(path, as_version=4)
    with tempfile.TemporaryDirectory() as kept:
        client = NotebookClient(
            page, timeout=120, kernel_name="python3", record_timing=False, store_widget_state=False,
            resources={"metadata": {"path": str(path.parent)}},
        )
        client.execute(env={**os.environ, "SHOPLIB_WORKBOOK": kept})
    return nbformat.writes(settled(page)) + "\n"


def settled(page: nbformat.NotebookNode) -> nbformat.NotebookNode:
    """The page without what differs from run to run."""
    page.metadata.pop("widgets", None)
    for cell in page.cells:
        cell.metadata.pop("execution", None)
        if cell.cell_type == "code":
            cell.outputs = [one for one in cell.outputs if WIDGET not in one.get("data", {})]
    return page


if __name__ == "__main__":
    main()
