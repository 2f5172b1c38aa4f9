"""`python3 -m shoplib`: see `shoplib.start.cli` for the commands.

The syntax here is plain on purpose: a Python as old as 2.7 must be able to read this file, to print
one sentence that says what to do. `python3 FOLDER/shoplib`, from anywhere, works too.
"""

import os
import sys

OLDEST = (3, 11)


def too_old(version, windows):
    """The sentence for a Python older than `OLDEST`, or an empty text.

    `version` begins with major and minor, as `sys.version_info` does; `windows` chooses the command shown.
    """
    if tuple(version[:2]) >= OLDEST:
        return ""
    again = "py -m shoplib" if windows else "python3.13 -m shoplib"
    return (
        "The workbook needs Python %d.%d or newer, and this is Python %d.%d. Install a newer one "
        "(from python.org, or with your system's package manager), then start again with it, for example: %s"
    ) % (OLDEST + tuple(version[:2]) + (again,))


def main():
    """Run the command line; return the exit status (3: the workbook could not be set up)."""
    sentence = too_old(sys.version_info, os.name == "nt")
    if sentence:
        sys.stderr.write(sentence + "\n")
        return 3
    if not __package__:
        sys.path[0] = os.path.dirname(os.path.dirname(os.path.abspath(__file__)))
    from shoplib.start.cli import main as command_line

    return command_line()


if __name__ == "__main__":
    sys.exit(main())
