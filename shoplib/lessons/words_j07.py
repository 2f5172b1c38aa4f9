"""The words of the page of the finger joint."""

from shoplib.lessons.word import Word

WORDS = (
    Word("finger", "One of the square teeth on the end of a board, each as wide as the gap beside it."),
    Word("comb joint", "What a finger joint is called in the United Kingdom."),
    Word("jig", "What holds a board and leads it, so that each cut comes out like the one before."),
)
