"""What the test piece of a joint tells and what to do next (`data/results.toml`): common practice, or geometry."""

import tomllib
from dataclasses import dataclass
from functools import cache

from shoplib.tables.slides import DATA


@dataclass(frozen=True, slots=True)
class Result:
    """One thing that is seen at the test piece, what it came from, and what comes next."""

    looks: str
    means: str
    do: str


@dataclass(frozen=True, slots=True)
class Results:
    """What is read off a joint's test piece.

    `form` says what to write down of it: "wide", "deep", "left" (the thickness that is left beside the cut), "fit" or
    "closes"; `wanted` is what it should be like, put together. `rows` is empty for what has classes of fit alone.
    """

    form: tuple[str, ...] = ("wide", "deep", "fit")
    wanted: str = ""
    rows: tuple[Result, ...] = ()


@dataclass(frozen=True, slots=True)
class Width:
    """How a cut between two walls is made wider where it is too tight, and narrower where it is too loose."""

    tight: str
    loose: str


@cache
def _file() -> dict:
    with (DATA / "results.toml").open("rb") as file:
        return tomllib.load(file)


def results(joint: str) -> Results:
    """What the test piece of this joint tells beside its fit.

    >>> results("rabbet").form, len(results("dado").rows)
    (('wide', 'left', 'closes'), 0)
    """
    for one in _file()["result"]:
        if joint in one["joints"]:
            return Results(tuple(one["form"]), one.get("wanted", ""), tuple(Result(**row) for row in one["rows"]))
    return Results()


def width(joint: str, way: str) -> Width:
    """How the width is changed for this joint, cut in this way: at the pin of a jig, say, where a machine cuts fingers.

    KeyError for a way that is none.

    >>> width("dado", "stacked dado set").loose
    'Take out a shim, or put in a thinner one, and cut another test piece.'
    >>> width("finger", "router").loose[:25]
    'The pin stands too near t'
    """
    rows = _file()["width"]
    found = {one.get("joint", "") or one["way"]: Width(one["tight"], one["loose"]) for one in rows}
    return found[joint] if joint in found and way != "hand tools" else found[way]
