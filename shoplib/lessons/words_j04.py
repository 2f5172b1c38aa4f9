"""The words of the dado's own page."""

from shoplib.lessons.word import Word

WORDS = (
    Word("housing", "What a dado is called in the United Kingdom."),
    Word("chipper", "An inner cutter of a dado set: it clears what stands between the two outer ones."),
    Word("arbor", "The shaft of a saw that the blade or the stack of cutters is clamped on."),
    Word("backer", "A strip held behind a board where the cutter leaves it, so that its edge does not tear."),
)
