"""Files are written whole or not at all, on every system (Windows is faked)."""

import errno
import os
import signal
import stat
import subprocess
import sys
import threading
import time
from pathlib import Path

import pytest

from shoplib.documents import atomic
from shoplib.documents.atomic import HALFWAY, WriteError, try_folder, write_files


def contents(folder: Path) -> dict[str, bytes]:
    """Of the files in the folder itself."""
    return {path.name: path.read_bytes() for path in folder.iterdir() if path.is_file()}


def test_writes_new_files_and_replaces_old_ones(tmp_path):
    (tmp_path / "plan.json").write_bytes(b"old")
    write_files(tmp_path, {"plan.json": b"new\n", "cut_list.csv": b"stage,count\r\n"})
    assert contents(tmp_path) == {"plan.json": b"new\n", "cut_list.csv": b"stage,count\r\n"}


def test_a_name_may_stand_in_a_folder_of_the_folder(tmp_path):
    write_files(tmp_path / "print", {"templates/peg.svg": b"peg", "plan.pdf": b"plan"})
    assert contents(tmp_path / "print" / "templates") == {"peg.svg": b"peg"}
    assert (tmp_path / "print" / "plan.pdf").read_bytes() == b"plan"


def test_a_failure_takes_the_folders_away_that_it_made(tmp_path, monkeypatch):
    refuse(monkeypatch, "peg.svg", 1, OSError(errno.ENOSPC, "No space left on device"))
    with pytest.raises(WriteError, match="full; nothing was written"):
        write_files(tmp_path / "print", {"plan.pdf": b"plan", "templates/peg.svg": b"peg"})
    assert list(tmp_path.iterdir()) == []


def test_makes_the_folder(tmp_path):
    write_files(tmp_path / "plans" / "bench", {"a": b""})
    assert contents(tmp_path / "plans" / "bench") == {"a": b""}


@pytest.mark.parametrize("name", ["", ".", "..", "../a", "a/../b", "a/", "/", "a//b", "a\\b", "a\0b", "/a"])
def test_refuses_a_name_that_leaves_the_folder(tmp_path, name):
    with pytest.raises(ValueError, match="plain file name"):
        write_files(tmp_path, {"first": b"x", name: b"x"})
    assert list(tmp_path.iterdir()) == []


def refuse(monkeypatch, place: str, times: int, error: OSError):
    """Make os.replace fail, `times` times, where the target is called `place`."""
    real, left = os.replace, [times]

    def replace(source, target):
        if Path(target).name == place and left[0]:
            left[0] -= 1
            raise error
        real(source, target)

    monkeypatch.setattr(os, "replace", replace)
    return left


def test_a_failure_halfway_brings_back_what_was_replaced(tmp_path, monkeypatch):
    (tmp_path / "a").write_bytes(b"old a")
    (tmp_path / "c").write_bytes(b"old c")
    refuse(monkeypatch, "c", 1, OSError(errno.ENOSPC, "No space left on device"))
    with pytest.raises(WriteError, match="full; nothing was written"):
        write_files(tmp_path, {"a": b"new a", "b": b"new b", "c": b"new c"})
    assert contents(tmp_path) == {"a": b"old a", "c": b"old c"}


def test_a_failure_leaves_no_new_folder(tmp_path, monkeypatch):
    refuse(monkeypatch, "a", 1, OSError(errno.EIO, "Input/output error"))
    with pytest.raises(WriteError, match="Input/output error"):
        write_files(tmp_path / "plans" / "bench", {"a": b"x"})
    assert list(tmp_path.iterdir()) == []


def test_an_interruption_is_passed_on_and_leaves_nothing(tmp_path, monkeypatch):
    def interrupted(_):
        raise KeyboardInterrupt

    monkeypatch.setattr(os, "fsync", interrupted)
    with pytest.raises(KeyboardInterrupt):
        write_files(tmp_path, {"a": b"x"})
    assert list(tmp_path.iterdir()) == []


def test_windows_waits_for_a_file_that_is_open_for_a_moment(tmp_path, monkeypatch):
    monkeypatch.setattr("sys.platform", "win32")
    monkeypatch.setattr(atomic, "PAUSE", 0)
    left = refuse(monkeypatch, "cut_list.csv", 3, PermissionError(errno.EACCES, "Access is denied"))
    write_files(tmp_path, {"cut_list.csv": b"new"})
    assert left == [0]
    assert contents(tmp_path) == {"cut_list.csv": b"new"}


def test_windows_says_which_file_is_open(tmp_path, monkeypatch):
    (tmp_path / "a").write_bytes(b"old")
    (tmp_path / "cut_list.csv").write_bytes(b"old")
    monkeypatch.setattr("sys.platform", "win32")
    monkeypatch.setattr(atomic, "PAUSE", 0)
    refuse(monkeypatch, "cut_list.csv", 99, PermissionError(errno.EACCES, "Access is denied"))
    with pytest.raises(WriteError, match=r"^cut_list\.csv in .* is open in another program.*close it"):
        write_files(tmp_path, {"a": b"new", "cut_list.csv": b"new"})
    assert contents(tmp_path) == {"a": b"old", "cut_list.csv": b"old"}


