"""The words of the page of dowels and splines."""

from shoplib.lessons.word import Word

WORDS = (
    Word("dowel", "A round peg that stands half in one board and half in another, hidden when the joint is closed."),
    Word("flute", "A slot along a dowel that lets air and spare glue out."),
    Word("spline", "A loose strip that stands half in a groove of one board and half in a groove of another."),
    Word("reference edge", "The one edge of a board that all distances across it are measured from."),
)
