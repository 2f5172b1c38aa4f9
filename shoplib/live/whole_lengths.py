"""A length and its unit stay on one line: text breaks between lengths, never inside one; a rest in brackets may
go to the next line.
"""

import re
from html import escape
from pathlib import Path

_WHOLE = re.compile(r"\(?[+-]?\d[\d./]*(?: \d+/\d+)? (?:in|mm)\b\)?")


def whole_lengths(text: str) -> str:
    """The text as HTML, each length in a span that does not break (panel.css); what it says stays the same.

    >>> whole_lengths("21 1/8 in (-0.003 in) < 22 in")[:46]
    '<span class="shop-whole">21 1/8 in</span> <spa'
    >>> whole_lengths("bay 1 < bay 2")
    'bay 1 &lt; bay 2'
    """
    told, at = "", 0
    for found in _WHOLE.finditer(text):
        told += f'{escape(text[at : found.start()])}<span class="shop-whole">{escape(found[0])}</span>'
        at = found.end()
    return told + escape(text[at:])


def script(*names: str) -> str:
    """The script of a widget, part after part, with `writeWhole` of whole_lengths.js to write its sentences by.

    >>> "function writeWhole" in script("picture.js")
    True
    """
    here = Path(__file__)
    return "".join(here.with_name(each).read_text(encoding="utf-8") for each in ("whole_lengths.js", *names))
