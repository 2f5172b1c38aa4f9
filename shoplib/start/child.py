"""How a program of the environment is started: with which variables, and in our stead."""

import os
import subprocess
import sys
from collections.abc import Mapping, Sequence
from pathlib import Path

from shoplib.start.place import Place

PYTHON_KEPT = {"DONTWRITEBYTECODE", "HASHSEED", "IOENCODING", "PYCACHEPREFIX", "UNBUFFERED", "UTF8"}
PIP_KEPT = {
    *("CACHE_DIR", "CERT", "CLIENT_CERT", "CONFIG_FILE", "CONSTRAINT", "DEFAULT_TIMEOUT", "EXTRA_INDEX_URL"),
    *("FIND_LINKS", "INDEX_URL", "NO_CACHE_DIR", "NO_INDEX", "PROXY", "RETRIES", "TIMEOUT", "TRUSTED_HOST"),
}
"""How the network is reached; what would change where or whether pip installs is left out."""

DROPPED = {"MPLBACKEND", "MPLCONFIGDIR", "IPYTHONDIR", "VIRTUAL_ENV", "__PYVENV_LAUNCHER__"}


def variables(place: Place, given: Mapping[str, str]) -> dict[str, str]:
    """The variables for a program of the environment, from those that the user has.

    Other environments, other module folders and other Jupyter settings of the user are kept out, and
    ours are kept out of the home folder.

    >>> there = Place(Path("/workbook"), windows=False)
    >>> mine = variables(there, {"PYTHONPATH": "/elsewhere", "PIP_TARGET": "/x", "PIP_PROXY": "p"})
    >>> [name for name in mine if name.startswith("P")]
    ['PIP_PROXY', 'PATH', 'PYTHONUTF8']
    """
    kept = {name: value for name, value in given.items() if _is_kept(name.upper())}
    path = next((name for name in kept if name.upper() == "PATH"), "PATH")
    kept[path] = os.pathsep.join(filter(None, [str(place.scripts), kept.get(path, "")]))
    return kept | {
        "VIRTUAL_ENV": str(place.venv),
        "PYTHONUTF8": "1",
        "MPLCONFIGDIR": str(place.venv / "matplotlib"),
        "JUPYTER_CONFIG_DIR": str(place.preferences),
        "JUPYTER_DATA_DIR": str(place.preferences / "data"),
        "IPYTHONDIR": str(place.preferences / "ipython"),
    }


def _is_kept(name: str) -> bool:
    if name in DROPPED or name.startswith("JUPYTER"):
        return False
    if name.startswith("PYTHON"):
        return name.removeprefix("PYTHON") in PYTHON_KEPT
    if name.startswith("PIP_"):
        return name.removeprefix("PIP_") in PIP_KEPT
    return True


def hand_over(place: Place, arguments: Sequence[str], folder: Path | None = None) -> int:
    """Run the environment's Python with `arguments` in our stead, in `folder` if one is given.

    `-P` keeps the folder that the user stands in from hiding modules. Elsewhere than on Windows the
    program takes over this process, so that signals and the exit status are its own; Windows has no
    such call, so there we wait, leave Ctrl+C to the program, and return its exit status.
    """
    command = [str(place.python), "-P", *arguments]
    environment = variables(place, os.environ)
    sys.stdout.flush()
    sys.stderr.flush()
    if not place.windows:
        if folder is not None:
            os.chdir(folder)
        os.execve(command[0], command, environment)
    process = subprocess.Popen(command, env=environment, cwd=folder)
    while True:
        try:
            return process.wait()
        except KeyboardInterrupt:
            continue
