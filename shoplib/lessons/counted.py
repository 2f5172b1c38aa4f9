"""Answers that are no lengths but whole numbers of things: strips, sheets, screws."""

import re
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Counted:
    """What an answer counts: `one` of it and `many`.

    >>> strips = Counted("strip", "strips")
    >>> strips.told(1), strips.told(12), strips.read("12"), strips.read("12.0 strips"), strips.read("12 in")
    ('1 strip', '12 strips', 12, 12, None)
    """

    one: str
    many: str

    def told(self, count: int) -> str:
        """So many of it, in words."""
        return f"{count} {self.one if count == 1 else self.many}"

    def read(self, text: str) -> int | None:
        """The whole number that was typed, its name beside it or not; None where it is none."""
        found = re.fullmatch(r"\s*([0-9]{1,6})(?:[.,]0{1,2})?\s*([^\W\d](?:[\w -]*\w)?)?\s*", text)
        if found is None or (found[2] or self.many).casefold() not in (self.one, self.many):
            return None
        return int(found[1])
