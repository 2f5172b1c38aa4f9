"""Judges a whole set of sizes: each field first, then the boards put together.

Feedback holds at most three things, each in three short parts: what was given, what it would do in the
shop, where to look. It never holds a right size before it is found or asked for.
"""

import re
from collections.abc import Mapping
from dataclasses import dataclass, replace

from shoplib.draw.dry_fit import View, dry_fit
from shoplib.draw.pen import draw
from shoplib.lessons.exercise import Givens, Misconception
from shoplib.lessons.judge import (
    COARSE_RULE,
    NOT_A_LENGTH,
    NOT_TRIED,
    OTHER,
    RIGHT,
    SLIP,
    WRONG_UNIT,
    Feedback,
    Read,
    coarse,
    in_the_other_unit,
    read_answer,
)
from shoplib.lessons.say import Say
from shoplib.lessons.set_exercise import NEAR, Asked, SetExercise
from shoplib.lessons.together import Together, put_together
from shoplib.live.picture import Drawing
from shoplib.measure import to_step
from shoplib.model.solved import Cabinet
from shoplib.words.amounts import setting

MOST = 3
"""Things said at once; the rest is easier to see when these are mended."""

PICTURE = (480.0, 330.0)

_AGAIN = "Do this sum once more, one line for each step; a hint gives the next one."


@dataclass(frozen=True, slots=True)
class Item:
    """What is said to one size, named by its `label`, in up to three short parts."""

    label: str
    said: Feedback

    @property
    def parts(self) -> tuple[str, ...]:
        """The parts that have something to say."""
        return self.said.parts


@dataclass(frozen=True, slots=True)
class SetFeedback:
    """What is said to a whole set. `kind` and `name` are as in `Feedback`, of the gravest thing said.

    `summary` is said of the whole; `items` of single sizes; `picture` shows the boards put together, None where
    they were not.
    """

    kind: str
    name: str
    summary: tuple[str, ...]
    items: tuple[Item, ...] = ()
    picture: Drawing | None = None

    @property
    def right(self) -> bool:
        """Whether the set is right."""
        return self.kind == RIGHT

    @property
    def heading(self) -> str:
        """A few words that say how it stands, so that colour need not."""
        return {RIGHT: "Right", SLIP: "Not yet", OTHER: "Not yet"}.get(self.kind, "Not judged yet")

    @property
    def parts(self) -> tuple[str, ...]:
        """What is said of the whole."""
        return self.summary

    def __str__(self) -> str:
        single = [f"{item.label}: {' '.join(item.parts)}" for item in self.items]
        return f"{self.heading}. {' '.join([*self.summary, *single])}".strip()

    __repr__ = __str__


def judge_set(
    exercise: SetExercise, givens: Givens, case: Cabinet, unit: str, answers: object, assumed: str | None = None
) -> SetFeedback:
    """What to say to `answers`: by the names of `exercise.asked`, or a list in their order.

    `case` is the cabinet as solved, shown in the learner's `unit`. Whatever the answers are, there is feedback;
    nothing is raised.
    """
    named = _named(exercise, answers)
    if isinstance(named, SetFeedback):
        return named
    reads = {one: read_answer(named.get(one.name), unit, assumed) for one in exercise.asked}
    faults = [Item(one.label, said) for one, said in reads.items() if isinstance(said, Feedback)]
    if len(faults) == len(reads) and all(item.said.kind == NOT_TRIED for item in faults):
        return SetFeedback(NOT_TRIED, NOT_TRIED, ("There is no answer yet.", faults[0].said.look))
    if faults:
        first = next((item.said for item in faults if item.said.kind != NOT_TRIED), faults[0].said)
        summary = ("The boards are put together as soon as every size can be read.",)
        return SetFeedback(first.kind, first.name, summary, tuple(faults[:MOST]))
    return _called(_judge_sizes(exercise, givens, case, unit, reads), exercise.whole)


def _called(said: SetFeedback, whole: str) -> SetFeedback:
    """The same, where the boards together are called `whole`: the dry-fit's own words are about a case."""
    def name(text: str) -> str:
        return re.sub(r"\b(the|this) case\b", rf"\1 {whole}", text, flags=re.IGNORECASE)

    items = (replace(item, said=replace(item.said, does=name(item.said.does))) for item in said.items)
    return replace(said, summary=tuple(map(name, said.summary)), items=tuple(items))


