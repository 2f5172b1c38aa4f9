"""What `sheets` says on the terminal: what to buy, what cannot be replaced, what is left, and who lifts what."""

import textwrap
from collections import Counter
from collections.abc import Iterable, Iterator
from dataclasses import replace
from functools import partial

from shoplib.buying.board_words import boards_told
from shoplib.buying.held_back import held_back
from shoplib.buying.laid import LaidJob, LaidOut, LaidSheet
from shoplib.buying.lifts import needs_two, weight_of
from shoplib.buying.piece_sizes import PieceSizes
from shoplib.buying.spare_parts import SheetSpare
from shoplib.buying.stock_lines import size_words
from shoplib.documents.buying_file import FIRST
from shoplib.documents.cut_order_words import on_end_cautions, rough_cautions, saw_cautions, to_mind
from shoplib.documents.plan_words import STAGES
from shoplib.layout.choose import why
from shoplib.layout.order import set_ups
from shoplib.layout.spare import told, told_more
from shoplib.lists.alike_cuts import alike_cut_words, alike_cuts
from shoplib.lists.dado_stops import dado_stops, stop_words, two_stops, two_stops_words
from shoplib.lists.writing import Writing
from shoplib.measure import Style, write_brief
from shoplib.model.board import CASE
from shoplib.words.amounts import surely
from shoplib.words.naming import and_list, in_short

_WIDTH = 79


def verdict(found: LaidOut, spares: Iterable[SheetSpare]) -> str:
    """What is bought, what of the shop is used, and what could not be made again, in as few words as can be."""
    bought = [sheet for sheet in found.sheets if sheet.bought]
    own = sum(not sheet.bought and not sheet.held.left_of for sheet in found.sheets)
    words = [f"Buy {_counted(bought, found.cabinet.style)}" if bought else "Nothing to buy"]
    if own:
        words.append(f"use {own} piece{'s' * (own > 1)} from the shop")
    lost = sum(one.job.parts[number].count for one in spares for number in one.found.lost)
    if lost:
        words.append(f"{lost} part{'s' * (lost > 1)}, once spoiled, could not be made again from what is left")
    return "\n".join(textwrap.wrap(f"{'; '.join(words)}.", _WIDTH, break_on_hyphens=False))


def _counted(sheets: Iterable[LaidSheet], style: Style) -> str:
    """How many of which sheet in which size."""
    counted = Counter(
        f"{sheet.sheet.name} {size_words(sheet.stock.length, sheet.stock.width, style)}" for sheet in sheets
    )
    return ", ".join(f"{number} x {what}" for what, number in counted.items())


def lost_parts(spares: Iterable[SheetSpare]) -> tuple[str, ...]:
    """The parts that could not be made again from what is left, each with its sheet."""
    return tuple(
        f"{name} ({one.sheet.name})"
        for one in spares
        for name in dict.fromkeys(one.job.parts[number].name for number in one.found.lost)
    )


def cures(spares: Iterable[SheetSpare], style: Style) -> tuple[str, ...]:
    """What one more sheet of each would change for the parts that could not be made again."""
    return tuple(
        f"{one.sheet.name}: {told_more(one.job, one.found, one.more, partial(write_brief, style=style), _noun(one))}"
        for one in spares
        if one.found.lost and one.more is not None
    )


def _noun(one: SheetSpare) -> str:
    return "board" if one.sheet.kind == "solid" else "sheet"


def sheets_words(found: LaidOut, spares: Iterable[SheetSpare]) -> str:
    """All of it, what must be known before anything is bought first."""
    spares = tuple(spares)
    style = found.cabinet.style
    lost = [one for one in spares if one.found.lost]
    sections = [
        (FIRST, [_spare(one, style) for one in lost]),
        ("Before you saw", [
            *rough_cautions(found.cabinet), *saw_cautions(), *on_end_cautions(found.cabinet), *to_mind(found),
        ]),
        ("Sheets", [*(line for job in found.jobs for line in _job(job, found)), *all_together(found)]),
        ("What is left for parts that are spoiled", [_spare(one, style) for one in spares if not one.found.lost]),
        ("Joint cuts that must match: one stop for each line, the same side against it", list(_stops(found))),
        ("Two people lift", list(lifts_told(found))),
        ("Boards, and fronts that keep the order of their grain", boards_told(found)),
        ("What can wait", list(_waits(found))),
    ]
    return "\n".join(section(title, lines) for title, lines in sections if lines)


def section(title: str, lines: Iterable[str]) -> str:
    """A heading with its sentences, and an empty line; nothing where there are none.

    >>> section("What can wait", ["The doors."]).splitlines()
    ['What can wait', '  - The doors.']
    """
    wrapped = [piece for line in lines for piece in _wrapped(line)]
    return "\n".join([title, *wrapped, ""]) if wrapped else ""


def _wrapped(text: str) -> list[str]:
    return textwrap.wrap(text, _WIDTH, initial_indent="  - ", subsequent_indent="    ", break_on_hyphens=False)


def _spare(one: SheetSpare, style: Style) -> str:
    def say(ticks: int) -> str:
        return write_brief(ticks, style)

    longest = surely(one.found.longest, style)
    sentences = told(one.job, replace(one.found, longest=longest), say, one.more, one.other, _noun(one))
    return f"{one.sheet.name}: {' '.join(sentences)}"


