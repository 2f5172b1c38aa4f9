"""The solution of a whole set ends each size with the workbook's own sum, down to the numbers that were given."""

from shoplib.lessons.posed_set import pose_set
from shoplib.lessons.say import Say

OWN = "In the workbook: "


def test_each_size_is_told_by_the_workbook_with_the_same_number_and_what_was_given(whole_set, unit):
    posed = pose_set(whole_set, "Noor", unit)
    lines, given = posed.working, [what for what, _ in posed.facts]
    heads = [lines.index(f"{one.label}:") for one in whole_set.asked]
    for one, start, end in zip(whole_set.asked, heads, [*heads[1:], len(lines)], strict=True):
        own = [line.removeprefix(OWN) for line in lines[start:end] if line.startswith(OWN)]
        assert own and own[0].startswith(f"{one.label.lower()} ")
        right = one.right(posed.case)
        assert Say(unit).length(right).split(" (")[0] in own[0] or Say(unit).exact(right)[:4] in own[0]
        assert any(what in line for line in own for what in given)


def test_the_workbooks_own_lines_stand_behind_those_on_paper(whole_set):
    posed = pose_set(whole_set, "Noor", "mm")
    for one in whole_set.asked:
        lines = one.working(posed.givens, Say("mm"))
        at = posed.working.index(lines[-1], posed.working.index(f"{one.label}:"))
        assert posed.working[at + 1].startswith(OWN)
