"""What differs between systems, with the system faked."""

import subprocess
import sys
from pathlib import Path

import pytest

from shoplib.__main__ import too_old
from shoplib.start import child, lab
from shoplib.start.cli import parser
from shoplib.start.place import Place

ROOT = Path(__file__).parents[2]
POSIX = Place(Path("/home/jo/workbook"), windows=False)
WINDOWS = Place(Path("C:/workbook"), windows=True)


def test_where_an_environment_keeps_its_python():
    # As the standard library's own documentation of venv gives it, for POSIX and for Windows.
    assert POSIX.python == POSIX.root / ".venv" / "bin" / "python"
    assert WINDOWS.python == WINDOWS.root / ".venv" / "Scripts" / "python.exe"


def test_where_an_environment_keeps_its_packages():
    # The standard library's own schemes for an environment, asked on the system that runs this.
    import sysconfig

    for place, scheme in ((POSIX, "posix_venv"), (WINDOWS, "nt_venv")):
        wanted = sysconfig.get_path("purelib", scheme, {"base": str(place.venv), "platbase": str(place.venv)})
        assert Path(wanted.replace("\\", "/")) == place.packages


def test_one_ctrl_c_stops_jupyterlab():
    assert "--ServerApp.answer_yes=True" in lab.arguments(POSIX, root_user=False)


@pytest.mark.parametrize(("place", "command"), [(POSIX, "python3 -m shoplib"), (WINDOWS, "py -m shoplib")])
def test_how_the_command_is_written(place, command):
    assert parser(place).format_usage().startswith(f"usage: {command} ")


@pytest.mark.parametrize("version", [(2, 7, 18), (3, 6, 15), (3, 10, 13)])
@pytest.mark.parametrize(("windows", "command"), [(True, "py -m shoplib"), (False, "python3.13 -m shoplib")])
def test_too_old_a_python(version, windows, command):
    sentence = too_old(version, windows)
    assert f"this is Python {version[0]}.{version[1]}." in sentence
    assert "3.11 or newer" in sentence
    assert sentence.endswith(command)


@pytest.mark.parametrize("version", [(3, 11, 0), (3, 14, 1)])
def test_a_python_that_is_new_enough(version):
    assert too_old(version, windows=False) == ""


@pytest.mark.parametrize("name", ["__init__", "__main__"])
def test_an_old_python_can_read_the_first_files(name):
    """Python 3.7's grammar is the oldest that ast offers; f-strings and annotations are ruled out besides."""
    import ast

    tree = ast.parse((ROOT / "shoplib" / f"{name}.py").read_text(encoding="ascii"), feature_version=(3, 7))
    for node in ast.walk(tree):
        assert not isinstance(node, (ast.JoinedStr, ast.AnnAssign))
        assert getattr(node, "returns", None) is None
        assert getattr(node, "annotation", None) is None


USERS = {
    "PATH": "/usr/bin",
    "HOME": "/home/jo",
    "PYTHONPATH": "/elsewhere",
    "PYTHONHOME": "/elsewhere",
    "PYTHONOPTIMIZE": "2",
    "PYTHONUNBUFFERED": "1",
    "VIRTUAL_ENV": "/elsewhere",
    "PIP_TARGET": "/elsewhere",
    "PIP_USER": "1",
    "PIP_DRY_RUN": "1",
    "PIP_INDEX_URL": "https://packages.example/simple",
    "PIP_CERT": "/etc/school.pem",
    "JUPYTER_TOKEN": "guessed",
    "JUPYTER_CONFIG_DIR": "/elsewhere",
    "JUPYTERLAB_DIR": "/elsewhere",
    "MPLBACKEND": "TkAgg",
    "__PYVENV_LAUNCHER__": "/elsewhere",
}


def test_the_users_variables_do_not_lead_elsewhere():
    mine = child.variables(POSIX, USERS)
    assert "/elsewhere" not in mine.values()
    kept = set(USERS) & {name for name in mine if mine[name] == USERS.get(name)}
    assert kept == {"HOME", "PYTHONUNBUFFERED", "PIP_INDEX_URL", "PIP_CERT"}
    assert mine["VIRTUAL_ENV"] == str(POSIX.venv)
    assert mine["PATH"].startswith(str(POSIX.scripts))
    assert mine["PATH"].endswith("/usr/bin")


def test_windows_spells_a_variable_as_it_likes():
    mine = child.variables(WINDOWS, {"Path": r"C:\Windows", "PythonPath": r"D:\elsewhere"})
    assert [name for name in mine if name.upper() == "PATH"] == ["Path"]
    assert not [name for name in mine if name.upper() == "PYTHONPATH"]


def test_jupyterlab_is_on_this_computer_only_and_guarded_by_a_token():
    told = lab.arguments(POSIX, root_user=False)
    assert "--ServerApp.ip=127.0.0.1" in told
    assert "--LabApp.default_url=/lab/tree/notebooks/00_start_here.ipynb" in told
    assert not [word for word in told if "token" in word or "password" in word or "allow" in word]


def test_windows_waits_for_the_program_and_leaves_ctrl_c_to_it(monkeypatch):
    class Program:
        def __init__(self, command, env, cwd):
            self.waits = iter([KeyboardInterrupt, KeyboardInterrupt, 7])
            started.append((command, cwd))

        def wait(self):
            outcome = next(self.waits)
            if outcome is KeyboardInterrupt:
                raise outcome
            return outcome

    started = []
    monkeypatch.setattr(subprocess, "Popen", Program)
    assert child.hand_over(WINDOWS, ["-m", "jupyterlab"], folder=WINDOWS.root) == 7
    assert started == [([str(WINDOWS.python), "-P", "-m", "jupyterlab"], WINDOWS.root)]


@pytest.mark.skipif(sys.platform == "win32", reason="Windows cannot hand a process over")
def test_elsewhere_the_program_takes_over(monkeypatch, tmp_path):
    calls = []
    monkeypatch.setattr("os.execve", lambda *call: calls.append(call))
    monkeypatch.setattr("os.chdir", calls.append)
    monkeypatch.setattr(subprocess, "Popen", lambda *_, **__: pytest.fail("a second process"))
    with pytest.raises(pytest.fail.Exception):  # execve returned, which the real one never does
        child.hand_over(POSIX, ["-m", "pytest"], folder=tmp_path)
    assert calls[0] == tmp_path
    assert calls[1][:2] == (str(POSIX.python), [str(POSIX.python), "-P", "-m", "pytest"])
