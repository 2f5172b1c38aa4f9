"""Classes of fit, from too tight to loose (`data/fits.toml`): common practice, no source."""

import tomllib
from dataclasses import dataclass
from functools import cache

from shoplib.measure import read_length
from shoplib.tables.slides import DATA


@dataclass(frozen=True, slots=True)
class Fit:
    """One class, in ticks: from `over` more than what enters (None: no beginning) to where the next class begins.

    `aim` is what to set for (None: nobody wants this fit), `feels` what the hand meets, `do` what to do about it.
    """

    name: str
    over: int | None
    aim: int | None
    feels: str
    do: str


@cache
def fits(unit: str = "in") -> tuple[Fit, ...]:
    """Every class from the tightest to the loosest, with the limits that a shop working in this unit uses.

    >>> [fit.name for fit in fits()]
    ['too tight', 'press', 'tap', 'push', 'loose']
    """
    with (DATA / "fits.toml").open("rb") as file:
        rows = tomllib.load(file)["fit"]
    return tuple(_fit(row, unit) for row in rows)


def fit_named(name: str, unit: str = "in") -> Fit:
    """The class of that name; KeyError where there is none.

    >>> fit_named("tap").aim == read_length("0.001 in"), fit_named("tap", "mm").aim == read_length("0.03 mm")
    (True, True)
    """
    return {fit.name: fit for fit in fits(unit)}[name]


def fit_class(difference: int, unit: str = "in") -> Fit:
    """The class of a cut that is `difference` ticks wider than what enters it (below 0: narrower).

    A limit itself belongs to the looser class. Raises TypeError for what is no whole number of ticks.

    >>> fit_class(read_length("0.001 in")).name, fit_class(read_length("0.012 in")).name
    ('tap', 'loose')
    >>> fit_class(read_length("-0.03 mm", negative=True), "mm").name
    'press'
    """
    if not isinstance(difference, int):
        raise TypeError(f"a difference is a whole number of ticks, not {difference!r}.")
    tightest, *others = fits(unit)
    found = tightest
    for fit in others:
        if difference >= fit.over:
            found = fit
    return found


def _fit(row: dict, unit: str) -> Fit:
    def length(key: str) -> int | None:
        if key not in row:
            return None
        return read_length(row[key][unit], what=f"fits.toml {row['name']}", zero=True, negative=True)

    return Fit(row["name"], length("over"), length("aim"), row["feels"], row["do"])
