"""The command line: `python3 -m shoplib`, and its commands test, plan and check."""

import argparse
import sys
from collections.abc import Sequence

from shoplib.start import environment, lab
from shoplib.start.child import hand_over
from shoplib.start.place import Place
from shoplib.start.trouble import Trouble

COULD_NOT_SET_UP = 3
STOPPED = 130  # what a shell reports for a program that Ctrl+C ended


def main(argv: Sequence[str] | None = None) -> int:
    """Set up if need be, then do what `argv` says; return the exit status.

    2 for a command that is not understood, 3 when the environment cannot be made, else the status of
    what was run (JupyterLab, pytest, or the command's own as DEVELOPERS.md gives it).
    """
    place = Place.of_this_copy()
    arguments = parser(place).parse_args(argv)
    try:
        environment.ensure(place)
        return arguments.run(place, arguments)
    except Trouble as trouble:
        print(trouble, file=sys.stderr)
        return COULD_NOT_SET_UP
    except KeyboardInterrupt:
        print(f"\nStopped. To go on, type again: {place.command}", file=sys.stderr)
        return STOPPED


def parser(place: Place) -> argparse.ArgumentParser:
    """The commands and their options."""
    top = argparse.ArgumentParser(
        prog=place.command,
        description="Without a command: set up if need be, then open the workbook in JupyterLab.",
    )
    top.set_defaults(run=lambda place, _: lab.start(place))
    commands = top.add_subparsers(title="commands", metavar="COMMAND")

    test = commands.add_parser("test", help="test the workbook, its pages included")
    test.add_argument("--long", action="store_true", help="with the full counts of random projects")
    test.set_defaults(run=_test)

    plan = commands.add_parser("plan", help="turn a project file into a dry-fitted cut list and drawings")
    plan.add_argument("file", metavar="FILE", help="the project file (.toml)")
    plan.add_argument("--to", metavar="FOLDER", required=True, help="the folder to write the plan into")
    plan.set_defaults(run=lambda place, given: _command(place, "plan", given.file, given.to))

    check = commands.add_parser("check", help="compare a cut list that was typed by hand with a project")
    check.add_argument("file", metavar="FILE", help="the project file (.toml)")
    check.add_argument("list_file", metavar="LIST.csv", help="the cut list")
    check.set_defaults(run=lambda place, given: _command(place, "check", given.file, given.list_file))
    return top


def _test(place: Place, given: argparse.Namespace) -> int:
    # Four at most: each worker starts kernels of its own, and more of them only wait for memory.
    spread = ["-n", "auto", "--maxprocesses=4", "--dist=loadscope"]
    return hand_over(place, ["-m", "pytest", *spread, *(["--long"] if given.long else [])], folder=place.root)


def _command(place: Place, *words: str) -> int:
    return hand_over(place, ["-m", "shoplib.commands", *words])
