"""The solution of a whole set comes with the workbook's own sum for each size, down to the numbers that were given."""

from shoplib.lessons.posed_set import pose_set
from shoplib.lessons.say import Say


def test_each_size_is_told_by_the_workbook_with_the_same_number_and_what_was_given(whole_set, unit):
    posed = pose_set(whole_set, "Noor", unit)
    own, given = posed.own_working, [what for what, _ in posed.facts]
    heads = [next(at for at, line in enumerate(own) if line.startswith(f"{one.label.lower()} "))
             for one in whole_set.asked]
    for one, start, end in zip(whole_set.asked, heads, [*heads[1:], len(own)], strict=True):
        right = one.right(posed.case)
        assert Say(unit).length(right).split(" (")[0] in own[start] or Say(unit).exact(right)[:4] in own[start]
        assert any(what in line for line in own[start:end] for what in given)


def test_the_solution_on_paper_stands_alone(whole_set):
    posed = pose_set(whole_set, "Noor", "mm")
    for one in whole_set.asked:
        lines = one.working(posed.givens, Say("mm"))
        at = posed.working.index(f"{one.label}:")
        assert posed.working[at + 1 : at + 1 + len(lines)] == tuple(lines)
    assert not set(posed.working) & set(posed.own_working)
