"""`python3 -m shoplib practice JOINT --thickness LENGTH --to FOLDER`: a practice sheet for a measured sheet."""

import difflib
import sys
from dataclasses import replace
from pathlib import Path

from shoplib.documents.asked import NotUnderstood, date_printed, folder_called, paper_called, paper_name
from shoplib.documents.atomic import WriteError, write_files
from shoplib.documents.paper import AT_FULL_SIZE, LAY_A_RULE, USUAL
from shoplib.documents.practice_pieces import practice_stock
from shoplib.documents.practice_sheet import practice_sheet
from shoplib.documents.practice_tools import Tools, usual_tools
from shoplib.joints import JOINTS
from shoplib.joints.bench_pair import CannotCut, JointKind
from shoplib.measure import INCH, INCH_STYLE, MM_STYLE, LengthError, Style, read_length, unit_written, write_measured
from shoplib.model.sheet import Sheet
from shoplib.tables.dado_sets import DadoSet
from shoplib.tables.joint_facts import joint_facts
from shoplib.tables.setups import setups

WRITTEN, NO_SHEET = 0, 2

_SAME_SHEET = INCH // 8
"""A reading that is farther off than this is of another sheet, or a slip."""


def run(name: str, to: str, thickness: str, receives: str, tool: str, paper: str, date: str,
        outer: str, chippers: str, shims: str, *readings: str) -> int:
    """Write the sheet into the folder `to`; return 0 written, 2 not: then nothing is, and one sentence says why.

    `outer`, `chippers` and `shims` are the pieces of an own dado set, "; " between them; without any of them the
    sheet is worked for the set of the tables.
    """
    try:
        folder_called(to, "my_practice")
        kind = joint_called(name)
        way = way_called(tool, kind)
        style = MM_STYLE if unit_written(thickness, what="thickness") == "mm" else INCH_STYLE
        paper = paper_called(paper) if paper else USUAL[style.unit]
        sheet = _sheet("entering sheet", thickness, readings, style)
        other = _sheet("receiving sheet", receives, (), style) if receives else sheet
        stock = practice_stock(kind, sheet, other, style)
        pdf = practice_sheet(kind, stock, way, date=date_printed(date), paper=paper,
                             tools=tools_owned(style, outer, chippers, shims))
        file = f"practice-{kind.name}-{way}.pdf".replace(" ", "-")
        write_files(to, {file: pdf})
    except CannotCut as fault:
        print(f"A {kind.title} cannot be cut in this sheet: {fault}", file=sys.stderr)
        return NO_SHEET
    except (LengthError, NotUnderstood, WriteError) as fault:
        print(fault, file=sys.stderr)
        return NO_SHEET
    print(f"Written: {Path(to) / file} ({kind.title}, {way}, {paper_name(paper)} paper).")
    print(f"Print it {AT_FULL_SIZE}, and {LAY_A_RULE}.\nRead the cautions first.")
    return WRITTEN


def joint_called(name: str) -> JointKind:
    """The joint of that name, title or other name; raises NotUnderstood with a near one, or all of them.

    >>> joint_called("Drawer-front joint").name, joint_called("housing").name
    ('drawer lock', 'dado')
    >>> joint_called("dadoe")
    Traceback (most recent call last):
    shoplib.documents.asked.NotUnderstood: There is no joint called "dadoe": did you mean dado?
    """
    known: dict[str, JointKind] = {}
    for kind in JOINTS:
        for also in (kind.name, kind.title, *(other.partition(" (")[0] for other in joint_facts(kind.name).also)):
            known.setdefault(_plain(also), kind)
    wanted = _plain(name)
    if wanted in known:
        return known[wanted]
    near = difflib.get_close_matches(wanted, known, 1)
    all_names = ", ".join(kind.name for kind in JOINTS)
    meant = f"did you mean {near[0]}?" if near else f"there are {all_names}."
    raise NotUnderstood(f'There is no joint called "{name}": {meant}')


def way_called(text: str, kind: JointKind) -> str:
    """The way of cutting that is meant, the joint's first where none is; raises NotUnderstood with those there are.

    >>> way_called("blade", joint_called("dado")), way_called("", joint_called("butt"))
    ('single blade in passes', 'drill')
    """
    ways = [setup.way.name for setup in setups(kind.name)]
    found = [way for way in ways if _plain(text) in way] if text.strip() else ways[:1]
    if len(found) != 1:
        raise NotUnderstood(f'A {kind.title} is not set up by "{text}" here: there are {", ".join(ways)}.')
    return found[0]


def tools_owned(style: Style, outer: str, chippers: str, shims: str) -> Tools:
    """The usual tools, with an own dado set where pieces of one are named; raises LengthError, NotUnderstood.

    >>> own = tools_owned(INCH_STYLE, "", "1/8 in; 1/16 in", "").dado_set
    >>> own.name, own.outer == INCH // 8, len(own.chippers), own.shims
    ('your own dado set', True, 2, ())
    """
    usual = usual_tools(style)
    found = {name: tuple(read_length(piece, what=name) for piece in text.split("; ") if piece)
             for name, text in (("outer", outer), ("chippers", chippers), ("shims", shims))}
    if not any(found.values()):
        return usual
    if len(found["outer"]) > 1:
        raise NotUnderstood("Both outer cutters of a dado set are alike: give the width of one.")
    own = DadoSet("your own dado set", style.unit, usual.dado_set.diameter,
                  found["outer"][0] if found["outer"] else usual.dado_set.outer, found["chippers"], found["shims"])
    return replace(usual, dado_set=own)


def _plain(text: str) -> str:
    return " ".join(text.lower().replace("-", " ").replace("_", " ").split())


def _sheet(name: str, thickness: str, readings: tuple[str, ...], style: Style) -> Sheet:
    nominal = read_length(thickness, what="thickness")
    read = tuple(read_length(text, what="reading") for text in readings)
    for one in read:
        if abs(one - nominal) > _SAME_SHEET:
            raise NotUnderstood(
                f"A reading of {write_measured(one, style)} is not of a sheet of {write_measured(nominal, style)}: "
                "measure again, or give the other thickness."
            )
    return Sheet(name, "plywood", nominal, read)
