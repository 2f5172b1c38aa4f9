"""The words of the page of groove and tongue."""

from shoplib.lessons.word import Word

WORDS = (
    Word("plough", "What a groove is called in the United Kingdom, and the plane that cuts it."),
    Word("float", "What a panel does that lies in its grooves without glue: it stays flat, and may move."),
    Word("short grain", "Wood whose fibres run across a narrow part, not along it: it breaks off easily."),
)
