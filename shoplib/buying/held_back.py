"""What of the sheets laid out must not be cut yet: whole sheets, and cuts of sheets that serve several stages."""

from collections.abc import Sequence

from shoplib.buying.jobs import Ask
from shoplib.buying.laid import LaidOut, LaidSheet
from shoplib.buying.numbering import numbered_steps
from shoplib.buying.waiting import cut_together_waits, is_about, turn_at_the_saw
from shoplib.layout.order import Step
from shoplib.model.solved import Cabinet
from shoplib.words.naming import and_list, in_short


def stages_of(turn: int, ask: Ask, cabinet: Cabinet) -> tuple[int, ...]:
    """The stages of what was laid out together whose boards are cut in one turn."""
    return tuple(stage for stage in ask.stages if turn_at_the_saw(stage, ask.stages, cabinet) == turn)


def turn_waits(turn: int, ask: Ask, cabinet: Cabinet) -> str:
    """What must have been done before the cuts of one turn of what was laid out together; empty where nothing."""
    boards = [board for several in ask.boards for board in several]
    stages = stages_of(turn, ask, cabinet)
    return next(filter(None, (cut_together_waits(stage, boards, cabinet) for stage in stages)), "")


def held_back(found: LaidOut) -> dict[str, tuple[str, ...]]:
    """By the name of its sheet, in sentences, what waits; of cuts among others their numbers and their parts."""
    numbered = numbered_steps(found)
    return {
        sheet.name: tuple(_told(sheet, job.ask, numbered[sheet.name], found.cabinet))
        for job in found.jobs for sheet in job.sheets
    }


def _told(sheet: LaidSheet, ask: Ask, numbered: Sequence[tuple[int, Step]], cabinet: Cabinet) -> list[str]:
    turns = dict.fromkeys(step.turn for _, step in numbered) or dict.fromkeys(ask.stages[:1])
    told = []
    for turn in turns:
        stages = stages_of(turn, ask, cabinet)
        first = turn_waits(turn, ask, cabinet)
        planned = any(one.stage in stages for one in cabinet.waiting)
        if first and turn == next(iter(turns)):
            told.append(f"Do not cut this before {first}{_planned(sheet, ask, stages, cabinet)}.")
        elif first:
            cuts = and_list(in_short(f"step {number}" for number, step in numbered if step.turn == turn))
            letters = {one.letter: None for one in sheet.pieces if ask.parts[one.placed.part].turn == turn}
            told.append(
                f"Do not make {cuts}, which cut {and_list([*letters])}, before {first}"
                f"{': these have planned sizes' if planned else ''}."
            )
    return told


def _planned(sheet: LaidSheet, ask: Ask, stages: Sequence[int], cabinet: Cabinet) -> str:
    """Which parts of a sheet still have planned sizes; where none has, it is laid out with parts that have."""
    readings = [one for one in cabinet.waiting if one.stage in stages]
    if not readings:
        return ""
    of_letter = {one.letter: ask.boards[one.placed.part] for one in sheet.pieces}
    planned = [letter for letter in sorted(of_letter, key=lambda letter: (len(letter), letter))
               if any(is_about(one, of_letter[letter], cabinet) for one in readings)]
    if not planned:
        return ": it is laid out together with parts that have planned sizes"
    if len(planned) == len(of_letter):
        return ": its parts have planned sizes"
    return f": {and_list(planned)} {'have planned sizes' if len(planned) > 1 else 'has its planned size'}"
