"""The commands as processes of their own: readers that go away, terminals with few signs."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

from shoplib.commands import __main__ as main

ROOT = Path(__file__).parents[2]
UNDER_BENCH = ROOT / "data" / "projects" / "under_bench_case.toml"


def command(*words: str) -> list[str]:
    return [sys.executable, "-m", "shoplib.commands", *words]


@pytest.mark.skipif(os.name == "nt", reason="Windows has no broken pipe signal to lose")
def test_a_reader_that_has_gone_is_no_fault(tmp_path: Path) -> None:
    reading, writing = os.pipe()
    os.close(reading)
    done = subprocess.run(
        command("plan", str(UNDER_BENCH), str(tmp_path / "out")), stdout=writing, stderr=subprocess.PIPE, cwd=ROOT
    )
    os.close(writing)
    assert (done.returncode, done.stderr) == (0, b"")
    assert (tmp_path / "out" / "plan.json").exists()


def test_a_sign_that_the_terminal_lacks_is_shown_by_its_number(tmp_path: Path) -> None:
    project = tmp_path / "project.toml"
    named = UNDER_BENCH.read_text(encoding="utf-8").replace("Case under the truing bench", "Kåpe ≤ bench")
    project.write_text(named, encoding="utf-8")
    done = subprocess.run(
        command("plan", str(project), str(tmp_path / "out")),
        capture_output=True, cwd=ROOT, env={**os.environ, "PYTHONIOENCODING": "ascii", "PYTHONUTF8": "0"},
    )  # fmt: skip
    assert (done.returncode, done.stderr) == (0, b"")
    assert done.stdout.startswith(rb"K\xe5pe \u2264 bench")


def test_a_fault_is_told_on_such_a_terminal_too(tmp_path: Path) -> None:
    done = subprocess.run(
        command("plan", str(tmp_path / "Kåpe.toml"), str(tmp_path / "out")),
        capture_output=True, cwd=ROOT, env={**os.environ, "PYTHONIOENCODING": "ascii"},
    )  # fmt: skip
    assert done.returncode == 2
    assert b"Traceback" not in done.stderr and b"pe.toml" in done.stderr


@pytest.mark.skipif(os.name == "nt", reason="a signal of this kind cannot be sent there")
def test_ctrl_c_while_the_library_is_read_is_one_sentence(monkeypatch, capsys):
    def stopped(name):
        raise KeyboardInterrupt

    monkeypatch.setattr(main.importlib, "import_module", stopped)
    assert main.main(["print", "a.toml", "out", "", "", "0"]) == main.STOPPED
    assert capsys.readouterr().err == "Stopped; nothing is written.\n"
