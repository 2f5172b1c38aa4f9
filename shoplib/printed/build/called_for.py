"""Which template or stick serves a step of the build order."""

from collections.abc import Iterable

from shoplib.model.solved import Cabinet
from shoplib.printed.true_scale.sticks import crossed
from shoplib.printed.true_scale.template_pages import templates
from shoplib.words.naming import and_list, in_short


def template_numbers(what: str, cabinet: Cabinet) -> tuple[int, ...]:
    """The numbers of the templates for this in templates.pdf; none where there is none.

    >>> from shoplib.documents.examples import cabinet_from
    >>> template_numbers("holes for pegs", cabinet_from("under_bench_case"))
    (2,)
    """
    return tuple(number for number, one in enumerate(templates(cabinet), 1) if one.what == what)


def templates_called(numbers: Iterable[int]) -> str:
    """Templates by their numbers.

    >>> templates_called((1, 2))
    'templates 1 and 2'
    """
    return and_list(in_short(f"template {number}" for number in numbers))


def across_words(cabinet: Cabinet) -> list[str]:
    """What the stick across is held to while the joints of the dividers are marked out; nothing without dividers.

    >>> across_words(Cabinet("no boards", (), {}))
    []
    """
    boards = [board.name for board in crossed(cabinet)]
    if not boards:
        return []
    of_each, that = ("of each ", "that end") if len(boards) > 1 else ("", "it")
    return [
        "Before you cut for the dividers, lay the stick \u201cAcross\u201d of the story stick on "
        f"{' and then on '.join((and_list(boards[:-1]), boards[-1])) if len(boards) > 1 else boards[0]}, its mark for "
        f"the left end {of_each}on {that}: its marks for the faces of the dividers and those set out by the drawings "
        "must meet. Where they do not, measure."
    ]
