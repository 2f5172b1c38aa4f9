"""What is known of each joint: parts, proportions, what it resists, grain, glue and faults (`data/joints/`)."""

import tomllib
from dataclasses import dataclass
from fractions import Fraction
from functools import cache
from pathlib import Path

from shoplib.measure import read_length
from shoplib.tables.claims import Claim, FactError, claim, claims, refuse_others
from shoplib.tables.slides import DATA

JOINT_NAMES = (
    "butt",
    "pocket screws",
    "rabbet",
    "dado",
    "stopped dado",
    "groove",
    "tongue",
    "drawer lock",
    "finger",
    "half lap",
    "cross lap",
    "dowel",
    "spline",
    "bridle",
    "mortise and tenon",
    "dovetail",
    "splined mitre",
)
"""Every joint, in the order in which they are learned."""

GLUE_KINDS = ("long grain to long grain", "end grain", "face to face")
"""Faces that glue holds: along the fibres on both boards; against cut-off fibres, where it holds little; and the broad
face of a sheet or a board on another face."""


@dataclass(frozen=True, slots=True)
class Part:
    """What one piece of the joint is called, what else, and what it is, in a line for a beginner."""

    name: str
    also: tuple[str, ...]
    what: str

    @property
    def called(self) -> str:
        """Its name, and in brackets its other ones: where each is said stands before it, so that no bracket is nested.

        >>> joint_facts("dado").part("wall").called, joint_facts("dovetail").part("pin").called
        ('wall (cheek)', 'pin (older, US: tenon)')
        """
        return f"{self.name} ({', '.join(_where_first(other) for other in self.also)})" if self.also else self.name


def _where_first(other: str) -> str:
    """A name after the place where it is said, such as "UK: pellet"; one that says none as it is."""
    name, _, where = other.partition(" (")
    return f"{where.removesuffix(')')}: {name}" if where else name


@dataclass(frozen=True, slots=True)
class RuleValue:
    """One source's answer to a rule.

    `low` and `high` are the answer in numbers where it has some: parts of what `of` names (Fractions), or lengths in
    ticks where `of` is "". `why` says why this one is the default, where sources disagree.
    """

    claim: Claim
    default: bool = False
    why: str = ""
    low: Fraction | int | None = None
    high: Fraction | int | None = None
    of: str = ""


@dataclass(frozen=True, slots=True)
class Rule:
    """A rule of proportion, with every source's value; exactly one of them is the default.

    `setting` names what the joint bench begins with by it: a setting of the joint, or none.

    Raises FactError where none or several are, or where the default of several does not say why.
    """

    about: str
    values: tuple[RuleValue, ...]
    setting: str = ""

    def __post_init__(self) -> None:
        chosen = [value for value in self.values if value.default]
        if len(chosen) != 1:
            raise FactError(f'rule "{self.about}": exactly one value is the default, not {len(chosen)}.')
        if len(self.values) > 1 and not chosen[0].why:
            raise FactError(f'rule "{self.about}": where sources disagree, the default says why.')

    @property
    def default(self) -> RuleValue:
        """The value that the project starts from."""
        return next(value for value in self.values if value.default)

    @property
    def disagree(self) -> bool:
        """Whether there is more than one value."""
        return len(self.values) > 1


@dataclass(frozen=True, slots=True)
class GlueFace:
    """Where two faces meet in the joint, of one of `GLUE_KINDS`."""

    kind: str
    claim: Claim

    def __post_init__(self) -> None:
        if self.kind not in GLUE_KINDS:
            raise FactError(f"a glue face of kind {self.kind!r}; it is one of {', '.join(GLUE_KINDS)}.")


@dataclass(frozen=True, slots=True)
class Fault:
    """Something that goes wrong: its name, what it looks like in the shop, and what it came from with its source."""

    name: str
    looks: str
    cause: Claim


