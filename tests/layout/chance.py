"""Jobs by chance, for tests: several sizes of stock, offcuts, trim, kerf, parts that may turn or not."""

import random

from shoplib.layout.pieces import Job, Part, Stock


def job_by_chance(seed: int) -> Job:
    """A job that can be laid out: parts fit the size that is bought without end."""
    chance = random.Random(seed)
    kerf = chance.choice((0, 3, 10, 250))
    length, width = chance.randint(1_000, 300_000_000), chance.randint(1_000, 150_000_000)
    if chance.random() < 0.5:
        length, width = 2440 * 80, 1220 * 80
    trim_ends, trim_edges = (chance.choice((0, size // 200)) for size in (length, width))
    stock = [Stock("sheet", length, width, None, chance.randint(1, 9_000), trim_ends, trim_edges)]
    if chance.random() < 0.4:
        stock.append(Stock("half sheet", length, width // 2, chance.choice((None, 2)), chance.randint(1, 5_000)))
    if chance.random() < 0.4:
        stock.append(Stock("offcut", length // 3, width // 2, chance.randint(1, 3), 0))
    if chance.random() < 0.2:
        stock.reverse()
    usable = next(one for one in stock if one.name == "sheet").usable
    parts = []
    for number in range(chance.randint(1, 12)):
        share = chance.choice((1.0, 0.6, 0.3))
        parts.append(Part(
            f"part {number}",
            chance.randint(max(1, usable.w // 40), max(1, int(usable.w * share))),
            chance.randint(max(1, usable.h // 40), max(1, int(usable.h * share))),
            chance.randint(1, 6),
            chance.random() < 0.5,
        ))
    return Job(tuple(parts), tuple(stock), kerf)


def scarce_job_by_chance(seed: int) -> Job:
    """The same with a part or two that only a few boards in the shop hold: too few of them, at times."""
    job, chance = job_by_chance(seed), random.Random(f"scarce {seed}")
    length, width = (max(getattr(one, side) for one in job.stock) for side in ("length", "width"))
    board = Stock("board in the shop", length * 3 // 2, width * 5 // 4, chance.randint(1, 3))
    long = tuple(
        Part(f"long part {n}", length + chance.randint(1, length // 2), chance.randint(width // 9 + 1, width))
        for n in range(chance.randint(1, 2))
    )
    return Job((*job.parts, *long), (*job.stock, board), job.kerf)
