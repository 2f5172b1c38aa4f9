"""A tick count that carries its working: what it was added up, chosen and shared from.

The same functions run on it as on plain ticks. It compares, orders and hashes as its number; sums and
whole multiples of it keep their working, and so do the choosers of `choose`. Nothing else does.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

Kind = Literal["chosen", "measured", "table", "limit"]
"""Where a number that nothing stands behind comes from: a person, a rule or caliper, a row of `data/`, a fixed limit of
a check."""


class _HashedOnce:
    """Keeps its hash: atoms and sums are looked up again and again, and it goes through all that they are made of."""

    __slots__ = ("_hash",)

    def __hash__(self) -> int:
        try:
            return self._hash
        except AttributeError:
            object.__setattr__(self, "_hash", hash(self._made_of()))
            return self._hash

    def _made_of(self) -> tuple:
        return tuple(getattr(self, name) for name in self.__slots__)


@dataclass(frozen=True, slots=True)
class Leaf(_HashedOnce):
    """A number that was put in: where every working ends. `key` says where it was written; of a limit, its source."""

    name: str
    value: int
    kind: Kind
    key: str = ""
    __hash__ = _HashedOnce.__hash__


@dataclass(frozen=True, slots=True)
class Choice(_HashedOnce):
    """A number chosen among others or rounded: `how`, from `among`, by `steps` of so many ticks, in `parts`."""

    how: str
    value: int
    among: tuple[Sum, ...]
    steps: int = 0
    parts: int = 0
    __hash__ = _HashedOnce.__hash__


@dataclass(frozen=True, slots=True)
class Named(_HashedOnce):
    """A number between input and answer that the trade has a name for."""

    name: str
    value: int
    of: Sum
    __hash__ = _HashedOnce.__hash__


Atom = Leaf | Choice | Named


@dataclass(frozen=True, slots=True)
class Sum(_HashedOnce):
    """What a number was added up from: how many times each atom, and what is left over as a bare number."""

    value: int
    times: dict[Atom, int]
    bare: int = 0
    __hash__ = _HashedOnce.__hash__

    @property
    def terms(self) -> tuple[tuple[Atom, int], ...]:
        """Each atom with how many times it is added."""
        return tuple(self.times.items())

    def __eq__(self, other: object) -> bool:
        if self is other:
            return True
        if not isinstance(other, Sum) or hash(self) != hash(other):
            return False
        return self.bare == other.bare and self.times == other.times

    def _made_of(self) -> tuple:
        return self.value, frozenset(self.times.items())  # in whatever order it was added up


class Traced(int):
    """Ticks with their working, `sum`.

    >>> width, side = leaf(100, "width"), leaf(7, "side")
    >>> inside = width - side - side
    >>> inside, [(atom.name, times) for atom, times in inside.sum.terms]
    (86, [('width', 1), ('side', -2)])
    >>> inside + side + side - width
    0
    """

    sum: Sum

    def __new__(cls, value: Sum) -> Traced:
        """The number of `value`, with it beside."""
        self = super().__new__(cls, value.value)
        self.sum = value
        return self

    def __add__(self, other: int) -> int:
        return _added(self, other, 1) if isinstance(other, int) else NotImplemented

    def __radd__(self, other: int) -> int:
        return _added(other, self, 1) if isinstance(other, int) else NotImplemented

    def __sub__(self, other: int) -> int:
        return _added(self, other, -1) if isinstance(other, int) else NotImplemented

    def __rsub__(self, other: int) -> int:
        return _added(other, self, -1) if isinstance(other, int) else NotImplemented

    def __mul__(self, times: int) -> int:
        if isinstance(times, Traced) or not isinstance(times, int):
            return int(self) * times
        return _added(0, self, times)

    __rmul__ = __mul__

    def __neg__(self) -> int:
        return _added(0, self, -1)

    def __pos__(self) -> int:
        return self

    def __abs__(self) -> int:
        return -self if self < 0 else self


def leaf(value: int, name: str, kind: Kind = "chosen", key: str = "") -> Traced:
    """A number put in, by the name that its working will call it."""
    atom = Leaf(name, int(value), kind, key)
    return Traced(Sum(atom.value, {atom: 1}))


def limit(value: int, name: str, source: str = "common practice, no source") -> Traced:
    """A length at which a check draws its line, by its name, with where that line comes from."""
    return leaf(value, name, "limit", source)


def named(value: int, name: str) -> int:
    """The value under a name of its own in workings; a plain number, and one that was put in, stays as it is.

    >>> named(5, "bay 1 width")
    5
    >>> named(leaf(8, "width") - leaf(3, "side"), "bay 1 width").sum.terms[0][0].name
    'bay 1 width'
    """
    if type(value) is not Traced:
        return value
    if len(value.sum.times) == 1 and not value.sum.bare:
        (atom, times), = value.sum.times.items()
        if times == 1 and not isinstance(atom, Choice):
            return value
    return Traced(Sum(int(value), {Named(name, int(value), value.sum): 1}))


def chosen(value: int, how: str, among: Sequence[int], *, steps: int = 0, parts: int = 0) -> int:
    """The value as chosen from `among`; plain where all of them are plain.

    >>> chosen(3, "narrowest", [3, 4])
    3
    >>> chosen(3, "narrowest", [leaf(3, "front"), leaf(4, "back")]).sum.terms[0][0].how
    'narrowest'

    Raises TypeError for what is no whole number of ticks, such as a float.
    """
    plain = True
    for one in among:  # a loop, for plain numbers pass here some thousand times between two moves of a slider
        if type(one) is Traced:
            plain = False
        elif type(one) is not int:
            raise TypeError(not_whole(one))
    steps, parts = (int(one) if type(one) is Traced else one for one in (steps, parts))  # how, and no term of the sum
    if type(steps) is not int or type(parts) is not int:
        raise TypeError(not_whole(parts if type(steps) is int else steps))
    if plain:
        return value
    sums = tuple(dict.fromkeys(sum_of(one) for one in among))
    if len(sums) == 1 and sums[0].value == value and not parts:
        return Traced(sums[0])  # nothing was chosen and nothing rounded away
    return Traced(Sum(int(value), {Choice(how, int(value), sums, steps, parts): 1}))


def leaf_beside(value: int, name: str, kind: Kind, beside: int) -> int:
    """A number put in under its name, where the one that it goes `beside` carries a working; otherwise as it is.

    >>> leaf_beside(3, "spare", "table", 5), leaf_beside(3, "spare", "table", leaf(5, "thickness")).sum.terms[0][0].name
    (3, 'spare')
    """
    return leaf(value, name, kind) if type(value) is int and type(beside) is Traced else value


def not_whole(value: object) -> str:
    """Why a number is no length inside: a float, which would slip past every exact sum, or no number at all."""
    return f"a length is a whole number of ticks, not {value!r}; read_length makes one of text"


def sum_of(value: int) -> Sum:
    """What the value was added up from; a plain number is all left over.

    >>> sum_of(5).bare
    5
    """
    return value.sum if isinstance(value, Traced) else Sum(value, {}, value)


def _added(left: int, right: int, times: int) -> int:
    """Left + times * right, where either may carry its working."""
    if not isinstance(right, Traced):
        if not right:
            return left
        a = left.sum
        return Traced(Sum(a.value + times * right, a.times, a.bare + times * right))
    b = right.sum
    if not isinstance(left, Traced):
        if not times:
            return left
        kept = b.times if times == 1 else {atom: times * count for atom, count in b.times.items()}
        return Traced(Sum(left + times * b.value, kept, left + times * b.bare))
    a = left.sum
    kept = a.times.copy()
    for atom, count in b.times.items():
        if now := kept.get(atom, 0) + times * count:
            kept[atom] = now
        else:
            del kept[atom]
    value = a.value + times * b.value
    return Traced(Sum(value, kept, a.bare + times * b.bare)) if kept else value
