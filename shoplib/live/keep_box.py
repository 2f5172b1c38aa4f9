"""Keeps what stands on a panel as a project file beside the notebooks, and brings it back."""

import re
from collections.abc import Callable
from html import escape
from pathlib import Path

import ipywidgets

from shoplib.documents.atomic import WriteError, write_files
from shoplib.documents.project_file import ProjectFileError, read_project
from shoplib.documents.project_text import project_text
from shoplib.live.kept_choices import OtherProject
from shoplib.model.project import Project

FOLDER = "my_projects"
LONGEST = 60

_RESERVED = {"con", "prn", "aux", "nul", *(f"{port}{n}" for port in ("com", "lpt") for n in range(1, 10))}
"""Names that Windows keeps for itself, whatever stands behind a full stop."""

_WRAPS = "line-height: 1.4; white-space: normal; overflow-wrap: anywhere"
"""A long command stays in its column."""

_ROOT = Path(__file__).resolve().parents[2]


class NotKept(Exception):
    """Nothing can be kept or brought back; one sentence says why."""


def file_name(typed: str) -> str:
    """The name of the file for a name as it was typed; it needs no `.toml`.

    >>> file_name(" tool case "), file_name("tool-case.toml")
    ('tool case.toml', 'tool-case.toml')
    >>> file_name("../tool case")
    Traceback (most recent call last):
    ...
    shoplib.live.keep_box.NotKept: A name is letters, digits, spaces, - and _, and begins with a letter or digit...

    Raises NotKept for what is no plain file name.
    """
    name = typed.strip().removesuffix(".toml").rstrip()
    if not name:
        raise NotKept("Give it a name first, such as tool case.")
    if len(name) > LONGEST:
        raise NotKept(f"The name is {len(name)} letters long; {LONGEST} is the most.")
    if not re.fullmatch(r"[^\W_][\w -]*", name):
        raise NotKept(
            "A name is letters, digits, spaces, - and _, and begins with a letter or digit, such as tool case."
        )
    if name.casefold() in _RESERVED:
        raise NotKept(f"{name} is a name that some computers keep for themselves: choose another, such as tool case.")
    return f"{name}.toml"


class KeepBox:
    """A name and Save; a list of what was saved and Load.

    `project` gives what stands on the panel under a name, or NotKept. `load` sets the panel to a project, or
    raises OtherProject. Files are in `folder`, which is made at the first save.
    """

    def __init__(self, folder: Path, project: Callable[[str], Project], load: Callable[[Project], None]):
        self._folder, self._project, self._load = folder, project, load
        self._replaces = ""
        self.name = ipywidgets.Text(description="Name", placeholder="tool case", continuous_update=False)
        self.saved = ipywidgets.Dropdown(description="Saved")
        self.save_button, self.load_button = _button("Save"), _button("Load")
        self._says = ipywidgets.HTML()
        self.save_button.on_click(lambda _button: self.save())
        self.load_button.on_click(lambda _button: self.load())
        self.name.observe(self._other_name, names="value")
        for field in (self.name, self.saved):
            field.layout.width, field.style.description_width = "auto", "auto"
        self.widgets = (self.name, self.save_button, self.saved, self.load_button, self._says)
        self._tell("")
        self._list()

    @property
    def says(self) -> str:
        """The line under the buttons."""
        return self._line

    def save(self) -> None:
        """Keep what stands on the panel; an existing file is replaced only at the second press."""
        try:
            name = file_name(self.name.value)
            there = next((one for one in self._files() if one.casefold() == name.casefold()), "")
            project = self._project(name.removesuffix(".toml"))
            if there and self._replaces != there:
                self._replaces = there
                self._tell(f"There is a {there} already. Press Save once more to replace it.")
                return
            write_files(self._folder, {there or name: project_text(project).encode()})
        except (NotKept, WriteError) as fault:
            self._tell(str(fault))
            return
        self._replaces = ""
        self._list((there or name).removesuffix(".toml"))
        self._tell(
            f"Saved as {there or name}. Its cut list and drawings, typed in a terminal in the workbook's folder:",
            self._command(there or name),
        )

    def load(self) -> None:
        """Set the panel to what was saved under the chosen name."""
        name = self.saved.value
        self._list(name)
        if not self.saved.options:
            self._tell("Nothing was saved here yet." if not name else f"{name} is no longer there.")
        elif not name:
            self._tell("These are saved: choose one, then press Load.")
        elif not self.saved.value:
            self._tell(f"{name} is no longer there.")
        else:
            self._read(f"{name}.toml")

    def _read(self, file: str) -> None:
        try:
            self._load(read_project(self._folder / file))
        except ProjectFileError as fault:
            self._tell(f"{fault}.")
        except OtherProject as reason:
            self._tell(f"{file} cannot be shown here: {reason} Nothing was changed. To plan it as it is:",
                       self._command(file))
        else:
            self._tell(f"{file} is on the panel now.")

    def _other_name(self, _change: object) -> None:
        self._replaces = ""

    def _files(self) -> list[str]:
        return sorted((path.name for path in self._folder.glob("*.toml") if path.is_file()), key=str.casefold)

    def _list(self, chosen: str | None = None) -> None:
        names = [file.removesuffix(".toml") for file in self._files()]
        self.saved.options = names
        self.saved.value = chosen if chosen in names else None if chosen else next(iter(names), None)

    def _command(self, file: str) -> str:
        path = (self._folder / file).resolve()
        path = path.relative_to(_ROOT) if path.is_relative_to(_ROOT) else path
        return f'python3 -m shoplib plan "{path.as_posix()}" --to "{file.removesuffix(".toml")}"'

    def _tell(self, line: str, command: str = "") -> None:
        self._line = f"{line} {command}".strip()
        typed = f"<br/><code>{escape(command)}</code>" if command else ""
        self._says.value = f'<div role="status" style="{_WRAPS}">{escape(line)}{typed}</div>'


def _button(text: str) -> ipywidgets.Button:
    return ipywidgets.Button(description=text, layout=ipywidgets.Layout(width="auto"))
