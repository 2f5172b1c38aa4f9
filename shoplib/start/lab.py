"""JupyterLab as the workbook starts it: on this computer only, with a token, without news."""

import json
import os

from shoplib.start.child import hand_over
from shoplib.start.place import Place
from shoplib.start.trouble import Trouble

SETTINGS = {"@jupyterlab/apputils-extension:notification": {"checkForUpdates": False, "fetchNews": "false"}}
"""No question about news and no look for updates: the workbook needs no network."""


def write_settings(place: Place) -> None:
    """Lay JupyterLab's defaults down inside the environment; the user's home is not touched."""
    folder = place.venv / "share" / "jupyter" / "lab" / "settings"
    folder.mkdir(parents=True, exist_ok=True)
    text = json.dumps(SETTINGS, indent=2) + "\n"
    (folder / "overrides.json").write_text(text, encoding="utf-8", newline="\n")


def arguments(place: Place, root_user: bool) -> list[str]:
    """What the environment's Python is told, to open JupyterLab on the start page.

    JupyterLab makes a new token at each start and opens the browser with it. It does not run for the
    user root unless told to; root's computers are mostly containers, where there is no other user.
    """
    page = place.start_page.relative_to(place.root).as_posix()
    return [
        "-m",
        "jupyterlab",
        "--ServerApp.ip=127.0.0.1",
        f"--ServerApp.root_dir={place.root}",
        f"--LabApp.default_url=/lab/tree/{page}",
        "--ServerApp.answer_yes=True",  # Ctrl+C stops it at once; else it would ask, and go on after 5 s
        "--LanguageServerManager.autodetect=False",  # it would call npm, which leaves files in the home folder
        *(["--ServerApp.allow_root=True"] if root_user else []),
    ]


def start(place: Place) -> int:
    """Open JupyterLab on the start page and stay until it ends."""
    if not place.start_page.is_file():
        raise Trouble(f"The start page {place.start_page} is missing: fetch the workbook's folder again.")
    root_user = not place.windows and os.geteuid() == 0
    return hand_over(place, arguments(place, root_user), folder=place.root)
