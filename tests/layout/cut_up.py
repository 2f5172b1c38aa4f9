"""Layouts to test with: a sheet cut up at random, so that they can be cut, however odd they are."""

from shoplib.layout.pieces import Job, Laid, Layout, Part, Placed, Rect, Stock

KERF, LENGTH, WIDTH = 3, 240, 120


def sliced(random, at, kerf):
    """Pieces that fill a rectangle but for the blade, cut at random places until they are small."""
    x, y, w, h = at
    if max(w, h) < 30 + kerf or random.random() < 0.15:
        return [at]
    if random.random() * (w + h) < w and w > 16 + kerf:
        low = random.choice([random.randint(8, w - kerf - 8), w // 2, w // 3 if w > 36 else w // 2])
        return [
            *sliced(random, Rect(x, y, low, h), kerf),
            *sliced(random, Rect(x + low + kerf, y, w - low - kerf, h), kerf),
        ]
    if h > 16 + kerf:
        low = random.choice([random.randint(8, h - kerf - 8), h // 2])
        return [
            *sliced(random, Rect(x, y, w, low), kerf),
            *sliced(random, Rect(x, y + low + kerf, w, h - low - kerf), kerf),
        ]
    return [at]


def cut_up(random, sheets=1, kerf=None, trim=None, loose=False):
    """A job and its layout. Some pieces are waste; where it is `loose`, parts are smaller than their pieces."""
    kerf = random.choice([0, 1, KERF, 5]) if kerf is None else kerf
    trim = random.choice([(0, 0), (2, 6), (7, 0)]) if trim is None else trim
    stock = Stock("ply", LENGTH, WIDTH, trim_ends=trim[0], trim_edges=trim[1])
    kinds: dict[tuple[int, int, bool], int] = {}
    counts: list[int] = []
    laid = []
    for _ in range(sheets):
        placed = []
        pieces = sliced(random, stock.usable, kerf)
        for at in pieces:
            if len(placed) and random.random() < 0.3:
                continue
            if loose:
                low_x, low_y = random.choice([0, 0, 1, 4]), random.choice([0, 0, 1, 4])
                at = Rect(
                    at.x + low_x, at.y + low_y,
                    max(1, at.w - low_x - random.choice([0, 2, 5])), max(1, at.h - low_y - random.choice([0, 2, 5])),
                )
                if at.w < 2 or at.h < 2:
                    continue
            turned = random.random() < 0.3
            size = (at.h, at.w, True) if turned else (at.w, at.h, False)
            part = kinds.setdefault(size, len(kinds))
            if part == len(counts):
                counts.append(0)
            counts[part] += 1
            placed.append(Placed(part, at, turned))
        laid.append(Laid(0, tuple(placed)))
    parts = tuple(
        Part(f"part {n}", length, width, counts[n], may_turn) for (length, width, may_turn), n in kinds.items()
    )
    return Job(parts, (stock,), kerf), Layout(tuple(laid), 0, 0)
