"""`practice` as it is run: exit status, what is printed, what is written."""

from io import BytesIO

import pytest
from pypdf import PdfReader

from shoplib.commands import practice
from shoplib.start.cli import main


def asked(joint: str, to, thickness: str, *readings: str, **given: str) -> int:
    words = [given.get(name, "") for name in ("receives", "tool", "paper", "date")]
    return practice.run(joint, str(to), thickness, *words, *readings)


def test_a_sheet_is_written_and_told(tmp_path, capsys):
    assert asked("stopped dado", tmp_path, "18.2 mm", "18.1 mm", "18.3 mm", tool="router", date=" 3 May ") == 0
    [file] = tmp_path.iterdir()
    assert file.name == "practice-stopped-dado-router.pdf"
    reader = PdfReader(BytesIO(file.read_bytes()))
    assert round(float(reader.pages[0].mediabox.width)) == 595
    assert "3 May" in reader.pages[0].extract_text()
    out = capsys.readouterr().out
    assert str(file) in out
    assert "cautions" in out


def test_inches_go_on_letter_paper_unless_another_is_asked_for(tmp_path):
    for paper, width in (("", 612), ("A4", 595), ("letter", 612)):
        assert asked("dado", tmp_path / paper, "0.703 in", paper=paper) == 0
        [file] = (tmp_path / paper).glob("*.pdf")
        assert round(float(PdfReader(file).pages[0].mediabox.width)) == width


def test_the_board_that_receives_may_be_of_another_sheet(tmp_path):
    assert asked("groove", tmp_path, "1/4 in", receives="3/4 in") == 0
    [file] = tmp_path.iterdir()
    assert "sheets 0.75 in and 0.25 in" in PdfReader(file).pages[0].extract_text()


@pytest.mark.parametrize(
    ("joint", "thickness", "given", "sentence"),
    [
        ("dadoe", "18 mm", {}, 'no joint called "dadoe": did you mean dado?'),
        ("zinkung", "18 mm", {}, "there are butt, pocket screws"),
        ("dado", "18", {}, "thickness: `18` has no unit"),
        ("dado", "4 mm", {}, "0.3 mm is missing"),
        ("dado", "18 mm", {"tool": "laser"}, "there are stacked dado set, single blade in passes, router, hand tools"),
        ("dado", "18 mm", {"paper": "a5"}, "there are letter and a4"),
        ("dado", "18 mm", {"receives": "thick"}, "thickness: "),
        ("dado", "18 mm", {"date": "3 May " * 9}, "room for 30"),
    ],
)
def test_what_is_not_understood_is_one_sentence_and_nothing_is_written(
    joint, thickness, given, sentence, tmp_path, capsys
):
    assert asked(joint, tmp_path / "new", thickness, **given) == 2
    out, err = capsys.readouterr()
    assert out == ""
    assert len(err.splitlines()) == 1
    assert sentence in err
    assert not (tmp_path / "new").exists()


def test_a_reading_of_another_sheet_is_refused(tmp_path, capsys):
    assert asked("dado", tmp_path, "18 mm", "6 mm") == 2
    assert "A reading of 6 mm is not of a sheet of 18 mm" in capsys.readouterr().err


def test_a_folder_that_cannot_be_made_is_told(tmp_path, capsys):
    (tmp_path / "taken").write_text("a file", encoding="utf-8")
    assert asked("dado", tmp_path / "taken", "18 mm") == 2
    assert "is a file where a folder is needed" in capsys.readouterr().err


@pytest.mark.parametrize("words", [["practice"], ["practice", "dado", "--thickness", "18 mm"]])
def test_what_is_missing_on_the_command_line_is_shown_with_an_example(words, capsys):
    with pytest.raises(SystemExit) as ended:
        main(words)
    assert ended.value.code == 2
    assert "-m shoplib practice dado --thickness" in capsys.readouterr().err
