"""The panel that prints a project for the bench: which project, which paper, a date, and one button."""

from html import escape
from pathlib import Path
from urllib.parse import quote

import ipywidgets
from IPython.display import display

from shoplib.buying.laid_out import laid_out
from shoplib.documents.asked import NotUnderstood, date_printed, paper_name
from shoplib.documents.atomic import WriteError
from shoplib.documents.examples import PROJECTS
from shoplib.documents.paper import PAPERS
from shoplib.documents.project_file import ProjectFileError
from shoplib.documents.project_files import project_files
from shoplib.live.keep_box import FOLDER
from shoplib.live.large_type import enlarge
from shoplib.live.wake import left_behind
from shoplib.model.project import ImpossibleProject
from shoplib.printed.everything import ABOUT, print_project
from shoplib.printed.into_folder import Told, put_into, try_to_print_into

INTO = "my_prints"
SECONDS = 10.0

_ROOT = PROJECTS.parents[1]


class PrintPanel:
    """Projects to choose from, a paper, a date, and the button; below it what was printed, with links.

    The projects are those copied into the folder of the workbook, saved on its panels or copied beside the page, then
    the examples. What is printed goes into a folder of `my_prints`, named like the project, in `folder` (None: beside
    the notebook that is open). `large` shows the panel in large type.

    >>> panel = PrintPanel()
    >>> panel.button.description, panel.paper.value
    ('Print for the bench', '')
    """

    def __init__(self, folder: Path | None = None, seconds: float = SECONDS, large: bool = False):
        self._folder, self._seconds = folder or Path.cwd(), seconds
        self._into: dict[str, Path] = {}  # of each project in the list the folder it is printed into
        self.project = ipywidgets.Dropdown(description="Project", options=self._projects())
        self.paper = ipywidgets.Dropdown(
            description="Paper",
            options=[("as the project's unit", ""), *((paper_name(name), name) for name in PAPERS)],
        )
        self.date = ipywidgets.Text(description="Date", placeholder="29 May")
        self.again = ipywidgets.Button(description="Look again for projects", layout=ipywidgets.Layout(width="auto"))
        self.button = ipywidgets.Button(description="Print for the bench", layout=ipywidgets.Layout(width="auto"))
        self.says = ipywidgets.HTML()
        self.links = ipywidgets.Output()
        self.again.on_click(lambda _button: self.look_again())
        self.button.on_click(lambda _button: self.print())
        for field in (self.project, self.paper, self.date):
            field.layout.width, field.style.description_width = "22em", "4em"
        fields = [self.project, self.again, self.paper, self.date, self.button, self.says, self.links]
        as_wide_as_its_words = ipywidgets.Layout(align_items="flex-start")
        self.widget = ipywidgets.VBox(fields, layout=as_wide_as_its_words).add_class("shop-awake")
        if large:
            enlarge(self.widget)

    def __repr__(self) -> str:
        return "A project printed for the bench"

    def _ipython_display_(self) -> None:
        """Show the panel, and leave a line in the notebook for reading without a kernel."""
        display({**self.widget._repr_mimebundle_(), "text/plain": repr(self)}, raw=True)
        still = left_behind(f"<p>{self!r}. To print here: menu Run, then Run All Cells.</p>")
        display({"text/html": still, "text/plain": repr(self)}, raw=True)

    def look_again(self) -> None:
        """List the projects there are now, such as one saved on another page since; the chosen one stays chosen."""
        chosen = self.project.value
        self.project.options = self._projects()
        if chosen in [path for _, path in self.project.options]:
            self.project.value = chosen
        self._tell(f"There are {len(self.project.options)} projects to choose from.")

    def print(self) -> None:
        """Print the chosen project, and say what came of it; a fault is one sentence, and then nothing is written."""
        self.links.outputs = ()
        file = Path(self.project.value)
        to = self._into[self.project.value]
        stopped = "Stopped; nothing is written."
        self.button.disabled = True
        try:
            date = date_printed(self.date.value)
            try_to_print_into(self._folder / to)
            self._tell(f"Laying out, {self._seconds:g} seconds at most, then printing.")
            paper = PAPERS[self.paper.value] if self.paper.value else None
            printed = print_project(file, paper, date, lambda cabinet: laid_out(cabinet, self._seconds))
            called = f"the folder {to.as_posix()}, in the list of files on the left,"
            stopped = f"Stopped while the files were put into {to.as_posix()}: press the button again, to be sure."
            told = put_into(self._folder / to, printed, called)
        except (ProjectFileError, ImpossibleProject, NotUnderstood, WriteError) as fault:
            self._tell(str(fault))
            return
        except KeyboardInterrupt:
            self._tell(stopped)
            return
        finally:
            self.button.disabled = False
        self._tell(*told.verdict, f"{told.where}.", *told.afterwards)
        self.links.outputs = (_links(to, told),)

    def _projects(self) -> list[tuple[str, str]]:
        """Each with the place where it lies, for two of one name may lie in two places."""
        found: dict[Path, str] = {}
        for place, (begins, into) in self._places().items():
            for path in project_files(place):
                name = path.stem.replace("_", " ") if place == PROJECTS else path.stem
                if path.resolve() not in found:
                    found[path.resolve()] = f"{begins}{name}"
                    self._into[str(path.resolve())] = Path(INTO) / into / path.stem
        return [(name, str(path)) for path, name in found.items()]

    def _places(self) -> dict[Path, tuple[str, str]]:
        """Where projects lie: how their names begin in the list, and in which folder of `INTO` they are printed."""
        return {
            _ROOT: ("", ""),
            self._folder / FOLDER: ("saved on a panel: ", "saved"),
            self._folder: ("beside this page: ", "beside_the_page"),
            PROJECTS: ("example: ", "examples"),
        }

    def _tell(self, *lines: str) -> None:
        self.says.value = f'<div role="status">{"".join(f"<p>{escape(line)}</p>" for line in lines)}</div>'


def _links(to: Path, told: Told) -> dict:
    """Links to the files, as a page shows them; the notebook's own way of linking opens them beside it."""
    items = "".join(f"<li>{_linked(to, name)}: {escape(about)}</li>" for name, about in told.files)
    plain = "\n".join(f"{name}: {about}" for name, about in told.files)
    return {"output_type": "display_data", "data": {"text/plain": plain, "text/html": f"<ul>{items}</ul>"},
            "metadata": {}}


def _linked(to: Path, name: str) -> str:
    """The name as a link; without one where it stands for several files."""
    if name not in ABOUT:
        return escape(name)
    return f'<a href="{quote((to / name).as_posix())}" target="_blank">{escape(name)}</a>'
