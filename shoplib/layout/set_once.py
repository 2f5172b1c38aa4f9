"""In which order settings are made, so that few have to be made again.

A cut waits for the piece that it is made in, and it may wait longer, for others of the same setting. Which setting
comes first is free as long as none has to come again; only where every setting that could be made next would have to
come again must one be chosen.
"""

from collections.abc import Callable, Hashable, Iterator, Sequence

WIDE = 40
"""So many half-made orders are followed at a time."""

Before = Sequence[int | None]
"""For each cut the cut that makes its piece, None where the piece lies there from the beginning."""


def set_once(settings: Sequence[Hashable], before: Before, rank: Callable[[Hashable, list[int]], tuple]) -> list:
    """Each setting as often as it must be made, in order; cut by cut, `settings` has what it is made at.

    Of settings that need not come again the one goes first for which `rank` of it and of its cuts that are ready is
    least. The order has as few settings as are found among some of all orders; none has fewer than there are settings.

    >>> set_once(["20", "30", "20"], [None, None, 1], lambda setting, ready: (setting,))
    ['30', '20']
    >>> set_once(["20", "30", "20"], [None, 0, 1], lambda setting, ready: (setting,))
    ['20', '30', '20']
    """
    saw = _Saw(settings, before)
    again = saw.fewest_again()
    done, ready, order = 0, saw.first, []
    while ready:
        made = {setting: saw.made(done, ready, setting) for setting in saw.ready(ready)}
        free = [setting for setting, (after, _) in made.items() if not saw.of[setting] & ~after]
        if free:
            chosen = min(free, key=lambda setting: rank(setting, list(_bits(ready & saw.of[setting]))))
        else:
            chosen = again.pop(0)
        done, ready = made[chosen]
        order.append(chosen)
    return order


class _Saw:
    """Cuts as bits: those of each setting, those `within` it (in what it makes itself), and those that become ready
    when one is made."""

    def __init__(self, settings: Sequence[Hashable], before: Before) -> None:
        self.of: dict[Hashable, int] = {}
        self.settings = settings
        self.within: dict[Hashable, int] = dict.fromkeys(settings, 0)
        self.then = [0] * len(settings)
        self.first = 0
        for n, setting in enumerate(settings):
            self.of[setting] = self.of.get(setting, 0) | 1 << n
            if before[n] is None:
                self.first |= 1 << n
            else:
                self.then[before[n]] |= 1 << n
                if settings[before[n]] == setting:
                    self.within[setting] |= 1 << n

    def ready(self, ready: int) -> dict[Hashable, None]:
        """The settings for which anything is ready."""
        return dict.fromkeys(self.settings[n] for n in _bits(ready))

    def made(self, done: int, ready: int, setting: Hashable) -> tuple[int, int]:
        """What is done, and what is ready, when all has been cut that can be at this setting."""
        mine = self.of[setting]
        while now := ready & mine:
            done |= now
            ready &= ~now
            for n in _bits(now):
                ready |= self.then[n]
        return done, ready

    def freely(self, done: int, ready: int) -> tuple[int, int]:
        """All settings made that need not come again, and those that become so."""
        going = True
        while going:
            going = False
            for setting, mine in self.of.items():
                if ready & mine and not mine & ~(done | ready | self.within[setting]):
                    done, ready = self.made(done, ready, setting)
                    going = True
        return done, ready

    def fewest_again(self) -> list[Hashable]:
        """The settings that have to come again, in the order in which they are made too early."""
        states: dict[tuple[int, int], list[Hashable]] = {self.freely(0, self.first): []}
        while True:
            for (_, ready), again in states.items():
                if not ready:
                    return again
            later: dict[tuple[int, int], list[Hashable]] = {}
            for (done, ready), again in states.items():
                for setting in self.ready(ready):
                    later.setdefault(self.freely(*self.made(done, ready, setting)), [*again, setting])
            best = sorted(later, key=lambda state: -state[0].bit_count())[:WIDE]
            states = {state: later[state] for state in best}


def _bits(number: int) -> Iterator[int]:
    while number:
        low = number & -number
        yield low.bit_length() - 1
        number ^= low
