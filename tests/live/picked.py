"""What can be picked in the HTML and SVG of a panel."""

import re


def picked(shown: str, names: str = "") -> list[tuple[str, str]]:
    """Name and text of each size that can be picked, in order; only those whose name begins with `names`."""
    plain = re.sub(r"</?span[^>]*>", "", shown)  # spans only say where a line may break
    return re.findall(rf'data-ask="({names}[^"]+)"[^>]*>([^<]+)<', plain)
