"""Settings in an order in which few must come again, held against all orders there are."""

from functools import cache
from random import Random

from shoplib.layout.set_once import set_once


def fewest(settings, before):
    """By trying every order: as often as something must be set."""
    whole = (1 << len(settings)) - 1

    @cache
    def left(done):
        if done == whole:
            return 0
        ready = [n for n in range(len(settings)) if not done >> n & 1 and (before[n] is None or done >> before[n] & 1)]
        best = len(settings)
        for setting in {settings[n] for n in ready}:
            after, going = done, True
            while going:
                going = False
                for n, one in enumerate(settings):
                    if one == setting and not after >> n & 1 and (before[n] is None or after >> before[n] & 1):
                        after, going = after | 1 << n, True
            best = min(best, 1 + left(after))
        return best

    return left(0)


def test_no_order_has_fewer_settings(count):
    random, again = Random(1), 0
    for _ in range(count(150, 3_000)):
        size = random.randint(1, 11)
        settings = [random.choice("abcde") for _ in range(size)]
        before = [random.choice([None, *range(n)]) if n else None for n in range(size)]
        order = set_once(settings, before, lambda setting, ready: (setting,))
        assert len(order) == fewest(tuple(settings), tuple(before))
        again += len(order) > len(set(settings))
        done = set()
        for setting in order:  # every cut is made, none before its piece is there
            going = True
            while going:
                ready = [n for n, one in enumerate(settings) if one == setting and n not in done
                         and (before[n] is None or before[n] in done)]
                done |= set(ready)
                going = bool(ready)
        assert len(done) == size
    assert again > 10


def test_a_setting_waits_for_what_is_cut_in_between():
    """By hand: at 20 something lies ready, more comes of a cut at 30. Taken as it comes 20 is set twice."""
    by_name = lambda setting, ready: (setting,)  # noqa: E731
    assert set_once(["20", "30", "20"], [None, None, 1], by_name) == ["30", "20"]
    assert set_once(["20", "30", "20", "30"], [None, None, 1, 2], by_name) == ["30", "20", "30"]
