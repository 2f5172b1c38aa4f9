"""The project files that come with the workbook, found from any working folder, and the cabinets they become."""

from pathlib import Path

from shoplib.documents.project_file import read_project
from shoplib.model.cabinet import solve
from shoplib.model.solved import Cabinet

PROJECTS = Path(__file__).resolve().parents[2] / "data" / "projects"


def project_path(project: str | Path) -> Path:
    """The file that is meant: as given from the working folder, else in the folder of the workbook, which pages do not
    run in; a name without `.toml` is that of a shipped example.

    >>> project_path("data/projects/rolling_stand.toml").stem, project_path("rolling_stand").suffix
    ('rolling_stand', '.toml')
    """
    path = Path(project)
    if path.suffix != ".toml":
        return example(str(project))
    in_folder = PROJECTS.parents[1] / path
    return in_folder if not path.exists() and in_folder.exists() else path


def example(name: str) -> Path:
    """The file of a shipped project, such as `example("under_bench_case")`.

    Raises LookupError with the names there are.

    >>> example("under_bench_case").name
    'under_bench_case.toml'
    >>> example("bench")
    Traceback (most recent call last):
    ...
    LookupError: There is no example "bench"; there are finger_jointed_drawers, rolling_stand, small_parts_wall_case, \
under_bench_case, wheel_wall_drawers.
    """
    found = {path.stem: path for path in sorted(PROJECTS.glob("*.toml"))}
    if name not in found:
        raise LookupError(f'There is no example "{name}"; there are {", ".join(found)}.')
    return found[name]


def cabinet_from(project: str | Path) -> Cabinet:
    """A project file, or a shipped example by its name, read and solved: as `project_path` finds it.

    Raises LookupError for a name that no example has, ProjectFileError or ImpossibleProject for a file that is no
    project or cannot be built, each one sentence.

    >>> cabinet_from("rolling_stand").project.name
    'Rolling stand for the repair place'
    """
    return solve(read_project(project_path(project)))
