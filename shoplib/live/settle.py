"""Keep Python's garbage collector from holding up a slider."""

import gc


def settle() -> None:
    """Leave what exists by now out of later searches for garbage; called when a panel is shown.

    Every few dozen moves Python searches all objects for garbage. Most of them are modules and widgets that stay as
    long as the notebook, and going through them takes as long as a whole move: one move in forty then came
    visibly late (`tests/bench/speed.py` measures it). What a move leaves behind is still collected.
    """
    gc.collect()
    gc.freeze()
