"""The simulator is fair: over 10,000 cuts, saws, spots and readings the errors have the stated mean and spread.

The numbers are drawn by seed, so a run either passes always or fails always. The bounds are those of the plain laws
(from memory, in any book of statistics): for n independent draws of spread s the mean has the spread s / sqrt(n), and
the variance of a bell curve the relative spread sqrt(2 / n); four such spreads leave a fair bench out once in 16,000.
The shape is held to Pearson's chi-square over ten classes of equal chance: 9 degrees of freedom, beaten by a fair
bench once in 10,000 at 33.7 (table value, from memory).
"""

from math import sqrt
from statistics import NormalDist, fmean, pvariance

import pytest

from shoplib.measure import INCH
from shoplib.practice.bench import Bench
from shoplib.practice.caliper import STEP, read
from shoplib.practice.cutting import kerf
from shoplib.practice.spreads import STATED, THOU

N = 10_000
CHI_SQUARE_9 = 33.7


def faults_of_bell(drawn: list[int], spread: float, shape: bool = True) -> list[str]:
    """What is not as a bell curve of mean 0 and this spread would have it."""
    found = []
    if abs(fmean(drawn)) > 4 * spread / sqrt(len(drawn)):
        found.append("mean")
    if abs(pvariance(drawn, 0) / spread**2 - 1) > 4 * sqrt(2 / len(drawn)):
        found.append("spread")
    law = NormalDist(0, spread)
    if shape and chi_square([min(int(10 * law.cdf(each)), 9) for each in drawn]) > CHI_SQUARE_9:
        found.append("shape")
    return found


def faults_of_even(drawn: list[int], most: int) -> list[str]:
    """What is not as if every size from 0 to `most` were as likely: mean most/2, variance most²/12."""
    found = []
    if abs(fmean(drawn) - most / 2) > 4 * most / sqrt(12 * len(drawn)):
        found.append("mean")
    # The variance of a variance, by its fourth moment 1/80 against 1/144 of the square: relative spread sqrt(0.8 / n).
    if abs(pvariance(drawn) / (most**2 / 12) - 1) > 4 * sqrt(0.8 / len(drawn)):
        found.append("spread")
    if min(drawn) < 0 or max(drawn) > most:
        found.append("ends")
    if chi_square([min(10 * each // (most + 1), 9) for each in drawn]) > CHI_SQUARE_9:
        found.append("shape")
    return found


def chi_square(classes: list[int]) -> float:
    expected = len(classes) / 10
    return sum((classes.count(number) - expected) ** 2 / expected for number in range(10))


@pytest.fixture(scope="module")
def cuts():
    bench = Bench("Noor", "dado", "in")
    made = [kerf(bench, f"test {number}", INCH // 2, INCH // 4, 9 * INCH) for number in range(N)]
    saw = bench.saw
    return {
        "width_again": [each.width - INCH // 2 - saw.cutter - saw.runout for each in made],
        "depth_again": [each.depth - INCH // 4 - saw.depth for each in made],
        "fence_again": [each.wall - 9 * INCH - saw.fence for each in made],
    }


@pytest.fixture(scope="module")
def benches():
    return [Bench(f"learner {number}", "dado", "in") for number in range(N)]


@pytest.mark.parametrize("what", ["width_again", "depth_again", "fence_again"])
def test_cuts_on_one_saw_scatter_as_stated(cuts, what):
    assert faults_of_bell(cuts[what], getattr(STATED, what)) == []


@pytest.mark.parametrize("what", ["cutter", "depth", "fence"])
def test_saws_are_off_as_stated(benches, what):
    assert faults_of_bell([getattr(bench.saw, what) for bench in benches], getattr(STATED, what)) == []


def test_wobble_and_bow_are_as_stated(benches):
    assert faults_of_even([bench.saw.runout for bench in benches], STATED.runout) == []
    assert faults_of_even([bench.bow("left side") for bench in benches], STATED.bow) == []


def test_sheets_and_spots_are_off_as_stated(benches):
    usual = INCH * 705 // 1000
    assert faults_of_bell([bench.sheet - usual for bench in benches], STATED.sheet) == []
    assert faults_of_bell([bench.spot("shelf") - bench.sheet for bench in benches], STATED.spot) == []


@pytest.mark.parametrize("unit", ["in", "mm"])
def test_readings_scatter_as_stated_and_stand_on_the_steps_of_the_caliper(unit):
    bench = Bench("Noor", "dado", unit)
    values = [value for after in range(N // 5) for value in read(bench, "it", (INCH // 2,) * 5, after).values]
    assert {value % STEP[unit] for value in values} == {0}
    # Rounding to a step adds step²/12 to the variance (Sheppard's correction, from memory).
    spread = sqrt(STATED.caliper**2 + STEP[unit] ** 2 / 12)
    assert faults_of_bell([value - INCH // 2 for value in values], spread, shape=False) == []


def test_one_error_says_nothing_of_another(cuts, benches):
    """The correlation of n independent pairs has the spread 1 / sqrt(n) (from memory)."""
    pairs = [
        (cuts["width_again"], cuts["depth_again"]), (cuts["depth_again"], cuts["fence_again"]),
        ([bench.saw.cutter for bench in benches], [bench.saw.depth for bench in benches]),
        ([bench.spot("shelf") - bench.sheet for bench in benches], [bench.sheet for bench in benches]),
    ]
    for one, other in pairs:
        a, b = fmean(one), fmean(other)
        together = fmean((x - a) * (y - b) for x, y in zip(one, other, strict=True))
        assert abs(together / sqrt(pvariance(one) * pvariance(other))) < 4 / sqrt(N)


def test_an_unfair_bench_would_be_found(cuts, benches):
    drawn, spread = cuts["depth_again"], STATED.depth_again
    assert "spread" in faults_of_bell([each * 11 // 10 for each in drawn], spread)
    assert "mean" in faults_of_bell([each + THOU // 10 for each in drawn], spread)
    assert "shape" in faults_of_bell([each if number % 10 else 0 for number, each in enumerate(drawn)], spread)
    wobble = [bench.saw.runout for bench in benches]
    assert "shape" in faults_of_even([each // 2 if number % 5 == 0 else each for number, each in enumerate(wobble)],
                                     STATED.runout)
