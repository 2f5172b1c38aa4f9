"""What `python3 -m shoplib plan`, `check`, `sheets`, `print` and `practice` run once the environment stands.

`shoplib.start.cli` has read the command line already; here come the command's name and its operands.
"""

import contextlib
import importlib
import io
import os
import sys

STOPPED = 130
"""What a shell reports for a program that Ctrl+C ended."""


def main(words: list[str]) -> int:
    """Run the command that the first of `words` names on the rest; return its exit status."""
    command, *operands = words
    if any(word.startswith("--") for word in operands):
        print(f"{command}: no options are read here; type `python3 -m shoplib {command} --help`.", file=sys.stderr)
        return 2
    said = io.StringIO()
    try:
        run = importlib.import_module(f"shoplib.commands.{command}").run
    except KeyboardInterrupt:
        print("Stopped; nothing is written.", file=sys.stderr)
        return STOPPED
    try:
        with contextlib.redirect_stdout(said):
            status = run(*operands)
    except KeyboardInterrupt:
        # Files are written whole: either none of them is there, or all are, where it was heard while they were written.
        print("Stopped.", file=sys.stderr)
        return STOPPED
    _show(said.getvalue())
    return status


def _show(text: str) -> None:
    """Print what a command said.

    A sign that the terminal does not have is shown by its number. A reader that has gone (`plan ... | head`)
    is no fault: the status still says how the command ended.
    """
    sys.stdout.reconfigure(errors="backslashreplace")
    try:
        print(text, end="", flush=True)
    except BrokenPipeError:
        # Python flushes once more when it ends: let that go where nobody reads it.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())


if __name__ == "__main__":
    sys.stderr.reconfigure(errors="backslashreplace")
    sys.exit(main(sys.argv[1:]))
