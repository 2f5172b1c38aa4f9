"""What is asked for by name: the paper, the folder to write into, and the date at the head of a page."""

from pathlib import Path

from shoplib.documents.examples import PROJECTS
from shoplib.documents.paper import PAPERS
from shoplib.documents.typeset import has_sign

_LONGEST_DATE = 30

_ROOT = PROJECTS.parents[1]
_OWN = ("shoplib", "tests", "data", ".venv", ".git")
"""Folders of the workbook in which, at any depth, nothing is the reader's."""
_OWN_ALONE = ("", "notebooks", "notebooks/joints")
"""Those that have its files in them, but may have folders of the reader's too."""


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


def folder_called(text: str, such_as: str) -> str:
    """The folder to write into; raises NotUnderstood where none is named, or one that the workbook's own files are in.

    `such_as` is a good one, to name then. One inside it is, for a folder of the reader's.

    >>> folder_called("my_prints", "my_prints/my_case")
    'my_prints'
    >>> folder_called(str(PROJECTS), "my_case")
    Traceback (most recent call last):
    ...
    shoplib.documents.asked.NotUnderstood: The folder projects has files of the workbook itself: name one of your \
own, such as --to my_case.
    """
    if not text.strip():
        raise NotUnderstood(f"No folder is named to write into: name one, such as --to {such_as}.")
    folder = Path(text).resolve()
    inside = any(folder.is_relative_to(_ROOT / own) for own in _OWN)
    if inside or folder in [_ROOT / own for own in _OWN_ALONE]:
        raise NotUnderstood(
            f"The folder {folder.name} has files of the workbook itself: name one of your own, such as --to {such_as}."
        )
    return text


def date_printed(text: str) -> str:
    """The date in one line; raises NotUnderstood where the head of the page has no room for it, or no letters.

    >>> date_printed("  3 May ")
    '3 May'
    """
    line = " ".join(text.split())
    strange = [sign for sign in line if not has_sign(sign)]
    if strange:
        sign = f" ({strange[0]})" if strange[0].isprintable() else ""
        raise NotUnderstood(f"The date has a sign that the papers have no letter for{sign}: write it with others.")
    if len(line) > _LONGEST_DATE:
        raise NotUnderstood(f"The date has {len(line)} letters, and the head of the page room for {_LONGEST_DATE}.")
    return line


def paper_name(paper: str) -> str:
    """The name as it is written.

    >>> paper_name("a4"), paper_name("letter")
    ('A4', 'Letter')
    """
    return "A4" if paper == "a4" else paper.capitalize()