def _job(job: LaidJob, found: LaidOut) -> Iterator[str]:
    """What is laid out on what, how good it is, what is left, and how often the fence is set."""
    style = found.cabinet.style
    stages = and_list([STAGES[stage] for stage in job.ask.stages])
    parts = sum(part.count for part in job.ask.parts)
    rips, settings = set_ups(job.steps)
    kept = [rest for sheet in job.sheets for rest in sheet.kept]
    largest = max(kept, key=lambda rest: rest.area, default=None)
    left = f"largest offcut {_size(largest.w, largest.h, style)}" if largest else "no offcut worth keeping"
    chosen = why(found.cabinet.project.cutting.choose, job.among)
    yield (
        f"{job.ask.sheet.name}, {stages}: {parts} part{'s' * (parts > 1)} on {_stock(job, style)}. "
        f"{bound_words(job, found)} {left[0].upper()}{left[1:]}; {settings} setting{'s' * (settings != 1)} of fence, "
        f"stop or line, {rips} of them for rips. {chosen}".rstrip()
    )


def _stock(job: LaidJob, style: Style) -> str:
    """Each size of stock, bought or not: "2 new sheets of 96 in x 48 in, and 1 offcut of 48 in x 30 in"."""
    noun = "board" if job.ask.sheet.kind == "solid" else "sheet"
    counted: Counter[tuple[str, str, str]] = Counter()
    for sheet in job.sheets:
        one, more = f"new {noun}", ""
        if not sheet.bought:
            one, more = ("rest", " of an earlier stage") if sheet.held.left_of else ("piece", " in the shop")
        sizes = PieceSizes(sheet, Writing(style))
        counted[one, more, sizes.size(sizes.stock)] += 1
    words = [f"{n} {one}{'s' * (n > 1)}{more} ({size})" for (one, more, size), n in counted.items()]
    return and_list(words)


def all_together(found: LaidOut) -> Iterator[str]:
    """Where less would be bought if no stage had to be cut before the others are laid out."""
    currency = found.cabinet.project.buying.currency
    for name, cost in found.all_together.items():
        paid = sum(job.layout.cost for job in found.jobs if job.ask.sheet.name == name)
        yield (
            f"{name}: with all its stages laid out together it would cost {money(cost)} {currency} instead of "
            f'{money(paid)}: lay_out = "all together" under [cutting], if no part waits for what is measured.'
        )


def bound_words(job: LaidJob, found: LaidOut) -> str:
    """What its stock costs, and how far that may be from the best.

    Sheets without a price are compared by area, so of those no money is told.
    """
    layout = job.layout
    before = [other for other in found.jobs if other.ask.sheet.name == job.ask.sheet.name and other.steps]
    no = "no layout can cost less"
    if len(before) > 1:
        alone = "alone" if before[0] == job else "on what the stages before it leave"
        no = f"no layout of this stage {alone} can cost less"
    if not layout.cost:
        return "Nothing is bought for it."
    if job.on.priced:
        currency = found.cabinet.project.buying.currency
        cost, least = (f"{money(coins)} {currency}" for coins in (layout.cost, layout.bound))
        cost = f"That costs {cost}"
    else:
        cost, least = "That is by area, for a price is missing", f"{100 * layout.bound // layout.cost} % of the area"
    if layout.proven:
        return f"{cost}; {no}."
    return f"{cost}; {no} than {least}, and the search found none between."


def money(coins: int) -> str:
    """An amount in its smallest coin as it is written.

    >>> money(4805)
    '48.05'
    """
    return f"{coins // 100}.{coins % 100:02}"


def _stops(found: LaidOut) -> Iterator[str]:
    """Set-ups that serve several cuts, and mates that no one stop serves."""
    writing = Writing(found.cabinet.style)
    yield from (stop_words(stop, writing) for stop in dado_stops(found.cabinet))
    yield from (two_stops_words(two, writing) for two in two_stops(found.cabinet))
    yield from (alike_cut_words(cut) for cut in alike_cuts(found.cabinet) if cut.count > 1)


def lifts_told(found: LaidOut) -> Iterator[str]:
    """Sheets and parts that one person is not to lift by the project's own limit."""
    style, limit = found.cabinet.style, found.cabinet.project.cutting.one_lifts
    said: dict[str, None] = {}
    for sheet in found.sheets:
        stock = sheet.stock
        if needs_two(sheet.sheet, stock.length, stock.width, limit, sheet.thickness):
            weight = weight_of(sheet.sheet, stock.length, stock.width, sheet.thickness).told(style.unit)
            sizes = PieceSizes(sheet, Writing(style))
            said[f"{sheet.sheet.name}, {sizes.size(sizes.stock)}: {weight}"] = None
    for line in said:
        yield f"{line}, over the {limit} that one lifts by the project: carry it and start its first cuts in twos."
    unknown = dict.fromkeys(sheet.sheet.name for sheet in found.sheets if weight_of(sheet.sheet, 1, 1) is None)
    if unknown:
        yield f"{and_list(list(unknown))}: no table says what it weighs; try one corner before you lift it."


def _waits(found: LaidOut) -> Iterator[str]:
    """What is laid out by planned sizes; and of sheets that serve several stages what is not cut with the first."""
    waiting = sorted({one.stage for one in found.cabinet.waiting if one.stage != CASE})
    if waiting:
        stages = and_list(in_short(f"stage {stage}" for stage in waiting))
        yield (
            f"The parts of {stages} are laid out by planned sizes. Measure the case when it stands, write what you "
            "read into the project, and lay out again before you cut them."
        )
    for name, sentences in held_back(found).items():
        yield from (f"{name}: {sentence}" for sentence in sentences if " step" in sentence)


def _size(length: int, width: int, style: Style) -> str:
    """What is surely there of an offcut."""
    return size_words(surely(length, style), surely(width, style), style)
