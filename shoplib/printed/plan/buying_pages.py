"""What to buy, in the order in which it is needed, with a square to tick for each thing."""

from shoplib.buying.laid import LaidOut
from shoplib.buying.list import buying_list
from shoplib.buying.seams import seam_area
from shoplib.buying.spare_parts import spares
from shoplib.buying.stock_lines import stocked
from shoplib.documents.buying_file import CARRYING, FIRST, amount, can_wait, total_words, yard_cautions
from shoplib.documents.sheets_words import cures, lost_parts, verdict
from shoplib.printed.typeset.blocks import SQUARE, Block, Bullets, Framed, Heading, Table, Together, Words
from shoplib.words.stages import STAGES

TITLE = "What to buy"


def buying_pages(found: LaidOut | None) -> list[Block]:
    """What is bought and when, what is measured before, what is assumed; nothing where there is no layout.

    >>> buying_pages(None)
    []
    """
    if found is None:
        return []
    left = spares(found)
    first = [*lost_parts(left), *cures(left, found.cabinet.style)]
    wanted = buying_list(found.cabinet, stocked(found.sheets), first, seam_area(found))
    blocks: list[Block] = [Heading(TITLE), Words(verdict(found, left).replace("\n", " "))]
    if cautions := yard_cautions(wanted):
        blocks.append(Framed((Bullets(cautions),), CARRYING))
    if first:
        blocks += [Heading(FIRST, 2), Bullets(tuple(first))]
    if wanted.in_shop:
        blocks += [Heading("In the shop already, used first", 2), Bullets(wanted.in_shop)]
    if wanted.left_out:
        blocks.append(Words(wanted.left_out))
    later = {f"Later: {f'better not before {after}' if after else can_wait(wanted)}": lines
             for after, lines in wanted.later_after.items()}
    now = {f"Now, for the {STAGES[wanted.first_stage]}": wanted.now} if wanted.now else {}
    for title, lines in (now | later).items():
        rows = tuple((SQUARE, f"{amount(line)} {line.item}", line.uses) for line in lines)
        blocks.append(Together((Heading(title, 2), Table(("bought", "what", "for"), rows, (1, 2)))))
    blocks.append(Words(total_words(wanted)))
    if wanted.measure:
        blocks += [Heading("Before you buy, measure or read", 2), Bullets(wanted.measure)]
    for title, told in (("What this list assumes", wanted.assumed), ("Not in this list", wanted.missing)):
        if told:
            blocks += [Heading(title, 2), Bullets(told)]
    return blocks
