"""Reach into a plan, spoil it on purpose, and see whether the judge tells."""

from tests.judge.judge import judge
from tests.judge.solids import is_box_cut


def told(plan, *words):
    """True if one fault of the plan holds all the words; otherwise the test fails and shows the faults."""
    faults = judge(plan)
    assert any(all(word in fault for word in words) for fault in faults), faults
    return True


def board(plan, name):
    """The board of that name."""
    return next(b for b in plan["boards"] if b["name"] == name)


def cut_for(plan, name, enters):
    """The cut in a board that is made for another one."""
    return next(c for c in board(plan, name)["cuts"] if c["for"] == enters)


def joint(plan, enters, receives):
    """The joint between two boards."""
    return next(j for j in plan["joints"] if (j["enters"], j["receives"]) == (enters, receives))


def move(plan, name, by):
    """Set a board elsewhere in the cabinet."""
    board(plan, name)["origin"] = [a + b for a, b in zip(board(plan, name)["origin"], by, strict=True)]


def shorten(target, own, by):
    """Cut a board short at its far end; its cuts are cut off with it, as a saw would."""
    target["size"][own] -= by
    end = target["size"][own]
    kept = []
    for cut in target["cuts"]:
        if is_box_cut(cut):
            cut["high"][own] = min(cut["high"][own], end)
            if cut["low"][own] < end - 1e-6:
                kept.append(cut)
        elif "centre" in cut:
            on_the_end = cut["along"] == "uvw"[own] and cut["centre"][own] > end
            if on_the_end:
                cut["centre"][own] = end
            if on_the_end or cut["centre"][own] + cut["diameter"] / 2 <= end:
                kept.append(cut)
        else:
            kept.append(cut)
    target["cuts"] = kept


def mirror_cuts(target, own):
    """The same board and placement with the cuts of the other hand, mirrored along one own axis."""
    whole = target["size"][own]
    for cut in target["cuts"]:
        if is_box_cut(cut):
            cut["low"][own], cut["high"][own] = whole - cut["high"][own], whole - cut["low"][own]
        elif "centre" in cut:
            cut["centre"][own] = whole - cut["centre"][own]
