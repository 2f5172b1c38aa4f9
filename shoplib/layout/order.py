"""All cuts of a job as one numbered order: fence or stop is set, and all that wants this setting is cut.

A cut waits for the piece that it is made in, and for others of the same setting where that spares one (`set_once`). Of
settings that need not come again heavy pieces and trims come first, then earlier stages and wide cuts. Where parts are
cut in several turns, all that no part of the first one needs waits, even if a setting has to be made again for it.
"""

from collections import Counter
from collections.abc import Callable, Collection, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

from shoplib.layout.pieces import Job, Laid, Rect
from shoplib.layout.sawn import SawCut, Sawn
from shoplib.layout.set_by import SetBy, edge, left_to_size, set_by, short, skims
from shoplib.layout.set_once import set_once
from shoplib.layout.slabs import span


@dataclass(frozen=True, slots=True)
class Piece:
    """Something that lies on the saw or comes off it, and what it is called.

    `mark` is the name of a part, that of an offcut, "scrap", or what is written on a piece that is cut further: "sheet
    2", "sheet 2, piece 1" and so on for pieces that come off it, "rest of sheet 2" for what is left of one. `part`
    counts in the parts of the job, and is None for what is no part.
    """

    mark: str
    at: Rect
    part: int | None = None


@dataclass(frozen=True, slots=True)
class Step:
    """What is done with one piece at one setting: `cuts` at `fence` ticks from the blade, whatever it is set by.

    Steps with the same `setting` follow one another, and what is set stays as it is. `sheet` counts from 0, in the
    order of the layout. `off` is what comes off, cut by cut; `left` what remains of the piece, None for nothing. A
    `heavy` piece is larger than one person is to lift.

    `set_by`: fence, stop or line; `edge` is how long the cuts are. `short`: they run along the grain of a piece too
    short for the fence. `skim` is what the last one takes off where that is less than the blade is thick, else 0.
    `again`, of the first step of its setting alone, for the stop stays for the others: the same was set before, or
    equal parts were cut to it, and cuts in between made one of these pieces; `gauge` are parts, counted in the job,
    that were cut to this size then and are finished, so that one of them lies there; where none is, `like` is the mark
    of a piece that has the size and waits to be cut further. `to_size` are those whose size is only what remains, so
    that it is measured. `turn`: the turn at the saw (`Part.turn`); `too_early` are parts of a later one that get a
    size in it all the same.
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
    set_by: SetBy = "fence"
    edge: int = 0
    short: bool = False
    skim: int = 0
    again: bool = False
    gauge: tuple[int, ...] = ()
    like: str = ""
    to_size: tuple[int, ...] = ()
    turn: int = 0
    too_early: tuple[int, ...] = ()

    @property
    def done(self) -> tuple[int, ...]:
        """The parts, counted in the job, that this step brings to size."""
        made = (*self.off, self.left) if self.left else self.off
        return tuple(piece.part for piece in made if piece.part is not None)


SCRAP = "scrap"
"""What is left and too small to keep."""

_Setting = tuple[bool, SetBy, int]
"""Whether it trims, what it is set by, and how far from the blade: rip and crosscut at one distance may share it."""

_Key = tuple[int, Rect]
"""A sheet, and the piece on it that a cut is made in."""

_Ready = dict[tuple[int, Rect], SawCut]
"""Cuts by sheet and by the piece that each is made in."""


def cut_order(
    job: Job, sheets: Sequence[Laid], sawn: Sequence[Sawn], lifts: int | None = None, names: Sequence[str] = (),
    left: Sequence[Mapping[Rect, str]] = (),
) -> tuple[Step, ...]:
    """The steps that cut all sheets, in their order.

    `lifts`: square ticks of the largest piece that one person lifts; larger ones are cut down before all else. `names`
    of the sheets are their marks, where "sheet 1" and so on will not do; `left` has those of what is left of each,
    where "offcut" will not do.

    >>> from shoplib.layout.cut_tree import sawn
    >>> from shoplib.layout.pieces import Part, Placed, Stock
    >>> job = Job((Part("shelf", 40, 20, 4),), (Stock("ply", 82, 42),), kerf=2)
    >>> places = [Rect(x, y, 40, 20) for x in (0, 42) for y in (0, 22)]
    >>> laid = Laid(0, tuple(Placed(0, at) for at in places))
    >>> steps = cut_order(job, [laid, laid], [sawn(job, laid)] * 2)
    >>> for step in steps:
    ...     print(f"{step.setting} {step.piece.mark}: {step.kind} {step.fence}, off {step.off[0].mark}")
    1 sheet 1: rip 20, off sheet 1, piece 1
    1 sheet 2: rip 20, off sheet 2, piece 1
    2 sheet 1, piece 1: crosscut 40, off shelf
    2 rest of sheet 1: crosscut 40, off shelf
    2 sheet 2, piece 1: crosscut 40, off shelf
    2 rest of sheet 2: crosscut 40, off shelf
    """
    return tuple(_Saw(job, sheets, sawn, lifts, names, left).steps())


def set_ups(steps: Sequence[Step]) -> tuple[int, int]:
    """How often fence or stop is set, trimming left out: for rips, and altogether.

    >>> step = Step(1, 1, "rip", 20, 0, Piece("sheet 1", Rect(0, 0, 9, 40)), (), (), None)
    >>> set_ups([step, step])
    (1, 1)
    """
    rips = {step.setting for step in steps if step.kind == "rip"}
    return len(rips), len(rips | {step.setting for step in steps if step.kind == "crosscut"})


def told(step: Step, say: Callable[[int], str]) -> str:
    """One step in words; `say` writes a length.

    >>> at, off = Rect(0, 0, 90, 40), Piece("sheet 1, piece 1", Rect(0, 0, 90, 12))
    >>> rest = Piece("rest of sheet 1", Rect(0, 14, 90, 26))
    >>> told(Step(1, 1, "rip", 12, 0, Piece("sheet 1", at), (None,), (off,), rest), str)
    'Sheet 1 (90 x 40): rip at 12, 1 cut; off comes sheet 1, piece 1 (90 x 12), left is rest of sheet 1 (90 x 26).'
    >>> kept = Piece("sheet 1", Rect(0, 0, 90, 38))
    >>> told(Step(1, 1, "trim", 38, 0, Piece("sheet 1", at), (None,), (kept,), None), str)
    'Sheet 1 (90 x 40): trim a long edge, fence at 38; 90 x 38 is kept.'
    """
    if step.kind == "trim":
        [kept] = step.off
        side = "an end" if kept.at.w < step.piece.at.w else "a long edge"
        size = f"{say(kept.at.w)} x {say(kept.at.h)}"
        done = f"trim {side}, fence at {say(step.fence)}; {size} is kept"
    else:
        count = len(step.cuts)
        cuts, come = ("1 cut", "comes") if count == 1 else (f"{count} cuts", "come")
        left = "nothing is left" if step.left is None else f"left is {_sized([step.left], say)}"
        done = f"{step.kind} at {say(step.fence)}, {cuts}; off {come} {_sized(step.off, say)}, {left}"
    text = f"{_sized([step.piece], say)}: {done}."
    return text[0].upper() + text[1:]


def _sized(pieces: Sequence[Piece], say: Callable[[int], str]) -> str:
    """The pieces with their sizes, equal ones together."""
    counted = Counter((piece.mark, f"{say(piece.at.w)} x {say(piece.at.h)}") for piece in pieces)
    return ", ".join(f"{n} of {mark} ({size})" if n > 1 else f"{mark} ({size})" for (mark, size), n in counted.items())


class _Saw:
    """The pieces there are and the cuts still to make, while the order is worked out."""

    def __init__(
        self, job: Job, sheets: Sequence[Laid], sawn: Sequence[Sawn], lifts: int | None, names: Sequence[str],
        left: Sequence[Mapping[Rect, str]],
    ) -> None:
        self.job, self.lifts = job, lifts
        self.called = names or [f"sheet {n}" for n in range(1, len(sheets) + 1)]
        self.cuts: _Ready = {(n, cut.piece): cut for n, found in enumerate(sawn) for cut in found.cuts}
        self.parts = {(n, one.at): one.part for n, laid in enumerate(sheets) for one in laid.placed}
        self.placed = [laid.placed for laid in sheets]
        self.left = left or [{}] * len(sheets)
        self.names = [part.name for part in job.parts]
        self.pieces = [0] * len(sheets)
        self.seen: set[_Setting] = set()
        self.sized: dict[int, dict[int, None]] = {}
        self.finished: set[int] = set()
        self.marks: dict[tuple[int, Rect], str] = {}
        for n, laid in enumerate(sheets):
            stock = job.stock[laid.stock]
            self.marks[n, Rect(0, 0, stock.length, stock.width)] = self.called[n]
        self.ready: _Ready = {key: cut for key, cut in self.cuts.items() if key in self.marks}
        self.turns = {key: self._turn(key) for key in self.cuts}

    def steps(self) -> Iterator[Step]:
        number = 0
        settings = [(turn, chosen) for turn in sorted(set(self.turns.values())) for chosen in self._settings(turn)]
        for setting, (turn, chosen) in enumerate(settings, start=1):
            there, made = list(self.ready), list[Step]()
            while mine := [key for key, cut in self.ready.items()
                           if self.turns[key] == turn and self._setting(cut) == chosen]:
                for sheet, at in sorted(mine):
                    number += 1
                    made.append(self._step(number, setting, sheet, at))
            yield from self._set(chosen, made, there)

    def _turn(self, key: _Key) -> int:
        """The turn in which a cut is made: the first one of all parts that lie in its piece."""
        sheet, at = key
        of = self.job.parts
        last = max(part.turn for part in of)
        return min((of[one.part].turn for one in self.placed[sheet] if at.holds(one.at)), default=last)

    def _setting(self, cut: SawCut) -> _Setting:
        return cut.kind != "trim", set_by(self.job, cut), cut.fence

    def _settings(self, turn: int) -> list[_Setting]:
        """The settings of one turn in their order."""
        keys = [key for key in self.cuts if self.turns[key] == turn]
        cuts = [self.cuts[key] for key in keys]
        made_by = {
            (sheet, piece): n for n, (sheet, at) in enumerate(keys)
            for piece in (self.cuts[sheet, at].off, self.cuts[sheet, at].left) if piece
        }

        def rank(setting: _Setting, ready: list[int]) -> tuple:
            heavy = any(self._heavy(cuts[n].piece) for n in ready)
            return not heavy, min(cuts[n].stage for n in ready), *setting[:2], -setting[2]

        return set_once([self._setting(cut) for cut in cuts], [made_by.get(key) for key in keys], rank)

    def _step(self, number: int, setting: int, sheet: int, at: Rect) -> Step:
        first, turn = self.ready[sheet, at], self.turns[sheet, at]
        piece, cuts, off = Piece(self.marks[sheet, at], at), [], []
        rest = piece.mark if piece.mark.startswith("rest") else f"rest of {piece.mark}"
        while True:
            cut = self.ready.pop((sheet, at))
            cuts.append(cut)
            left = None if cut.left is None else self._made(sheet, cut.left, rest)
            off.append(self._made(sheet, cut.off, piece.mark if cut.kind == "trim" else ""))
            at = cut.left
            following = self.ready.get((sheet, at))
            if following is None or (following.kind, self._setting(following)) != (cut.kind, self._setting(first)):
                break
            if self.turns[sheet, at] != turn:
                break
            if skims(self.job, following):  # a step of its own says what it takes off
                break
        sized, to_size = self._sized(sheet, cuts), self._to_size(sheet, cut)
        too_early = tuple(part for part in dict.fromkeys((*sized, *to_size)) if self.job.parts[part].turn > turn)
        return Step(
            number, setting, first.kind, first.fence, sheet, piece, tuple(cuts), tuple(off), left,
            self._heavy(first.piece), set_by(self.job, first), edge(first), short(self.job, first),
            skims(self.job, cut), to_size=to_size, turn=turn, too_early=too_early,
        )  # fmt: skip

    def _set(self, chosen: _Setting, made: Sequence[Step], there: Sequence[_Key]) -> Iterator[Step]:
        """All steps of one setting: the first one tells whether it, or another for equal parts, was set before.

        `there`: the pieces that lay there before it, to be cut.
        """
        first, *others = made
        if first.kind != "trim":
            sized = dict.fromkeys(part for step in made for part in self._sized(step.sheet, step.cuts))
            before = self.sized.setdefault(first.fence, {})
            if chosen in self.seen or any(part in before for part in sized):
                whole = [part for part in before if part in self.finished]
                gauge = tuple(part for part in sized if part in whole) or tuple(whole)
                like = "" if gauge else self._like(first.fence, there, {(step.sheet, step.piece.at) for step in made})
                first = replace(first, again=True, gauge=gauge, like=like)
            before.update(sized)
        self.seen.add(chosen)
        for step in made:
            self.finished.update(set(step.done) - set(step.to_size))
        yield from (first, *others)

    def _like(self, size: int, there: Sequence[_Key], cut_now: Collection[_Key]) -> str:
        """The smallest piece that was cut to a size for a part in it, and stays as it is for now; "" where none is."""
        found = [
            (at.area, self.marks[sheet, at]) for sheet, at in there
            if (sheet, at) not in cut_now and not self._heavy(at)
            and any(span(one.at, axis) == span(at, axis) and one.at[2 + axis] == size
                    for one in self.placed[sheet] if at.holds(one.at) for axis in (0, 1))
        ]
        return min(found, default=(0, ""))[1]

    def _sized(self, sheet: int, cuts: Sequence[SawCut]) -> tuple[int, ...]:
        """The kinds of parts that get their size from these cuts, at once or when what comes off is cut further."""
        axis = 0 if cuts[0].off.w != cuts[0].piece.w else 1
        inside = (
            one.part for cut in cuts for one in self.placed[sheet]
            if span(one.at, axis) == span(cut.off, axis)
            and span(cut.off, 1 - axis)[0] <= one.at[1 - axis] < span(cut.off, 1 - axis)[1]
        )
        return tuple(dict.fromkeys(inside))

    def _to_size(self, sheet: int, cut: SawCut) -> tuple[int, ...]:
        """The kinds of parts that are left to size by the last cut of a step."""
        then = None if cut.left is None else self.cuts.get((sheet, cut.left))
        found = left_to_size(cut, then, [one.at for one in self.placed[sheet]])
        return tuple(dict.fromkeys(self.parts[sheet, at] for at in found))

    def _made(self, sheet: int, at: Rect, mark: str) -> Piece:
        """A piece that a cut has made; one to be cut further gets a mark of its own where it is given none."""
        part = self.parts.get((sheet, at))
        if part is not None:
            return Piece(self.names[part], at, part)
        if (sheet, at) not in self.cuts:
            return Piece(self.left[sheet].get(at, "offcut"), at)
        if not mark:
            self.pieces[sheet] += 1
            mark = f"{self.called[sheet]}, piece {self.pieces[sheet]}"
        self.marks[sheet, at] = mark
        self.ready[sheet, at] = self.cuts[sheet, at]
        return Piece(mark, at)

    def _heavy(self, at: Rect) -> bool:
        return self.lifts is not None and at.area > self.lifts
