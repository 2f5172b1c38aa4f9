"""`practice` as it is run: exit status, what is printed, what is written."""

from io import BytesIO

import pytest
from pypdf import PdfReader

from shoplib.commands import practice
from shoplib.start import cli
from shoplib.start.cli import main
from shoplib.start.place import Place


def asked(joint: str, to, thickness: str, *readings: str, **given: str) -> int:
    words = [given.get(name, "") for name in ("receives", "tool", "paper", "date", "outer", "chippers", "shims")]
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


def test_the_sheet_is_worked_for_the_cutters_that_are_owned(tmp_path):
    """Outer cutters 2 x 1/8, chippers 1/8 + 1/8 + 1/8 and 1/16, shim 0.02: 0.7075 in, for 0.705 and 0.002 in more."""
    own = {"outer": "1/8 in", "chippers": "1/8 in; 1/8 in; 1/8 in; 1/16 in", "shims": "0.02 in"}
    assert asked("dado", tmp_path, "0.705 in", **own) == 0
    [file] = tmp_path.iterdir()
    text = "".join(page.extract_text() for page in PdfReader(file).pages)
    plain = " ".join(text.split())
    assert "your own dado set" in plain and "shims 0.02 in" in plain and "0.7075 in" in plain


def test_the_pieces_of_a_set_are_named_on_the_command_line(tmp_path, monkeypatch):
    asked_for = []
    monkeypatch.setattr(cli, "_command", lambda _place, *words: asked_for.append(words) or 0)
    words = ["practice", "dado", "--thickness", "18 mm", "--to", str(tmp_path), "--chippers", "3 mm", "2 mm", "--shims",
             "0.1 mm", "--readings", "18.1 mm"]
    given = cli.parser(Place.of_this_copy()).parse_args(words)
    assert given.run(None, given) == 0
    assert asked_for == [("practice", "dado", str(tmp_path), "18 mm", "", "", "", "", "", "3 mm; 2 mm", "0.1 mm",
                          "18.1 mm")]


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
        ("dado", "18 mm", {"chippers": "thick"}, "chippers: "),
        ("dado", "18 mm", {"outer": "3 mm; 3 mm"}, "give the width of one"),
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
