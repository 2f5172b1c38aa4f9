"""What `python3 -m shoplib plan` and `check` run once the environment stands.

`shoplib.start.cli` has read the command line already; here come the command's name and its operands.
"""

import importlib
import sys


def main(words: list[str]) -> int:
    """Run the command that the first of `words` names on the rest; return its exit status."""
    command, *operands = words
    return importlib.import_module(f"shoplib.commands.{command}").run(*operands)


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
