"""Equal strips side by side out of one width: how many, and what is left. All in ticks.

The trim of an edge includes the cut that takes it off, and the last strip needs no cut beside the far edge. So n strips
take n widths and n - 1 kerfs, and n = floor((width - 2 x trim + kerf) / (strip + kerf)) (common practice, no source).
"""


def strips(across: int, strip: int, kerf: int, trim: int = 0) -> int:
    """How many strips come out of a width `across`, with `trim` off each of its two edges first.

    >>> strips(48, 12, 1), strips(51, 12, 1), strips(51, 12, 1, trim=1)
    (3, 4, 3)
    """
    return max(0, (across - 2 * trim + kerf) // (strip + kerf))


def left_beside(across: int, strip: int, kerf: int, trim: int, count: int) -> int:
    """How wide what is left is after `count` strips; the blade has been beside each of them.

    >>> left_beside(48, 12, 1, 1, 3)
    7
    """
    return across - 2 * trim - count * (strip + kerf)


def run_of(piece: int, kerf: int, trim: int, count: int) -> int:
    """How long a board must be for `count` equal pieces one after another, with `trim` off each of its ends.

    >>> run_of(12, 1, 2, 3)
    42
    """
    return count * piece + (count - 1) * kerf + 2 * trim
