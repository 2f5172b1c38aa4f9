"""What a practice sheet asks to measure of the test piece, and what the result means for this kind of joint."""

from shoplib.documents.practice_cuts import CutRow, channels
from shoplib.draw.pair_section import said
from shoplib.joints.bench_pair import Pair
from shoplib.measure import Style, write_brief
from shoplib.tables.fits import Fit, fit_class, fits
from shoplib.tables.results import Width, results, width
from shoplib.tables.setups import Setup

_HEADS = {"wide": "Width", "deep": "Depth", "left": "Wood left", "fit": "Fit", "closes": "Result"}


def measured_form(pair: Pair, rows: tuple[CutRow, ...]) -> dict[str, list[str]]:
    """The lines to fill in for test cuts: what they are headed with, and what is wanted of the cut that decides.

    >>> from shoplib.documents.practice_cuts import cut_rows
    >>> from shoplib.joints import joint
    >>> from shoplib.joints.bench_pair import stock_of
    >>> from shoplib.measure import INCH
    >>> pair = joint("rabbet").build(stock_of(INCH * 3 // 4))
    >>> measured_form(pair, cut_rows(pair))["wanted"]
    ['rabbet in the side', '0.752 in', '3/8 in', 'flush']
    """
    row, style, found = _deciding(rows), pair.stock.style, results(pair.kind)
    wanted = {
        "wide": said(row.wide, style) if row.wide else "as drawn",
        "deep": said(row.deep, style) if row.deep else "through" if row.through else "as drawn",
        "left": said(pair.by_name[row.board].thickness - row.deep, style),
        "fit": fit_class(pair.values.get("fit", 0), style.unit).name,
        "closes": found.wanted,
    }
    return {
        "heads": [_HEADS[one] for one in found.form],
        "wanted": [f"{row.kind} in the {row.board}", *(wanted[one] for one in found.form)],
    }


def results_of(pair: Pair) -> list[list[str]]:
    """What is seen at a test piece of this joint, what it came from, what to do; none where the fit tells all."""
    return [[row.looks, row.means, row.do] for row in results(pair.kind).rows]


def fit_rows(pair: Pair, rows: tuple[CutRow, ...], setup: Setup) -> list[dict]:
    """Each class of fit: its limits, what it feels like, what to do at this set-up; none where nothing slides in.

    A step has one wall, and a hole is as wide as its bit: their results are told by what is seen (`results_of`).
    """
    if "fit" not in pair.values or (results(pair.kind).rows and not _deciding(rows).walls):
        return []
    style = pair.stock.style
    every, aimed, change = fits(style.unit), fit_class(pair.values["fit"], style.unit), width(pair.kind, setup.way.name)
    ends = [*(fit.over for fit in every[1:]), None]
    return [
        {
            "name": fit.name, "aimed": fit == aimed, "feels": fit.feels, "do": _next(fit, change),
            "limits": _limits(fit.over, end, style),
        }
        for fit, end in zip(every, ends, strict=True)
    ]


def _deciding(rows: tuple[CutRow, ...]) -> CutRow:
    """The cut whose size decides the fit."""
    return next(iter(channels(rows) or channels(rows, mortises=True) or rows))


def _next(fit: Fit, change: Width) -> str:
    """What nobody aims for is changed, at both ends of the row; the others are as good as they say."""
    if fit.aim is not None:
        return fit.do
    return change.tight if fit.over is None else f"Too wide for what is glued. {change.loose}"


def _limits(low: int | None, high: int | None, style: Style) -> str:
    def text(size: int) -> str:
        return write_brief(size, style, decimal=True).removesuffix(f" {style.unit}") if size else "0"

    if low is None:
        return f"under {text(high)} {style.unit}"
    return f"{text(low)} {style.unit} and more" if high is None else f"{text(low)} to {text(high)} {style.unit}"
