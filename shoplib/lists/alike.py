"""Sentences that are alike but for the bays, drawers or strips that they are about, told together."""

import re
from collections.abc import Iterable

from shoplib.words.naming import and_list, in_short

_PLACE = re.compile(r"\bbay \d+(?: (?:drawer|strip|shelf|rail) \d+(?:\.\d+)?| pull-out)?\b")
"""A bay, or what stands in one: `bay 2`, `bay 1 drawer 3`, `bay 2 pull-out`."""

_ONE = re.compile(r"(?:drawer|strip|shelf|rail) \d+(?:\.\d+)?|pull-out")
"""One thing of its kind, as it stands in several bays."""


def told_once(sentences: Iterable[str]) -> list[str]:
    """The first of each set of alike sentences, with the places of the others named behind it."""
    told = []
    for first, *others in _alike(sentences).values():
        about = dict.fromkeys(place for other in others for place in _PLACE.findall(other))
        likewise = [place for place in about if place not in _PLACE.findall(first)]
        told.append(f"{first} (likewise {and_list(in_short(likewise))})" if likewise else first)
    return told


def told_of_each(sentences: Iterable[str]) -> list[str]:
    """Alike sentences as one that names all their places: "the opening of each of drawers 1 to 4 ...".

    >>> told_of_each(["the opening of bay 1 drawer 2", "the opening of bay 3 drawer 2"])
    ['the opening of drawer 2 in each of bays 1 and 3']
    """
    told = []
    for same in _alike(sentences).values():
        named = [_PLACE.findall(sentence) for sentence in same]
        if len(same) > 1 and all(len(places) == 1 for places in named):
            every = and_list(in_short([places[0] for places in named]))
            one, several, bays = every.partition(" in bays ")
            each = f"{one} in each of bays {bays}" if several and _ONE.fullmatch(one) else f"each of {every}"
            told.append(same[0].replace(named[0][0], each))
        else:
            told += dict.fromkeys(same)
    return told


def _alike(sentences: Iterable[str]) -> dict[str, list[str]]:
    found: dict[str, list[str]] = {}
    for sentence in sentences:
        found.setdefault(_PLACE.sub("*", sentence), []).append(sentence)
    return found
