"""`sheets` as it is run: exit status, what is printed, what is written, and Ctrl+C."""

import csv
import io
import json
import os
import re
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

from shoplib.commands import sheets
from shoplib.documents.before_cutting import STOPPED
from shoplib.start import cli
from shoplib.start.place import Place
from tests.buying.laid import PROJECTS

ROOT = Path(__file__).parents[2]
UNDER_BENCH = next(path for path in PROJECTS if "under_bench" in path.stem)


def edited(tmp_path: Path, old: str, new: str) -> str:
    """The under-bench case with one text replaced."""
    text = UNDER_BENCH.read_text(encoding="utf-8")
    assert old in text
    path = tmp_path / "project.toml"
    path.write_text(text.replace(old, new, 1), encoding="utf-8")
    return str(path)


@pytest.mark.parametrize("project", PROJECTS, ids=lambda path: path.stem)
def test_a_shipped_project_is_laid_out(project, tmp_path, capsys):
    assert sheets.run(str(project), str(tmp_path / "out"), "1") == 0
    said = capsys.readouterr()
    lines = said.out.splitlines()
    assert [line for line in lines if len(line) > 80 and "Written into" not in line] == []
    file = json.loads((tmp_path / "out" / "sheets.json").read_bytes())
    written = {path.name for path in (tmp_path / "out").iterdir()}
    drawings = {name for name in written if name.endswith(".svg")}
    assert written - drawings == {"sheets.json", "cut_order.csv", "buying.csv", "buying.txt"}
    assert len(drawings) == len(file["sheets"])
    # The verdict stands first and last, and counts what the file says is bought.
    words = " ".join(" ".join(lines[1:4]).split())
    bought = [sheet for sheet in file["sheets"] if sheet["bought"]]
    counted = sum(int(number) for number in re.findall(r"(\d+) x [a-z]", words.partition(";")[0]))
    assert words.startswith("Buy ") and counted == len(bought)
    assert lines[1] in lines[-4:]
    for what in ("Sheets", "settings of fence, ", "Written into", "cut_order.csv", "What can wait"):
        assert what in said.out
    assert said.err.startswith("Laying out, 1 seconds at most; Ctrl+C takes the best so far.")
    assert all(job["sheet"] in said.err for job in file["jobs"])


def test_what_cannot_be_replaced_is_named_before_anything_is_bought(tmp_path, capsys):
    """By hand: nothing that is left is as large as the back of this case, 59 by 29 in."""
    assert sheets.run(str(UNDER_BENCH), str(tmp_path / "out"), "1") == 0
    out = " ".join(capsys.readouterr().out.split())
    first = out.index("Before you buy: what, once spoiled, could not be made again from what is left")
    assert first < out.index("Could not be made again from what is left: back") < out.index(" Sheets - ")
    assert "With one more sheet of thin sheet, 96 in x 48 in, any one part could be made again" in out
    assert "case sheet, 96 in x 48 in: 47 to 70 lb, over the 50 lb that one lifts" in out


def test_a_project_that_a_check_stops_is_laid_out_and_says_so(tmp_path, capsys):
    """The 60 in case does not fit its space when the wall is read 59 in wide."""
    project = edited(tmp_path, '"61 1/16 in"', '"59 in"')
    assert sheets.run(project, str(tmp_path / "out"), "0") == 1
    out = capsys.readouterr().out
    assert "Stop (" in out and "buy and cut" in out
    assert (tmp_path / "out" / "sheets.json").exists()
    first = next(csv.DictReader(io.StringIO((tmp_path / "out" / "cut_order.csv").read_text(encoding="utf-8-sig"))))
    assert (first["cut"], first["mind"]) == ("stop", STOPPED)
    assert (tmp_path / "out" / "buying.txt").read_text(encoding="utf-8").startswith(f"{STOPPED}\n\nBuying list")


@pytest.mark.parametrize(
    ("old", "new", "said"),
    [
        ('length = "96 in"', 'length = "50 in"', 'sheets."case sheet": bottom and top, 59 7/32 in x '),
        ('trim = "1/4 in"', 'trim = "-1/4 in"', 'sheets."case sheet".trim: '),
        ('price = "74.00"', 'price = "74 dollars"', 'sheets."case sheet".price: a price is a number in quotes'),
        ('step = "1/32 in" }', 'step = "1/32 in" }\n[cutting]\nkerf = "-1/8 in"', "cutting.kerf: "),
        ('length = "96 in"\nwidth = "48 in"\nprice = "98.00"\ntrim = "1/4 in"\nsizes = [{ length = "48 in", width = '
         '"48 in", price = "55.00" }]', "", 'sheets."front sheet": no size is given, so nothing can be laid out on'),
    ],
)  # fmt: skip
def test_what_cannot_be_laid_out_is_one_sentence_and_nothing_is_written(old, new, said, tmp_path, capsys):
    assert sheets.run(edited(tmp_path, old, new), str(tmp_path / "out"), "0") == 2
    printed = capsys.readouterr()
    told = [line for line in printed.err.splitlines() if not line.startswith(("Laying out", "  "))]
    assert printed.out == "" and " ".join(told).startswith(said) and " ".join(told).count(". ") == 0
    assert max(map(len, told)) <= 79
    assert not (tmp_path / "out").exists()


