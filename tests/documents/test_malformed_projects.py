"""Project files that cannot be read or built: one sentence with the key's full name, exit 2, nothing written."""

from pathlib import Path

import pytest

from shoplib.commands import plan

GOOD = '''format = 1
name = "Tool case"
show = { unit = "in", step = "1/32 in" }

[size]
by = "outside"
width = "30 in"
height = "24 in"
depth = "20 in"

[sheets."case sheet"]
kind = "plywood"
nominal = "23/32 in"
readings = ["0.703 in", "0.705 in"]

[sheets."thin sheet"]
kind = "plywood"
nominal = "1/4 in"
readings = ["0.22 in"]

[carcass]
sheet = "case sheet"
corner = { kind = "rabbet", depth = "1/4 in" }
back = { kind = "rabbet", sheet = "thin sheet", depth = "1/4 in" }

[[bays]]
kind = "drawers"
width = "equal"
[bays.drawers]
count = 3
bottom_sheet = "thin sheet"
'''

CHANGED = [
    # what stands in the good file, what stands there instead, the key that the sentence begins with (or all of it)
    ("format = 1", "format = 2", "format"),
    ("format = 1", "format = true", "format"),
    ("format = 1\n", "", "format"),
    ("format = 1", "format = 1.0", "format"),
    ("format = 1", 'format = "1"', "format"),
    ('[sheets."thin sheet"]', '[sheets.""]\nkind = "plywood"\nnominal = "1 in"\n[sheets."thin sheet"]', 'sheets.""'),
    ('[sheets."thin sheet"]', '[sheets."../thin"]\nkind = "plywood"\n[sheets."thin sheet"]', 'sheets."../thin"'),
    ('[sheets."case sheet"]', '[sheets."@case"]', 'sheets."@case"'),
    ("[size]", '[space]\nwidth = []\nheight = ["3 ft"]\ndepth = ["3 ft"]\n[size]', "space.width"),
    ("[size]", "[[size]]", "size"),
    ('width = "30 in"', "width = inf", "size.width"),
    ('width = "30 in"', "width = true", "size.width"),
    ('width = "30 in"', "width = { of = 3 }", "size.width"),
    (
        'width = "30 in"',
        "width = 2026-02-31",
        'case.toml: line 7: a length stands between two quotes, with its unit, such as "23 5/8 in"',
    ),
    ('name = "Tool case"\n', "", "name"),
    ('name = "Tool case"', 'name = ""', "name"),
    ('name = "Tool case"', "name = 7", "name"),
    ('name = "Tool case"', 'name = "=SUM(A1:A9)"', "name"),
    ('name = "Tool case"', 'name = "../../elsewhere"', "name"),
    ('name = "Tool case"', 'name = "C:\\\\case"', "name"),
    ('name = "Tool case"', f'name = "{"long " * 40}"', "name"),
    ('unit = "in"', 'unit = "cubits"', "show"),
    ('step = "1/32 in"', 'step = "1/3 in"', "show"),
    ('step = "1/32 in"', "step = 32", "show"),
    ("show =", "shown =", "show"),
    ('width = "30 in"', "width = 30", "size.width"),
    ('width = "30 in"', 'width = "30"', "size.width"),
    ('width = "30 in"', 'width = "-30 in"', "size.width"),
    ('width = "30 in"', 'width = "0 in"', "size.width"),
    ('width = "30 in"', 'width = "wide"', "size.width"),
    ('width = "30 in"', 'width = "1 in"', "size.width"),
    ('width = "30 in"', 'width = "12 m"', "size.width"),
    ('width = "30 in"', "width = nan", "size.width"),
    ('width = "30 in"', "width = 2026-01-01", "size.width"),
    ('width = "30 in"', "width = []", "size.width"),
    ('height = "24 in"\n', "", "size.height"),
    ('depth = "20 in"', 'deep = "20 in"', "size.deep"),
    ('by = "outside"', 'by = "somehow"', "size.by"),
    ('by = "outside"', 'by = "space"', "size.width"),
    ('kind = "plywood"\nnominal = "23/32 in"', 'kind = "cheese"\nnominal = "23/32 in"', 'sheets."case sheet".kind'),
    ('nominal = "23/32 in"\n', "", 'sheets."case sheet".nominal'),
    ('readings = ["0.703 in", "0.705 in"]', 'readings = "0.703 in"', 'sheets."case sheet".readings'),
    ('readings = ["0.703 in", "0.705 in"]', "readings = [0.703]", 'sheets."case sheet".readings[1]'),
    ('readings = ["0.703 in", "0.705 in"]', f"readings = {['0.7 in'] * 100}", 'sheets."case sheet".readings'),
    ('sheet = "case sheet"', 'sheet = "cse sheet"', "carcass.sheet"),
    ('back = { kind = "rabbet", sheet = "thin sheet"', 'back = { kind = "rabbet", sheet = "x"', "carcass.back.sheet"),
    ('kind = "rabbet", depth = "1/4 in" }\nback', 'kind = "rabbet", depth = "1 in" }\nback', "carcass.corner.depth"),
    ('kind = "rabbet", depth = "1/4 in" }\nback', 'kind = "glue" }\nback', "carcass.corner.kind"),
    ('depth = "1/4 in" }\nback', 'end_gap = "1 in" }\nback', "carcass.corner.end_gap"),
    ('width = "equal"', 'width = "sometimes"', "bays[1].width"),
    ('width = "equal"', "width = 12", "bays[1].width"),
    ('width = "equal"', 'width = "90 in"', "bays"),
    ('kind = "drawers"\n', 'kind = "drawer"\n', "bays[1].kind"),
    ("count = 3", "count = 3.5", "bays[1].drawers.count"),
    ("count = 3", "count = -1", "bays[1].drawers.count"),
    ("count = 3", "count = 100000000", "bays[1].drawers.count"),
    ("count = 3", "count = 55", "bays[1].drawers.count"),
    ("count = 3", 'count = "three"', "bays[1].drawers.count"),
    ("count = 3", 'count = 3\nslide = "magic"', "bays[1].drawers.slide"),
    ("count = 3", "count = 3\nlike_bay = 1", "bays[1].drawers.like_bay"),
    ("count = 3", "count = 3\nlike_bay = 9", "bays[1].drawers.like_bay"),
    ("count = 3", 'count = 3\nheights = "ratio"\nratio = [1]', "bays[1].drawers.ratio"),
    ("count = 3", 'count = 3\nheights = "given"\ngiven = ["20 in", "20 in", "20 in"]', "bays[1].drawers.given"),
    ("count = 3", "count = 3\ncount = 4", "case.toml: line 31: this key stands twice; keep one of them"),
    ("count = 3", 'count = 3\nheights = "ratio"\nratio = [0, 0, 0]', "bays[1].drawers.ratio[1]"),
    ("count = 3", 'count = 3\nbottom_depth = "1 in"', "bays[1].drawers.bottom_depth"),
    ("count = 3", 'count = 3\nbottom_slack = "1 in"', "bays[1].drawers.bottom_slack"),
    ("count = 3", 'count = 3\nbottom_up = "20 in"', "bays[1].drawers.count"),
    ("count = 3", 'count = 3\nacross = 2', "bays[1].drawers.across"),
    ("[[bays]]", '[[edging]]\nboards = "case"\nkind = "strip"\nthickness = "29 in"\n[[bays]]', "edging"),
    ("[[bays]]", '[measured.parts."bottom"]\nlength = 29\n[[bays]]', 'measured.parts."bottom".length'),
    ("[[bays]]", '[measured.parts."bottom"]\nlength = "2 in"\n[[bays]]', "measured"),
    ("[[bays]]", '[measured.depths]\n"bay 1" = "0 in"\n[[bays]]', 'measured.depths."bay 1"'),
    ("[[bays]]", "[bays]", "bays"),
    (
        "[[bays]]",
        '[measured.openings."bay 9 drawer 1"]\nfront = "3 in"\nback = "3 in"\n[[bays]]',
        'measured.openings."bay 9 drawer 1"',
    ),
    ("[[bays]]", '[measured.parts."lid"]\nlength = "3 in"\n[[bays]]', 'measured.parts."lid"'),
    ("[[bays]]", '[base]\nkind = "plinth"\n[[bays]]', "base.height"),
    ("[[bays]]", '[fronts]\nkind = "inset"\nsheet = "gold"\n[[bays]]', "fronts.sheet"),
    ("[[bays]]", "[doors]\nkind = 1\n[[bays]]", "doors"),
]

