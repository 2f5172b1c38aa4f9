"""The words of the page of the drawer-front joint."""

from shoplib.lessons.word import Word

WORDS = (
    Word("lock rabbet", "Another name of the drawer-front joint: lip, slot and tongue of the front hold the side."),
    Word("slot", "A groove in the end or the edge of a board."),
    Word("tall fence", "A high, flat board on the fence, for work that stands upright."),
    Word("carrier", "What holds a board upright along the fence, and keeps the hands far from the cutter."),
)
