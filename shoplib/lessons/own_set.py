"""The dado set that a learner ticked on the stack panel of a page: the practice bench of the same page offers it.

Both stand in one kernel, so nothing is written down: with the kernel, what was ticked is gone too.
"""

from shoplib.live.panel import Panel
from shoplib.live.practice_panel import PracticePanel
from shoplib.live.stack_panel import follow_ticks, ticked

_last: dict[str, Panel | PracticePanel] = {}
"""The stack panel and the bench that were shown last."""


def keep_ticked(panel: Panel) -> Panel:
    """The stack panel, from now on the one whose ticks count; a bench that is shown already follows it."""
    _last["stack"] = panel
    follow_ticks(panel, _tell)
    _tell()
    return panel


def offer_ticked(bench: PracticePanel) -> PracticePanel:
    """The bench, from now on with what is ticked among its cutters.

    >>> from shoplib.live.practice_panel import practice_panel
    >>> from shoplib.live.stack_panel import stack_panel
    >>> panel, bench = keep_ticked(stack_panel("in")), offer_ticked(practice_panel("in", "Noor"))
    >>> panel.controls["in_chipper_0"].value = False
    >>> bench.face.sets[1]
    'what you ticked of the 8 in set, inch sizes'
    """
    _last["bench"] = bench
    _tell()
    return bench


def _tell() -> None:
    if "stack" in _last and "bench" in _last:
        _last["bench"].take_own(ticked(_last["stack"]))
