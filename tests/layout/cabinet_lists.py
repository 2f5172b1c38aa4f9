"""Lists as cabinets make them, by chance: `python -m tests.layout.cabinet_lists` writes those of the benchmark.

Sixteenths of an inch, sheets of 48 x 96 in, a blade of 1/8 in. Cases come with sides, bottoms, shelves, dividers,
stretchers and drawers, in equal pieces as cases have them; case parts keep their grain along their length, and drawer
parts may turn in every third list.
"""

import json
import random
from pathlib import Path

INSTANCES = Path(__file__).parents[1] / "bench" / "instances" / "cabinets.jsonl"
SHEET, KERF = (96 * 16, 48 * 16), 2


def cabinet_list(seed: int) -> list[list]:
    """`[length, width, count, may turn]` of each kind; 8 to 60 parts in all."""
    chance = random.Random(seed)
    most = chance.randint(8, 60)
    drawers_turn = seed % 3 == 0
    found: list[list] = []

    def some(low: float, high: float) -> int:
        return chance.randrange(int(low * 16), int(high * 16) + 1)

    while True:
        deep, tall, long = some(11, 24), some(14, 84), some(12, 40)
        case = [[tall, deep, 2, False], [long, deep, 2, False]]
        if shelves := chance.randint(0, 4):
            case.append([long - some(0, 0.1), deep - some(0.25, 2), shelves, False])
        if chance.random() < 0.4:
            case.append([tall - 24, deep - 4, chance.randint(1, 2), False])
        if chance.random() < 0.5:
            case.append([long, some(2.5, 4), 2, False])
        if drawers := chance.randint(0, 3):
            high = some(3, 9)
            case += [[deep - 16, high, 2 * drawers, drawers_turn], [long - 17, high, 2 * drawers, drawers_turn]]
        if found and sum(row[2] for row in found + case) > most:
            return found
        found += case
        if sum(row[2] for row in found) >= most:
            return found


def main() -> None:
    lines = (
        json.dumps({"id": f"cabinets_{seed:02}", "sheet": SHEET, "kerf": KERF, "parts": cabinet_list(seed)})
        for seed in range(1, 21)
    )
    INSTANCES.write_text("\n".join(lines) + "\n", encoding="utf-8")


if __name__ == "__main__":
    main()
