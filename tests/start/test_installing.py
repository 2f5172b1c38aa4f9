"""pip behind one line: what is counted, what is kept, what comes through when it fails. pip's part is played."""

import io
import sys
import time

import pytest

from shoplib.start import installing

# Read off pip 23.0 on Linux.
GOOD = """\
Obtaining file:///workbook
  Installing build dependencies: started
Collecting pint==0.25
  Downloading pint-0.25-py3-none-any.whl (305 kB)
Collecting flexcache>=0.3
Installing collected packages: flexcache, pint, shoplib
"""
WORK = "for name in ('flexcache', 'pint', 'shoplib'): pathlib.Path(f'packages/{name}-1.dist-info').mkdir()\n"


class Terminal(io.StringIO):
    def isatty(self):
        return True


def played(tmp_path, to, said=GOOD, then="", status=0):
    """Let a program in pip's stead say `said`, do `then`, and end with `status`."""
    (tmp_path / "packages" / "pip-23.dist-info").mkdir(parents=True)
    program = f"import pathlib, sys, time\nprint({said!r}, end='', flush=True)\n{then}\nsys.exit({status})"
    log = tmp_path / "log.txt"
    done = installing.install([sys.executable, "-c", program], {}, tmp_path, log, tmp_path / "packages", to)
    return done, log.read_text(encoding="utf-8")


def test_on_a_terminal_one_line_counts_what_is_fetched_and_what_is_in_place(tmp_path, monkeypatch):
    monkeypatch.setattr(installing, "PAUSE", 0.05)
    to = Terminal()
    (status, said), log = played(tmp_path, to, then=WORK + "time.sleep(0.5)")
    assert (status, said, log) == (0, GOOD, GOOD)
    states = [state.strip() for state in to.getvalue().split("\r")]
    assert "fetching package 2: flexcache" in states
    assert states[-1] == "installing: 3 of 3"  # pip's own folder stood there before
    assert to.getvalue().count("\n") == 1
    assert all(len(state) < 80 for state in states)


def test_elsewhere_a_line_stands_for_many_packages(tmp_path):
    to = io.StringIO()
    said = "".join(f"Collecting package-{number}\n" for number in range(1, 51))
    played(tmp_path, to, said)
    assert to.getvalue().splitlines() == ["  fetching package 20: package-20", "  fetching package 40: package-40"]


def test_a_silent_network_is_told_while_pip_tries_again(tmp_path):
    to = Terminal()
    played(tmp_path, to, "WARNING: Retrying (Retry(total=4, connect=None)) after connection broken by 'x'\n")
    assert "the network does not answer; trying again" in to.getvalue()


def test_what_pip_said_and_how_it_ended_come_through(tmp_path):
    to = io.StringIO()
    error = "print('ERROR: No matching distribution found for pint==99', file=sys.stderr)"
    (status, said), log = played(tmp_path, to, then=error, status=1)
    assert status == 1
    assert log == said
    assert installing.last_of(said)[-1] == "ERROR: No matching distribution found for pint==99"


def test_only_the_last_lines_are_shown():
    said = "\n".join(map(str, range(100)))
    assert installing.last_of(said) == [str(number) for number in range(92, 100)]


def test_pip_does_not_outlive_a_ctrl_c(tmp_path, monkeypatch):
    def interrupted(*_):
        raise KeyboardInterrupt

    monkeypatch.setattr(installing._Line, "show", interrupted)
    began = time.monotonic()
    with pytest.raises(KeyboardInterrupt):
        played(tmp_path, Terminal(), then="time.sleep(30)")
    assert time.monotonic() - began < 10
