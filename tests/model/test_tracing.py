"""Traced projects come out number for number as plain ones, and every size rests on something put in."""

import dataclasses
import re
import typing
from dataclasses import replace

import pytest

from shoplib.documents.examples import example
from shoplib.documents.project_file import read_project
from shoplib.measure import INCH, Style
from shoplib.measure.traced import Leaf, Named, Sum, Traced, sum_of
from shoplib.model.cabinet import solve
from shoplib.model.marks import is_length
from shoplib.model.project import JointChoice, Project
from shoplib.model.sheet import Sheet
from shoplib.model.tracing import name_of, traced
from shoplib.words.working import leaves, working
from tests.random_projects import project


def bares(total: Sum, seen: set) -> list[int]:
    """The bare numbers in a working, at any depth."""
    found = [total.bare] if total.bare else []
    for atom, _ in total.terms:
        if atom not in seen and not isinstance(atom, Leaf):
            seen.add(atom)
            for one in [atom.of] if isinstance(atom, Named) else atom.among:
                found += bares(one, seen)
    return found


def sizes(cabinet) -> list[tuple[str, int]]:
    """Every length of a solved cabinet that is listed, drawn or checked."""
    found = []
    for board in cabinet.boards:
        found += [(f"{board.name}, {side}", getattr(board, side)) for side in ("length", "width", "thickness")]
        found += [(f"{board.name}, place", value) for value in (*board.box.low, *board.box.high)]
    found += [(f"gap {gap.between}", gap.size) for gap in cabinet.gaps]
    return found


@pytest.mark.parametrize("block", range(10))
def test_traced_projects_equal_plain_ones_and_their_leaves_were_put_in(block, count):
    """150 projects; 500 with --long."""
    for seed in range(50 * block, 50 * block + count(15, 50)):
        plain = project(seed)
        cabinet = solve(traced(plain))
        assert cabinet == solve(plain)
        for what, value in sizes(cabinet):
            assert isinstance(value, Traced) or value == 0, (seed, what)
            assert not bares(sum_of(value), set()), (seed, what)
            assert all(at(plain, leaf.key) == leaf.value for leaf in leaves(value)), (seed, what)


def at(record, key: str) -> int:
    """The value of a plain project that stands under a leaf's key."""
    if not key:
        return record
    if isinstance(record, dict):
        name = max((name for name in record if key.removeprefix(".").startswith(name)), key=len)
        return at(record[name], key.removeprefix(".").removeprefix(name))
    if isinstance(record, tuple):
        number = re.match(r"\[(\d+)\]", key)
        return at(record[int(number[1]) - 1], key[number.end() :])
    field = re.match(r"\.?(\w+)", key)
    return at(getattr(record, field[1]), key[field.end() :])


@pytest.mark.parametrize("name", ["under_bench_case", "small_parts_wall_case", "rolling_stand"])
def test_shipped_projects_can_say_why(name):
    plain = read_project(example(name))
    cabinet = solve(traced(plain))
    assert cabinet == solve(plain)
    for what, value in sizes(cabinet):
        assert not bares(sum_of(value), set()), what
        assert len("\n".join(working(value, what, plain.style))) < 6000, what


def length_paths(cls=Project, path=()):
    """The way to every length that a project can hold, with a stand-in for the record that it is in."""
    stand_in = {JointChoice: JointChoice(), Sheet: Sheet("ply", "plywood", 1, (1, 2))}.get(cls)
    for name, hint in typing.get_type_hints(cls, include_extras=True).items():
        yield from _under(hint, (*path, name), stand_in)


def _under(hint, path, stand_in):
    origin, inner = typing.get_origin(hint), typing.get_args(hint)
    if dataclasses.is_dataclass(hint) and hint is not Style:
        yield from length_paths(hint, path)
    elif origin is dict:
        yield from _under(inner[1], (*path, "some name"), stand_in)
    elif origin is tuple:
        yield from _under(inner[0], (*path, 1), stand_in)
    elif origin is typing.Annotated and not is_length(hint):
        return  # no length: nothing is solved from it
    elif origin is typing.Annotated:
        yield path, stand_in
    else:
        for one in inner:
            yield from _under(one, path, stand_in)


def test_every_length_of_a_project_has_a_name():
    """Also those that no random project sets: a new field must be named in `model/tracing.py`."""
    paths = list(length_paths())
    assert len(paths) > 90
    names = [name_of(path, record) for path, record in paths]
    assert len(set(names)) == len(names)


@pytest.mark.parametrize(("kind", "name"), [
    ("rabbet", "rabbet width for the back"), ("groove", "groove depth for the back"),
])
def test_what_a_back_reaches_into_is_named_as_a_shop_measures_it(kind, name):
    """Seen from the back, a rabbet's width is what the back gains (common practice, no source)."""
    plain = read_project(example("under_bench_case"))
    back = replace(plain.carcass.back, kind=kind, depth=INCH // 4)
    project = traced(replace(plain, carcass=replace(plain.carcass, back=back)))
    assert project.carcass.back.depth.sum.terms[0][0].name == name


def test_a_working_is_a_sum_that_a_reader_can_follow():
    plain = read_project(example("under_bench_case"))
    bottom = solve(traced(plain)).by_name["bottom"]
    assert working(bottom.length, "bottom length", plain.style)[0] == (
        "bottom length 59 7/32 in (+0.00025 in) = case width 60 in - 2 x thickness of case sheet 0.703 in "
        "+ 2 x rabbet depth of the case corners 5/16 in"
    )
