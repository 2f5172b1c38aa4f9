"""What was typed, as it stands in a sentence on the page."""

import re


def in_quotes(sentence: str) -> str:
    """The sentence with curly quotes round what stands between backticks, which only code would show well.

    >>> in_quotes("`deep` has no number.")
    '“deep” has no number.'
    """
    return re.sub("`([^`]*)`", "\u201c\\1\u201d", sentence)
