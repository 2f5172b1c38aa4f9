"""What can be picked in the HTML and SVG of a panel."""

import re

from shoplib.measure import INCH, MM, read_length


def picked(shown: str, names: str = "") -> list[tuple[str, str]]:
    """Name and text of each size that can be picked, in order; only those whose name begins with `names`."""
    plain = re.sub(r"</?span[^>]*>", "", shown)  # spans only say where a line may break
    return re.findall(rf'data-ask="({names}[^"]+)"[^>]*>([^<]+)<', plain)


LENGTH = r"(?<![\d./])(?:\d+ )?\d[\d./]* (?:in|mm)\b"


def assert_told_as_shown(panel, unit: str) -> int:
    """Each size of a table, a sum or a dimension is the one that its working begins with; gives how many there are."""
    shown = "".join(drawing.svg for drawing in panel.outcome.drawings) + panel._tables.value
    near, found = (INCH // 128 if unit == "in" else MM // 20), picked(shown)
    for name, text in found:
        head = panel.outcome.why(name)[0].split(" = ")[0]
        if "%" in text:
            assert abs(float(text.split()[0]) - float(head.split()[0])) <= 0.05, (text, head)
            continue
        bare = re.search(r"\d[\d/. ]*(?: (?:in|mm)\b)?", text)[0].strip()
        written = bare if bare.endswith(("in", "mm")) else f"{bare} {unit}"
        told = re.findall(LENGTH, head.partition(" (")[0])[-1]
        assert abs(read_length(told, zero=True) - read_length(written, zero=True)) <= near, (name, text, head)
    return len(found)