WHOLE = {
    "empty": b"",
    "blank": b" \n\n",
    "cut short": GOOD[:150].encode(),
    "not UTF-8": GOOD.replace("Tool", "T\u00f6\u00f6l").encode("latin-1"),
    "UTF-16": GOOD.encode("utf-16"),
    "NUL bytes": b"format = 1\x00\x00",
    "binary": bytes(range(256)),
    "JSON": b'{"format": 1}',
    "nested deep": b"format = 1\nx = " + b"[" * 5000 + b"]" * 5000,
    "huge number": b"format = 1\nx = " + b"9" * 5000,
}


def refused(content: bytes, folder: Path, capsys: pytest.CaptureFixture[str]) -> str:
    """Plan the file; gives the sentence, after checking that it is one and that nothing was written."""
    file, to = folder / "case.toml", folder / "plan"
    file.write_bytes(content)
    assert plan.run(str(file), str(to)) == 2
    out, said = capsys.readouterr()
    assert out == ""
    assert said.count("\n") == 1 and said.strip().isprintable()
    assert "Traceback" not in said and len(said) < 600
    assert not to.exists()
    return said


def test_the_good_file_is_good(tmp_path: Path) -> None:
    (tmp_path / "case.toml").write_text(GOOD, encoding="utf-8")
    assert plan.run(str(tmp_path / "case.toml"), str(tmp_path / "plan")) in (0, 1)


@pytest.mark.parametrize(("old", "new", "named"), CHANGED, ids=[f"{new[:40]!a}" for _, new, _ in CHANGED])
def test_a_wrong_value_is_told_with_its_key(
    old: str, new: str, named: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert old in GOOD
    said = refused(GOOD.replace(old, new, 1).encode(), tmp_path, capsys)
    assert said.startswith(f"{named}:") or said == f"{named}\n"


@pytest.mark.parametrize("what", WHOLE)
def test_a_file_that_is_no_project_is_told_by_its_name(
    what: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    said = refused(WHOLE[what], tmp_path, capsys)
    assert "case.toml" in said or said.startswith("format")


def test_a_missing_file_and_a_folder_are_told(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    for file in (tmp_path / "gone.toml", tmp_path):
        assert plan.run(str(file), str(tmp_path / "plan")) == 2
        assert capsys.readouterr().err.count("\n") == 1


def test_there_are_enough_of_them() -> None:
    assert len(CHANGED) + len(WHOLE) >= 40
