"""When the environment is made, and what is said when it cannot be."""

import errno
import importlib.util
import shlex
import shutil
import subprocess
import sys
from pathlib import Path
from types import SimpleNamespace

import pytest

from shoplib.start import cli, environment
from shoplib.start.place import Place
from shoplib.start.trouble import Trouble, from_error, from_output


@pytest.fixture
def place(tmp_path):
    (tmp_path / "requirements.txt").write_text("jupyterlab==4.6.6\n-e .\n")
    return Place(tmp_path, windows=False)


@pytest.fixture
def steps(monkeypatch, place):
    """Fake the programs that set-up runs; gives the list of what was run. `venv` leaves a Python behind."""
    ran = []

    def run(command, **_):
        ran.append("venv" if "-m" in command else "fonts")
        if ran[-1] == "venv":
            place.scripts.mkdir(parents=True, exist_ok=True)
            (place.venv / "pyvenv.cfg").write_text("version = 3.11\n")
            place.python.write_text("")
        return SimpleNamespace(returncode=0, stdout="", stderr="")

    def pip(command, *_):
        ran.append("pip")
        return 0, ""

    monkeypatch.setattr(subprocess, "run", run)
    monkeypatch.setattr(environment, "install", pip)
    return ran


ALL = ["venv", "pip", "fonts"]


def test_it_is_made_once(place, steps):
    environment.ensure(place)
    assert steps == ALL
    environment.ensure(place)
    assert steps == ALL
    assert (place.venv / "share/jupyter/lab/settings/overrides.json").is_file()


def test_it_is_made_again_when_requirements_change(place, steps):
    environment.ensure(place)
    stale = place.venv / "stale.txt"
    stale.write_text("")
    place.requirements.write_text("jupyterlab==4.6.7\n-e .\n")
    environment.ensure(place)
    assert steps == ALL * 2
    assert not stale.exists()


def test_line_ends_are_no_change(place, steps):
    environment.ensure(place)
    place.requirements.write_bytes(b"jupyterlab==4.6.6\r\n-e .\r\n")
    environment.ensure(place)
    assert steps == ALL


def test_it_is_made_again_for_another_python(place, steps, monkeypatch):
    environment.ensure(place)
    monkeypatch.setattr(sys, "version_info", (3, 99, 0))
    environment.ensure(place)
    assert steps == ALL * 2


def test_it_is_made_again_when_the_folder_was_moved(place, steps, tmp_path_factory):
    environment.ensure(place)
    moved = Place(tmp_path_factory.mktemp("moved") / "workbook", windows=False)
    shutil.copytree(place.root, moved.root)
    assert environment.stands(place)
    assert not environment.stands(moved)


@pytest.mark.parametrize("step", range(len(ALL)))
def test_a_half_made_environment_is_made_again(place, steps, monkeypatch, step):
    def stopping(good):
        def stop(command, *rest, **named):
            done = good(command, *rest, **named)
            if len(steps) == step + 1:
                raise KeyboardInterrupt
            return done

        return stop

    with monkeypatch.context() as patch:
        patch.setattr(subprocess, "run", stopping(subprocess.run))
        patch.setattr(environment, "install", stopping(environment.install))
        with pytest.raises(KeyboardInterrupt):
            environment.ensure(place)
    steps.clear()
    environment.ensure(place)
    assert steps == ALL


def test_an_environment_without_its_python_is_made_again(place, steps):
    environment.ensure(place)
    place.python.unlink()
    environment.ensure(place)
    assert steps == ALL * 2


def refusal(place):
    with pytest.raises(Trouble) as caught:
        environment.ensure(place)
    sentence = str(caught.value)
    assert "\n" not in sentence
    assert place.command in sentence or "whole folder" in sentence
    return sentence


@pytest.mark.parametrize("part", ["venv", "ensurepip"])
def test_python_without_venv(place, steps, monkeypatch, part):
    real = importlib.util.find_spec
    monkeypatch.setattr(importlib.util, "find_spec", lambda name: None if name == part else real(name))
    assert "sudo apt install python3-venv" in refusal(place)
    assert steps == []
    assert not place.venv.exists()


