"""What is asked for by name: the paper, and the date at the head of a page."""

from shoplib.documents.paper import PAPERS

_LONGEST_DATE = 30


class NotUnderstood(ValueError):
    """What was asked for is not there; one sentence that says what there is."""


def paper_called(text: str) -> str:
    """The paper of that name; raises NotUnderstood where it is none.

    >>> paper_called("A4")
    'a4'
    """
    if text.lower() not in PAPERS:
        raise NotUnderstood(f'There is no paper "{text}": there are {" and ".join(PAPERS)}.')
    return text.lower()


def date_printed(text: str) -> str:
    """The date in one line; raises NotUnderstood where the head of the page has no room for it.

    >>> date_printed("  3 May ")
    '3 May'
    """
    line = " ".join(text.split())
    if len(line) > _LONGEST_DATE:
        raise NotUnderstood(f"The date has {len(line)} letters, and the head of the page room for {_LONGEST_DATE}.")
    return line


def paper_name(paper: str) -> str:
    """The name as it is written.

    >>> paper_name("a4"), paper_name("letter")
    ('A4', 'Letter')
    """
    return "A4" if paper == "a4" else paper.capitalize()
