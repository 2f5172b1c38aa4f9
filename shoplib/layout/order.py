"""All cuts of a job as one numbered order: the fence is set, and all that wants this setting is cut.

A cut waits for the piece that it is made in. Of the settings for which something is ready the next is one that need
not be set again later, if there is one; earlier stages and wide cuts come first.
"""

from collections import Counter
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass

from shoplib.layout.pieces import Job, Laid, Rect
from shoplib.layout.sawn import SawCut, Sawn


@dataclass(frozen=True, slots=True)
class Piece:
    """Something that lies on the saw or comes off it, and what it is called.

    `mark` is the name of a part, "offcut", or what is written on a piece that is cut further: "sheet 2", "2A", "2B",
    ... for pieces that come off sheet 2, "rest of sheet 2" or "rest of 2A" for what is left of one. `part` counts in
    the parts of the job, and is None for what is no part.
    """

    mark: str
    at: Rect
    part: int | None = None


@dataclass(frozen=True, slots=True)
class Step:
    """What is done with one piece at one setting: `cuts` with the fence `fence` ticks from the blade.

    Steps with the same `setting` follow one another, and the fence stays as it is. `sheet` counts from 0, in the
    order of the layout. `off` is what comes off, cut by cut; `left` what remains of the piece, None for nothing. A
    `heavy` piece is larger than one person is to lift.
    """

    number: int
    setting: int
    kind: str
    fence: int
    sheet: int
    piece: Piece
    cuts: tuple[SawCut, ...]
    off: tuple[Piece, ...]
    left: Piece | None
    heavy: bool = False

    @property
    def done(self) -> tuple[int, ...]:
        """The parts, counted in the job, that this step brings to size."""
        made = (*self.off, self.left) if self.left else self.off
        return tuple(piece.part for piece in made if piece.part is not None)


_Setting = tuple[str, bool, int]
"""Kind of cut, whether it parts the piece along the grain, and where the fence stands."""

_Ready = dict[tuple[int, Rect], SawCut]
"""Cuts by sheet and by the piece that each is made in."""


def cut_order(
    job: Job, sheets: Sequence[Laid], sawn: Sequence[Sawn], lifts: int | None = None, names: Sequence[str] = ()
) -> tuple[Step, ...]:
    """The steps that cut all sheets, in their order.

    `lifts`: square ticks of the largest piece that one person lifts; larger ones are cut down before all else. `names`
    of the sheets are their marks; pieces are then marked "NAME, piece 1" and so on.

    >>> from shoplib.layout.cut_tree import sawn
    >>> from shoplib.layout.pieces import Part, Placed, Stock
    >>> job = Job((Part("shelf", 40, 20, 4),), (Stock("ply", 82, 42),), kerf=2)
    >>> places = [Rect(x, y, 40, 20) for x in (0, 42) for y in (0, 22)]
    >>> laid = Laid(0, tuple(Placed(0, at) for at in places))
    >>> steps = cut_order(job, [laid, laid], [sawn(job, laid)] * 2)
    >>> for step in steps:
    ...     print(step.number, step.setting, step.piece.mark, step.kind, step.fence, [piece.mark for piece in step.off])
    1 1 sheet 1 rip 20 ['1A']
    2 1 sheet 2 rip 20 ['2A']
    3 2 1A crosscut 40 ['shelf']
    4 2 rest of sheet 1 crosscut 40 ['shelf']
    5 2 2A crosscut 40 ['shelf']
    6 2 rest of sheet 2 crosscut 40 ['shelf']
    """
    return tuple(_Saw(job, sheets, sawn, lifts, names).steps())


def set_ups(steps: Sequence[Step]) -> tuple[int, int]:
    """How often the fence is set, trimming left out: for rips, and altogether.

    >>> step = Step(1, 1, "rip", 20, 0, Piece("sheet 1", Rect(0, 0, 9, 40)), (), (), None)
    >>> set_ups([step, step])
    (1, 1)
    """
    kinds = Counter(kind for _, kind in {(step.setting, step.kind) for step in steps})
    return kinds["rip"], kinds["rip"] + kinds["crosscut"]


def told(step: Step, say: Callable[[int], str]) -> str:
    """One step in words; `say` writes a length.

    >>> at, off = Rect(0, 0, 90, 40), Piece("1A", Rect(0, 0, 90, 12))
    >>> rest = Piece("rest of sheet 1", Rect(0, 14, 90, 26))
    >>> told(Step(1, 1, "rip", 12, 0, Piece("sheet 1", at), (None,), (off,), rest), str)
    'Sheet 1, 90 x 40: rip at 12, 1 cut. Off comes 1A, 90 x 12; left is rest of sheet 1, 90 x 26.'
    """
    count = len(step.cuts)
    sizes = Counter((piece.mark, piece.at.w, piece.at.h) for piece in step.off)
    off = ", ".join(
        f"{number} of {mark}, {say(w)} x {say(h)}" if number > 1 else f"{mark}, {say(w)} x {say(h)}"
        for (mark, w, h), number in sizes.items()
    )
    left = "nothing is left" if step.left is None else f"left is {_sized(step.left, say)}"
    text = (
        f"{_sized(step.piece, say)}: {step.kind} at {say(step.fence)}, {count} {'cut' if count == 1 else 'cuts'}. "
        f"Off {'comes' if count == 1 else 'come'} {off}; {left}."
    )
    return text[0].upper() + text[1:]


