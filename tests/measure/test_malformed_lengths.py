"""What is no length is refused: one sentence that says what is wrong and what would be right."""

import re

import pytest

from shoplib.measure import LengthError, read_length

NO_UNIT = ["601", "23 5/8", "23.625", "5/8", "18,2", "½", "33 27/32 (+0.0002 in)", "601.5 ", "0"]
TWO_NUMBERS = ["12 13 in", "3 4 mm", "1 234 mm", "1 2 3 in", "23 5/8 1/2 in", "12 13"]
NOT_A_TAPE_FRACTION = [
    "23 5/0 in",
    "5/0 in",
    "1/0 mm",
    "0/0 in",
    "1' 3/0\"",
    "1/3 in",
    "23 ⅔ in",
    "3/15 in",
    "4/1 in",
]
TOP_HEAVY = ["23 9/8 in", "23 8/8 in", "1' 2 9/8\"", "18 3/2 mm", "1' 11 9/8\""]
NEGATIVE = ["-5 mm", "-23 5/8 in", "−5 mm", "- 5 mm", "-1' 3\"", "-½ in"]
WORDS = ["wide", "two feet", "nan", "inf", "infinity mm", "None", "mm", "in", '"', "--", "½½½x", "?"]
UNKNOWN_UNITS = [
    "5 kg",
    "5 yd",
    "5 parsecs",
    "about 5 mm",
    "5 mm or so",
    "5 µm",
    "5 mil",
    "5 inchs",
    "0x10 mm",
    "5 mm 3 lb",
]
ABSURD_LONG = ["11 m", "10001 mm", "400 in", "33 ft", "10.0001 m", "999999999999999999999999999999 mm"]
ABSURD_SHORT = ["0.001 mm", "0.0001 in", "0.00000000001 in", "0.0099 mm", "0 in (+0.0002 in)"]
ZERO = ["0 mm", "0 in", "0/8 in", "0' 0\"", "-0 mm", "0.000 m"]
COMMAS = ["23,5 in", '23,625"', "1,234 mm", "601,500 mm", "12,5 ft", "1' 3,5\""]
THOUSANDS = ["1,234.5 mm", "1.234,5 mm", "1,234,567 mm", "1_234 mm", "1,000,000 in"]
EXPONENTS = ["1e3 mm", "1E3 mm", "2.5e-1 in", "1 e 3 mm", "1e400 m"]
OTHER_DIGITS = ["٢٣ mm", "２３ mm", "23 ⁵⁄₈ in", "五 mm", "२ in", "3² mm"]
MIXED = [
    "2 ft 30 mm",
    "5 mm 3 in",
    "23 in (+0.01 mm)",
    "5 mm (+0.001 in)",
    "1' 30 cm",
    "2 m 3 ft",
    "1'234 mm",
]
MANY_INCHES = ["1' 12\"", "2 ft 14 in", "2' 13 1/2\"", "1 ft 12.5 in"]
TWO_UNITS = ["1 m 20 cm", "60 cm 5 mm", "5 mm mm"]
HALF_WRITTEN = [
    "23. in", "5/ in", "/8 in", "23 /8 in", "5 / 8 in", "23 5/8/2 in", "1.2.3 mm", "2..5 mm", "+-5 mm",
    "=5 mm", "5 mm;",
    "5 mm\x00", "5\ud800 mm", "(5 mm)", "5 mm (0.1 mm)", "5 mm (+0.1)", "3 in 2 ft", "1' 2",
    "1/2 ft 3 in", "1' 2' 3\"",
    "23.5 5/8 in", "23 5.5/8 in", "24 - 3/8 in", "24 in - 3 in", "5 in x 3 in", "5 mm mm mm",
    "34 in (+5 in)",
]  # fmt: skip

TABLE = [
    *[(text, "no unit", "write `") for text in NO_UNIT],
    *[(text, "two numbers", "one length") for text in TWO_NUMBERS],
    *[(text, "zero" if re.search("/0", text) else "no tape shows", "5/8 in") for text in NOT_A_TAPE_FRACTION],
    *[(text, "fraction of one or more", "write") for text in TOP_HEAVY],
    *[(text, "negative", "above zero") for text in NEGATIVE],
    *[(text, "", "23 5/8 in") for text in WORDS],
    *[(text, "where a unit of length is meant", "write in, ft, mm, cm or m") for text in UNKNOWN_UNITS],
    *[(text, "over 10 m", "2.4 m") for text in ABSURD_LONG],
    *[(text, "under 0.01 mm", "1/64 in") for text in ABSURD_SHORT],
    *[(text, "is zero", "above zero") for text in ZERO],
    *[(text, "comma", "write `") for text in COMMAS],
    *[(text, "thousands", "in one piece") for text in THOUSANDS],
    *[(text, "exponent", "1000 mm") for text in EXPONENTS],
    *[(text, "digits other than 0 to 9", "23 5/8 in") for text in OTHER_DIGITS],
    *[(text, "mixes", "686 mm") for text in MIXED],
    *[(text, "12 inches or more", "in` if that is meant") for text in MANY_INCHES],
    *[(text, "two units", "120 cm") for text in TWO_UNITS],
    *[(text, "", "write") for text in HALF_WRITTEN],
    *[(text, "empty", "23 5/8 in") for text in ("", "   ", "\u00a0", "\n")],
    *[(text, "too long", "23 5/8 in") for text in ("5" * 61 + " mm", "5 " * 40, " " * 61, "1/" * 100)],
]


