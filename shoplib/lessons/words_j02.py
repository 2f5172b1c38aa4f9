"""The words of the page on pocket screws."""

from shoplib.lessons.word import Word

WORDS = (
    Word("pocket", "A slanting hole in the face of a board that takes the head of a screw out of sight."),
    Word("web", "The wood that stays before the head of a pocket screw: what it pulls on."),
    Word("collar", "A ring that is fixed on a drill bit, so that it goes in no deeper."),
    Word("face frame", "Narrow boards joined to a frame that covers the front edges of a case."),
    Word("stile", "An upright piece of a frame."),
    Word("rail", "A level piece of a frame, between its stiles."),
)
