"""Typst turns a template and plain data into a PDF, in memory and without a network."""

import json
from functools import cache
from importlib.resources import files

import typst
from matplotlib.ft2font import FT2Font

_FONTS = files("matplotlib") / "mpl-data" / "fonts" / "ttf"


@cache
def _fonts() -> typst.Fonts:
    """DejaVu Sans as matplotlib ships it, and nothing in its place: the same letters on every machine."""
    return typst.Fonts(include_system_fonts=False, include_embedded_fonts=False, font_paths=[str(_FONTS)])


@cache
def _signs() -> frozenset[int]:
    return frozenset(FT2Font(str(_FONTS / "DejaVuSans.ttf")).get_charmap())


def has_sign(sign: str) -> bool:
    """Whether the papers have a letter for the sign; for any other an empty box would be printed.

    >>> has_sign("é"), has_sign("月"), has_sign(chr(27))
    (True, False, False)
    """
    return sign.isprintable() and ord(sign) in _signs()


def signs_without_letter(text: str) -> tuple[str, ...]:
    r"""The signs in a text of several lines that the papers have no letter for, each once.

    >>> signs_without_letter("[sheets]\n名 é 名")
    ('名',)
    """
    return tuple(dict.fromkeys(sign for line in text.splitlines() for sign in line if not has_sign(sign)))


def typeset(template: str, data: dict, room: str = "shoplib.documents") -> bytes:
    """The PDF of a template that stands in `room` (`drawings.typ`); the template reads `data` as JSON.

    It is tagged for screen readers (PDF/UA-1, ISO 14289-1), so every picture must carry its alternative text.
    The same data give the same bytes. Raises typst.TypstError where the template and the data do not fit.

    >>> typeset("drawings.typ", {"title": "a sheet without its drawings"})
    Traceback (most recent call last):
    ...
    typst.TypstError: dictionary does not contain key "paper"
    """
    source = (files(room) / template).read_bytes()
    return typst.compile(
        source, format="pdf", font_paths=_fonts(), sys_inputs={"data": json.dumps(data, ensure_ascii=False)},
        pdf_standards="ua-1", timestamp=0,
    )