@dataclass(frozen=True, slots=True)
class JointFacts:
    """All that is known of one joint. `also` are its other names, with the country where that is known.

    `strength` has only what was read in its source; many joints have none.
    """

    name: str
    title: str
    also: tuple[str, ...]
    summary: str
    parts: tuple[Part, ...]
    rules: tuple[Rule, ...]
    resists: tuple[Claim, ...]
    weak: tuple[Claim, ...]
    use: tuple[Claim, ...]
    grain: tuple[Claim, ...]
    glue: tuple[GlueFace, ...]
    strength: tuple[Claim, ...]
    faults: tuple[Fault, ...]

    def __post_init__(self) -> None:
        for heading in ("parts", "rules", "resists", "weak", "use", "grain", "glue", "faults"):
            if not getattr(self, heading):
                raise FactError(f"{self.name}: nothing stands under {heading}.")
        for known in self.strength:
            if known.mark != "read":
                raise FactError(f'{self.name}: strength "{known.say}" was not read in a source, so it is left out.')

    def part(self, name: str) -> Part:
        """The part of that name, or that other name; KeyError where there is none.

        >>> joint_facts("dado").part("wall").name
        'wall'
        """
        for part in self.parts:
            if name == part.name or name in part.also:
                return part
        raise KeyError(name)

    def rule(self, about: str) -> Rule:
        """The rule about that; KeyError where there is none.

        >>> depth = joint_facts("dado").rule("depth")
        >>> depth.disagree, depth.default.low, depth.default.of
        (True, Fraction(1, 3), 'thickness of the side')
        """
        for rule in self.rules:
            if rule.about == about:
                return rule
        raise KeyError(about)


@cache
def all_joint_facts() -> dict[str, JointFacts]:
    """Every joint by name, in the order in which they are learned.

    >>> tuple(all_joint_facts()) == JOINT_NAMES
    True
    """
    return {name: read_joint_facts(DATA / "joints" / f"{name.replace(' ', '_')}.toml") for name in JOINT_NAMES}


def joint_facts(name: str) -> JointFacts:
    """What is known of the joint of that name; KeyError where there is none.

    >>> joint_facts("dado").also
    ('housing (UK)', 'trench (UK)')
    """
    return all_joint_facts()[name]


_KEYS = {
    "name", "title", "also", "summary", "part", "rule", "resists", "weak", "use", "grain", "glue", "strength", "fault",
}


def read_joint_facts(path: Path) -> JointFacts:
    """What the file says; raises FactError with its name where it cannot be used."""
    with path.open("rb") as file:
        row = tomllib.load(file)
    where = f"{path.parent.name}/{path.name}"
    refuse_others(row, _KEYS, where)
    try:
        return JointFacts(
            row["name"],
            row["title"],
            tuple(row.get("also", ())),
            row["summary"],
            tuple(_part(part, where) for part in row.get("part", ())),
            tuple(_rule(rule, where) for rule in row.get("rule", ())),
            *(claims(row.get(heading, ()), where) for heading in ("resists", "weak", "use", "grain")),
            tuple(GlueFace(face["kind"], claim(face, where, ("kind",))) for face in row.get("glue", ())),
            claims(row.get("strength", ()), where),
            tuple(_fault(fault, where) for fault in row.get("fault", ())),
        )
    except KeyError as missing:
        raise FactError(f"{where}: `{missing.args[0]}` is missing.") from None
    except FactError as fault:
        sentence = str(fault)
        raise FactError(sentence if sentence.startswith(where) else f"{where}: {sentence}") from None


def _part(row: dict, where: str) -> Part:
    refuse_others(row, {"name", "also", "is"}, f"{where} part")
    return Part(row["name"], tuple(row.get("also", ())), row["is"])


def _rule(row: dict, where: str) -> Rule:
    refuse_others(row, {"about", "setting", "value"}, f"{where} rule")
    values = row["value"]
    only = len(values) == 1
    found = tuple(_value(value, f"{where} rule {row['about']}", only) for value in values)
    return Rule(row["about"], found, row.get("setting", ""))


def _value(row: dict, where: str, only: bool) -> RuleValue:
    """A value; the only one of its rule is its default. `part` or `length` is one number, or both ends of a range."""
    said = claim(row, where, ("default", "why", "part", "of", "length"))
    low = high = None
    if "part" in row and "length" in row:
        raise FactError(f"{where}: a value is a part of something or a length, not both.")
    if "part" in row:
        if "of" not in row:
            raise FactError(f"{where}: `part` needs `of`, which says of what.")
        low, high = _ends(row["part"], Fraction)
    elif "length" in row:
        low, high = _ends(row["length"], lambda text: read_length(text, what=where, zero=True))
    return RuleValue(said, only or row.get("default", False), row.get("why", ""), low, high, row.get("of", ""))


def _ends(given: str | list[str], read) -> tuple:
    ends = [given, given] if isinstance(given, str) else given
    return tuple(read(end) for end in ends)


def _fault(row: dict, where: str) -> Fault:
    return Fault(row["name"], row["looks"], claim(row, where, ("name", "looks")))
