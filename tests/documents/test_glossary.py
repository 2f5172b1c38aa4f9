"""Words that are explained are words that are used, and found in whatever form they stand in."""

from pathlib import Path

import pytest

from shoplib.documents.glossary import WORDS, words_of, words_text

ROOT = Path(__file__).parents[2]


def test_every_word_is_used_somewhere() -> None:
    sources = [path for path in (ROOT / "shoplib").rglob("*.py") if path.name != "glossary.py"]
    texts = "\n".join(path.read_text(encoding="utf-8") for path in [*sources, *(ROOT / "data").glob("*.toml")])
    assert {word for word, _ in words_of(texts)} == set(WORDS)


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("The kickers and the shimmed slides; Rabbets.", ["kicker", "rabbet", "shim"]),
        ("PS 1 lets plywood be thinner", ["PS 1"]),
        ("ps 1 bandage proudly dadoed", ["dado"]),
        ("to the near wall of the cut, in the inside face", ["inside face", "near wall"]),
        ("", []),
    ],
)
def test_a_word_is_found_in_its_forms_and_not_in_others(text: str, words: list[str]) -> None:
    assert [word for word, _ in words_of(text)] == words


def test_nothing_is_headed_where_no_word_is_new() -> None:
    assert words_text(["Six boards."]) == ""


def test_a_meaning_is_one_line_of_a_narrow_screen() -> None:
    assert max(map(len, words_text(list(WORDS)).splitlines())) <= 80
