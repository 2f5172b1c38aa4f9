"""The command line: `python3 -m shoplib`, and its commands test, plan, check, sheets, print, practice."""

import argparse
import difflib
import re
import sys
from collections.abc import Sequence
from pathlib import Path
from typing import NoReturn

from shoplib.start import environment, lab
from shoplib.start.child import hand_over
from shoplib.start.place import Place
from shoplib.start.trouble import Trouble

NO_SUCH_FILE = 2  # as the commands themselves say that nothing was written
COULD_NOT_SET_UP = 3
STOPPED = 130  # what a shell reports for a program that Ctrl+C ended


def main(argv: Sequence[str] | None = None) -> int:
    """Set up if need be, then do what `argv` says; return the exit status.

    2 for a command that is not understood or a file that is not there, 3 when the environment cannot be made, else
    the status of what was run (JupyterLab, pytest, or the command's own as DEVELOPERS.md gives it).
    """
    place = Place.of_this_copy()
    words = list(sys.argv[1:] if argv is None else argv)
    arguments = parser(place).parse_args(["--help" if word == "help" else word for word in words[:1]] + words[1:])
    for path in (Path(getattr(arguments, name)) for name in arguments.reads):
        if _is_absent(path):  # said before the set-up: a mistyped name is not worth minutes of waiting
            print(f"{path.name}: there is no such file; check the name and the folder", file=sys.stderr)
            return NO_SUCH_FILE
    try:
        environment.ensure(place)
        return arguments.run(place, arguments)
    except Trouble as trouble:
        print(trouble, file=sys.stderr)
        return COULD_NOT_SET_UP
    except KeyboardInterrupt:
        print(f"\nStopped. To go on, type again: {place.command}", file=sys.stderr)
        return STOPPED


EXAMPLES = {
    "test": "test",
    "plan": "plan data/projects/under_bench_case.toml --to my_case",
    "check": "check my_case.toml typed_list.csv",
    "sheets": "sheets data/projects/under_bench_case.toml --to my_sheets",
    "print": 'print data/projects/under_bench_case.toml --to my_prints/bench_case --date "29 May"',
    "practice": 'practice dado --thickness "0.703 in" --to practice',
}


class _Kind(argparse.ArgumentParser):
    """Says in plain words what was not understood, and shows a line that would be."""

    def error(self, message: str) -> NoReturn:
        command = self.prog.split()[-1]
        start = self.prog.partition(" -m shoplib")[0] + " -m shoplib"
        wrong = re.search(r"invalid choice: '(.*?)'[^(]*\(choose", message)
        missing = re.search(r"required: (.*)", message)
        unknown = re.search(r"unrecognized arguments: (.*)", message)
        bare = re.search(r"argument (--\w+): expected (?:at least )?one argument", message)
        if wrong:
            near = difflib.get_close_matches(wrong[1].lower(), EXAMPLES, 1)
            meant = f"did you mean {start} {near[0]}?" if near else f"there are {', '.join(EXAMPLES)} and help."
            told = f'There is no command "{wrong[1]}": {meant}'
        elif missing:
            told = f"{command} needs {missing[1].replace(',', ' and')} as well."
        elif unknown:
            quoted = "" if unknown[1].startswith("-") else '; put words of one thing in quotes: "29 May"'
            told = f"{unknown[1]} is not understood here{quoted}."
        elif bare:
            told = f"Behind {bare[1]} nothing is said."
        else:
            told = f"{message[:1].upper()}{message[1:]}."
        if command in EXAMPLES:
            told += f" For example: {start} {EXAMPLES[command]}"
        self.exit(2, f"{told}\n{self.format_usage()}To see all commands: {start} help\n")


