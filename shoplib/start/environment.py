"""The workbook's own Python environment: is it complete, and if not, make it."""

import hashlib
import importlib.util
import os
import shutil
import subprocess
import sys
import time
from collections.abc import Sequence
from pathlib import Path

from shoplib.start import lab
from shoplib.start.child import variables
from shoplib.start.installing import install, last_of
from shoplib.start.place import Place
from shoplib.start.trouble import Trouble, from_error, from_output, missing_venv, no_space, not_allowed

ROOM_NEEDED = 1_200_000_000  # bytes; 720 MB were in use when it stood (Linux, Python 3.11), the rest is to spare


def ensure(place: Place) -> None:
    """Make the environment unless a complete and current one stands.

    Raises Trouble, with what to do, when it cannot be made.
    """
    try:
        if not stands(place):
            _make(place)
    except OSError as error:
        raise from_error(error, place) from error


def stands(place: Place) -> bool:
    """Whether the environment is complete and made from today's requirements.txt."""
    if not place.requirements.is_file():
        raise Trouble(
            f"{place.root} is not a whole copy of the workbook (requirements.txt is missing): "
            "fetch the whole folder again and start in it."
        )
    if not (place.stamp.is_file() and place.python.exists()):
        return False
    return place.stamp.read_text(encoding="utf-8") == wanted_stamp(place)


def wanted_stamp(place: Place) -> str:
    """What the stamp of a current environment says.

    It changes with requirements.txt (however its lines end), the Python, the system, and the folder:
    an environment names its own folder in its programs, so one that was moved does not work.
    """
    requirements = hashlib.sha256(place.requirements.read_text(encoding="utf-8").encode()).hexdigest()
    python = ".".join(map(str, sys.version_info[:2]))
    return f"requirements {requirements}\npython {python} on {sys.platform}\nfolder {place.root}\n"


def _make(place: Place) -> None:
    started = time.monotonic()
    if importlib.util.find_spec("venv") is None or importlib.util.find_spec("ensurepip") is None:
        raise missing_venv(place)
    _clear(place)
    if shutil.disk_usage(place.root).free < ROOM_NEEDED:
        raise no_space(place)
    _say("Setting up the workbook, once: this takes a few minutes and an Internet connection.")
    _say(f"1 of 3: making the environment {place.venv}")
    _run(place, [sys.executable, "-I", "-m", "venv", str(place.venv)])
    _say(f"2 of 3: fetching and installing what the workbook uses (details: {place.log.relative_to(place.root)})")
    pip = [str(place.python), "-I", "-m", "pip", "--no-input", "--disable-pip-version-check"]
    _install(place, [*pip, "install", "--no-user", "--progress-bar=off", "-r", str(place.requirements)])
    _say("3 of 3: settings for JupyterLab, and a list of the fonts for charts")
    lab.write_settings(place)
    _run(place, [str(place.python), "-I", "-c", "import matplotlib.font_manager"])
    place.stamp.write_text(wanted_stamp(place), encoding="utf-8", newline="\n")
    _say(f"Set up in {time.monotonic() - started:.0f} s. The next start is quick and needs no Internet.")


def _clear(place: Place) -> None:
    """Remove an old or half-made environment, and nothing that is not one."""
    if not os.access(place.root, os.W_OK):
        raise not_allowed(place)
    venv = place.venv
    if venv.is_symlink() or (venv.exists() and not venv.is_dir()):
        raise Trouble(
            f"{venv} should be a folder that the workbook makes, and is something else: "
            f"move it away, then type again: {place.command}"
        )
    if not venv.exists():
        return
    if Path(sys.prefix).resolve() == venv.resolve():
        raise Trouble(
            f"The environment in {venv} is out of date and cannot be made anew by the Python inside it: "
            f"type again with the Python of your system: {place.command}"
        )
    if any(venv.iterdir()) and not (venv / "pyvenv.cfg").exists():
        raise Trouble(
            f"The folder {venv} holds something that is not a Python environment: "
            f"move it away, then type again: {place.command}"
        )
    # The stamp goes first: whatever stops the removal, a half-removed environment is not taken for whole.
    place.stamp.unlink(missing_ok=True)
    # pyvenv.cfg goes last, so that what is left of it is still known for an environment.
    for entry in sorted(venv.iterdir(), key=lambda entry: entry.name == "pyvenv.cfg"):
        if entry.is_dir() and not entry.is_symlink():
            shutil.rmtree(entry)
        else:
            entry.unlink()


def _install(place: Place, pip: Sequence[str]) -> None:
    """Let pip work behind one line that counts; where it fails, show its last words and say where all stand."""
    status, said = install(pip, variables(place, os.environ), place.root, place.log, place.packages, sys.stderr)
    if status != 0:
        for line in last_of(said):
            _say(f"  pip: {line}")
        raise Trouble(f"{from_output(said, place)} (All that pip said: {place.log})")


def _run(place: Place, command: Sequence[str]) -> None:
    """Run a step; its complaints go into our sentence."""
    done = subprocess.run(
        command,
        cwd=place.root,
        env=variables(place, os.environ),
        stdin=subprocess.DEVNULL,
        capture_output=True,
        text=True,
        encoding="utf-8",
        errors="replace",
    )
    if done.returncode != 0:
        raise from_output(done.stdout + done.stderr, place)


def _say(line: str) -> None:
    # Not on standard output: that belongs to what the command itself tells.
    print(line, file=sys.stderr, flush=True)
