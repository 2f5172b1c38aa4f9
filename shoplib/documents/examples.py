"""The project files that come with the workbook, found from any working folder."""

from pathlib import Path

PROJECTS = Path(__file__).resolve().parents[2] / "data" / "projects"


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
