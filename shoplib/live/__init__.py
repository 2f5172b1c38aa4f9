"""Sliders and panels: the only room that uses ipywidgets and anywidget."""

from shoplib.live.length_control import LengthControl
from shoplib.live.panel import CannotBuild, Group, Outcome, Panel
from shoplib.live.picture import Drawing, Picture
from shoplib.live.table import Table

__all__ = ["CannotBuild", "Drawing", "Group", "LengthControl", "Outcome", "Panel", "Picture", "Table"]
