"""Where slides want shims: an opening that is wider at one end than at the other, told with the amounts."""

from shoplib.measure import Style, share, to_step, write_brief
from shoplib.model.drawer_fit import taper
from shoplib.model.project import Opening
from shoplib.model.solved import Finding
from shoplib.tables.slides import Slide
from shoplib.words.amounts import how_much

STRANGE = 4
"""An opening that tapers by more than so many times what its slide forgives was most likely misread."""


def find_shims(group: str, read: Opening, slide: Slide, style: Style) -> tuple[Finding, ...]:
    """What to do about a taper: nothing, shims with their thickness, or straightening.

    `read` is the opening as measured, at the height of the slide. The slide forgives `narrow`, twice that is
    shimmed, and more wants the case mended, as in the plan of a whole project. The amount is the taper.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> from shoplib.tables.slides import slide
    >>> read = Opening(16 * INCH, 16 * INCH + 3 * INCH // 32)
    >>> print(find_shims("drawer 1", read, slide("side-mount ball-bearing"), INCH_STYLE)[0].text)
    drawer 1: the opening is 3/32 in wider at the back than at the front. Shim 3/32 in at the back: 3/64 in behind \
each slide, tapering to nothing at the front; or all of it behind one, where only that side leans.
    """
    spread, wide = taper(read)
    if spread == 0:
        return ()
    other = "front" if wide == "back" else "back"
    by, most = how_much(spread, style), slide.narrow
    says = f"{group}: the opening is {by} wider at the {wide} than at the {other}."
    what = "slide" if slide.carries == "hardware" else "runner"
    if slide.carries == "shelf":
        level, mend = "note", f"The box is made to the {other} and is looser at the {wide}; nothing is shimmed."
    elif spread <= most:
        level, mend = "note", f"Up to {write_brief(most, style)} the {what}s forgive; nothing is shimmed."
    elif spread <= 2 * most:
        level = "warn"
        mend = (
            f"Shim {by} at the {wide}: {_half(spread, style)} behind each {what}, tapering to nothing at the {other}; "
            "or all of it behind one, where only that side leans."
        )
    else:
        level = "warn"
        mend = (
            f"That is more than shims are for (up to {write_brief(2 * most, style)} here): straighten the sides before "
            f"the {what}s go in."
        )
        if spread > STRANGE * most:
            mend = f"Read it again. {mend}"
    return (Finding("shims", level, (), f"{says} {mend}", spread),)


def _half(spread: int, style: Style) -> str:
    """Half of a taper as a mark of the rule, or as a decimal where it falls between two marks."""
    each = share(spread, 2, 1)[0]
    return write_brief(each, style, decimal=to_step(each, style.step) != each)