def the_sentence(text, **options) -> str:
    """What the reader says; checked to be one printable sentence that begins with the place."""
    with pytest.raises(LengthError) as caught:
        read_length(text, what="size.width", **options)
    sentence = str(caught.value)
    assert sentence.startswith("size.width: ")
    assert sentence.isprintable() and sentence.endswith(".")
    assert not re.search(r"[.!?] +[A-Z]", sentence.replace(text if isinstance(text, str) else "", "")), (
        "more than one sentence"
    )
    assert len(sentence) < 200
    return sentence


def test_the_table_is_large_enough():
    assert len({text for text, _, _ in TABLE}) >= 60


@pytest.mark.parametrize(("text", "wrong", "right"), TABLE)
def test_malformed_text_is_refused_in_one_sentence(text, wrong, right):
    sentence = the_sentence(text)
    assert wrong in sentence
    assert right in sentence


@pytest.mark.parametrize("value", [601, 23.625, -5, 0, float("nan"), float("inf"), 10**5000, 1e300], ids=type)
def test_a_bare_number_is_refused(value):
    assert "bare number" in the_sentence(value)


@pytest.mark.parametrize("value", [None, True, b"5 mm", ["5 mm"], {"mm": 5}, object(), ("5 mm",), 5 + 0j])
def test_what_is_not_text_is_refused(value):
    assert f"not {type(value).__name__}" in the_sentence(value)


@pytest.mark.parametrize(
    ("text", "right"),
    [
        ("23 9/8 in", "`24 1/8 in`"),
        ("23 8/8 in", "`24 in`"),
        ("2' 13 1/2\"", "`37.5 in`"),
        ("23.5", "`23.5 in` or `23.5 mm`"),
        ("601", "write `601 mm`"),
        ("-3", "is negative and has no unit; write `3 in` or `3 mm`"),
        ("-5/8", "is negative and has no unit; write `5/8 in`"),
        ("1' 2 9/8\"", "`1 ft 3 1/8 in`"),
        ("1' 3,5\"", "write `1 ft 3.5 in`."),
        ("1,234 m", "write `1.234 m`."),
        ("1,500 cm", "write `1.500 cm`."),
        ("23,5 in", "`23.5 in`."),
        ("601,500 mm", "write `601.500 mm`."),
        ("1,234 mm", "`1.234 mm` or `1234 mm`"),
        ("23 5/8", "write `23 5/8 in`"),
        ("33 27/32 (+0.0002 in)", "write `33 27/32 in (+0.0002 in)`"),
        ("1 234 mm", "`601.5 mm`"),
        ("18,2", "write `18,2 mm`"),
        ("1' 2", "`1 ft 2 in`"),
    ],
)
def test_the_sentence_names_what_was_probably_meant(text, right):
    sentence = the_sentence(text)
    assert right in sentence
    for suggestion in re.findall("`([^`]*)`", sentence.split("write", 1)[1]):
        read_length(suggestion)


@pytest.mark.parametrize(("text", "wrong", "right"), TABLE)
def test_every_length_a_sentence_proposes_can_be_read(text, wrong, right):
    proposed = re.findall("`([^`]*)`", the_sentence(text).rpartition("write")[2])
    for suggestion in proposed:
        if text != "0":  # the unit is wanting first; zero is refused when it stands
            read_length(suggestion)


def test_a_control_with_its_unit_printed_beside_it_refuses_the_rest_all_the_same():
    assert "comma" in the_sentence("18,2", unit="in")
    assert "mixes" in the_sentence("1' 3", unit="mm")
    assert "two numbers" in the_sentence("12 13", unit="in")


def test_leave_to_be_negative_or_zero_is_no_leave_for_anything_else():
    assert "is zero" in the_sentence("0 mm", negative=True)
    assert "negative" in the_sentence("-1 mm", zero=True)
    assert "under 0.01 mm" in the_sentence("0.001 mm", zero=True)
    assert "over 10 m" in the_sentence("-11 m", negative=True, zero=True)


def test_a_text_of_any_length_is_refused_without_being_searched():
    assert "too long" in the_sentence("1 " * 5_000_000)
