"""The first pages of the plan set: what stops it, and the cautions, before anything is cut."""

from collections.abc import Iterable

from shoplib.buying.laid import LaidOut
from shoplib.documents.cautions import cautions
from shoplib.documents.cut_order_words import saw_cautions
from shoplib.documents.plan_words import verdict
from shoplib.documents.sheets_words import lifts_told
from shoplib.lists.alike import told_once
from shoplib.model.solved import Cabinet, Finding
from shoplib.printed.told.solid_wood import planer_caution, solid_sheets
from shoplib.printed.typeset.blocks import Block, Bullets, Framed, Heading, Words
from shoplib.words.quoted import in_quotes

TITLE = "Cautions first"

_READ_FIRST = (
    "Read this before you cut, lift or load anything. It is common practice, no source; the manual of your own tool "
    "and the rules of your place come before it."
)
_NOTES = "The notes stand behind the cut list: read them before you cut, too."


def caution_pages(
    cabinet: Cabinet, findings: Iterable[Finding], in_use: Iterable[Finding], found: LaidOut | None
) -> list[Block]:
    """What stops the plan and what to look at, by the checks and in use; then the cautions that this cabinet asks for.

    `found` is the cabinet laid out, whose sheets say who lifts what; None where it cannot be laid out.

    >>> pages = caution_pages(Cabinet("plain boards", (), {}), (), (), None)
    >>> [block.title for block in pages if isinstance(block, Framed)]
    ['While you cut, lift and load', 'At the saw']
    """
    findings, in_use = tuple(findings), tuple(in_use)
    stops, looks = _told(findings, "stop"), _told([*findings, *in_use], "warn")
    blocks: list[Block] = [Heading(TITLE), Words(verdict(cabinet, findings, in_use), grave=bool(stops))]
    if stops:
        blocks.append(Framed((Bullets(stops),), "STOP: mend this first, and cut nothing before"))
    blocks += [
        *([Words(_NOTES)] if any(f.level == "note" for f in [*findings, *in_use]) else []),
        Words(_READ_FIRST),
        Framed((Bullets(cautions(cabinet)),), "While you cut, lift and load"),
        Framed((Bullets(saw_cautions()),), "At the saw"),
    ]
    if solid_sheets(cabinet):
        blocks.append(planer_caution(cabinet))
    if lifts := tuple(lifts_told(found)) if found else ():
        blocks.append(Framed((Bullets(lifts),), "Two people lift"))
    if looks:
        blocks.append(Framed((Bullets(looks),), "Look at this before you build"))
    return blocks


def _told(findings: Iterable[Finding], level: str) -> tuple[str, ...]:
    return tuple(in_quotes(text) for text in told_once([f.text for f in findings if f.level == level]))
