"""A working in words and numbers: from a size down to what was measured or chosen."""

from collections.abc import Iterator

from shoplib.measure import Style, to_step, write_brief, write_length
from shoplib.measure.traced import Atom, Choice, Leaf, Named, Sum, sum_of

_HOW = {
    "mean": "the mean of",
    "narrowest": "the smallest of",
    "thickest": "the largest of",
    "largest fitting": "the largest that fits",
}


def working(value: int, name: str, style: Style) -> tuple[str, ...]:
    """Why `value` is what it is: its own line first, then one for each number that it was made of.

    Terms that are 0 are left out, unless all are. The last names are those of what was measured, chosen or looked up; a
    limit of a check says where it comes from.

    >>> from shoplib.measure import INCH, INCH_STYLE, mean
    >>> from shoplib.measure.traced import leaf, named
    >>> width, depth = leaf(34 * INCH, "case width"), leaf(INCH * 3 // 8, "rabbet depth")
    >>> readings = [leaf(INCH * 70 // 100, "reading 1"), leaf(INCH * 72 // 100, "reading 2")]
    >>> side = named(mean(readings), "side thickness")
    >>> for line in working(width - 2 * side + 2 * depth, "bottom length", INCH_STYLE):
    ...     print(line)
    bottom length 33 21/64 in (+0.001875 in) = case width 34 in - 2 x side thickness 0.71 in + 2 x rabbet depth 3/8 in
    side thickness 0.71 in = the mean of: reading 1, 0.7 in; reading 2, 0.72 in
    """
    top = sum_of(value)
    alone = len(top.terms) == 1 and top.terms[0][1] == 1 and not isinstance(top.terms[0][0], Choice)
    size = _short(value, style) if alone else write_length(value, style)
    return working_of(value, f"{_called(name)} {size}", style)


def working_of(value: int, shown: str, style: Style) -> tuple[str, ...]:
    """The same, where `shown` is how a page writes the size: what stands before the first equals sign.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> from shoplib.measure.traced import leaf
    >>> working_of(leaf(34 * INCH, "case width") - leaf(INCH, "side"), "width 33 in", INCH_STYLE)
    ('width 33 in = case width 34 in - side 1 in',)
    """
    top = sum_of(value)
    lines = [f"{shown} = {_whole(top, style)}"]
    told: set[Atom] = set()
    waiting = list(_parts(top))
    while waiting:
        atom = waiting.pop(0)
        if atom in told:
            continue
        told.add(atom)
        if isinstance(atom, Leaf):
            if atom.kind == "limit":
                lines.append(f"{said(atom.name, atom.value, style)}: fixed by the workbook; {atom.key}")
        elif isinstance(atom, Named):
            lines.append(f"{said(atom.name, atom.value, style)} = {_whole(atom.of, style)}")
            waiting = [*_parts(atom.of), *waiting]
        else:
            waiting = [*(part for one in atom.among for part in _parts(one)), *waiting]
    return tuple(lines)


def leaves(value: int) -> tuple[Leaf, ...]:
    """What the value rests on in the end, each once.

    Terms that are 0 are left out, as in the working.
    """
    found: dict[Leaf, None] = {}
    waiting = list(_parts(sum_of(value)))
    while waiting:
        atom = waiting.pop(0)
        if isinstance(atom, Leaf):
            found[atom] = None
        else:
            of = [atom.of] if isinstance(atom, Named) else atom.among
            waiting += [part for one in of for part in _parts(one)]
    return tuple(found)


def _parts(total: Sum) -> Iterator[Atom]:
    return (atom for atom, _ in total.terms if atom.value)


def _whole(total: Sum, style: Style) -> str:
    """What stands behind an equals sign: a choice alone is told without its number once more."""
    if len(total.terms) == 1 and not total.bare:
        ((atom, times),) = total.terms
        if times == 1 and isinstance(atom, Choice):
            return _choice(atom, style)
    return _sum(total, style)


def _sum(total: Sum, style: Style) -> str:
    """The terms with their signs, what weighs most first, and before all one that is added."""
    terms = [(atom, times) for atom, times in total.terms if atom.value]
    if not terms and not total.bare:
        terms = list(total.terms)
    terms.sort(key=lambda term: -abs(term[0].value * term[1]))
    first = next((term for term in terms if term[0].value * term[1] > 0), None)
    if first is not None:
        terms.remove(first)
        terms.insert(0, first)
    text = ""
    for atom, times in terms:
        sign = "- " if times < 0 else "+ "
        text += f" {sign}" if text or times < 0 else ""
        text += f"{abs(times)} x " if abs(times) != 1 else ""
        text += _atom(atom, style)
    if total.bare or not terms:
        sign = "- " if total.bare < 0 else "+ "
        text += f" {sign}" if text or total.bare < 0 else ""
        text += _short(abs(total.bare), style)
    return text.strip()


def _atom(atom: Atom, style: Style) -> str:
    if not isinstance(atom, Choice):
        return said(atom.name, atom.value, style)
    return f"{_short(atom.value, style)} ({_choice(atom, style)})"


def said(name: str, value: int, style: Style) -> str:
    """A name and its size as people read it: on the rule, or the decimal that calipers show.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> said("side", INCH * 703 // 1000, INCH_STYLE), said("bay 1", 7 * INCH, INCH_STYLE)
    ('side 0.703 in', 'bay 1, 7 in')
    """
    return f"{_called(name)} {_short(value, style)}"


def _called(name: str) -> str:
    """A name before its size: one that ends in a number is set off, or "bay 1 7 5/8 in" reads as 17 5/8."""
    return f"{name}," if name[-1].isdigit() else name


def _choice(choice: Choice, style: Style) -> str:
    among = [_sum(one, style) for one in choice.among]
    sizes = [_short(one.value, style) for one in choice.among]
    match choice.how:
        case "share":
            part = "half" if choice.parts == 2 else f"1/{choice.parts}"
            down = f", down to a whole {_short(choice.steps, style)}" if choice.steps >= style.step else ""
            whole = f"({among[0]})" if len(choice.among[0].terms) > 1 else among[0]
            return f"{part} of {whole}{down}"
        case "down" | "up" | "nearest":
            way = {"down": "down to a", "up": "up to a", "nearest": "to the nearest"}[choice.how]
            return f"{among[0]}, {way} whole {_short(choice.steps, style)}"
        case "largest fitting":
            return f"the largest of {', '.join(sizes[1:])} that fits into {sizes[0]} = {among[0]}"
        case "diagonal nearest" | "diagonal up" | "other side":
            way = {"diagonal nearest": "to the nearest", "diagonal up": "up to a"}.get(choice.how, "down to a")
            told = zip(among, choice.among, strict=True)
            one, other = (f"({text})" if len(of.terms) > 1 else text for text, of in told)
            root = f"the square root of {one} squared {'-' if choice.how == 'other side' else '+'} {other} squared"
            return f"{root}, {way} whole {_short(choice.steps, style)}"
        case times if times.startswith("x "):
            return f"({among[0]}) {times}" if len(choice.among[0].terms) > 1 else f"{among[0]} {times}"
    return f"{_HOW[choice.how]}: {'; '.join(among)}"


def _short(value: int, style: Style) -> str:
    return write_brief(value, style, decimal=value != to_step(value, style.step))
