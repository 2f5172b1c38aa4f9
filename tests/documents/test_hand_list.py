"""Lists as people and spreadsheets write them, and lists that cannot be read."""

import pytest

from shoplib.documents.hand_list import ListError, parse_hand_list, read_hand_list
from shoplib.measure import INCH, MM

PLAIN = "names,length,width\nleft side,23 5/8 in,600 mm\n"


def sizes(text):
    return [(row.names, row.length[0].ticks, row.width[0].ticks) for row in parse_hand_list(text).rows]


EXPECTED = [(("left side",), 23 * INCH + INCH * 5 // 8, 600 * MM)]


@pytest.mark.parametrize(
    "text",
    [
        PLAIN,
        PLAIN.replace(",", ";"),
        PLAIN.replace(",", "\t"),
        PLAIN.replace("\n", "\r\n"),
        PLAIN.replace("\n", "\r"),
        "\ufeff" + PLAIN,
        "width,names,colour,length\n600 mm,left side,blue,23 5/8 in\n",
        'Part;L;W\n"left side";"23 5/8""";"600,0 mm"\n',
        'Part,L,W\nleft side,23 5/8",600 mm\n',
        "Name,Length (in),Width (mm)\nleft side,23 5/8,600\n",
        "PIECE,length_mm,Width in mm\nleft side,600.075,600\n",
        "Case for the truing bench,,\n,,\nname,length,width\n\nleft side,23-5/8 in,60 cm\n,,\n",
        "name,length,width,,\nleft side,23 5/8 in,600 mm,,\n",
    ],
)
def test_one_board_written_in_many_ways(text, tmp_path):
    path = tmp_path / "list.csv"
    path.write_bytes(text.encode())
    (row,) = read_hand_list(path).rows
    assert [(row.names, row.length[0].ticks, row.width[0].ticks)] == EXPECTED


def test_both_columns_of_a_size_are_kept():
    (row,) = parse_hand_list("names,length,length_mm,width\nleft side,23 5/8 in,601,600 mm\n").rows
    assert [(said.column, said.text) for said in row.length] == [("length", "23 5/8 in"), ("length_mm", "601")]


def test_names_counts_and_words():
    (row,) = parse_hand_list(
        'qty,names,stage,sheet,cuts,length,width\n2,left side; right side,1,\'=case,"dado, 9 deep",1 m,60 cm\n'
    ).rows
    assert (row.names, row.count, row.stage) == (("left side", "right side"), 2, 1)
    assert (row.sheet, row.cuts) == ("=case", "dado, 9 deep")


@pytest.mark.parametrize("cell", ["a; b", "a;b;", '"a, b"', '"a\nb"'])
def test_several_names_in_a_cell(cell):
    (row,) = parse_hand_list(f"names,length,width\n{cell},1 m,1 m\n").rows
    assert row.names == ("a", "b")


def test_lines_are_counted_as_an_editor_counts_them():
    rows = parse_hand_list('names,length,width,cuts\na,1 m,1 m,"two\nlines"\n\nb,1 m,1 m,\n').rows
    assert [row.line for row in rows] == [2, 5]


@pytest.mark.parametrize(
    ("text", "sentence"),
    [
        ("", "line 1 should hold the headings"),
        ("\n\n", "line 1 should hold the headings"),
        ("left side,600 mm,500 mm\n", "line 1 should hold the headings"),
        ("names,length\nleft side,600 mm\n", "line 1 should hold the headings"),
        ("names,length,width\n", "line 1 holds the headings and no rows follow it"),
        ("names,length,width,L\na,1 m,1 m,1 m\n", "line 1: the columns `length` and `L` mean the same"),
        ('names,length,width\n"a,1 m,1 m\n', "line 2: a quotation mark stands alone"),
        ('names,length,width\n"a"b,1 m,1 m\n', "line 2: a quotation mark stands alone"),
    ],
)
def test_a_list_that_cannot_be_read_is_told_in_one_sentence(text, sentence):
    with pytest.raises(ListError) as fault:
        parse_hand_list(text)
    assert str(fault.value).startswith(sentence)
    assert "\n" not in str(fault.value)


@pytest.mark.parametrize(
    ("text", "sentence"),
    [
        ("names,length,width\nleft side,600,500 mm\n", "line 2, length: `600` has no unit; write"),
        ("names,length,width\na,1 m,1 m\nb,6oo mm,1 m\n", "line 3, length: "),
        ("names,length,width\na,1 m,-5 mm\n", "line 2, width: `-5 mm` is negative"),
        ("names,length,width\na,1 m,0 mm\n", "line 2, width: `0 mm` is zero"),
        ("names,length,width\na,1 m,11 m\n", "line 2, width: `11 m` is over 10 m"),
        ("names,length,width\na,1 m,\n", "line 2 (a) has no width"),
        ("names,length,width\n,1 m,1 m\n", "line 2 has no name"),
        ("names,length,width\n; ,1 m,1 m\n", "line 2 has no name"),
        ("names,length,width\na,601,5 mm,500 mm\n", "line 2 has 4 cells under 3 headings"),
        ("names,count,length,width\na,two,1 m,1 m\n", "line 2, count: `two` is no count"),
        ("names,count,length,width\na,0,1 m,1 m\n", "line 2, count: `0` is no count"),
        ("names,stage,length,width\na,x,1 m,1 m\n", "line 2, stage: `x` is no stage"),
        ("names,length,width\na,=A1,1 m\n", "line 2, length: "),
    ],
)
def test_a_cell_that_cannot_be_read_is_told_in_one_sentence(text, sentence):
    (said,) = parse_hand_list(text).unreadable
    assert said.startswith(sentence)
    assert "\n" not in said


def test_all_cells_that_cannot_be_read_are_told_and_the_rest_is_kept():
    text = "names,count,length,width\na,two,6oo mm,1 m\nb,1,1 m,500\nc,1,1 m,1 m\nd,1,1,5 m,1 m\n,1,1 m,1 m\n"
    typed = parse_hand_list(text)
    starts = ("line 2, length:", "line 2, count:", "line 3, width:", "line 5 has 5 cells", "line 6 has no name")
    assert len(typed.unreadable) == len(starts)
    assert all(said.startswith(start) for said, start in zip(typed.unreadable, starts, strict=True))
    assert [(row.names, len(row.length), len(row.width)) for row in typed.rows] == [
        (("a",), 0, 1), (("b",), 1, 0), (("c",), 1, 1), (("d",), 0, 0),
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("content", "sentence"),
    [
        ("names,length,width\nfaçade,1 m,1 m\n".encode("cp1252"), "line 2 of list.csv is not UTF-8 text"),
        (PLAIN.encode("utf-16"), "line 1 of list.csv is not UTF-8 text"),
        (b"x" * 2_000_001, "list.csv is larger than any cut list"),
    ],
)
def test_a_file_that_is_no_text_list(content, sentence, tmp_path):
    path = tmp_path / "list.csv"
    path.write_bytes(content)
    with pytest.raises(ListError, match=sentence):
        read_hand_list(path)


def test_a_file_that_is_not_there_and_a_folder(tmp_path):
    for path in (tmp_path / "none.csv", tmp_path):
        with pytest.raises(ListError, match="cannot be opened"):
            read_hand_list(path)
