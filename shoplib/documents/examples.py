"""The project files that come with the workbook, found from any working folder."""

from pathlib import Path

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
