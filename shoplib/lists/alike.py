"""Sentences that are alike but for the drawers or pull-outs that they are about, told together."""

import re
from collections.abc import Iterable

from shoplib.checks.naming import and_list, in_short
from shoplib.model.solved import Cabinet


def told_once(sentences: Iterable[str], cabinet: Cabinet) -> list[str]:
    """The first of each set of alike sentences, with the drawers of the others named behind it."""
    told = []
    for first, *others in _alike(sentences, cabinet).values():
        about = dict.fromkeys(group for other in others for group in _groups_in(other, cabinet))
        likewise = [group for group in about if group not in _groups_in(first, cabinet)]
        told.append(f"{first} (likewise {and_list(in_short(likewise))})" if likewise else first)
    return told


def told_of_each(sentences: Iterable[str], cabinet: Cabinet) -> list[str]:
    """Alike sentences as one that names all their drawers: "the opening of each of drawers 1 to 4 ..."."""
    told = []
    for same in _alike(sentences, cabinet).values():
        named = [_groups_in(sentence, cabinet) for sentence in same]
        if len(same) > 1 and all(len(groups) == 1 for groups in named):
            every = and_list(in_short([groups[0] for groups in named]))
            told.append(same[0].replace(named[0][0], f"each of {every}"))
        else:
            told += dict.fromkeys(same)
    return told


def _alike(sentences: Iterable[str], cabinet: Cabinet) -> dict[str, list[str]]:
    found: dict[str, list[str]] = {}
    for sentence in sentences:
        found.setdefault(_any_group(cabinet).sub("*", sentence), []).append(sentence)
    return found


def _groups_in(sentence: str, cabinet: Cabinet) -> list[str]:
    return _any_group(cabinet).findall(sentence)


def _any_group(cabinet: Cabinet) -> re.Pattern[str]:
    """Finds the name of any drawer or pull-out, and nothing where there is none."""
    groups = sorted((group for group in cabinet.groups if group != "case"), key=len, reverse=True)
    return re.compile("|".join(rf"\b{re.escape(group)}\b" for group in groups) or r"(?!)")