def _named(exercise: SetExercise, answers: object) -> Mapping[str, object] | SetFeedback:
    names = [one.name for one in exercise.asked]
    if answers is None or answers is Ellipsis:
        return {}
    if isinstance(answers, list | tuple) and len(answers) == len(names):
        return dict(zip(names, answers, strict=True))
    example = ", ".join(f'"{name}": ...' for name in names)
    look = f"From a cell, write check({{{example}}})."
    if not isinstance(answers, dict):
        gave = f"These are {len(names)} sizes, and you gave something else."
        return SetFeedback(NOT_A_LENGTH, NOT_A_LENGTH, (gave, look))
    strange = [name for name in answers if name not in names]
    if strange:
        shown = strange[0][:40] if isinstance(strange[0], str) else f"something of type {type(strange[0]).__name__}"
        return SetFeedback(NOT_A_LENGTH, NOT_A_LENGTH, (f"No size here is called {shown}.", look))
    return answers


def _judge_sizes(
    exercise: SetExercise, givens: Givens, case: Cabinet, unit: str, reads: Mapping[Asked, Read]
) -> SetFeedback:
    given = {one: read.ticks for one, read in reads.items()}
    slips = {one: _slip(one, givens, case, ticks, unit) for one, ticks in given.items()}
    say = Say(unit)
    apart = []
    for one, read in reads.items():
        off, gave = read.ticks - one.right(case), f"You gave {read.shown}."
        far = slips[one] is None and abs(off) > COARSE_RULE.of(unit)
        right, near = one.right(case), NEAR.of(unit)
        unknown = slips[one] is None and abs(off) > near
        swapped = in_the_other_unit(read.ticks, right, near, gave) if unknown else None
        if far or swapped:
            apart.append(Item(one.label, swapped or _far(one, off, gave, say)))
    if apart:
        apart += [
            Item(one.label, _named_slip(slip, one, given[one] - one.right(case), reads[one], givens, say, ()))
            for one, slip in slips.items() if slip
        ]
        kind = WRONG_UNIT if apart[0].said.kind == WRONG_UNIT else OTHER
        summary = ("The boards were not put together: some would not meet at all.",)
        return SetFeedback(kind, kind, summary, tuple(apart[:MOST]))
    whole = put_together(case, given)
    picture = _picture(whole, case, exercise.view)
    if whole.right:
        summary = (_fits(whole, case, given, say), exercise.fits.format_map(givens.texts))
        return SetFeedback(RIGHT, RIGHT, summary, (), picture)
    items = _items(whole, case, given, slips, reads, givens, say)
    slip = next((item.said for item in items if item.said.kind == SLIP), None)
    kind, name = (SLIP, slip.name) if slip else (OTHER, OTHER)
    return SetFeedback(kind, name, _summary(whole, len(items)), items[:MOST], picture)


def _summary(whole: Together, off: int) -> tuple[str, ...]:
    """What is said of the whole, `off` of whose sizes are wrong by themselves."""
    dry = "The boards were put together dry, as you gave them."
    if not off:
        return dry, *(_sentence(told) for told in whole.says[:MOST])
    if off == 1:
        return (dry,)
    more = f" {off - MOST} more will be told when these are mended." if off > MOST else ""
    return dry, f"{off} sizes are off. Each is told as if the others were right; the picture shows all together.{more}"


def _slip(one: Asked, givens: Givens, case: Cabinet, ticks: int, unit: str) -> Misconception | None:
    near = NEAR.of(unit)
    if abs(ticks - one.right(case)) <= near:
        return None
    return next((slip for slip in one.slips if abs(ticks - slip.rule(givens)) <= near), None)


def _far(one: Asked, off: int, gave: str, say: Say) -> Feedback:
    """A number out of the air: told its exact difference, it would give the answer away."""
    size, rough = coarse(off, COARSE_RULE.of(say.unit))
    does = f"That is {replace(say, rough=rough).amount(size)} too {one.too(off)} for this case."
    return Feedback(OTHER, OTHER, gave, does, _AGAIN)