def test_sizes_to_buy_that_are_all_too_small_for_a_part_that_the_shop_holds(tmp_path, capsys):
    """The sides of the rolling stand, 586 mm wide, come out of one piece in the shop alone, and not all of them."""
    text = next(path for path in PROJECTS if path.stem == "rolling_stand").read_text(encoding="utf-8")
    old = (
        'length = "2500 mm"\nwidth = "1250 mm"\nprice = "69.00"\ntrim = "8 mm"\n'
        'sizes = [{ length = "1250 mm", width = "1250 mm", price = "38.00" }]'
    )
    assert old in text
    new = (
        'length = "610 mm"\nwidth = "305 mm"\nprice = "9.00"\ntrim = "8 mm"\n'
        'sizes = [{ length = "610 mm", width = "610 mm", price = "15.00" }]\n'
        'on_hand = [{ length = "1250 mm", width = "1250 mm", count = 1 }]'
    )
    path = tmp_path / "project.toml"
    path.write_text(text.replace(old, new, 1), encoding="utf-8")
    assert sheets.run(str(path), str(tmp_path / "out"), "1") == 2
    told = " ".join(line for line in capsys.readouterr().err.splitlines() if not line.startswith(("Laying", "  ")))
    assert told.startswith("case sheet: ") and told.count(". ") == 0 and not (tmp_path / "out").exists()


def test_a_folder_that_cannot_be_written_leaves_nothing(tmp_path, capsys):
    (tmp_path / "out").write_text("a file", encoding="utf-8")
    assert sheets.run(str(UNDER_BENCH), str(tmp_path / "out"), "0") == 2
    assert capsys.readouterr().err.splitlines()[-1].endswith(".")
    assert (tmp_path / "out").read_text(encoding="utf-8") == "a file"


ENDLESS = """
import sys, time
from shoplib.buying import searched
from shoplib.commands.__main__ import main

at_once = searched.layouts

def endless(job, seconds):
    yield next(at_once(job, 0))
    time.sleep(seconds)

searched.layouts = endless
sys.exit(main(sys.argv[1:]))
"""
"""The command with a search that finds no better layout than its first and goes on all its time: no luck, however fast
the machine, lets it end before it is stopped."""


@pytest.mark.skipif(os.name == "nt", reason="a signal of this kind cannot be sent there")
def test_ctrl_c_takes_the_best_so_far_and_writes_it(tmp_path):
    """Stopped within the first sheets, the command lays out all the others at once, and writes."""
    words = [sys.executable, "-c", ENDLESS, "sheets", str(UNDER_BENCH), str(tmp_path / "out"), "600"]
    running = subprocess.Popen(words, cwd=ROOT, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True)
    for line in running.stderr:
        if "case sheet" in line:
            break
    began = time.monotonic()
    running.send_signal(signal.SIGINT)
    out, _ = running.communicate(timeout=60)
    assert running.returncode == 0 and time.monotonic() - began < 30
    file = json.loads((tmp_path / "out" / "sheets.json").read_bytes())
    assert file["stopped"] is True
    assert "Buy " in out and len(list(csv.DictReader((tmp_path / "out" / "cut_order.csv").open(encoding="utf-8")))) > 50


@pytest.mark.parametrize(("text", "seconds"), [("30", "30"), ("0", "0"), ("2,5", "2.5"), ("0.25", "0.25")])
def test_seconds_are_read(text, seconds, monkeypatch):
    called = []
    monkeypatch.setattr(cli, "_command", lambda place, *words: called.append(words) or 0)
    given = cli.parser(Place.of_this_copy()).parse_args(["sheets", "a.toml", "--to", "out", "--seconds", text])
    given.run(None, given)
    assert called == [("sheets", "a.toml", "out", seconds)]


@pytest.mark.parametrize("text", ["x", "-1", "nan", "inf", "3601", ""])
def test_what_is_no_number_of_seconds_is_told(text, capsys):
    with pytest.raises(SystemExit) as ended:
        cli.parser(Place.of_this_copy()).parse_args(["sheets", "a.toml", "--to", "out", f"--seconds={text}"])
    assert ended.value.code == 2
    assert "is no number of seconds from 0 to 3600, such as 30." in capsys.readouterr().err
