"""What a page tells of a joint in words: parts, proportions, where and why, set-ups, faults; all from `data/`.

Each block is HTML that reads well without a kernel and by a screen reader, and as plain text. A set-up cannot be
shown without its cautions: they stand in the block itself, before its first step.
"""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from html import escape

from shoplib.lessons.large_type import sized
from shoplib.lessons.worked import unbroken
from shoplib.tables.claims import Claim
from shoplib.tables.joint_facts import Rule, joint_facts
from shoplib.tables.setups import HEADINGS, Setup, setups

_HEADINGS = {
    "reference": "Reference faces",
    "stops": "Stops",
    "order": "Order of cuts",
    "test": "Test piece",
    "measure": "What to measure",
    "tear_out": "Against tear-out",
}


@dataclass(frozen=True, slots=True)
class Said:
    """One line: what is said, and in brackets where it stands or how far to trust it."""

    text: str
    cited: str = ""

    @classmethod
    def of(cls, claim: Claim) -> "Said":
        """A claim with its source; common practice, which most of it is, is said once at the foot of the block."""
        return cls(claim.say, "" if claim.mark == "common practice" else claim.cited)

    def __str__(self) -> str:
        return f"{self.text} [{self.cited}]" if self.cited else self.text

    def html(self) -> str:
        """The line as HTML."""
        cited = f' <small>[{escape(self.cited)}]</small>' if self.cited else ""
        return f"{escape(unbroken(self.text))}{cited}"


@dataclass(frozen=True, slots=True)
class Heading:
    """Lines under a heading of their own; `ordered` where one comes after the other."""

    title: str
    lines: tuple[Said, ...]
    ordered: bool = False
    alarm: bool = False

    def html(self) -> str:
        """The heading and its list."""
        tag = "ol" if self.ordered else "ul"
        rows = "".join(f"<li>{line.html()}</li>" for line in self.lines)
        frame = ' style="border: 2px solid; padding: 0.2em 0.8em"' if self.alarm else ""
        return f"<section{frame}><h4>{escape(self.title)}</h4><{tag}>{rows}</{tag}></section>"


@dataclass(frozen=True, repr=False, slots=True)
class JointText:
    """A block of a page: a title, headings with lines, and a line at its foot.

    >>> JointText("Dado", (Heading("Parts", (Said("wall: either side", "read"),)),))
    Dado
    Parts
      wall: either side [read]
    """

    title: str
    headings: tuple[Heading, ...]
    foot: str = ""

    def __repr__(self) -> str:
        lines = [self.title]
        for heading in self.headings:
            lines += [heading.title, *(f"  {line}" for line in heading.lines)]
        return "\n".join([*lines, *([self.foot] if self.foot else [])])

    def _repr_html_(self) -> str:
        return sized(f"<section><h3>{escape(self.title)}</h3>{self.inner_html()}</section>")

    def inner_html(self) -> str:
        """The block without its title."""
        foot = f"<p><small>{escape(self.foot)}</small></p>" if self.foot else ""
        return "".join(heading.html() for heading in self.headings) + foot


@dataclass(frozen=True, repr=False, slots=True)
class JointTexts:
    """Several blocks, one below the other, each folded under its title: the set-ups of a joint, tool by tool."""

    blocks: tuple[JointText, ...]

    def __repr__(self) -> str:
        return "\n\n".join(map(repr, self.blocks))

    def _repr_html_(self) -> str:
        return sized("".join(
            f"<details><summary><strong>{escape(block.title)}</strong></summary>{block.inner_html()}</details>"
            for block in self.blocks
        ))


CAUTIONS = "Read first"
"""What the cautions of a set-up stand under."""

COMMON = "A line without a source in brackets is common practice."


