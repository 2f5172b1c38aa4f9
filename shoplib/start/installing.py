"""pip at work, as one line that counts; all that pip says goes into a file."""

import queue
import re
import subprocess
import threading
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from typing import TextIO

EVERY = 20
"""Where there is no terminal to write one line over, every so many packages get a line of their own."""
PAUSE = 0.5  # seconds without a word from pip, after which is counted what it has put in its place
LAST_LINES = 8

_COLLECTING = re.compile(r"Collecting ([^\s=<>!~;\[(]+)")
_INSTALLING = re.compile(r"Installing collected packages: (.+)")
_RETRYING = re.compile(r"Retrying \(Retry\(")


@dataclass
class Progress:
    """What pip has come to, in words.

    >>> progress = Progress(counted=lambda: 1)
    >>> progress.read("Collecting numpy==2.4.6 (from -r requirements.txt (line 9))")
    >>> progress.words()
    'fetching package 1: numpy'
    >>> progress.read("Installing collected packages: numpy, pint")
    >>> progress.words()
    'installing: 1 of 2'
    """

    counted: Callable[[], int]
    fetched: list[str] = field(default_factory=list)
    to_install: int = 0
    waits: bool = False

    def read(self, line: str) -> None:
        """Take in one line of pip's."""
        self.waits = bool(_RETRYING.search(line))
        if found := _COLLECTING.search(line):
            self.fetched.append(found[1])
        if found := _INSTALLING.search(line):
            self.to_install = found[1].count(",") + 1

    @property
    def count(self) -> int:
        """How many packages are done in the step that pip is at."""
        return min(self.counted(), self.to_install) if self.to_install else len(self.fetched)

    def words(self) -> str:
        """The line to show; empty before pip has come to anything."""
        if self.waits:
            return "the network does not answer; trying again"
        if self.to_install:
            return f"installing: {self.count} of {self.to_install}"
        return f"fetching package {self.count}: {self.fetched[-1]}" if self.fetched else ""


def install(
    command: Sequence[str], environment: Mapping[str, str], folder: Path, log: Path, packages: Path, to: TextIO
) -> tuple[int, str]:
    """Run pip in `folder`, keep all it says in the file `log`, count on `to`; give its exit status and its words.

    `packages` is where pip puts what it installs; each finished one has a folder `*.dist-info` there.
    Raises OSError where pip cannot be started or the log cannot be written.
    """
    before = len(_finished(packages))
    progress = Progress(lambda: len(_finished(packages)) - before)
    shown = _Line(to)
    said = []
    with log.open("w", encoding="utf-8") as kept:
        pip = subprocess.Popen(
            command,
            cwd=folder,
            env=dict(environment),
            stdin=subprocess.DEVNULL,
            stdout=subprocess.PIPE,
            stderr=subprocess.STDOUT,
            text=True,
            encoding="utf-8",
            errors="replace",
        )
        try:
            for line in _lines(pip.stdout):
                if line:
                    kept.write(line)
                    said.append(line)
                    progress.read(line)
                shown.show(progress.words(), progress.count)
            status = pip.wait()
        finally:
            if pip.poll() is None:
                pip.kill()
                pip.wait()
            shown.end()
    return status, "".join(said)


def last_of(said: str) -> list[str]:
    r"""The last lines of what pip said.

    >>> last_of("Collecting pint\n\nERROR: No matching distribution found for pint==99\n")
    ['Collecting pint', 'ERROR: No matching distribution found for pint==99']
    """
    return [line.rstrip() for line in said.splitlines() if line.strip()][-LAST_LINES:]


def _finished(packages: Path) -> list[Path]:
    return list(packages.glob("*.dist-info"))


def _lines(stream: TextIO) -> Iterator[str]:
    """The lines of a stream as they come, and an empty text whenever none came for a while."""
    come: queue.Queue[str | None] = queue.Queue()

    def read() -> None:
        for line in stream:
            come.put(line)
        come.put(None)

    threading.Thread(target=read, daemon=True).start()
    while True:
        try:
            line = come.get(timeout=PAUSE)
        except queue.Empty:
            yield ""
            continue
        if line is None:
            return
        yield line


class _Line:
    """One line, written over on a terminal; elsewhere a new one for every so many packages."""

    def __init__(self, to: TextIO) -> None:
        self.to, self.over, self.last, self.told = to, to.isatty(), "", -1

    def show(self, words: str, count: int) -> None:
        if not words or words == self.last:
            return
        if self.over:
            self.to.write(f"\r  {words[:76]:76}")
        elif count and count % EVERY == 0 and count != self.told:
            self.to.write(f"  {words}\n")
            self.told = count
        else:
            return
        self.to.flush()
        self.last = words

    def end(self) -> None:
        """Leave the line as it stands."""
        if self.over and self.last:
            self.to.write("\n")
            self.to.flush()