def _sized(piece: Piece, say: Callable[[int], str]) -> str:
    return f"{piece.mark}, {say(piece.at.w)} x {say(piece.at.h)}"


class _Saw:
    """The pieces there are and the cuts still to make, while the order is worked out."""

    def __init__(
        self, job: Job, sheets: Sequence[Laid], sawn: Sequence[Sawn], lifts: int | None, names: Sequence[str]
    ) -> None:
        self.lifts, self.called = lifts, names
        self.cuts: _Ready = {(n, cut.piece): cut for n, found in enumerate(sawn) for cut in found.cuts}
        self.waiting = Counter(_setting(cut) for cut in self.cuts.values())
        self.parts = {(n, one.at): one.part for n, laid in enumerate(sheets) for one in laid.placed}
        self.names = [part.name for part in job.parts]
        self.letters = [0] * len(sheets)
        self.marks: dict[tuple[int, Rect], str] = {}
        for n, laid in enumerate(sheets):
            stock = job.stock[laid.stock]
            self.marks[n, Rect(0, 0, stock.length, stock.width)] = names[n] if names else f"sheet {n + 1}"
        self.ready: _Ready = {key: cut for key, cut in self.cuts.items() if key in self.marks}

    def steps(self) -> Iterator[Step]:
        number, setting, kind = 0, 0, ""
        while self.ready:
            chosen = self._next(kind)
            kind, setting = chosen[0], setting + 1
            while mine := [key for key, cut in self.ready.items() if _setting(cut) == chosen]:
                for sheet, at in sorted(mine):
                    number += 1
                    yield self._step(number, setting, sheet, at)

    def _next(self, kind: str) -> _Setting:
        """The setting to go on with, by what is ready."""
        by_setting: dict[_Setting, list[tuple[int, Rect]]] = {}
        for key, cut in self.ready.items():
            by_setting.setdefault(_setting(cut), []).append(key)

        def rank(setting: _Setting) -> tuple:
            keys = by_setting[setting]
            heavy = any(self._heavy(at) for _, at in keys)
            again = self.waiting[setting] > sum(self._reached(key, setting) for key in keys)
            stage = min(self.ready[key].stage for key in keys)
            return not heavy, setting[0] != "trim", again, stage, setting[0] != kind, -setting[2]

        return min(by_setting, key=rank)

    def _reached(self, key: tuple[int, Rect], setting: _Setting) -> int:
        """How many cuts this setting makes in a piece and in what comes of it."""
        sheet, at = key
        count, waiting = 0, [at]
        while waiting:
            cut = self.cuts.get((sheet, waiting.pop()))
            if cut is not None and _setting(cut) == setting:
                count += 1
                waiting += [cut.off] if cut.left is None else [cut.off, cut.left]
        return count

    def _step(self, number: int, setting: int, sheet: int, at: Rect) -> Step:
        first = self.ready[sheet, at]
        piece, cuts, off = Piece(self.marks[sheet, at], at), [], []
        rest = piece.mark if piece.mark.startswith("rest") else f"rest of {piece.mark}"
        while True:
            cut = self.ready.pop((sheet, at))
            self.waiting[_setting(cut)] -= 1
            cuts.append(cut)
            left = None if cut.left is None else self._made(sheet, cut.left, rest)
            off.append(self._made(sheet, cut.off, piece.mark if cut.kind == "trim" else ""))
            at = cut.left
            if (sheet, at) not in self.ready or _setting(self.ready[sheet, at]) != _setting(first):
                heavy = self._heavy(first.piece)
                return Step(
                    number, setting, first.kind, first.fence, sheet, piece, tuple(cuts), tuple(off), left, heavy
                )

    def _made(self, sheet: int, at: Rect, mark: str) -> Piece:
        """A piece that a cut has made; one to be cut further gets a mark of its own where it is given none."""
        part = self.parts.get((sheet, at))
        if part is not None:
            return Piece(self.names[part], at, part)
        if (sheet, at) not in self.cuts:
            return Piece("offcut", at)
        if not mark:
            number = self.letters[sheet]
            mark = f"{self.called[sheet]}, piece {number + 1}" if self.called else f"{sheet + 1}{_letters(number)}"
            self.letters[sheet] += 1
        self.marks[sheet, at] = mark
        self.ready[sheet, at] = self.cuts[sheet, at]
        return Piece(mark, at)

    def _heavy(self, at: Rect) -> bool:
        return self.lifts is not None and at.area > self.lifts


def _setting(cut: SawCut) -> _Setting:
    return cut.kind, cut.off.w != cut.piece.w, cut.fence


def _letters(number: int) -> str:
    """A to Z, then AA, AB, ...

    >>> _letters(0), _letters(25), _letters(26), _letters(52)
    ('A', 'Z', 'AA', 'BA')
    """
    text = ""
    number += 1
    while number:
        number, rest = divmod(number - 1, 26)
        text = chr(ord("A") + rest) + text
    return text
