"""Which template or stick serves a step of the build order."""

from shoplib.draw.chains import uprights
from shoplib.model.solved import Cabinet
from shoplib.printed.true_scale.template_pages import templates
from shoplib.words.naming import and_list, in_short


def template_called(what: str, cabinet: Cabinet) -> str:
    """The templates for this by their numbers in templates.pdf, such as "templates 1 and 2"; "" where there is none.

    >>> from shoplib.documents.examples import example
    >>> from shoplib.documents.project_file import read_project
    >>> from shoplib.model.cabinet import solve
    >>> cabinet = solve(read_project(example("under_bench_case")))
    >>> template_called("holes for pegs", cabinet)
    'template 2'
    """
    numbers = [f"template {n}" for n, one in enumerate(templates(cabinet), 1) if one.what == what]
    return and_list(in_short(numbers))


def across_words(cabinet: Cabinet) -> list[str]:
    """What the stick across is held to while the joints of the dividers are marked out; nothing without dividers.

    >>> across_words(Cabinet("no boards", (), {}))
    []
    """
    if len(uprights(cabinet)) <= 2:
        return []
    return [
        "Hold the stick \u201cAcross\u201d of the story stick on bottom and top together, its line 0 at the left face "
        "of the case, before you cut for the dividers: its marks and those set out by the drawings must meet. Where "
        "they do not, measure."
    ]
