"""How large the letters of a drawing are in relation to what is drawn: ordinary, or large for a projector."""

from collections.abc import Iterator
from contextlib import contextmanager
from contextvars import ContextVar

ORDINARY = 1.0
LARGE = 1.5

_SIZE: ContextVar[float] = ContextVar("size of the letters", default=ORDINARY)


def letters() -> float:
    """How many times the ordinary size the letters of a drawing for the screen are, here and now.

    >>> letters()
    1.0
    """
    return _SIZE.get()


@contextmanager
def drawn_with(size: float) -> Iterator[None]:
    """Whatever is drawn for the screen inside has letters of this size.

    The functions that make the drawings of a page need not know who looks at them, a learner or a class.

    >>> with drawn_with(LARGE):
    ...     letters()
    1.5
    >>> letters()
    1.0
    """
    before = _SIZE.set(size)
    try:
        yield
    finally:
        _SIZE.reset(before)
