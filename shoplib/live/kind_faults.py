"""What a learner reads where a cell of their own cannot be run: two or three lines instead of a traceback.

A fault of the workbook itself is said to be one, and is shown whole.
"""

import linecache
import sys
from pathlib import Path
from traceback import walk_tb
from types import TracebackType

_SHOPLIB = str(Path(__file__).resolve().parents[1])

MEND = "To get back: mend that line, or press Ctrl+Z (Cmd+Z on a Mac) until the cell is as it was; then Shift+Enter."

RERUN = "If it is something that the page makes: menu Run, then Run All Cells."

OURS = (
    "This is a fault in the workbook, not in your numbers.",
    "To go on: menu Kernel, then Restart Kernel and Run All Cells. Below it stands whole, for whoever mends it.",
)


def tell_kindly() -> None:
    """From now on, where this is a notebook: tell an error in a cell in a few lines. Nothing happens elsewhere."""
    ipython = sys.modules.get("IPython")  # loaded already where there is a notebook
    shell = ipython.get_ipython() if ipython else None
    if shell is not None:
        shell.set_custom_exc((Exception,), _show)


def told(etype: type[Exception], value: Exception, tb: TracebackType | None, cell: dict) -> tuple[str, ...]:
    r"""What to say to an error; nothing where it is a fault of the workbook. `cell` is the namespace of the cells.

    >>> try:
    ...     exec(compile("first = 1\nanswer = bottom", "cell", "exec"), {})
    ... except NameError as fault:
    ...     told(NameError, fault, fault.__traceback__, fault.__traceback__.tb_next.tb_frame.f_globals)[0]
    'The name bottom, in line 2 of the cell, stands for nothing yet. If it is an answer, put it in quotes: "33 1/2 in".'
    """
    frames = list(walk_tb(tb))
    own = [(frame, line) for frame, line in frames if frame.f_globals is cell]
    after = frames[frames.index(own[-1]) + 1:] if own else []
    through_ours = any(frame.f_code.co_filename.startswith(_SHOPLIB) for frame, _ in after)
    if isinstance(value, SyntaxError) and not after:
        return (_unreadable(value), MEND) if not str(value.filename).startswith(_SHOPLIB) else ()
    if not own:
        return ()
    frame, number = own[-1]
    where = f"line {number} of the cell"
    if through_ours:
        # The workbook's own refusals are sentences for whoever asked; anything else that comes from in there is not.
        return (f"{str(value).rstrip('.')} ({where}).", MEND) if etype.__module__.startswith("shoplib.") else ()
    if isinstance(value, NameError) and getattr(value, "name", None):
        quotes = 'If it is an answer, put it in quotes: "33 1/2 in".'
        return f"The name {value.name}, in {where}, stands for nothing yet. {quotes}", RERUN, MEND
    code = linecache.getline(frame.f_code.co_filename, number).strip()
    shown = f", {_short(code)}," if code else ""
    return f"{where[0].upper()}{where[1:]}{shown} does not work: {_reason(etype, value)}.", MEND


def _unreadable(value: SyntaxError) -> str:
    code = _short((value.text or "").strip())
    shown = f", {code}," if code else ""
    return f"Line {value.lineno} of the cell{shown} cannot be read: {value.msg.rstrip('?.')}."


def _reason(etype: type[Exception], value: Exception) -> str:
    said = _short(" ".join(str(value).split()), 160).rstrip(".")
    return f"{said} ({etype.__name__})" if said else etype.__name__


def _short(text: str, most: int = 60) -> str:
    return text if len(text) <= most else f"{text[:most - 3]}..."


def _show(shell, etype: type[Exception], value: Exception, tb: TracebackType, tb_offset: int | None = None):
    """The handler that IPython calls: an error is sent as ever, with these words in place of the traceback."""
    lines = list(told(etype, value, tb, shell.user_global_ns))
    if not lines:
        lines = [*OURS, "", *shell.InteractiveTB.structured_traceback(etype, value, tb, tb_offset=tb_offset)]
    shell._showtraceback(etype, value, lines)
    return lines