def _named_slip(
    slip: Misconception, one: Asked, off: int, read: Read, givens: Givens, say: Say, says: tuple[str, ...]
) -> Feedback:
    gave = f"You gave {read.shown}. {slip.says.format_map(givens.texts)}"
    return Feedback(SLIP, slip.id, gave, _does(one, off, say, says), slip.look.format_map(givens.texts))


def _does(one: Asked, off: int, say: Say, says: tuple[str, ...]) -> str:
    """What a size would do; where no word is about its own boards, first that it is off itself, and which way."""
    told = [_sentence(each) for each in says[:MOST]]
    if not any(_names(each, one) for each in says):
        told = [f"In the case as planned it would be {say.amount(off)} too {one.too(off)}.", *told]
    return " ".join(told)


def _names(told: str, one: Asked) -> bool:
    """Whether a sentence is about the case as a whole, or about a board of this size, by its whole or its last name."""
    lasts = {name.split(" drawer ")[-1].partition(" ")[2] or name for name in one.boards}
    return told.startswith("the case comes ") or any(name in told for name in (*one.boards, *lasts))


def _sentence(told: str) -> str:
    return f"{told[0].upper()}{told[1:].rstrip('.')}."


def _items(
    whole: Together, case: Cabinet, given: Mapping[Asked, int], slips: Mapping[Asked, Misconception | None],
    reads: Mapping[Asked, Read], givens: Givens, say: Say,
) -> tuple[Item, ...]:
    """What is said to each size that is wrong by itself: slips first, then the one that is most off.

    Each is tried alone, all others as planned: in a case that others push apart, a board that is too long may end
    short, and whoever followed that would make it longer still.
    """
    right = {one: one.right(case) for one in given}
    # A size that is as planned leaves the whole as planned; one that alone is off has been put together already.
    known = {tuple(given.values()): whole}
    alone = {}
    for one, ticks in given.items():
        sizes = right | {one: ticks}
        key = tuple(sizes.values())
        if key not in known:
            known[key] = put_together(case, sizes)
        alone[one] = known[key]
    wrong = [one for one in given if slips[one] or not alone[one].right]
    items = []
    for one in sorted(wrong, key=lambda one: (slips[one] is None, -abs(given[one] - right[one]))):
        slip, off = slips[one], given[one] - right[one]
        says = () if alone[one].right else alone[one].says
        if len(wrong) > 1:
            says = tuple(told for told in says if _of_its_own(told, one, case)) or says
        if slip:
            said = _named_slip(slip, one, off, reads[one], givens, say, says)
        else:
            said = Feedback(OTHER, OTHER, f"You gave {reads[one].shown}.", _does(one, off, say, says), _AGAIN)
        items.append(Item(one.label, said))
    return tuple(items)


def _of_its_own(told: str, one: Asked, case: Cabinet) -> bool:
    """Whether a sentence is about the case, or about a board of this size: where several are off, that is enough."""
    def called(name: str) -> str:
        return name if " drawer " in told else name.removeprefix(f"{case.by_name[name].group} ")

    return told.startswith("the case comes ") or any(called(name) in told for name in one.boards)


def _fits(whole: Together, case: Cabinet, given: Mapping[Asked, int], say: Say) -> str:
    gap, clash = (setting(ticks, say.style) if to_step(ticks, say.style.step) else "" for ticks in (
        whole.open, whole.pressed
    ))
    opened = f"no joint is open by more than {gap}" if gap else "every joint is closed"
    pressed = f"what presses, {clash}, is no more than rounding" if clash else "nothing clashes"
    if not any(case.by_name[name].group == "case" for one in given for name in one.boards):
        return f"Put together dry, {opened}, and {pressed}."
    wide, deep, high = (say.length(size).split(" (")[0] for size in whole.outside)
    return f"Put together dry, the case is {wide} wide, {high} high and {deep} deep; {opened}, and {pressed}."


def _picture(whole: Together, case: Cabinet, view: View) -> Drawing:
    scene = dry_fit(whole.built, case, whole.misfits, view)
    return Drawing(scene.title, draw(scene, PICTURE), scene.alt)
