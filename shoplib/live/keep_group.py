"""The last group of a panel that sizes a case: what stands on it kept as a project file, and brought back."""

from collections.abc import Callable, Mapping
from dataclasses import replace
from pathlib import Path

from traitlets import TraitError

from shoplib.live.keep_box import FOLDER, KeepBox, NotKept
from shoplib.live.kept_choices import OtherProject
from shoplib.live.panel import Group, Panel
from shoplib.measure import LengthError
from shoplib.model.project import Project


def keep_group(
    panel: Callable[[], Panel], project: Callable[[], Project], choices: Callable[[Project], Mapping[str, object]],
    folder: Path | None = None, words: str = "",
) -> Group:
    """Name, Save, list and Load, for the panel that `panel` gives once it is made; `project` is what stands on it.

    `choices` gives the values of the controls for a project, or raises OtherProject. `words` say what is not kept.
    Files go into `folder`; None is `my_projects` beside the notebook that is open.
    """

    def named(name: str) -> Project:
        if panel().stale:
            raise NotKept(f"What cannot be built is not saved. {panel().message}")
        return replace(project(), name=name)

    def load(kept: Project) -> None:
        try:
            panel().put(choices(kept))
        except LengthError as outside:
            raise OtherProject(f"{outside}") from None
        except TraitError:
            raise OtherProject("there is more in it than these controls can set.") from None

    box = KeepBox(folder or Path.cwd() / FOLDER, named, load)
    return Group("Keep", {}, f"As a project file of your own, in the folder {FOLDER}. {words}".strip(), box.widgets)
