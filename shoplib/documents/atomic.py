"""Write files whole or not at all."""

import errno
import os
import re
import secrets
import shutil
import signal
import sys
import threading
import time
from collections.abc import Iterable, Iterator, Mapping
from contextlib import contextmanager
from pathlib import Path

TRIES = 6
PAUSE = 0.1  # seconds before the second try, then a little longer each time: about 1.5 s in all

HALFWAY = "NOT_WHOLE_READ_THIS.txt"
"""A file that lies in the folder only while finished files are put in their places."""

_HALFWAY_SAYS = (
    b"The files in this folder are not all of one run: it was ended while they were put in their places. Do not use\n"
    b"any of them before the same command has run again; it takes this note away.\n"
)
_LEFT = re.compile(r"\..+\.[0-9a-f]{8}\.part")
_LEFT_AFTER = 600.0
"""A file under a hidden name that is older than this, in seconds, is of a run that was killed: writing takes a few."""


class WriteError(Exception):
    """The files could not be written; the text is one sentence that says what to do."""


def write_files(folder: Path | str, files: Mapping[str, bytes], away: Iterable[str] = ()) -> None:
    """Write `files`, by name, into `folder`, which is made if it is missing: all of them, or none.

    A name may stand in a folder of `folder`, with a slash: `templates/peg.svg`. The files named in `away` are removed
    in the same step.

    Each is written in full beside its place and then put there in one step, so a reader never sees half
    a file. If one cannot be put in its place, those that were replaced before it get their old content
    back. A request to end (Ctrl+C, a closed terminal, a shut-down) waits until all are in place; only a program
    that is killed outright leaves what it had done. Killed while it makes the files, it leaves the old ones whole;
    killed between two places, some files new and some old, and beside them the note `HALFWAY`, which says so. What
    was not yet in place stays under hidden names that end in `.part`, until the next run takes them away. The bytes
    are written as they are; line ends are the caller's.

    >>> import tempfile
    >>> with tempfile.TemporaryDirectory() as folder:
    ...     write_files(folder, {"a.txt": b"shelf", "b.txt": b"divider"})
    ...     sorted(path.name for path in Path(folder).iterdir())
    ['a.txt', 'b.txt']

    Raises ValueError for a name that does not stay in the folder, WriteError where the system refuses.
    """
    folder, away = Path(folder), tuple(away)
    for name in (*files, *away):
        if not all(map(_is_plain, name.split("/"))):
            raise ValueError(f"{name!r} is not a plain file name.")
    with _undisturbed():
        _write_all(folder, files, away)


def try_folder(folder: Path | str, names: Iterable[str], size: int) -> None:
    """Raise WriteError now where `write_files` would: said before the work, not after it.

    `names` are those that will be written, `size` about how many bytes. Nothing stays of the trial.

    >>> import tempfile
    >>> with tempfile.TemporaryDirectory() as folder:
    ...     try_folder(folder + "/prints", ["plan_set.pdf"], 10)
    ...     list(Path(folder).iterdir())
    []
    """
    folder = Path(folder)
    places = [folder / name for name in names]
    new_folders = _new_folders(folder, places)
    try:
        for path in _from_outside({folder, *(place.parent for place in places)}):
            path.mkdir(parents=True, exist_ok=True)
        for place in places:
            if place.is_dir():
                raise IsADirectoryError(errno.EISDIR, "Is a directory", str(place))
        _write_beside(folder / "trial", bytes(size)).unlink()
    except OSError as error:
        raise WriteError(_sentence(error, folder)) from error
    finally:
        _take_away_empty(new_folders)


def _is_plain(name: str) -> bool:
    return name == Path(name).name and name not in {"", ".", ".."} and "\\" not in name and "\0" not in name


def _write_all(folder: Path, files: Mapping[str, bytes], away: tuple[str, ...]) -> None:
    places = [folder / name for name in files]
    new_folders = _new_folders(folder, places)
    waiting: dict[Path, Path] = {}
    before: dict[Path, bytes | None] = {}
    note = folder / HALFWAY
    new_note = False
    try:
        for path in _from_outside({folder, *(place.parent for place in places)}):
            path.mkdir(parents=True, exist_ok=True)
            _take_away_left(path)
        for place, content in zip(places, files.values(), strict=True):
            waiting[place] = _write_beside(place, content)
        if len(files) + len(away) > 1:
            new_note = not note.exists()
            _put(_write_beside(note, _HALFWAY_SAYS), note)
        for place, ready in waiting.items():
            before[place] = place.read_bytes() if place.exists() else None
            _put(ready, place)
        for place in (folder / name for name in away):
            if place.exists():
                before[place] = place.read_bytes()
                place.unlink()
    except BaseException as error:
        for ready in waiting.values():
            ready.unlink(missing_ok=True)
        for place, content in before.items():
            _bring_back(place, content)
        if new_note:
            note.unlink(missing_ok=True)
        _take_away_empty(new_folders)
        if isinstance(error, OSError):
            raise WriteError(_sentence(error, folder)) from error
        raise
    note.unlink(missing_ok=True)
    for path in {folder, *(place.parent for place in before)}:
        _flush_folder(path)
    _take_away_empty({place.parent for place in before} - {folder})


