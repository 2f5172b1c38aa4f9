"""Both cut lists opened by a spreadsheet, in English and in German: number for number, and nothing taken for another.

The reference outside the project is LibreOffice Calc. Skipped, saying so, where it is not installed.
"""

import csv
import io
import re
import shutil
import subprocess
import xml.etree.ElementTree as ET

import pytest

from shoplib.documents.cut_list_file import cut_list_csv
from shoplib.documents.decimal_comma import with_decimal_comma, with_decimal_point
from shoplib.documents.examples import project_path
from shoplib.documents.project_file import project_from_text
from shoplib.model.cabinet import solve

pytestmark = pytest.mark.skipif(not shutil.which("soffice"), reason="LibreOffice is not installed")

TABLE, OFFICE, TEXT = (f"{{urn:oasis:names:tc:opendocument:xmlns:{name}:1.0}}" for name in ("table", "office", "text"))
READ = {"point": "44,34,76,1,,1033", "comma": "59,34,76,1,,1031"}
"""Separator, quotes, UTF-8, first row, and the language: English (United States), German (Germany)."""
NAME = "hêtre; 6.5 mm, o'k"
"""For a sheet: an accent, both separators, a length and an apostrophe."""


@pytest.fixture(scope="module")
def opened(tmp_path_factory):
    """The table as rows of text, and the cells of each of the two as the spreadsheet took them: kind, value, words."""
    at = tmp_path_factory.mktemp("opened")
    text = project_path("rolling_stand").read_text(encoding="utf-8").replace("case sheet", NAME)
    table = cut_list_csv(solve(project_from_text(text)))
    (at / "point.csv").write_bytes(with_decimal_point(table))
    (at / "comma.csv").write_bytes(with_decimal_comma(table))
    for form, how in READ.items():
        subprocess.run(
            ["soffice", f"-env:UserInstallation={(at / 'profile').as_uri()}", "--headless", "--convert-to", "fods",
             f"--infilter=CSV:{how},false,true", "--outdir", str(at), str(at / f"{form}.csv")],
            check=True, capture_output=True, timeout=120,
        )  # fmt: skip
    return list(csv.reader(io.StringIO(table))), {form: cells(at / f"{form}.fods") for form in READ}


def cells(path):
    rows = []
    for row in ET.parse(path).getroot().iter(f"{TABLE}table-row"):
        read = []
        for cell in row:
            words = " ".join("".join(part.itertext()) for part in cell.findall(f"{TEXT}p"))
            one = (cell.get(f"{OFFICE}value-type"), cell.get(f"{OFFICE}value"), words, cell.get(f"{TABLE}formula"))
            read += [one] * min(int(cell.get(f"{TABLE}number-columns-repeated", "1")), 99)
        rows.append(read)
    return rows


@pytest.mark.parametrize("form", READ)
def test_numbers_are_numbers_and_the_rest_is_text(opened, form):
    table, read = opened
    numbers = 0
    for row, taken in zip(table, read[form], strict=False):
        for typed, (kind, value, words, formula) in zip(row, taken, strict=False):
            assert formula is None
            if re.fullmatch(r"\d+(\.\d+)?", typed):
                assert (kind, float(value)) == ("float", float(typed))
                numbers += 1
            elif typed:
                assert kind == "string", (typed, kind, value)
                if form == "point":
                    assert words.split() == typed.split()
    assert numbers > 100 and len(read[form]) >= len(table)


def test_names_are_whole_in_both(opened):
    table, read = opened
    column = table[0].index("sheet")
    for form in READ:
        named = [taken[column][2] for row, taken in zip(table, read[form], strict=False) if row[column] == NAME]
        assert named and set(named) == {NAME}
