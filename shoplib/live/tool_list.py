"""A list of tools with their widths, as a learner types it."""

import re

from shoplib.live.hardware_project import Tool
from shoplib.live.panel import CannotBuild
from shoplib.measure import LengthError, read_length
from shoplib.words.quoted import in_quotes

MOST = 12
"""More tools than these would not be told apart in the drawing."""

_DASHES = "\u2212\u2013-"  # the last one stands last, where a set of characters takes it as it is
_TOOL = re.compile(r"(?P<name>.*?)[\s:]*(?P<width>\d[\d\s./-]*(?:in|mm|cm|\")?)")


def read_tools(text: str, unit: str) -> tuple[Tool, ...]:
    """Name and width of each tool; tools are parted by commas or semicolons, a width without unit is in `unit`.

    Raises CannotBuild with what cannot be read, and how it is written.

    >>> [(tool.name, tool.width // 80_000) for tool in read_tools("pump 76, 5 mm key: 6 cm; 30", "mm")]
    [('pump', 76), ('5 mm key', 60), ('tool 3', 30)]
    """
    example = "floor pump 3, chain whip 2 1/4" if unit == "in" else "floor pump 76, chain whip 56"
    mend = f"Write each tool and its width, with commas between: {example}."
    parts = [part.strip() for part in re.split(r"[,;\n]", text) if part.strip()]
    if not parts:
        raise CannotBuild("The list of tools is empty.", mend)
    if len(parts) > MOST:
        raise CannotBuild(f"The list has {len(parts)} tools, and the drawing shows {MOST} at most.", "Take two panels.")
    found = []
    for number, part in enumerate(parts, 1):
        match = _TOOL.fullmatch(part)
        if match is None:
            raise CannotBuild(f"\u201c{part[:40]}\u201d has no width.", mend)
        if re.search(rf"(?:^|[\s:])[{_DASHES}]$", part[:match.start("width")]):
            raise CannotBuild(f"\u201c{part[:40]}\u201d has a width below zero.", mend)
        name = match["name"].rstrip(f" {_DASHES}")[:30] or f"tool {number}"
        try:
            found.append(Tool(name, read_length(match["width"], what=f"the width of {name}", unit=unit)))
        except LengthError as fault:
            raise CannotBuild(_plain(str(fault))) from None
    return tuple(found)


def _plain(sentence: str) -> str:
    told = in_quotes(sentence)
    return told[0].upper() + told[1:]
