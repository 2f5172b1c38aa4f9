"""The same lower corner with several joints, side by side: what each takes from the side and gives to the bottom."""

from collections.abc import Sequence

from shoplib.draw.chains import unit_note
from shoplib.draw.clip import within
from shoplib.draw.letters import ORDINARY, letters
from shoplib.draw.look import FRONT, cut_through
from shoplib.draw.scene import Chain, Item, Label, Line, Scene, Shape
from shoplib.draw.spilled import largest_rooms
from shoplib.lists.writing import Writing
from shoplib.measure import MM, Style
from shoplib.model.solved import Cabinet
from shoplib.words.naming import and_list

SEEN = 60 * MM
"""How much of the corner is drawn each way, about 2 3/8 in."""

_APART = 22 * MM
_TITLE = 30 * MM


def corner_row(cases: Sequence[tuple[str, Cabinet]], style: Style) -> Scene:
    """The lower left corner of each case, cut and seen from the front, with its name over it.

    Below each stands where the bottom ends, from the outer face of the side. Raises KeyError where a case has
    no left side or no bottom.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("rolling_stand")
    >>> corner_row([("rabbet", cabinet)], cabinet.style).title
    'The same case, four corner joints'
    """
    items: list[Item] = []
    page = Writing(style, units=False)
    told, named = [], letters() == ORDINARY
    for number, (name, case) in enumerate(cases):
        shift = number * (SEEN + _APART)
        boards = [case.by_name["left side"], case.by_name["bottom"]]
        side, bottom = boards
        frame = (0, 0, SEEN, SEEN)
        at = (bottom.box.low[1] + bottom.box.high[1]) // 2
        for shape in cut_through(boards, (), FRONT, at):
            rects = [rect for rect in (within(rect, frame) for rect in shape.rects) if rect]
            if shape.hatch and rects:
                moved = tuple((a + shift, b, c + shift, d) for a, b, c, d in rects)
                items.append(Shape(moved, shape.fill, shape.name, shape.hatch))
                largest, *others = largest_rooms(moved)
                texts = (shape.name, shape.name.replace(" ", "\n"))
                items += [Label(largest, texts, plate=True, rooms=tuple(others))] if named else []
        over = (shift - _APART // 2, SEEN, shift + SEEN + _APART // 2, SEEN + _TITLE)
        items.append(Label(over, (name.replace(" in ", "\nin "), name), about=(shift, 0, shift + SEEN, SEEN)))
        face, upper = side.box.high[0], bottom.box.high[2]
        if side.box.low[2] < upper and not bottom.box.low[0]:
            items.append(Line((shift, upper), (face + shift, upper), "hidden"))
        elif bottom.box.low[0] < face:
            items.append(Line((face + shift, bottom.box.low[2]), (face + shift, upper), "hidden"))
        end = bottom.box.low[0]
        if end > 0:
            items.append(Chain("below", 0, (shift, end + shift), (page.setting(end),), 0))
        told.append(f"{name}: the bottom ends {page.setting(end)} from the outer face")
    note = "Lower left corners, seen from the front. Clearances are left out."
    return Scene(
        "The same case, four corner joints", unit_note(style, note),
        f"The same corner with {and_list([name for name, _ in cases])}, side by side. {'; '.join(told)}.",
        (-_APART // 2, 0, len(cases) * (SEEN + _APART) - _APART // 2, SEEN + _TITLE),
        tuple(items), (
            # Larger letters find no room on boards as small as these: their names are told once for all.
            *(() if named else ("Upright: the left side. Level: the bottom.",)),
            "Dashed: where the board that enters would end if it were butted.",
            "Below: from the outer face of the side to the end of the bottom.",
        ),
    )
