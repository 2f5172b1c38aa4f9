"""The words of the half laps' page."""

from shoplib.lessons.word import Word

WORDS = (
    Word("rail", "A board of a frame that lies across, between the stiles or over them."),
    Word("halving", "What a half lap is called in the United Kingdom."),
    Word("cheek", "The broad face that is left where a lap, a tongue or a tenon was cut."),
    Word("face side", "The better face of a board, marked as such: gauges and fences run on it."),
)
