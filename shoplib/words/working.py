"""A working in words and numbers: from a size down to what was measured or chosen."""

import re
from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction
from math import ceil, floor

from shoplib.measure import INCH, MM, Style, write_brief, write_length
from shoplib.measure.traced import Atom, Choice, Leaf, Named, Sum, sum_of

_HOW = {
    "mean": "the mean of",
    "narrowest": "the smallest of",
    "thickest": "the largest of",
    "largest fitting": "the largest that fits",
}

_PER = {"in": INCH, "mm": MM}
_FINEST = {"in": INCH // 2000, "mm": MM // 100}
"""What calipers show is printed as they show it: 0.0005 in and 0.01 mm."""
_DIGITS = {"in": 5, "mm": 3}
"""A size between these marks gets so many digits, and up to `_MORE` more where a sum needs them to come out."""
_MORE = 6

_SIZE = re.compile(r"(?:(\d+ \d+/\d+|\d+/\d+)|(\d+(?:\.\d+)?)) (in|mm)(?: \(([+-][\d.]+) (?:in|mm)\))?$")


def working(value: int, name: str, style: Style, shown: str = "") -> tuple[str, ...]:
    """Why `value` is what it is: its own line first, then one for each number that it was made of.

    Terms that are 0 are left out, unless all are. The last names are those of what was measured, chosen or looked up; a
    limit of a check says where it comes from. `shown` is how the page writes the size, where that is known.

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
    size = shown or (_short(value, style) if alone else write_length(value, style))
    return working_of(value, f"{_called(name)} {size}", style)


def working_of(value: int, shown: str, style: Style) -> tuple[str, ...]:
    """The same, where `shown` is how a page writes the size: what stands before the first equals sign.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> from shoplib.measure.traced import leaf
    >>> working_of(leaf(34 * INCH, "case width") - leaf(INCH, "side"), "width 33 in", INCH_STYLE)
    ('width 33 in = case width 34 in - side 1 in',)
    """
    top = sum_of(value)
    told: set[Atom] = set()
    if (same := _only(top)) and isinstance(same, Named):  # a name alone says nothing: go on to what it is made of
        told.add(same)
        top = same.of
    lines = [f"{shown} = {_comes_to(shown, top, style)}"]
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
            head = said(atom.name, atom.value, style)
            lines.append(f"{head} = {_comes_to(head, atom.of, style)}")
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


def _only(total: Sum) -> Atom | None:
    """The atom that is the whole sum, once and with nothing beside it."""
    if len(total.terms) == 1 and not total.bare and total.terms[0][1] == 1:
        return total.terms[0][0]
    return None


def _comes_to(head: str, total: Sum, style: Style) -> str:
    """What stands behind an equals sign, so that it comes to the size at the end of `head` as it is printed there.

    Sizes that no decimal has in full get more digits until the sum comes out; a size that was rounded where it was
    written says so.
    """
    size, last = _printed(head, style)
    for more in range(_MORE):
        sum_as_printed = _added(total, style, more)
        if sum_as_printed is None or _rounded(sum_as_printed, last) == size:
            return _whole(total, style, more)
    text = _whole(total, style)
    for step in (style.step, _FINEST[style.unit]):
        if _rounded(_added(total, style, _MORE), Fraction(step)) == size:
            return f"{text}, to the nearest whole {_short(step, style)}"
    finest = _FINEST[style.unit]
    if last and 2 * abs(_added(total, style, _MORE) - size) <= finest:  # a rest in brackets is rounded by itself
        return f"{text}, its rest to the nearest whole {_short(finest, style)}"
    return text


def _printed(head: str, style: Style) -> tuple[Fraction, Fraction]:
    """The size that a text ends with, in ticks as it is printed, and what its last printed digit counts.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> [float(part / INCH) for part in _printed("side, width 3 1/2 in (+0.003 in)", INCH_STYLE)]
    [3.503, 0.001]
    """
    found = _SIZE.search(head)
    if found is None:
        return Fraction(0), Fraction(0)
    whole, rest, per = found[1] or found[2], found[4] or "0", INCH if found[3] == "in" else MM
    size = sum(map(Fraction, whole.split())) + Fraction(rest)
    if head[found.start() - 1 : found.start()] == "-":
        size -= 2 * sum(map(Fraction, whole.split()))
    digits = max((len(each.partition(".")[2]) for each in (whole, rest) if "." in each), default=0)
    return size * per, Fraction(per, 10**digits) if digits else Fraction(0)


def _rounded(ticks: Fraction, step: Fraction) -> Fraction:
    """To the nearest step, a half up; as it is where there is no step."""
    return floor(ticks / step + Fraction(1, 2)) * step if step else ticks


def _added(total: Sum, style: Style, more: int) -> Fraction | None:
    """What a reader gets who works out a sum or choice as it is printed, in ticks; None where it is no plain sum."""
    atom = _only(total)
    if isinstance(atom, Choice):
        among = [_terms_added(one, style, more) for one in atom.among]
        step = Fraction(atom.steps)
        match atom.how:
            case "mean":
                return sum(among) / len(among)
            case "narrowest":
                return min(among)
            case "thickest":
                return max(among)
            case "share":
                part = among[0] / atom.parts
                return floor(part / step) * step if atom.steps >= style.step else part
            case "down":
                return floor(among[0] / step) * step
            case "up":
                return ceil(among[0] / step) * step
            case "nearest":
                return _rounded(among[0], step)
        return None
    return _terms_added(total, style, more)


def _terms_added(total: Sum, style: Style, more: int) -> Fraction:
    sizes = [*((atom.value, times) for atom, times in total.terms), (total.bare, 1)]
    return sum((_as_printed(value, style, more) * times for value, times in sizes), Fraction(0))


def _as_printed(value: int, style: Style, more: int = 0) -> Fraction:
    """A size in ticks as a working prints it: a mark, or what is left of it as a decimal."""
    if value % style.step == 0 or value % _FINEST[style.unit] == 0:
        return Fraction(value)
    digits, per = _DIGITS[style.unit] + more, _PER[style.unit]
    return Fraction(floor(Fraction(abs(value) * 10**digits, per) + Fraction(1, 2)) * per, 10**digits) * (
        -1 if value < 0 else 1
    )


def _whole(total: Sum, style: Style, more: int = 0) -> str:
    """What stands behind an equals sign: a choice alone is told without its number once more."""
    atom = _only(total)
    return _choice(atom, style, more) if isinstance(atom, Choice) else _sum(total, style, more)


def _sum(total: Sum, style: Style, more: int = 0) -> str:
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
        text += _atom(atom, style, more)
    if total.bare or not terms:
        sign = "- " if total.bare < 0 else "+ "
        text += f" {sign}" if text or total.bare < 0 else ""
        text += _short(abs(total.bare), style, more)
    return text.strip()


def _atom(atom: Atom, style: Style, more: int = 0) -> str:
    if not isinstance(atom, Choice):
        return f"{_called(atom.name)} {_short(atom.value, style, more)}"
    return f"{_short(atom.value, style, more)} ({_choice(atom, style, more)})"


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


def _choice(choice: Choice, style: Style, more: int = 0) -> str:
    if choice.how == "thickest" and choice.value > 0:
        more_than_nothing = tuple(one for one in choice.among if one.terms or one.bare)
        if len(more_than_nothing) == 1:  # what is over, where it could have been nothing
            return _sum(more_than_nothing[0], style, more)
        choice = replace(choice, among=more_than_nothing)
    among = [_sum(one, style, more) for one in choice.among]
    sizes = [_short(one.value, style, more) for one in choice.among]
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


def _short(value: int, style: Style, more: int = 0) -> str:
    """A size in a working: a mark, the decimal that calipers show, or one with digits enough to add up."""
    if value % style.step == 0 and value:
        return write_brief(value, style)
    size = _as_printed(value, style, more) / _PER[style.unit]
    digits = _DIGITS[style.unit] + more
    number = f"{abs(size.numerator) * 10**digits // size.denominator:0{digits + 1}}"
    number = f"{number[:-digits]}.{number[-digits:]}".rstrip("0").rstrip(".")
    return f"{'-' if value < 0 else ''}{number} {style.unit}"
