"""Whether a text gives each length in inches and in millimetres, and the two agree."""

import re
from fractions import Fraction

NUMBER = r"(?:\d+ \d+/\d+|\d+/\d+|\d+(?:\.\d+)?)"
LIST = rf"{NUMBER}(?:(?:, | to | and | by | or ){NUMBER})*"
BOTH = re.compile(rf"({LIST}) in \(({LIST}) mm\)")
INCHES_ALONE = re.compile(r"\d in\b(?! \(|\s\d)")  # `1 in 8` is a slope
MM_ALONE = re.compile(r"\d mm\b")


def exact(text):
    """`2 1/4` or `0.003` as a fraction."""
    return sum((Fraction(part) for part in text.split()), Fraction())


def inches(text):
    """Every number of inches that has its millimetres beside it."""
    return [one for given, _ in BOTH.findall(text) for one in re.findall(NUMBER, given)]


def faults(text):
    """What is wrong with the lengths of a text: a unit alone, or millimetres that are not the inches, rounded."""
    found = [f"one unit alone: {text}"] if INCHES_ALONE.search(text) or MM_ALONE.search(BOTH.sub("", text)) else []
    for left, right in BOTH.findall(text):
        pairs = zip(re.findall(NUMBER, left), re.findall(NUMBER, right), strict=True)
        for inch, mm in pairs:
            half_of_last_place = Fraction(1, 2 * 10 ** len(mm.partition(".")[2]))
            if abs(exact(inch) * Fraction("25.4") - Fraction(mm)) > half_of_last_place:
                found.append(f"{inch} in is not {mm} mm: {text}")
    return found