def test_elsewhere_a_refusal_is_final(tmp_path, monkeypatch):
    monkeypatch.setattr("sys.platform", "linux")
    left = refuse(monkeypatch, "a", 2, PermissionError(errno.EACCES, "Permission denied"))
    with pytest.raises(WriteError, match="folder of your own"):
        write_files(tmp_path, {"a": b"x"})
    assert left == [1]


def test_a_file_where_the_folder_should_be(tmp_path):
    (tmp_path / "plans").write_bytes(b"mine")
    for folder in [tmp_path / "plans", tmp_path / "plans" / "bench"]:
        with pytest.raises(WriteError, match="is a file where a folder is needed"):
            write_files(folder, {"a": b"x"})
    assert contents(tmp_path) == {"plans": b"mine"}


def test_a_folder_where_a_file_should_be(tmp_path):
    (tmp_path / "plan.json").mkdir()
    with pytest.raises(WriteError, match="is a folder where a file is to be written"):
        write_files(tmp_path, {"a": b"x", "plan.json": b"x"})
    assert [path.name for path in tmp_path.iterdir()] == ["plan.json"]


@pytest.mark.skipif(os.name == "nt", reason="Windows has other permissions")
def test_permissions_stay_as_they_were_and_new_files_can_be_shared(tmp_path):
    (tmp_path / "old").write_bytes(b"")
    (tmp_path / "old").chmod(0o640)
    (tmp_path / "made_by_hand").write_bytes(b"")
    write_files(tmp_path, {"old": b"x", "new": b"x"})
    assert stat.S_IMODE((tmp_path / "old").stat().st_mode) == 0o640
    assert (tmp_path / "new").stat().st_mode == (tmp_path / "made_by_hand").stat().st_mode


PROGRAM = """
import os, signal, sys
from shoplib.documents import atomic
replace = os.replace
def slow(ready, place):
    replace(ready, place)
    os.kill(os.getpid(), signal.{name})
os.replace = slow
# A run that was started to outlive its terminal hands down an ignored SIGHUP.
signal.signal(signal.{name}, signal.default_int_handler if "{name}" == "SIGINT" else signal.SIG_DFL)
atomic.write_files(sys.argv[1], {{"a.txt": b"new", "b.txt": b"new", "c.txt": b"new"}})
print("not ended")
"""


@pytest.mark.skipif(sys.platform == "win32", reason="os.kill ends a program at once on Windows")
@pytest.mark.parametrize("name", ["SIGTERM", "SIGHUP", "SIGINT"])
def test_a_request_to_end_waits_until_all_are_in_place(tmp_path, name):
    for file in ("a.txt", "b.txt", "c.txt"):
        (tmp_path / file).write_bytes(b"old")
    command = [sys.executable, "-c", PROGRAM.format(name=name), str(tmp_path)]
    done = subprocess.run(command, capture_output=True, text=True)
    assert done.returncode != 0 and "not ended" not in done.stdout
    kept = contents(tmp_path)
    assert set(kept) == {"a.txt", "b.txt", "c.txt"}
    assert len(set(kept.values())) == 1, kept


def test_in_another_thread_files_are_written_as_well(tmp_path):
    thread = threading.Thread(target=write_files, args=(tmp_path, {"a.txt": b"shelf"}))
    thread.start()
    thread.join()
    assert (tmp_path / "a.txt").read_bytes() == b"shelf"


def test_where_the_system_has_no_hang_up_signal_the_others_are_held_back(tmp_path, monkeypatch):
    """Windows has no SIGHUP. Ctrl+C between two files waits, then interrupts as it would have."""
    monkeypatch.delattr(signal, "SIGHUP", raising=False)
    # A run that was started in the background hands down an ignored Ctrl+C.
    handed_down = signal.signal(signal.SIGINT, signal.default_int_handler)
    replace = os.replace

    def put(ready, place):
        replace(ready, place)
        signal.raise_signal(signal.SIGINT)

    monkeypatch.setattr(os, "replace", put)
    try:
        with pytest.raises(KeyboardInterrupt):
            write_files(tmp_path, {"a.txt": b"new", "b.txt": b"new"})
        assert contents(tmp_path) == {"a.txt": b"new", "b.txt": b"new"}
        assert signal.getsignal(signal.SIGINT) is signal.default_int_handler
    finally:
        signal.signal(signal.SIGINT, handed_down)


def test_no_file_is_put_in_its_place_before_all_are_ready(tmp_path, monkeypatch):
    """So a program that is killed while it makes files leaves the old ones, all of them."""
    ready = []
    real = os.replace

    def replace(source, target):
        if Path(target).name != atomic.HALFWAY:
            ready.append(len([path for path in tmp_path.rglob("*.part") if path.is_file()]))
        real(source, target)

    monkeypatch.setattr(os, "replace", replace)
    write_files(tmp_path, {"a": b"a", "b": b"b", "templates/c": b"c"})
    assert ready == [3, 2, 1]


