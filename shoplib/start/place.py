"""Where things stand on this computer, and how a command is written on its system."""

import os
import sys
from dataclasses import dataclass
from pathlib import Path


@dataclass(frozen=True)
class Place:
    """One copy of the workbook: the folder that holds README.md, and the kind of system.

    >>> there = Place(Path("workbook"), windows=True)
    >>> there.python.as_posix(), there.command
    ('workbook/.venv/Scripts/python.exe', 'py -m shoplib')
    """

    root: Path
    windows: bool

    @classmethod
    def of_this_copy(cls) -> "Place":
        """The copy that this file belongs to, on the system that runs it."""
        return cls(Path(__file__).resolve().parents[2], os.name == "nt")

    @property
    def venv(self) -> Path:
        """The workbook's own Python environment."""
        return self.root / ".venv"

    @property
    def scripts(self) -> Path:
        """Where an environment keeps its programs on this system."""
        return self.venv / ("Scripts" if self.windows else "bin")

    @property
    def python(self) -> Path:
        """The environment's Python."""
        return self.scripts / ("python.exe" if self.windows else "python")

    @property
    def packages(self) -> Path:
        """Where the environment keeps what is installed into it; it is made with the Python that runs this."""
        if self.windows:
            return self.venv / "Lib" / "site-packages"
        return self.venv / "lib" / "python{}.{}".format(*sys.version_info[:2]) / "site-packages"

    @property
    def log(self) -> Path:
        """The file that keeps what pip said in the set-up."""
        return self.venv / "set-up-log.txt"

    @property
    def stamp(self) -> Path:
        """The file that is written last, when the environment is complete."""
        return self.venv / "shoplib-stamp.txt"

    @property
    def requirements(self) -> Path:
        """What is installed into the environment."""
        return self.root / "requirements.txt"

    @property
    def start_page(self) -> Path:
        """The page that JupyterLab opens on."""
        return self.root / "notebooks" / "00_start_here.ipynb"

    @property
    def preferences(self) -> Path:
        """What JupyterLab and IPython would else keep in the home folder: settings, layout, history."""
        return self.root / ".jupyter"

    @property
    def command(self) -> str:
        """How the workbook is started on this system."""
        return "py -m shoplib" if self.windows else "python3 -m shoplib"
