"""The last group of the carcass panel: what stands on it kept as a project file, and brought back."""

from collections.abc import Callable
from dataclasses import asdict, replace
from pathlib import Path

from traitlets import TraitError

from shoplib.live.case_choices import OtherProject, case_choices
from shoplib.live.keep_box import FOLDER, KeepBox, NotKept
from shoplib.live.panel import Group, Panel
from shoplib.measure import LengthError, Style
from shoplib.model.project import Project


def keep_group(
    panel: Callable[[], Panel], project: Callable[[], Project], style: Style, folder: Path | None = None
) -> Group:
    """Name, Save, list and Load, for the panel that `panel` gives once it is made; `project` is what stands on it.

    Files go into `folder`; None is `my_projects` beside the notebook that is open.
    """

    def named(name: str) -> Project:
        if panel().stale:
            raise NotKept(f"What cannot be built is not saved. {panel().message}")
        return replace(project(), name=name)

    def load(kept: Project) -> None:
        try:
            panel().put(asdict(case_choices(kept, style)))
        except LengthError as outside:
            raise OtherProject(f"{outside}") from None
        except TraitError:
            raise OtherProject("there is more in it than these controls can set.") from None

    box = KeepBox(folder or Path.cwd() / FOLDER, named, load)
    return Group("Keep", {}, f"As a project file of your own, in the folder {FOLDER}.", box.widgets)
