"""The papers keep true: links lead somewhere, the picture is the example's, every dependency has its reason."""

import re
import textwrap
from pathlib import Path

import pytest

from shoplib.checks import check
from shoplib.documents.drawings import drawing_files
from shoplib.documents.glossary import WORDS
from shoplib.documents.plan_words import findings_text
from shoplib.documents.project_file import project_from_text, read_project
from shoplib.documents.to_measure import to_measure_text
from shoplib.measure import INCH, read_length
from shoplib.model.cabinet import solve
from shoplib.start.cli import EXAMPLES

ROOT = Path(__file__).parents[1]


@pytest.mark.parametrize("paper", ["README.md", "DEVELOPERS.md"])
def test_files_that_a_paper_links_to_are_there(paper: str) -> None:
    links = re.findall(r"\]\(([^)#]+)\)", (ROOT / paper).read_text(encoding="utf-8"))
    gone = [link for link in links if not link.startswith("https://") and not (ROOT / link).exists()]
    assert not gone


def test_the_picture_of_the_readme_is_what_the_example_gives() -> None:
    case = solve(read_project(ROOT / "data" / "projects" / "under_bench_case.toml"))
    drawn = drawing_files(case)["front-elevation.svg"]
    shown = (ROOT / "data" / "pictures" / "under_bench_case.svg").read_bytes()
    assert drawn == shown.replace(b"\r\n", b"\n"), "draw it anew: plan the case, copy front-elevation.svg there"


def indented(paper: str, begins: str) -> str:
    """The block of a paper, set in by four, that begins so, without that indent."""
    blocks = re.findall(r"(?:^    .+\n)+", (ROOT / paper).read_text(encoding="utf-8"), re.MULTILINE)
    return textwrap.dedent(next(block for block in blocks if block.strip().startswith(begins)))


def test_the_readme_measures_writes_and_plans_again_truly() -> None:
    given = (ROOT / "data" / "projects" / "under_bench_case.toml").read_text(encoding="utf-8")
    written = indented("README.md", "[measured.openings]")
    name, front = re.search(r'"(.*?)" = \{ front = "(.*?)"', written).groups()
    planned = re.search(rf'^"{name}" = .* # planned (.*)$', to_measure_text(solve(project_from_text(given))), re.M)[1]
    readme = " ".join((ROOT / "README.md").read_text(encoding="utf-8").split())
    assert f"planned {planned}, reads 1/32 in less at the front" in readme
    assert read_length(planned) - read_length(front) == INCH // 32
    told = findings_text(check(solve(project_from_text(given + written))))
    assert indented("README.md", "Note: changed") in told


def test_the_readme_explains_each_word_as_the_terminal_does() -> None:
    readme = (ROOT / "README.md").read_text(encoding="utf-8")
    assert [word for word, meaning in WORDS.items() if f"\n- **{word}**: {meaning}\n" not in readme] == []


@pytest.mark.parametrize(
    ("word", "explained"),
    [
        ("dry-fit", "dry-fitted (put together in numbers"),
        ("terminal", "terminal in it, a window that takes typed commands"),
        ("TOML", "TOML: plain text, a name and its value on each line"),
        ("*cells*", "blocks, its *cells*"),
        ("kernel", "*kernel*, the Python behind the page"),
    ],
)
def test_a_word_of_the_computer_is_explained_at_its_first_use(word: str, explained: str) -> None:
    readme = " ".join((ROOT / "README.md").read_text(encoding="utf-8").split())
    assert readme.index(word) == readme.index(explained) + explained.index(word)


def test_every_command_is_in_the_readme() -> None:
    readme = (ROOT / "README.md").read_text(encoding="utf-8")
    assert [command for command in [*EXAMPLES, "help"] if f"| `python3 -m shoplib {command}" not in readme] == []


def test_every_dependency_has_its_reason() -> None:
    pins = re.findall(r"^([\w-]+)==", (ROOT / "requirements.txt").read_text(encoding="utf-8"), re.MULTILINE)
    reasons = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
    assert len(pins) > 10
    assert [name for name in pins if f"`{name}`" not in reasons] == []


def test_every_room_is_described() -> None:
    rooms = [path.parent.name for path in (ROOT / "shoplib").glob("*/__init__.py")]
    text = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
    assert [room for room in rooms if f"`shoplib/{room}/`" not in text] == []
