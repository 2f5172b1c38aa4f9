"""Sentences about many drawers, told together."""

from shoplib.lists.alike import told_of_each, told_once

OPENINGS = [f"the opening of bay 1 drawer {number} at its slides" for number in (1, 2, 3, 4)]


def test_the_first_is_told_and_the_others_named():
    assert told_once([*OPENINGS, "the top"]) == [f"{OPENINGS[0]} (likewise bay 1 drawers 2 to 4)", "the top"]


def test_one_sentence_names_all_of_them():
    assert told_of_each(OPENINGS) == ["the opening of each of bay 1 drawers 1 to 4 at its slides"]
    assert told_of_each(OPENINGS[:1]) == OPENINGS[:1]


def test_sentences_about_no_drawer_or_about_two_are_left_as_they_are():
    pair = ["bay 1 drawer 1 meets bay 1 drawer 2", "bay 1 drawer 2 meets bay 1 drawer 3"]
    assert told_of_each(["the back", "the back", *pair]) == ["the back", *pair]
    assert told_once(["the back", "the back"]) == ["the back"]


def test_bays_are_places_too():
    depths = [f"the depth of bay {number}, from its front edge" for number in (1, 2, 3)]
    assert told_of_each(depths) == ["the depth of each of bays 1 to 3, from its front edge"]
    shelves = [f"bay {number} shelf 1 sags" for number in (2, 3)]
    assert told_once(shelves) == ["bay 2 shelf 1 sags (likewise bay 3 shelf 1)"]
