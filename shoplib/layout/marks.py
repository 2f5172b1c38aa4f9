"""Letters that tell the kinds of things apart, as many as there are."""

from string import ascii_uppercase


def letter(number: int) -> str:
    """A to Z, then AA, AB and so on, counted from 0.

    >>> letter(0), letter(25), letter(26)
    ('A', 'Z', 'AA')
    """
    first, last = divmod(number, 26)
    return (letter(first - 1) if first else "") + ascii_uppercase[last]
