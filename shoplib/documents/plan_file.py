"""plan.json: the planned cabinet in millimetres, for other programs (format 1)."""

import json
from collections.abc import Iterable

from shoplib.measure import to_mm
from shoplib.model.board import Board, BoxCut, Cut, PrismCut
from shoplib.model.box import Box, Point
from shoplib.model.cabinet import designed_sizes
from shoplib.model.solved import Cabinet, Finding, Hardware, Joint


def plan_text(cabinet: Cabinet, findings: Iterable[Finding], in_use: Iterable[Finding] = ()) -> str:
    """The text of plan.json: the same cabinet gives the same bytes, on every system."""
    return json.dumps(plan_dict(cabinet, findings, in_use), indent=1, ensure_ascii=False, allow_nan=False) + "\n"


def plan_dict(cabinet: Cabinet, findings: Iterable[Finding], in_use: Iterable[Finding] = ()) -> dict:
    """The plan as plain values. Lengths are millimetres, exact to 1e-6.

    `findings` are those of the dry-fit, `in_use` those of the case in use.

    `outside` is the box over all boards, closed; `envelope` that plus casters, feet and pulls. A
    joint's `axis` is the world direction in which the board enters. A board's `origin` is the world
    point of its own (0, 0, 0), `axes` say which world direction its length, width and thickness run,
    and `designed` is its size before anything was rounded for the shop. `sums`, `waiting` and
    `spacers` are what stands under the cut list.
    """
    designed = designed_sizes(cabinet.project)
    return {
        "format": 1,
        "units": "mm",
        "name": cabinet.name,
        "outside": _sizes(cabinet.outside),
        "envelope": _sizes(cabinet.envelope),
        "sheets": [
            {"name": s.name, "readings": _mm(s.readings), "thickness": to_mm(s.thickness)}
            for s in cabinet.sheets.values()
        ],
        "boards": [board_record(board, designed[board.name]) for board in cabinet.boards],
        "joints": [_joint(joint) for joint in cabinet.joints],
        "travel": [{"group": run.group, "vector": _mm(run.vector)} for run in cabinet.travel],
        "gaps": [{"between": list(gap.between), "along": gap.along, "size": to_mm(gap.size)} for gap in cabinet.gaps],
        "hardware": [_hardware(fitting) for fitting in cabinet.hardware],
        "findings": [_finding(finding) for finding in findings],
        "in_use": [_finding(finding) for finding in in_use],
        "sums": [
            {
                "terms": [[what, to_mm(ticks)] for what, ticks in chain.terms],
                "total": [chain.total[0], to_mm(chain.total[1])],
            }
            for chain in cabinet.sums
        ],
        "waiting": [{"stage": one.stage, "text": one.text} for one in cabinet.waiting],
        "spacers": [{"what": one.text, "height": to_mm(one.height)} for one in cabinet.spacers],
    }


def _mm(ticks: Iterable[int]) -> list[float]:
    return [to_mm(value) for value in ticks]


def _sizes(box: Box) -> dict:
    width, depth, height = _mm(box.size)
    return {"width": width, "height": height, "depth": depth}


def board_record(board: Board, designed: Point) -> dict:
    """One board as plain values, in millimetres; `designed` is its size before anything was rounded for the shop."""
    return {
        "name": board.name,
        "group": board.group,
        "role": board.role,
        "stage": board.stage,
        "sheet": board.sheet,
        "size": _mm(board.size),
        "designed": _mm(designed),
        "cut_size": _mm(board.cut_size),
        "grain": board.grain,
        "edging": {edge: to_mm(strip.thickness) for edge, strip in board.edging},
        "origin": _mm(board.placement.origin),
        "axes": list(board.placement.axes),
        "cuts": [_cut(cut) for cut in board.cuts],
    }


def _cut(cut: Cut) -> dict:
    if isinstance(cut, BoxCut):
        return {"kind": cut.kind, "low": _mm(cut.low), "high": _mm(cut.high), "for": cut.for_board}
    if isinstance(cut, PrismCut):
        return {
            "kind": cut.kind,
            "outline": [_mm(corner) for corner in cut.outline],
            "along": cut.along,
            "from": to_mm(cut.start),
            "to": to_mm(cut.end),
            "for": cut.for_board,
        }
    return {
        "kind": cut.kind,
        "centre": _mm(cut.centre),
        "along": cut.along,
        "diameter": to_mm(cut.diameter),
        "depth": to_mm(cut.depth),
        "for": cut.for_board,
    }


def _joint(joint: Joint) -> dict:
    return {
        "kind": joint.kind,
        "enters": joint.enters,
        "receives": joint.receives,
        "axis": joint.axis,
        "depth": to_mm(joint.depth),
        "fit": to_mm(joint.fit),
        "end_gap": to_mm(joint.end_gap),
        "tongue": to_mm(joint.tongue),
    }


def _hardware(fitting: Hardware) -> dict:
    return {
        "what": fitting.what,
        "on": fitting.on,
        "group": fitting.group,
        "low": _mm(fitting.box.low),
        "high": _mm(fitting.box.high),
        "row": fitting.row,
        "screws": [
            {"gauge": s.gauge, "length": to_mm(s.length), "into": s.into, "count": s.count} for s in fitting.screws
        ],
    }


def _finding(finding: Finding) -> dict:
    return {
        "check": finding.check,
        "level": finding.level,
        "boards": list(finding.boards),
        "text": finding.text,
        "amount": None if finding.amount is None else to_mm(finding.amount),
    }