def _new_folders(folder: Path, places: Iterable[Path]) -> list[Path]:
    """The folders that are not there yet, the innermost first."""
    folders = {folder, *folder.parents, *(place.parent for place in places)}
    return _from_outside(path for path in folders if not _is_there(path))[::-1]


def _from_outside(folders: Iterable[Path]) -> list[Path]:
    return sorted(folders, key=lambda path: len(path.parts))


def _is_there(path: Path) -> bool:
    """Whether there is such a thing; what may not be asked (a folder that is closed to us) counts as there."""
    try:
        return path.exists()
    except OSError:
        return True


def _take_away_empty(folders: Iterable[Path]) -> None:
    for path in folders:
        if path.is_dir() and not any(path.iterdir()):
            path.rmdir()


def _take_away_left(folder: Path) -> None:
    """Take away what a killed run left under hidden names."""
    for path in folder.iterdir():
        if _LEFT.fullmatch(path.name) and time.time() - path.stat().st_mtime > _LEFT_AFTER:
            path.unlink(missing_ok=True)


@contextmanager
def _undisturbed() -> Iterator[None]:
    """Hold back requests to end until the work is done; then they take effect as they would have.

    Only the main thread hears signals, so elsewhere there is nothing to hold back.
    """
    if threading.current_thread() is not threading.main_thread():
        yield
        return
    ends = [getattr(signal, name) for name in ("SIGINT", "SIGTERM", "SIGHUP") if hasattr(signal, name)]
    heard: list[int] = []
    before = {end: signal.signal(end, lambda number, _frame: heard.append(number)) for end in ends}
    try:
        yield
    finally:
        for end, handler in before.items():
            signal.signal(end, signal.SIG_DFL if handler is None else handler)
        for number in heard:
            signal.raise_signal(number)


def _write_beside(place: Path, content: bytes) -> Path:
    """A finished file in the same folder, under a name of its own, with the old file's permissions."""
    ready = place.with_name(f".{place.name}.{secrets.token_hex(4)}.part")
    try:
        with open(ready, "xb") as file:
            file.write(content)
            file.flush()
            os.fsync(file.fileno())
        if place.exists():
            shutil.copymode(place, ready)
    except BaseException:
        ready.unlink(missing_ok=True)
        raise
    return ready


def _put(ready: Path, place: Path) -> None:
    """Put the finished file in its place; on Windows, wait a little for a program that has it open.

    A virus scanner or a preview opens a new file for a moment, and Windows then refuses to replace it.
    """
    for attempt in range(1, TRIES + 1):
        try:
            os.replace(ready, place)
            return
        except PermissionError as error:
            if sys.platform != "win32" or attempt == TRIES:
                error.filename = str(place)
                raise
            time.sleep(PAUSE * attempt)


def _bring_back(place: Path, content: bytes | None) -> None:
    if content is None:
        place.unlink(missing_ok=True)
    elif not place.exists() or place.read_bytes() != content:
        _put(_write_beside(place, content), place)


def _flush_folder(folder: Path) -> None:
    """Make the new names last through a power cut, where the system can (Windows cannot open a folder)."""
    if sys.platform == "win32":
        return
    handle = os.open(folder, os.O_RDONLY)
    try:
        os.fsync(handle)
    finally:
        os.close(handle)


def _sentence(error: OSError, folder: Path) -> str:
    at = Path(error.filename) if error.filename else folder
    if error.errno in {errno.ENOSPC, errno.EDQUOT}:
        return f"The disk of {folder} is full; nothing was written: free some room, or choose another folder."
    if isinstance(error, PermissionError) and sys.platform == "win32" and at.is_file():
        return f"{at.name} in {folder} is open in another program; nothing was written: close it there first."
    if error.errno in {errno.EACCES, errno.EPERM, errno.EROFS}:
        return f"The folder {folder} cannot be written to; nothing was written: choose a folder of your own."
    if isinstance(error, (NotADirectoryError, FileExistsError)):
        at = next((path for path in (at, *at.parents) if path.is_file()), at)
        return f"{at} is a file where a folder is needed; nothing was written: choose another folder."
    if isinstance(error, IsADirectoryError):
        return f"{at} is a folder where a file is to be written; nothing was written: choose another folder."
    return f"{at} could not be written ({error.strerror}); nothing was written: choose another folder."