def parts_text(name: str) -> JointText:
    """The parts of a joint with what each is, and its other names.

    >>> print(repr(parts_text("dado")).splitlines()[5])
      wall, also cheek: Either side of the channel; the shelf stands on the lower one.
    """
    facts = joint_facts(name)
    lines = [
        Said(f"{part.name}{f', also {_either(part.also)}' if part.also else ''}: {part.what}") for part in facts.parts
    ]
    also = f", also called {_either(facts.also)}" if facts.also else ""
    return JointText(f"{facts.title}: its parts", (Heading(f"{facts.summary}", tuple(lines)),),
                     f"{facts.title}{also}.")


def rules_text(name: str) -> JointText:
    """The rules of proportion; where sources disagree each stands there, and the one that the bench takes is marked.

    >>> print(repr(rules_text("dado")).splitlines()[3])
    Depth: sources disagree
    """
    facts = joint_facts(name)
    return JointText(f"{facts.title}: how large", tuple(_rule(rule) for rule in facts.rules), COMMON)


def why_text(name: str) -> JointText:
    """What a joint resists and what it does not, grain, glue faces, and strength where a source was read."""
    facts = joint_facts(name)
    glue = tuple(Said(f"{face.kind}: {face.claim.say}", Said.of(face.claim).cited) for face in facts.glue)
    headings = [
        Heading("Where it is used", _said(facts.use)),
        Heading("What it resists", _said(facts.resists)),
        Heading("What it does not resist", _said(facts.weak)),
        Heading("Grain and movement", _said(facts.grain)),
        Heading("Glue faces", glue),
    ]
    strength = [Heading("Strength, as published", _said(facts.strength))] if facts.strength else []
    return JointText(f"{facts.title}: where and why", (*headings, *strength), COMMON)


def setups_text(name: str, *ways: str) -> JointTexts:
    """The set-ups of a joint, those of the `ways` that are named, or all; the cautions of each stand first in it.

    Raises KeyError for a way in which the joint is not cut.

    >>> [heading.title for heading in setups_text("dado", "router").blocks[0].headings][:2]
    ['Read first: router', 'Reference faces']
    """
    known = {one.way.name: one for one in setups(name)}
    return JointTexts(tuple(setup_text(known[way]) for way in (ways or known)))


def setup_text(setup: Setup) -> JointText:
    """One set-up: its cautions before anything else, then its steps."""
    title = f"{joint_facts(setup.joint).title} with {_with(setup.way.name)}"
    cautions = Heading(
        f"{CAUTIONS}: {setup.way.name}", tuple(Said.of(one.claim) for one in setup.cautions), alarm=True
    )
    steps = (
        Heading(_HEADINGS[heading], _said(getattr(setup, heading)), ordered=heading == "order")
        for heading in HEADINGS if getattr(setup, heading)
    )
    return JointText(title, (cautions, *steps), COMMON)


def faults_text(name: str) -> JointText:
    """What goes wrong: what it looks like, and what it comes from."""
    facts = joint_facts(name)
    lines = tuple(
        Said(f"{fault.name}: {fault.looks} {fault.cause.say}", Said.of(fault.cause).cited) for fault in facts.faults
    )
    return JointText(f"{facts.title}: what goes wrong", (Heading("Looks like this, and comes from that", lines),),
                     COMMON)


def _said(claims: Iterable[Claim]) -> tuple[Said, ...]:
    return tuple(Said.of(claim) for claim in claims)


def _rule(rule: Rule) -> Heading:
    about = f"{rule.about[:1].upper()}{rule.about[1:]}"
    return Heading(f"{about}: sources disagree" if rule.disagree else about, tuple(_values(rule)))


def _values(rule: Rule) -> Iterator[Said]:
    for value in rule.values:
        mark = ""
        if rule.disagree and value.default:
            whose = "the bench begins with this one" if rule.setting else "this workbook goes by this one"
            mark = f" - {whose}: {value.why}"
        yield Said(f"{value.claim.say}{mark}", value.claim.cited)


def _either(names: Sequence[str]) -> str:
    return " or ".join(names)


def _with(way: str) -> str:
    return {"hand tools": "hand tools", "single blade in passes": "a single blade, in passes"}.get(way, f"a {way}")
