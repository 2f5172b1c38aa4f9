"""The words of the screwed butt's own page."""

from shoplib.lessons.word import Word

WORDS = (
    Word("butt", "A joint whose boards only stand against each other: nothing is cut away."),
    Word("end grain", "The cut-off end of a board, where the open fibres show: glue and screws hold poorly in it."),
    Word("clearance hole", "A hole so wide that a screw slips through: its head can pull the boards together."),
    Word("countersink", "The cone at the mouth of a hole that lets a flat screw head lie flush."),
    Word("counterbore", "A wider hole that lets the whole head of a screw below the face."),
)
