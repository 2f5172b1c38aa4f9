"""What the checks note of a cabinet and nothing asks for: on paper too, where the terminal is far."""

from collections.abc import Iterable

from shoplib.lists.alike import told_once
from shoplib.model.solved import Finding
from shoplib.printed.typeset.blocks import Block, Bullets, Heading
from shoplib.words.quoted import in_quotes

CHANGED = "Notes: changed because of what you measured"
NOTES = "Notes"
IN_USE = "Notes: in use"


def note_blocks(findings: Iterable[Finding], in_use: Iterable[Finding]) -> list[Block]:
    """The notes of the dry-fit and of use, those about what was measured first; nothing where there are none.

    The diagonals stand in the cut list, under a heading of their own.

    >>> found = [Finding("as measured", "note", (), "A box is 1 mm narrower."), Finding("stock", "warn", (), "Look.")]
    >>> [block.text for block in note_blocks(found, ()) if isinstance(block, Heading)]
    ['Notes: changed because of what you measured']
    """
    notes = [finding for finding in findings if finding.level == "note" and finding.check != "diagonals"]
    used = [finding for finding in in_use if finding.level == "note"]
    parts = (
        (CHANGED, [finding for finding in notes if finding.check == "as measured"]),
        (NOTES, [finding for finding in notes if finding.check != "as measured"]),
        (IN_USE, used),
    )
    blocks: list[Block] = []
    for title, found in parts:
        if found:
            told = told_once([finding.text for finding in found])
            blocks += [Heading(title, 2), Bullets(tuple(in_quotes(text) for text in told))]
    return blocks
