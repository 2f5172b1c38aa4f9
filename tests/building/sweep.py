"""Can a board go in? Its solid is swept along its way, past those that stand by then: an independent solid modeller."""

import json

import numpy as np
from manifold3d import Manifold

from shoplib.documents.plan_file import plan_text
from tests.judge.solids import OVERLAP, Body, boxes_share, direction

FAR = 10_000.0
"""From so far off it comes (mm): farther than any case is large."""


def bodies_of(cabinet):
    """Each board as a solid, from the plan file alone."""
    return {board["name"]: Body(board) for board in json.loads(plan_text(cabinet, ()))["boards"]}


def struck(bodies, moving, standing, way):
    """The boards whose wood lies in the way of those that move in together along `way`, such as "-z"."""
    axis, sign = direction(way)
    back = np.zeros(3)
    back[axis] = -sign * FAR
    found = []
    for name in moving:
        for piece in bodies[name].pieces:
            swept = np.vstack([piece, piece + back])
            low, high = swept.min(axis=0), swept.max(axis=0)
            near = [other for other in standing if other not in found
                    and boxes_share(low, high, bodies[other].low, bodies[other].high) > OVERLAP]
            if near:
                hull = Manifold.hull_points(swept)
                found += [other for other in near if (hull ^ bodies[other].wood).volume() > OVERLAP]
    return found


def moves(cabinet, steps):
    """Everything that goes in, in order: what moves, what stands then, and its way.

    Case and plinth as their entries say; each drawer box apart as the highest of its kind, then boxes, pull-outs,
    fronts, strips, runners and loose shelves from the front, drawers from the bottom up.
    """
    standing = []
    for step in steps:
        if step.kind in ("glue", "back"):
            for entry in step.entries:
                if entry.way:
                    yield (entry.board,), tuple(standing), entry.way
                standing.append(entry.board)
        elif step.kind == "plinth":
            yield from (((entry.board,), entry.onto, entry.way) for entry in step.entries if entry.way)
            yield tuple(standing), step.boards, "-z"
            standing += step.boards
        elif step.boxes:
            for group in step.boxes.groups:
                yield from _box(cabinet, group, step.boxes)
        elif step.kind == "hang boxes":
            groups = [group for each in steps if each.boxes for group in each.boxes.groups]
            for group in sorted(groups, key=lambda one: cabinet.groups[one][0].box.low[2]):
                boards = tuple(b.name for b in cabinet.groups[group] if b.stage == 2)
                yield boards, tuple(standing), "+y"
                standing += boards
        elif step.kind == "pull-outs":
            for group in dict.fromkeys(cabinet.by_name[name].group for name in step.boards):
                boards = tuple(b.name for b in cabinet.groups[group] if b.stage == 2)
                yield boards, tuple(standing), "+y"
                standing += boards
        else:
            for name in step.boards:
                yield (name,), tuple(standing), "+y"
                standing.append(name)


def _box(cabinet, group, alike):
    drawn = cabinet.by_name[alike.entries[0].board].group
    names = {board.name for board in cabinet.groups[group]}
    for entry in alike.entries:
        if entry.way:
            onto = tuple(group + name.removeprefix(drawn) for name in entry.onto)
            board = group + entry.board.removeprefix(drawn)
            assert {board, *onto} <= names
            yield (board,), onto, entry.way


def faults(cabinet, steps, bodies=None):
    """Each board that cannot go in when its turn comes, with what it strikes."""
    bodies = bodies or bodies_of(cabinet)
    return [
        f"{', '.join(moving)} {way} strikes {', '.join(found)}"
        for moving, standing, way in moves(cabinet, steps) if (found := struck(bodies, moving, standing, way))
    ]
