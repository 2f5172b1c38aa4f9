"""Why a case cannot be built, and what would mend it, in the words of the controls that size a case."""

import re

from shoplib.live.panel import CannotBuild
from shoplib.model.project import ImpossibleProject

_LABELS = {
    "size.width": "Width",
    "size.height": "Height",
    "size.depth": "Depth",
    "carcass.corner.depth": "Depth of the joint",
}
"""Keys of a project that are one control of the panel: the solver's own remedy is about that one."""

_MENDS = (
    (r"bays\[\d+\]\.(drawers|pull_out)\.slide", "Make Depth larger."),
    (r"bays\[\d+\]\.drawers\.count", "Make Height larger, or take fewer drawers."),
    (r"bays\[\d+\]\.(shelves|pull_out)\.", "Make Height larger."),
    (r"bays", "Make Width or Height larger, or take fewer bays or drawers."),
)
"""What mends a reason, by the beginning of its key, where the solver's remedy may be no control of the panel."""


def refusal(reason: ImpossibleProject) -> CannotBuild:
    """The reason in one sentence and, where the solver's own remedy is not to be had here, what is.

    >>> print(refusal(ImpossibleProject("bays[1].pull_out.peg_rows", "the pegs would meet; take fewer")))
    The pegs would meet. Make Height larger.
    >>> print(refusal(ImpossibleProject("size.height", "nothing is left inside; make it larger")))
    Height: nothing is left inside; make it larger.
    """
    sentence = reason.sentence.removesuffix(".")
    if reason.key in _LABELS:
        return CannotBuild(f"{_LABELS[reason.key]}: {sentence}.")
    mend = next((mend for key, mend in _MENDS if re.match(key, reason.key)), "")
    why = sentence.partition(";")[0] if mend else sentence
    return CannotBuild(f"{why[0].upper()}{why[1:]}.", mend)
