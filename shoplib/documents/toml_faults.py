"""Where a text is no TOML: the line, and in plain words what is missing there.

The standard reader says what it met; a person who writes a project file wants to know what was forgotten.
"""

import re
import tomllib

_AT_LINE = re.compile(r" \(at line (\d+), column (\d+)\)$")
_CURLY = "\u201c\u201d\u201e\u2018\u2019\u00ab\u00bb"
_LENGTH = re.compile(r"""=\s*\d[\d\s/.,'-]*(in|mm|cm|m|ft|["'])?\s*(#.*)?$""")

_CLOSING_QUOTE = "the closing quote is missing; text in quotes ends on its own line"
_SAID = (
    (r"Illegal character '\\n'|Illegal character '\\r'", _CLOSING_QUOTE),
    (r"Unterminated string|Expected \"'", _CLOSING_QUOTE),
    (r"Illegal character", "there is a sign in it that cannot be seen; delete the line and type it again"),
    (r"Unescaped '\\'", "a backslash does not stand in text here; take it out"),
    (r"Expected '='", "a key, then =, then its value are meant here, such as width = \"60 in\""),
    (r"Expected '\]", "the closing bracket of a heading is missing, or its name of several words is not in quotes"),
    (r"Unclosed array", "the list before this has no closing ], or a comma is missing in it"),
    (r"Unclosed inline table", "the { before this has no closing } on its line, or a comma is missing in it"),
    (r"Duplicate inline table key|Cannot overwrite", "this key stands twice; keep one of them"),
    (
        r"Cannot (declare|mutate)|Cannot redefine",
        "this heading stands a second time; put its lines under the first one",
    ),
    (r"Invalid initial character for a key", "a key is missing here, or the comma before it is one too many"),
    (
        r"Expected newline or end",
        "there is more on the line than one value; text and lengths stand between two quotes, "
        'such as "23 5/8 in"',
    ),
    (r"Invalid value", 'the value is missing or not in quotes; write text and lengths so: "23 5/8 in"'),
    (r"Invalid statement", "a line begins with a key, a heading in [ ], or # before a remark"),
)


def told(text: str, error: tomllib.TOMLDecodeError) -> str:
    """One sentence for what the reader met in `text`: its line, and what is meant.

    >>> wrong = 'width = "60 in'
    >>> try:
    ...     tomllib.loads(wrong)
    ... except tomllib.TOMLDecodeError as error:
    ...     print(told(wrong, error))
    line 1: the closing quote is missing; text in quotes ends on its own line
    """
    said = str(error)
    lines = text.split("\n")
    place = _AT_LINE.search(said)
    number = int(place[1]) if place else _last_written(lines)
    line = lines[number - 1]
    if any(sign in line.partition("#")[0] for sign in _CURLY):
        return f'line {number}: its quotes are curly ones, as a letter has them; type straight ones, " and "'
    if "Cannot" not in said and (length := _LENGTH.search(line)) and not _is_count(length):
        return f"line {number}: a length stands between two quotes, with its unit, such as \"23 5/8 in\""
    for met, meant in _SAID:
        if re.search(met, said):
            return f"line {number}: {meant}"
    return f"line {number}: this is not readable as TOML ({_AT_LINE.sub('', said)})"


def _is_count(length: re.Match) -> bool:
    """Whether what looks like a bare length is a plain whole number, as counts are."""
    return length[1] is None and re.fullmatch(r"=\s*\d+\s*(#.*)?", length[0]) is not None


def _last_written(lines: list[str]) -> int:
    """The number of the last line that is not empty, where the reader names none: it came to the end."""
    return max((number for number, line in enumerate(lines, 1) if line.strip()), default=1)
