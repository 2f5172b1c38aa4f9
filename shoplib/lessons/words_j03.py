"""The words of the rabbet's own page."""

from shoplib.lessons.word import Word

WORDS = (
    Word("rebate", "What a rabbet is called in the United Kingdom."),
    Word("mate", "The board that stands in the cut of another."),
    Word("cheek", "The broad face of a cut, along the face of its board: the floor of a rabbet, the side of a tenon."),
    Word("proud", "Standing out past the face beside it."),
)
