"""What is asked of every page of the workbook.

A check is a function that gives a list of faults in plain words; an empty list is a pass. A check of a
run reads the cells as they have just run (`tests.notebook_run.RanCell`); to add one, write a function
whose name begins with `ran_`. A check of a page as stored (`stored_...`) reads the file alone.
"""

import re

import nbformat
from nbval.plugin import metadata_tags

EXPECTED = "nbval-check-output"  # the tag of a cell whose stored output every run must give again
NOT_COMPARED = {"image/png", "image/jpeg", "application/vnd.jupyter.widget-view+json"}
LEAST_COMPARED = 8  # tagged cells of a lesson that print a length
LENGTH = re.compile(r"\d (?:in|mm)\b")
OTHER_TAGS = {"hide-input", "exercise"}


def of_a_run():
    """The checks of a page that has run, by the words that name them in a report."""
    return _checks("ran_")


def of_a_stored_page():
    """The checks of a page as stored, by name."""
    return _checks("stored_")


def _checks(prefix):
    return {
        name.removeprefix(prefix).replace("_", " "): check
        for name, check in globals().items()
        if name.startswith(prefix)
    }


def ran_without_warnings(cells):
    """Nothing came on the error stream: a reader would take a warning for a fault of their own."""
    return [
        f"cell {cell.number} wrote on the error stream: {output.text.strip()}"
        for cell in cells
        for output in cell.outputs
        if output.output_type == "stream" and output.name == "stderr"
    ]


def stored_enough_outputs_are_compared(page):
    """A lesson compares eight or more cells that print a length with its unit; a page that is no lesson at least one.

    Lessons are numbered from 01. The start page shows how a page is run and works out one thing, the style
    guide shows each part of a page once, and the glossary has words: their one compared cell may be of words.
    """
    compared = [cell for _, cell in _code_cells(page) if EXPECTED in cell.metadata.get("tags", ())]
    if not is_a_lesson(page):
        return [] if compared else [f"no cell is tagged {EXPECTED}"]
    of_lengths = [cell for cell in compared if any(LENGTH.search(_text(output)) for output in cell.outputs)]
    if len(of_lengths) >= LEAST_COMPARED:
        return []
    return [f"{len(of_lengths)} cells tagged {EXPECTED} print a length: a lesson has {LEAST_COMPARED} or more"]


def stored_expected_outputs_can_be_compared(page):
    """Every tagged cell carries an output, an execution count, and something that nbval compares."""
    faults = []
    for number, cell in _code_cells(page):
        if EXPECTED not in cell.metadata.get("tags", ()):
            continue
        if cell.execution_count is None:
            faults.append(f"cell {number} is tagged {EXPECTED} but has no execution count: not compared")
        if not any(_is_compared(output) for output in cell.outputs):
            faults.append(f"cell {number} is tagged {EXPECTED} but stores no text to compare")
    return faults


def stored_tags_are_known(page):
    """A misspelt tag would switch a comparison off without a word."""
    known = OTHER_TAGS | set(metadata_tags)
    return [
        f"a {cell.cell_type} cell has the unknown tag {tag}"
        for cell in page.cells
        for tag in cell.metadata.get("tags", ())
        if tag not in known
    ]


def stored_outputs_have_no_error(page):
    """No cell is stored with a traceback or a warning in it."""
    return [
        f"cell {number} stores an error or a warning"
        for number, cell in _code_cells(page)
        for output in cell.outputs
        if output.output_type == "error" or (output.output_type == "stream" and output.name == "stderr")
    ]


def read_page(path):
    """A page as stored, which knows its own name."""
    page = nbformat.read(path, as_version=4)
    page.metadata.name = f"joints/{path.stem}" if path.parent.name == "joints" else path.stem
    return page


def is_a_lesson(page):
    """Whether the page is a lesson of the course: numbered, from 01 on, or of a joint."""
    return re.match(r"(?!00)\d\d_|joints/", page.metadata.get("name", "")) is not None


def _text(output):
    return output.text if output.output_type == "stream" else str(output.get("data", {}).get("text/plain", ""))


def _code_cells(page):
    return list(enumerate(cell for cell in page.cells if cell.cell_type == "code"))


def _is_compared(output):
    if output.output_type == "stream":
        return bool(output.text.strip())
    is_shown = output.output_type in {"execute_result", "display_data"}
    return is_shown and not NOT_COMPARED.issuperset(output.data)
