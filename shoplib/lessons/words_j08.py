"""The words of the half laps' page."""

from shoplib.lessons.word import Word

WORDS = (
    Word("halving", "What a half lap is called in the United Kingdom."),
    Word("face side", "The better face of a board, marked as such: gauges and fences run on it."),
)
