"""Words of the trade that findings and lists use, each with its meaning in one line."""

import re
from collections.abc import Iterable, Mapping

WORDS = {
    "band": "a thin strip glued over a raw edge; the board is cut smaller by it",
    "cleat": "a strip behind a front, that the front is screwed to",
    "crosscut": "a cut across the grain",
    "dado": "a slot across a board that another board's end stands in",
    "dry-fit": "putting all together without glue; here it is done in numbers",
    "inside face": "the side of a board that looks into the case, or into its box",
    "kerf": "the slot that a saw leaves, or its width: wood that has become dust",
    "kicker": "a strip above a drawer's side that keeps it from tipping, pulled out",
    "near wall": "the side of a cut that is nearer to where the size is taken from",
    "PS 1": "the United States standard for plywood: how thick each size may be",
    "rabbet": "a step cut along an edge or end, open to one side",
    "rip": "a cut along the grain",
    "shim": "a thin slip of wood or card put behind something to fill a gap",
    "toe notch": "the lower front corner cut out of a side, as room for the feet",
    "undermount": "a slide that is screwed under the drawer and is not seen",
    "upright": "a side of the case, or a divider between two bays",
}
"""Meanings as the trade uses the words: common practice, no source."""

TOOL_WORDS = {
    "bench hook": "a board with a strip across each end, one below to catch the bench, one above to hold work against",
    "collet": "the split sleeve of a router that closes on the shank of the bit when its nut is tightened",
    "featherboard": "a board with a comb of thin springy fingers that presses the work to fence or table",
    "fence": "the straight guide that the work slides along, set so far from the cutter",
    "gullet": "the hollow before each tooth of a blade, which carries the chips away",
    "insert": "the plate in the table round the blade; its slot lets the blade through and holds up the wood",
    "kickback": "the blade throwing the work back at the one who feeds it, when it turns or binds at the fence",
    "mitre gauge": "a head that slides in a slot of the saw table and pushes a board across, square or at an angle",
    "offcut": "a piece that is left over; one of the same sheet is as thick as the work and serves for test cuts",
    "push block": "a block with a handle and a grip below that moves the work past the cutter in place of the hand",
    "push stick": "a stick with a notch at its end that moves narrow work past the blade in place of the hand",
    "racking": "being pushed out of square, as a case or frame without a back leans over to one side",
    "riving knife": "a plate behind the blade, up and down with it, that keeps the cut from closing on the blade",
    "shank": "the plain round part of a bit that the machine holds, or of a screw between head and thread",
    "sled": "a board on runners in the slots of the saw table that carries a piece square past the blade",
    "spreader": "a fixed plate behind the blade that keeps the cut open, and often carries the guard",
    "stop block": "a block clamped where the end of each piece comes to lie, so that all come out equally long",
    "tear-out": "splinters that a cutter breaks out of the wood where it leaves it",
    "thin-strip stop": "a stop on the side of the blade away from the fence, which the board touches before each strip",
}
"""Words of the cautions and set-ups that keep fingers on, which no lesson teaches: common practice, no source."""

BENCH_WORDS = {
    "brad": "a thin nail with a small head",
    "caul": "a straight stiff batten between clamps and wood that spreads their pressure",
    "clearance hole": "a hole so wide that a screw slips through: its head can pull the boards together",
    "collar": "a ring that is fixed on a drill bit, so that it goes in no deeper",
    "dado set": "two outer blades with cutters between them, side by side on one arbor, that cut a slot in one pass",
    "nailer": "a tool that shoots nails or brads with air or a battery, at one pull of its trigger",
    "pare": "to take off thin shavings with a sharp chisel, pushed by hand",
    "pilot hole": "a hole thinner than the screw, for its thread, so that the wood does not split",
    "plumb": "straight up and down, as a weight hangs on a string",
    "pocket": "a slanting hole in the face of a board that takes the head of a screw out of sight",
    "story stick": "a strip with the places of a case marked on it in true size, to lay on the work instead of a tape",
    "web": "the wood that stays before the head of a pocket screw: what it pulls on",
}
"""Words of the plan set about work at the bench, with the meaning that a lesson gives which teaches one: common
practice, no source."""


def words_of(text: str, words: Mapping[str, str] = WORDS) -> list[tuple[str, str]]:
    """The words of `WORDS`, or of others, that stand in a text, also where there are more of them, with their meanings.

    >>> [word for word, _ in words_of("Two shims under the dadoes; shimmer and abandon are no such words.")]
    ['dado', 'shim']
    """
    return [
        (word, meaning)
        for word, meaning in words.items()
        if re.search(rf"\b{re.escape(word)}(?:s|es|d|ed|med)?\b", text, 0 if word.isupper() else re.IGNORECASE)
    ]


def words_text(texts: Iterable[str]) -> str:
    """A short list of the words in the texts that may be new; empty where there are none.

    >>> print(words_text(["Shim the low end."]))
    Words
      shim: a thin slip of wood or card put behind something to fill a gap
    <BLANKLINE>
    """
    found = words_of("\n".join(texts))
    return "\n".join(["Words", *(f"  {word}: {meaning}" for word, meaning in found), ""]) if found else ""
