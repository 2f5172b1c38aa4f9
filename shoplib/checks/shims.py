"""Where slides want shims: an opening that is wider at one end than at the other, told with the amounts."""

from shoplib.measure import Style, write_brief
from shoplib.model.drawer_fit import limits, mend, shims, taper
from shoplib.model.project import Opening
from shoplib.model.solved import Finding
from shoplib.tables.slides import Slide
from shoplib.words.amounts import how_much, setting

STRANGE = 4
"""An opening that tapers by more than so many times what its slide forgives was most likely misread."""


def find_shims(group: str, read: Opening, box: int, slide: Slide, style: Style) -> tuple[Finding, ...]:
    """What to do about a taper: nothing, shims with their thickness, or straightening.

    `read` is the opening as measured, at the height of the slide, `box` the width that the slides hold. Where the
    limits lie says `model.drawer_fit`, as for the plan of a whole project. The amount is the taper.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> from shoplib.tables.slides import slide
    >>> read = Opening(16 * INCH, 16 * INCH + 3 * INCH // 32)
    >>> print(find_shims("drawer 1", read, 15 * INCH, slide("side-mount ball-bearing"), INCH_STYLE)[0].text)
    drawer 1: the opening is 3/32 in wider at the back than at the front. Shim the back, between case and slide: \
3/64 in behind each slide, tapering to nothing at the front; or 3/32 in behind one, where only that side leans.
    """
    spread, wide = taper(read)
    if spread == 0:
        return ()
    other = "front" if wide == "back" else "back"
    by, (forgiven, most) = how_much(spread, style), limits(slide)
    says = f"{group}: the opening is {by} wider at the {wide} than at the {other}."
    what, remedy = "slide" if slide.carries == "hardware" else "runner", mend(spread, slide)
    level = "note" if remedy == "nothing" else "warn"
    if slide.carries == "shelf":
        told = f"The box is made to the {other} and is looser at the {wide}; nothing is shimmed."
    elif remedy == "nothing":
        told = f"Up to {write_brief(forgiven, style)} the {what}s forgive; nothing is shimmed."
    elif remedy == "shim":
        each = shims(read, box, slide.side)[wide == "back"]
        told = (
            f"Shim the {wide}, between case and {what}: {setting(each, style)} behind each {what}, tapering to nothing "
            f"at the {other}; or {setting(2 * each, style)} behind one, where only that side leans."
        )
    elif remedy == "guide":
        each = shims(read, box, slide.side)[wide == "back"]
        told = (
            f"The runners lie under the box, so no shim goes behind them: the box is looser at the {wide}. Glue a "
            f"guide strip to each side of the case, {setting(each, style)} thick at the {wide}, tapering to nothing at "
            f"the {other}; or {setting(2 * each, style)} to one, where only that side leans."
        )
    else:
        strips = "guide strips" if slide.carries == "strip below" else "shims"
        told = (
            f"That is more than {strips} are for (up to {write_brief(most, style)} here): straighten the sides before "
            f"the {what}s go in."
        )
        if spread > STRANGE * forgiven:
            told = f"Read it again. {told}"
    return (Finding("shims", level, (), f"{says} {told}", spread),)
