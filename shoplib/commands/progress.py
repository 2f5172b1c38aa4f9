"""Lays the boards of a cabinet out while the terminal says how far it is."""

import sys
from functools import partial

from shoplib.buying.jobs import Ask, Offered
from shoplib.buying.laid import LaidOut
from shoplib.buying.laid_out import laid_out
from shoplib.documents.sheets_words import money
from shoplib.layout.pieces import Layout
from shoplib.model.solved import Cabinet
from shoplib.words.naming import and_list, in_short


def laid_out_told(cabinet: Cabinet, seconds: str) -> LaidOut:
    """The layouts, each better one told on the side where it does not get into what is kept; Ctrl+C takes the best so
    far.

    Raises LayoutError.
    """
    say(f"Laying out, {seconds} seconds at most; Ctrl+C takes the best so far.")
    return laid_out(cabinet, float(seconds), partial(_tell, cabinet.project.buying.currency))


def say(text: str) -> None:
    """A line of progress."""
    print(text, file=sys.stderr, flush=True)


def _tell(currency: str, ask: Ask, on: Offered, layout: Layout) -> None:
    stages = and_list(in_short(f"stage {stage}" for stage in ask.stages))
    new = sum(on.stock[laid.stock].count is None for laid in layout.sheets)
    cost = f", {money(layout.cost)} {currency}" if on.priced and new else ""
    say(f"  {ask.sheet.name}, {stages}: {new} to buy{cost}{'; none can cost less' if layout.proven else ''}")