def test_a_file_where_the_environment_should_be(place, steps):
    place.venv.write_text("mine")
    assert "should be a folder" in refusal(place)
    assert place.venv.read_text() == "mine"


def test_a_link_where_the_environment_should_be(place, steps, tmp_path_factory):
    elsewhere = tmp_path_factory.mktemp("elsewhere")
    (elsewhere / "pyvenv.cfg").write_text("")
    place.venv.symlink_to(elsewhere, target_is_directory=True)
    assert "should be a folder" in refusal(place)
    assert (elsewhere / "pyvenv.cfg").exists()


def test_a_folder_of_the_users_is_not_removed(place, steps):
    place.venv.mkdir()
    (place.venv / "letters.txt").write_text("mine")
    assert "move it away" in refusal(place)
    assert (place.venv / "letters.txt").read_text() == "mine"


def test_the_python_inside_does_not_remove_itself(place, steps, monkeypatch):
    environment.ensure(place)
    place.requirements.write_text("jupyterlab==4.6.7\n-e .\n")
    monkeypatch.setattr(sys, "prefix", str(place.venv))
    with pytest.raises(Trouble, match="the Python of your system"):
        environment.ensure(place)
    assert place.python.exists() and place.stamp.exists()


def test_a_read_only_folder(place, steps, monkeypatch):
    monkeypatch.setattr("os.access", lambda *_: False)  # root may write anywhere, so it is faked
    assert "copy the workbook to a folder of your own" in refusal(place)


def test_a_nearly_full_disk(place, steps, monkeypatch):
    monkeypatch.setattr(shutil, "disk_usage", lambda _: SimpleNamespace(free=10_000_000))
    assert "not enough room on the disk" in refusal(place)
    assert steps == []


def test_half_a_copy(place, steps):
    place.requirements.unlink()
    assert "not a whole copy" in refusal(place)


NO_NETWORK = """\
WARNING: Retrying (Retry(total=0)) after connection broken by 'NewConnectionError("Failed to establish \
a new connection: [Errno -3] Temporary failure in name resolution")': /simple/setuptools/
ERROR: Could not find a version that satisfies the requirement setuptools>=77 (from versions: none)
ERROR: No matching distribution found for setuptools>=77
"""
NO_ROOM = "ERROR: Could not install packages due to an OSError: [Errno 28] No space left on device"
IN_USE = "ERROR: Could not install packages due to an OSError: [WinError 5] Access is denied: 'C:'"
FILTER = "SSLError(SSLCertVerificationError(1, '[SSL: CERTIFICATE_VERIFY_FAILED] self signed')) Max retries"
SAID_BY_PIP = {
    NO_NETWORK: "connect this computer to the Internet",
    NO_ROOM: "room on the disk",
    IN_USE: "of your own",
    FILTER: "PIP_CERT",
    "ERROR: No matching distribution found for numpy==2.4.6": "install Python 3.11",
    "note\nerror: subprocess-exited-with-error": "stopped (error: subprocess-exited-with-error)",
    "": "did not say why",
}


@pytest.mark.parametrize(("output", "sentence"), SAID_BY_PIP.items())
def test_what_the_installer_says_becomes_one_sentence(place, monkeypatch, steps, capsys, output, sentence):
    monkeypatch.setattr(environment, "install", lambda *_: (1, output))
    told = refusal(place)
    assert sentence in told
    assert str(place.log) in told
    assert not place.stamp.exists()
    # What pip said last stands above the sentence.
    shown = capsys.readouterr().err
    assert all(f"pip: {line}" in shown for line in output.splitlines())


def test_what_another_step_says_becomes_one_sentence(place, monkeypatch, steps):
    said = SimpleNamespace(returncode=1, stdout="Error: [Errno 28] No space left on device", stderr="")
    monkeypatch.setattr(subprocess, "run", lambda *_, **__: said)
    assert "room on the disk" in refusal(place)


