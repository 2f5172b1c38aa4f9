"""A tape reading in words, step by step."""

from shoplib.measure import INCH, MM, Style, to_step, write_brief, write_length
from shoplib.measure.noted import stated
from shoplib.measure.tape import TapeStep, tape_steps
from shoplib.measure.traced import limit

_FRACTION = {
    2: "the half", 4: "a quarter", 8: "an eighth", 16: "a sixteenth", 32: "a thirty-second", 64: "a sixty-fourth",
}
_PRINTED = "tapes are printed so (common practice, no source)"
_COUNTED = ("", "one", "two", "three", "four")


def step_texts(ticks: int, style: Style) -> tuple[str, ...]:
    """Each step of a reading in a few words, the printed figure first; `ticks` stands on a mark of the style.

    >>> from shoplib.measure import INCH, MM
    >>> step_texts(INCH * 21 // 8, Style("in", INCH // 16))
    ('2 inches', 'the half', 'an eighth')
    >>> step_texts(267 * MM, Style("mm", MM))
    ('the figure 26', 'the 5 mm mark', 'two single millimetres')
    """
    first, *finer = tape_steps(ticks, style)
    if style.unit == "in":
        figure = f"{first.count} inch{'' if first.count == 1 else 'es'}"
    else:
        figure = f"the figure {first.count}"
    return (figure, *(_finer(step, style) for step in finer))


def spoken(ticks: int, style: Style) -> str:
    """The way to a reading, without its end.

    >>> spoken(INCH * 21 // 8, Style("in", INCH // 16))
    '2 inches, then the half, then an eighth'
    """
    figure, *finer = step_texts(ticks, style)
    if not finer:
        return f"{figure}, and no mark further"
    if ticks < (INCH if style.unit == "in" else 10 * MM):
        return f"no figure yet, then {', then '.join(finer)}"
    return ", then ".join([figure, *finer])


def tape_words(ticks: int, style: Style) -> str:
    """A reading in words and as a number; what stands between two marks goes to the nearest.

    >>> tape_words(INCH * 21 // 8, Style("in", INCH // 16))
    '2 inches, then the half, then an eighth: 2 5/8 in.'
    >>> tape_words(INCH * 2651 // 1000, Style("in", INCH // 16))
    'Nearest mark: 2 inches, then the half, then an eighth: 2 5/8 in. The pointer stands 0.026 in past it.'
    """
    mark = to_step(ticks, style.step)
    told = f"{spoken(mark, style)}: {write_length(mark, style)}."
    if mark == ticks:
        return told[0].upper() + told[1:]
    way = "past" if ticks > mark else "short of"
    # No finer than calipers read; a hair stays a hair.
    off = write_brief(abs(ticks - mark), style, decimal=True)
    return f"Nearest mark: {told} The pointer stands {off} {way} it."


def sum_text(ticks: int, style: Style) -> str:
    """The steps as a sum of lengths, for a working; `ticks` stands on a mark of the style.

    >>> sum_text(INCH * 21 // 8, Style("in", INCH // 16)), sum_text(267 * MM, Style("mm", MM))
    ('2 in + 1/2 in + 1/8 in', '260 mm + 5 mm + 2 mm')
    """
    return " + ".join(write_length(step.ticks, style) for step in tape_steps(ticks, style) if step.count)


def _finer(step: TapeStep, style: Style) -> str:
    if style.unit == "in":
        return _FRACTION[INCH // step.part]
    if step.part == 5 * MM:
        return f"the {stated('5 mm', limit(5 * MM, 'the mark in the middle between two figures', _PRINTED))} mark"
    if step.part == MM:
        return f"{_COUNTED[step.count]} single millimetre{'' if step.count == 1 else 's'}"
    if step.part == MM // 2:
        return "half a millimetre"
    return write_length(step.ticks, style)
