"""The words of the page of bridle, mortise and tenon."""

from shoplib.lessons.word import Word

WORDS = (
    Word("tenon", "The end of a board cut thinner, to go into a hole of its size in another."),
    Word("mortise", "The hole that takes a tenon; in the United Kingdom also written mortice."),
    Word("haunch", "A short step beside a tenon that keeps the rail from twisting, and fills a groove."),
    Word("horn", "What a stile is left longer past a mortise, so that it does not break out; sawn off at the end."),
)
