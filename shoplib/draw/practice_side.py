"""A side of the practice case as it is to be cut: where its dadoes begin, from the end that runs along the fence."""

from shoplib.draw.chains import unit_note
from shoplib.draw.scene import Chain, Label, Line, Scene, Shape
from shoplib.measure import write_brief
from shoplib.practice.bench import USUAL
from shoplib.practice.plan import LEVELS
from shoplib.practice.session import Session


def side_to_cut(session: Session) -> Scene:
    """The inner face of the left side, lower end below: the line of each dado, and over it the dado.

    Its width is drawn as such a sheet usually measures: how thick this one is, nobody knows yet.

    >>> from shoplib.practice import start
    >>> side_to_cut(start("Noor").session).alt.split(". ")[1]
    'The line of the dado for the bottom lies 1 1/2 in from the lower end, that for the shelf 9 in'
    """
    plan, style = session.plan, session.bench.style
    edge = plan.depth - plan.back
    dadoes = {level: (0, plan.up(level), plan.depth, plan.up(level) + USUAL[plan.unit]) for level in LEVELS}
    texts = [write_brief(plan.up(level), style) for level in LEVELS]
    note = "Each dado lies over its line; how wide it is to be, your sheet says."
    return Scene(
        "A side, inner face up", unit_note(style, note),
        "The inner face of the left side, its lower end below and its rear edge, with the rabbet for the back, on the "
        f"right. The line of the dado for the bottom lies {texts[0]} from the lower end, that for the shelf {texts[1]}"
        f". {note}",
        (0, 0, plan.depth, plan.height),
        (
            Shape(((0, 0, plan.depth, plan.height),), "case", "side"),
            Shape(((edge, 0, plan.depth, plan.height),), "back", "rabbet for the back"),
            *(Shape((dado,), "cut case", f"dado for the {level}", "/") for level, dado in dadoes.items()),
            *(Line((-plan.back, plan.up(level)), (plan.depth, plan.up(level)), "centre") for level in LEVELS),
            *(Label(dado, (f"for the {level}",), plate=True) for level, dado in dadoes.items()),
            *(
                Chain("left", row, (0, plan.up(level)), (text.removesuffix(f" {style.unit}"),))
                for row, (level, text) in enumerate(zip(LEVELS, texts, strict=True))
            ),
        ),
    )
