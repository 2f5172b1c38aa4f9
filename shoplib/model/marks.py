"""Marks on the fields of a project: what a number stands for.

Lengths are ticks. One table of fields then serves for reading, checking and saving a project file.
"""

from typing import Annotated

Length = Annotated[int, "length"]
"""A size: more than nothing."""

Room = Annotated[int, "room"]
"""A clearance, allowance or setback: nothing is allowed."""