@pytest.mark.parametrize(
    ("windows", "error", "sentence"),
    [
        (False, OSError(errno.ENOSPC, "No space left on device"), "room on the disk"),
        (False, OSError(errno.EROFS, "Read-only file system"), "folder of your own"),
        (False, PermissionError(errno.EACCES, "Permission denied"), "folder of your own"),
        (True, PermissionError(errno.EACCES, "Access is denied"), "close JupyterLab"),
        (True, OSError(errno.EIO, "a fault of the disk"), "a fault of the disk"),
    ],
)
def test_what_the_file_system_says_becomes_one_sentence(place, windows, error, sentence):
    text = str(from_error(error, Place(place.root, windows)))
    assert sentence in text
    assert ("py -m shoplib" if windows else "python3 -m shoplib") in text


def test_windows_without_venv_is_not_sent_to_apt(place):
    text = str(from_output("[WinError 10061] Connection refused", Place(place.root, windows=True)))
    assert "Internet" in text
    assert "py -m shoplib" in text


def test_trouble_is_told_without_a_traceback(monkeypatch, capsys):
    def trouble(_):
        raise Trouble("Do this.")

    monkeypatch.setattr(environment, "ensure", trouble)
    assert cli.main(["test"]) == 3
    assert capsys.readouterr().err == "Do this.\n"


NOT_UNDERSTOOD = {
    "plan": "plan needs FILE and --to as well. For example: ",
    "plan a.toml": "plan needs --to as well. For example: ",
    "check a.toml": "check needs LIST.csv as well. For example: ",
    "plan a.toml b.toml --to c": 'b.toml is not understood here; put words of one thing in quotes: "29 May".',
    "print a.toml --to": "Behind --to nothing is said.",
    "plna": 'There is no command "plna": did you mean ',
    "Check a.toml b.csv": "did you mean ",
    "bake": 'There is no command "bake": there are test, plan, check, sheets, print, practice and help.',
    "--flat": "--flat is not understood here.",
}


@pytest.mark.parametrize(("words", "sentence"), NOT_UNDERSTOOD.items())
def test_a_command_that_is_not_understood_sets_nothing_up(monkeypatch, capsys, words, sentence):
    monkeypatch.setattr(environment, "ensure", lambda _: pytest.fail("set up"))
    with pytest.raises(SystemExit) as left:
        cli.main(words.split())
    assert left.value.code == 2
    told = capsys.readouterr().err
    assert told.startswith(sentence) or sentence in told.splitlines()[0]
    assert "usage:" in told
    assert told.endswith("shoplib help\n")


@pytest.mark.parametrize("words", [["help"], ["--help"], ["-h"]])
def test_help_lists_the_commands_and_sets_nothing_up(monkeypatch, capsys, words):
    monkeypatch.setattr(environment, "ensure", lambda _: pytest.fail("set up"))
    with pytest.raises(SystemExit) as left:
        cli.main(words)
    assert left.value.code == 0
    told = capsys.readouterr().out
    assert all(f"\n    {command} " in told for command in cli.EXAMPLES)


def test_the_examples_are_understood():
    for command, words in cli.EXAMPLES.items():
        typed = shlex.split(words)
        assert typed[0] == command
        cli.parser(Place.of_this_copy()).parse_args(typed)


@pytest.mark.parametrize("words", [
    ["plan", "no_such_case.toml", "--to", "case"],
    ["check", "no_such_case.toml", "list.csv"],
    ["check", "case.toml", "no_such_case.toml"],
], ids=" ".join)
def test_a_file_that_is_not_there_is_said_before_anything_is_set_up(words, tmp_path, monkeypatch, capsys):
    monkeypatch.chdir(tmp_path)
    for name in ("case.toml", "list.csv"):
        Path(name).touch()
    began = []
    monkeypatch.setattr(environment, "ensure", began.append)
    monkeypatch.setattr(cli, "hand_over", lambda *_: began.append("command"))
    assert cli.main(words) == 2
    assert began == []
    assert capsys.readouterr().err == "no_such_case.toml: there is no such file; check the name and the folder\n"
    assert sorted(path.name for path in tmp_path.iterdir()) == ["case.toml", "list.csv"]
