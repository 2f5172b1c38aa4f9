"""Puts a print into a folder, and says what came of it: the same words from the command and from the button."""

from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path

from shoplib.documents.asked import paper_name
from shoplib.documents.atomic import try_folder, write_files
from shoplib.documents.filled_in import filled_in_by_hand
from shoplib.documents.last_print import RECORD, LastPrint, last_print, record
from shoplib.documents.paper import AT_FULL_SIZE, LAY_A_RULE
from shoplib.printed.everything import ABOUT, TEMPLATES, Printed
from shoplib.printed.told.readings import OLD_PAGES
from shoplib.words.naming import and_list, some_of

HOW_TO_PRINT = (
    f"Print {AT_FULL_SIZE}, and {LAY_A_RULE}. Read the cautions, the first pages of the plan set, before you cut."
)
"""What is said beside the files."""

NOT_YET = "The boards do not go together yet, and every page says so: cut nothing before."
"""What is said beside the papers of a plan that a check stops."""

_ROOM = 8_000_000
"""Bytes that must be free before the work begins, for the old print and the new one lie there at once."""

_DRAWN_APART = "exploded-*.svg"


@dataclass(frozen=True, slots=True)
class Told:
    """What came of a print, in lines: the verdict, each file with what is in it, and what is to be known about them."""

    verdict: tuple[str, ...]
    where: str
    files: tuple[tuple[str, str], ...]
    afterwards: tuple[str, ...]


def try_to_print_into(folder: Path | str) -> None:
    """Raise WriteError before the long work where nothing could be written into `folder` after it.

    >>> try_to_print_into(Path(__file__))
    Traceback (most recent call last):
    ...
    shoplib.documents.atomic.WriteError: ...into_folder.py is a file where a folder is needed; nothing was written...
    """
    try_folder(folder, [*ABOUT, f"{TEMPLATES}trial.svg", RECORD], _ROOM)


def put_into(folder: Path, printed: Printed, called: str) -> Told:
    """Write the files, and take away those of the print before that this one does not have, as far as nobody changed
    them.

    `called` is the folder as the reader knows it. Raises WriteError, and then the folder is as it was.

    >>> from tempfile import TemporaryDirectory
    >>> from shoplib.documents.paper import PAPERS
    >>> from shoplib.printed.typeset.stamp import Stamp
    >>> printed = Printed(Stamp("Shelf", "2222-3333"), "4 boards.", (), PAPERS["a4"], {"labels.pdf": b"%PDF"})
    >>> with TemporaryDirectory() as folder:
    ...     told = put_into(Path(folder), printed, "my_prints")
    >>> told.where, told.files
    ('Printed into my_prints on A4 paper, plan 2222-3333', (('labels.pdf', 'a label for each part'),))
    """
    before = last_print(folder)
    gone = before.no_longer_made(folder, printed.files) if before else []
    yours = before.changed_by_hand(folder, printed.files) if before else filled_in_by_hand(folder, printed.files)
    plan = printed.stamp.fingerprint
    left = [name for name in not_of_this(folder, printed.files) if name not in gone]
    write_files(folder, {**yours, **printed.files, RECORD: record(plan, printed.files)}, gone)
    return Told(
        (printed.stamp.name, printed.verdict),
        f"Printed into {called} on {paper_name(printed.paper.name)} paper, plan {plan}",
        tuple(files_told(printed.files)),
        tuple([*_about_the_print_before(before, plan, gone, yours, left), HOW_TO_PRINT, *_warnings(printed)]),
    )


def not_of_this(folder: Path, files: Iterable[str]) -> list[str]:
    """What lies in the folder under a name that a print gives, and is not among `files`.

    >>> not_of_this(Path("no_such_folder"), ["plan_set.pdf"])
    []
    """
    there = [*folder.glob(_DRAWN_APART), *folder.glob(f"{TEMPLATES}*.svg"), *(folder / name for name in ABOUT)]
    return sorted({path.relative_to(folder).as_posix() for path in there if path.exists()} - set(files))


def files_told(files: Iterable[str]) -> list[tuple[str, str]]:
    """Names of the files and what is in each; what there are several of in one line.

    >>> files_told(["labels.pdf", "templates/1-pull.svg"])
    [('labels.pdf', 'a label for each part'), ('templates/*.svg', '1 template in true scale, in millimetres')]
    """
    files = list(files)
    told = [(name, about) for name, about in ABOUT.items() if name in files]
    apart = [name for name in files if name.endswith(".svg") and "/" not in name and name not in ABOUT]
    if apart:
        told.append((_DRAWN_APART, f"{len(apart)} more drawn apart, one of each build"))
    templates = sum(name.startswith(TEMPLATES) for name in files)
    if templates:
        several = "template" if templates == 1 else "templates"
        told.append((f"{TEMPLATES}*.svg", f"{templates} {several} in true scale, in millimetres"))
    return told


def _about_the_print_before(
    before: LastPrint | None, plan: str, gone: list[str], yours: dict[str, bytes], left: list[str]
) -> list[str]:
    told = []
    if before and before.plan != plan:
        told.append(f"Before, plan {before.plan} lay there. {OLD_PAGES}")
    if gone:
        told.append(f"Taken away, for this print does not have it: {some_of(gone)}.")
    if yours:
        told.append(f"What you had changed there is kept: {some_of(list(yours))}.")
    if left:
        told.append(f"Not of this print, and best taken out of the folder if you do not know it: {some_of(left)}.")
    return told


def _warnings(printed: Printed) -> list[str]:
    told = []
    if printed.no_letters:
        told.append(f"The papers have no letter for {and_list(printed.no_letters)}; an empty box stands for each.")
    told += [f"No sheets are in it: {printed.not_laid_out}"] if printed.not_laid_out else []
    told += [f"STOP: {text}" for text in printed.stops]
    return [*told, NOT_YET] if printed.stops else told