KILLED = """
import os, signal, sys
from shoplib.documents import atomic
replace, left = os.replace, [int(sys.argv[2])]
def put(ready, place):
    if not left[0]:
        os.kill(os.getpid(), signal.SIGKILL)
    left[0] -= 1
    replace(ready, place)
os.replace = put
atomic.write_files(sys.argv[1], {name: b"new" for name in ("a.txt", "b.txt", "c.txt")}, ["gone.txt"])
"""


@pytest.mark.skipif(sys.platform == "win32", reason="there is no such signal on Windows")
@pytest.mark.parametrize("replaced", range(4))
def test_a_folder_that_a_killed_run_left_of_two_kinds_says_so(tmp_path, replaced):
    """Killed before, between and after the first places; the next run takes the note away."""
    names = ("a.txt", "b.txt", "c.txt", "gone.txt")
    for file in names:
        (tmp_path / file).write_bytes(b"old")
    subprocess.run([sys.executable, "-c", KILLED, str(tmp_path), str(replaced)], check=False)
    kinds = {content for name, content in contents(tmp_path).items() if name in names}
    assert kinds == ({b"old"} if replaced < 2 else {b"old", b"new"})
    assert (tmp_path / HALFWAY).exists() == (replaced > 0)
    write_files(tmp_path, {"a.txt": b"newer", "b.txt": b"newer"})
    assert not (tmp_path / HALFWAY).exists()


def test_the_note_of_a_killed_run_stays_where_the_next_one_fails(tmp_path, monkeypatch):
    (tmp_path / HALFWAY).write_bytes(b"read this")
    refuse(monkeypatch, "b", 1, OSError(errno.ENOSPC, "No space left on device"))
    with pytest.raises(WriteError):
        write_files(tmp_path, {"a": b"x", "b": b"x"})
    assert list(contents(tmp_path)) == [HALFWAY]


def test_what_a_killed_run_left_under_hidden_names_goes_with_the_next_and_nothing_else(tmp_path):
    old, now, mine = (tmp_path / name for name in (".a.txt.0123abcd.part", ".a.txt.89abcdef.part", ".mine.part"))
    for path in (old, now, mine):
        path.write_bytes(b"x")
    long_ago = time.time() - 3600
    for path in (old, mine):
        os.utime(path, (long_ago, long_ago))
    write_files(tmp_path, {"a.txt": b"x"})
    # Another run may be writing there at this moment.
    assert set(contents(tmp_path)) == {now.name, mine.name, "a.txt"}


def test_files_are_taken_away_in_the_same_step_and_come_back_with_it(tmp_path, monkeypatch):
    for name in ("a", "templates/old"):
        write_files(tmp_path, {name: b"old"})
    monkeypatch.setattr(Path, "unlink", refusing(Path.unlink, "old"))
    with pytest.raises(WriteError):
        write_files(tmp_path, {"a": b"new"}, ["a_too", "templates/old"])
    assert contents(tmp_path) == {"a": b"old"} and contents(tmp_path / "templates") == {"old": b"old"}
    monkeypatch.undo()
    write_files(tmp_path, {"a": b"new", "templates/new": b"new"}, ["never_there", "templates/old"])
    assert contents(tmp_path) == {"a": b"new"} and contents(tmp_path / "templates") == {"new": b"new"}
    write_files(tmp_path, {"a": b"new"}, ["templates/new"])
    assert [path.name for path in tmp_path.iterdir()] == ["a"], "no empty folder stays"


def refusing(real, name):
    def unlink(path, missing_ok=False):
        if path.name == name:
            raise PermissionError(errno.EACCES, "Permission denied", str(path))
        real(path, missing_ok=missing_ok)
    return unlink


def test_a_folder_that_cannot_be_written_to_is_told_before_and_nothing_stays(tmp_path, monkeypatch):
    (tmp_path / "file").write_bytes(b"mine")
    (tmp_path / "prints" / "plan.pdf").mkdir(parents=True)
    for folder, said in [
        ("file", "file is a file where a folder is needed"), ("file/in", "file is a file where a folder is needed"),
        ("prints", "plan.pdf is a folder where a file is to be written"), ("x" * 300, "could not be written"),
    ]:
        with pytest.raises(WriteError, match=said):
            try_folder(tmp_path / folder, ["plan.pdf", "templates/peg.svg"], 10)
    try_folder(tmp_path / "new" / "prints", ["plan.pdf", "templates/peg.svg"], 10)

    def full(_):
        raise OSError(errno.ENOSPC, "No space left on device")

    monkeypatch.setattr(os, "fsync", full)
    with pytest.raises(WriteError, match="full; nothing was written"):
        try_folder(tmp_path / "new" / "prints", ["plan.pdf"], 10)
    monkeypatch.setattr(Path, "mkdir", lambda *_, **__: (_ for _ in ()).throw(PermissionError(errno.EACCES, "no")))
    with pytest.raises(WriteError, match="folder of your own"):
        try_folder(tmp_path / "new" / "prints", ["plan.pdf"], 10)
    assert sorted(path.name for path in tmp_path.rglob("*")) == ["file", "plan.pdf", "prints"]
