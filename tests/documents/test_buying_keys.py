"""The keys for sheets, the saw and the yard: read, refused in one sentence, saved as they were written."""

import pytest

from shoplib.documents.project_file import ProjectFileError, project_from_text
from shoplib.documents.project_text import project_text
from shoplib.measure import INCH, MM
from shoplib.model.cutting import Buying, Cutting, OnHand, StockSize
from shoplib.model.marks import usually

CASE = """
format = 1
name = "Shelf for wheel boxes"
show = {{ unit = "{unit}", step = "{step}" }}
size = {{ width = "30 in", height = "24 in", depth = "12 in" }}
carcass = {{ sheet = "ply" }}
{more}
[sheets.ply]
kind = "plywood"
nominal = "18 mm"
{sheet}
"""


def text(more="", sheet="", unit="in"):
    return CASE.format(more=more, sheet=sheet, unit=unit, step="1/32 in" if unit == "in" else "0.5 mm")


@pytest.mark.parametrize(("unit", "kerf", "lifts"), [("in", INCH // 8, "50 lb"), ("mm", 3 * MM, "23 kg")])
def test_what_is_said_nothing_of_is_usual_and_not_saved(unit, kerf, lifts):
    project = project_from_text(text(unit=unit))
    assert project.cutting == usually(Cutting, unit)
    assert (project.cutting.kerf, project.cutting.one_lifts) == (kerf, lifts)
    assert (project.cutting.lay_out, project.cutting.choose) == ("stage by stage", "largest offcut")
    assert project.buying == Buying("USD", 10, {})
    saved = project_text(project)
    assert not any(word in saved for word in ("cutting", "buying", "trim", "sizes", "on_hand"))


def test_what_is_written_is_read_and_saved_again():
    sheet = (
        'length = "96 in"\nwidth = "48 in"\nprice = "74.00"\ntrim = "1/4 in"\ntrim_ends = "1 in"\n'
        'sizes = [{ length = "60 in", width = "60 in", price = "48,50" }]\n'
        'on_hand = [{ length = "40 in", width = "23 in", count = 2 },'
        ' { length = "30 in", width = "30 in", trim = "0 in" }]'
    )
    more = (
        'cutting = { kerf = "3/32 in", lay_out = "all together", choose = "light pieces", one_lifts = "18 kg",'
        ' already_cut = "case and boxes" }\n'
        'buying = { currency = "CAD", spare_screws = 0, prices = { "screw 8 x 1 1/4 in" = "0.12" } }'
    )
    project = project_from_text(text(more, sheet))
    ply = project.sheets["ply"]
    assert (ply.price, ply.trim, ply.trim_ends) == ("74.00", INCH // 4, INCH)
    assert ply.sizes == (StockSize(60 * INCH, 60 * INCH, "48,50"),)
    assert ply.on_hand == (OnHand(40 * INCH, 23 * INCH, 2), OnHand(30 * INCH, 30 * INCH, 1, trim=0))
    assert project.cutting == Cutting(
        3 * INCH // 32, "all together", "light pieces", "18 kg", already_cut="case and boxes"
    )
    assert project.buying == Buying("CAD", 0, {"screw 8 x 1 1/4 in": "0.12"})
    saved = project_text(project)
    assert '"48,50"' in saved and 'one_lifts = "18 kg"' in saved
    assert project_from_text(saved) == project


@pytest.mark.parametrize(
    ("more", "sheet", "sentence"),
    [
        ('cutting = { kerf = "-1/8 in" }', "", "cutting.kerf: "),
        ('cutting = { blade = "1/8 in" }', "", "cutting.blade: there is no such key; the keys here are already_cut, "),
        ('cutting = { choose = "cheapest" }', "", 'cutting.choose: "cheapest" is not a choice here; write one of "l'),
        (
            'cutting = { already_cut = "boxes" }',
            "",
            'cutting.already_cut: "boxes" is not a choice here; write one of "nothing", "case", "case and boxes"',
        ),
        ('cutting = { one_lifts = "50" }', "", "cutting.one_lifts: `50` cannot be read: a force is a weight, such as"),
        ("cutting = { one_lifts = 50 }", "", "cutting.one_lifts: a weight is text with a unit, such as `50 lb` or"),
        ("buying = { spare_screws = 101 }", "", "buying.spare_screws: a whole number of percent from 0 to 100 is mea"),
        ("buying = { spare_screws = true }", "", "buying.spare_screws: a whole number of percent from 0 to 100 is mea"),
        ('buying = { prices = { "pull" = 4.5 } }', "", 'buying.prices."pull": a price is '),
        ('buying = { prices = { "=SUM(A1)" = "4" } }', "", 'buying.prices."=SUM(A1)": a name must not begin with ='),
        ("", 'price = "about 50"', 'sheets."ply".price: a price is a number in quotes, such as "48.00", '),
        ("", "price = 48.00", 'sheets."ply".price: a price is a number in quotes, such as "48.00", without the'),
        ("", 'price = "-5"', 'sheets."ply".price: a price is '),
        ("", 'trim = "-1/4 in"', 'sheets."ply".trim: '),
        ("", 'sizes = [{ length = "60 in" }]', 'sheets."ply".sizes[1].width: this key is missing and is needed'),
        ("", 'sizes = [{ length = "6 in", width = "6 in", count = 2 }]', 'sheets."ply".sizes[1].count: there is no'),
        ("", 'on_hand = [{ length = "6 in", width = "6 in", price = "2" }]', 'sheets."ply".on_hand[1].price: there'),
        ("", 'on_hand = [{ length = "6 in", width = "0 in" }]', 'sheets."ply".on_hand[1].width: '),
        ("", 'on_hand = [{ length = "6 in", width = "6 in", count = 61 }]', 'sheets."ply".on_hand[1].count: 61 is out'),
    ],
)
def test_anything_else_is_refused_in_one_sentence_with_its_key(more, sheet, sentence):
    with pytest.raises(ProjectFileError) as refused:
        project_from_text(text(more, sheet))
    assert str(refused.value).startswith(sentence)
    assert "\n" not in str(refused.value)
