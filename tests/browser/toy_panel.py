"""A small notebook with a panel of our own making, so that the frame is tried apart from any lesson."""

from pathlib import Path

import nbformat

CELL = '''
import ipywidgets
from shoplib.live import CannotBuild, Drawing, Group, LengthControl, Outcome, Panel, Table
from shoplib.measure import INCH_STYLE, to_mm, write_length
from shoplib.model.solved import Finding

def work(values):
    if 2 * values.joint >= values.sheet:
        raise CannotBuild("The dado leaves less than half of the side.", "Make the joint shallower.")
    wide, high = to_mm(values.width) / 3, to_mm(values.height) / 3
    shown = write_length(values.width, INCH_STYLE)
    rows = "".join(
        f'<rect x="20" y="{20 + high * n / 60}" width="{wide}" height="{high / 60}"/>'
        for n in range(60))
    size = f'width="{wide + 40}" viewBox="0 0 {wide + 40} {high + 40}"'
    text = f'<text x="20" y="14" stroke="none" fill="#222" font-family="sans-serif">{shown}</text>'
    svg = f'<svg xmlns="http://www.w3.org/2000/svg" fill="#eee" stroke="#333" {size}>{rows}{text}</svg>'
    bottom = write_length(values.width - 2 * values.sheet + 2 * values.joint, INCH_STYLE)
    return Outcome(
        [Drawing("Front elevation", svg, f"The bench case, {shown} wide.")],
        [Table("Parts", ["Board", "Length"], [["bottom", bottom]])],
        [f"two sides and the bay = outside width {shown}"],
        [Finding("dry-fit", "warn", ("bottom",), f"Bays: {values.bays}.")],
    )

panel = Panel("Bench case", [
    Group("Width, sheet and joint", {
        "width": LengthControl("Width", "34 1/2 in", "8 in", "96 in", step="1/4 in"),
        "sheet": LengthControl("Measured sheet", "0.703 in", "1/4 in", "1 1/2 in"),
        "joint": LengthControl("Joint depth", "1/4 in", "0 in", "3/4 in"),
    }),
    Group("Height", {"height": LengthControl("Height", "30 in", "8 in", "96 in")}),
    Group("Bays", {"bays": ipywidgets.Dropdown(options=["one", "two", "three"], description="Bays")}),
], work)
panel
'''


def write_toy(path: Path) -> Path:
    """Write the notebook; gives its path."""
    kernel = {"name": "python3", "display_name": "Python 3", "language": "python"}
    cells = [nbformat.v4.new_markdown_cell("# Bench case"), nbformat.v4.new_code_cell(CELL.strip())]
    nbformat.write(nbformat.v4.new_notebook(cells=cells, metadata={"kernelspec": kernel}), path)
    return path