def parser(place: Place) -> argparse.ArgumentParser:
    """The commands and their options."""
    top = _Kind(
        prog=place.command,
        description="Without a command: set up if need be, then open the workbook in JupyterLab. "
        "Ctrl+C in the terminal stops it.",
        epilog=f"More on one command: {place.command} plan --help",
    )
    top.set_defaults(run=lambda place, _: lab.start(place), reads=())
    commands = top.add_subparsers(title="commands", metavar="COMMAND")

    test = commands.add_parser("test", help="test the workbook, its pages included")
    test.add_argument("--long", action="store_true", help="with the full counts of random projects")
    test.set_defaults(run=_test)

    plan = commands.add_parser("plan", help="turn a project file into a dry-fitted cut list and drawings")
    plan.add_argument("file", metavar="FILE", help="the project file (.toml)")
    plan.add_argument("--to", metavar="FOLDER", required=True, help="the folder to write the plan into")
    plan.set_defaults(reads=("file",), run=lambda place, given: _command(place, "plan", given.file, given.to))

    check = commands.add_parser("check", help="compare a cut list that was typed by hand with a project")
    check.add_argument("file", metavar="FILE", help="the project file (.toml)")
    check.add_argument("list_file", metavar="LIST.csv", help="the cut list")
    check.set_defaults(
        reads=("file", "list_file"),
        run=lambda place, given: _command(place, "check", given.file, given.list_file),
    )

    sheets = commands.add_parser("sheets", help="lay the boards of a project out on sheets, and list what to buy")
    sheets.add_argument("file", metavar="FILE", help="the project file (.toml)")
    sheets.add_argument("--to", metavar="FOLDER", required=True, help="the folder to write layouts and lists into")
    sheets.add_argument(
        "--seconds", metavar="S", type=_seconds, default=10.0, help="how long to look for better layouts; else 10"
    )
    sheets.set_defaults(
        reads=("file",),
        run=lambda place, given: _command(place, "sheets", given.file, given.to, f"{given.seconds:g}"),
    )

    prints = commands.add_parser("print", help="print a plan set, labels, story stick and templates")
    prints.add_argument("file", metavar="FILE", help="the project file (.toml)")
    prints.add_argument("--to", metavar="FOLDER", required=True, help="the folder to write it into")
    prints.add_argument("--paper", metavar="TEXT", default="", help="letter or a4; left out, the paper of your unit")
    prints.add_argument("--date", metavar="TEXT", default="", help="printed at the head of each page")
    prints.add_argument(
        "--seconds", metavar="S", type=_seconds, default=10.0, help="how long to look for better layouts; else 10"
    )
    prints.set_defaults(reads=("file",), run=lambda place, given: _command(
        place, "print", given.file, given.to, given.paper, given.date, f"{given.seconds:g}",
    ))

    practice = commands.add_parser("practice", help="print a practice sheet of a joint for the sheet that you measured")
    practice.add_argument("joint", metavar="JOINT", help='the joint, such as dado or "stopped dado"')
    practice.add_argument("--to", metavar="FOLDER", required=True, help="the folder to write it into")
    for name, what in (
        ("--thickness", 'thickness of the sheet, such as "18.2 mm"'),
        ("--receives", "thickness of the board that receives the other, where it is of another sheet"),
        ("--tool", "one of the ways to cut the joint, such as router"),
        ("--paper", "letter or a4; left out, the paper of your unit"),
        ("--date", "printed at the head of each page"),
    ):
        practice.add_argument(name, metavar="TEXT", default="", required=name == "--thickness", help=what)
    practice.add_argument("--readings", metavar="TEXT", nargs="+", default=[], help="what a caliper read, one by one")
    for name, what in (
        ("--outer", "how wide one of the two outer cutters of your dado set cuts"),
        ("--chippers", "the chippers that you own, one by one"),
        ("--shims", "the shims that you own, one by one"),
    ):
        practice.add_argument(name, metavar="TEXT", nargs="+", default=[], help=what)
    practice.set_defaults(run=lambda place, given: _command(
        place, "practice", given.joint, given.to, given.thickness, given.receives, given.tool, given.paper, given.date,
        *("; ".join(pieces) for pieces in (given.outer, given.chippers, given.shims)), *given.readings,
    ))
    return top


def _seconds(text: str) -> float:
    """A number of seconds, up to an hour."""
    try:
        seconds = float(text.replace(",", "."))
    except ValueError:
        seconds = -1.0
    if not 0 <= seconds <= 3600:  # nothing that is no number passes either
        raise argparse.ArgumentTypeError(f'"{text}" is no number of seconds from 0 to 3600, such as 30')
    return seconds


def _is_absent(path: Path) -> bool:
    """Whether there is no such file; what else may be wrong with it, the command itself says."""
    try:
        path.stat()
    except FileNotFoundError:
        return True
    except OSError:
        return False
    return False


def _test(place: Place, given: argparse.Namespace) -> int:
    # Four at most: each worker starts kernels of its own, and more of them only wait for memory. In the order of
    # the tests, whose longest files come first, for xdist's own order is by how many tests a file has.
    spread = ["-n", "auto", "--maxprocesses=4", "--dist=loadscope", "--no-loadscope-reorder"]
    return hand_over(place, ["-m", "pytest", *spread, *(["--long"] if given.long else [])], folder=place.root)


def _command(place: Place, *words: str) -> int:
    return hand_over(place, ["-m", "shoplib.commands", *words])
