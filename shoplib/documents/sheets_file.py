"""sheets.json: the sheets as they are laid out and cut, in millimetres, for other programs (format 1)."""

import json

from shoplib.buying.board_measure import Wood, board_feet, cubic_metres
from shoplib.buying.board_words import boards_told
from shoplib.buying.laid import LaidJob, LaidOut, LaidSheet, Piece
from shoplib.buying.numbering import Turn, turns
from shoplib.buying.wood_used import wood_used
from shoplib.documents.cut_order_file import board_of
from shoplib.layout.order import Piece as OnSaw
from shoplib.layout.order import Step
from shoplib.layout.pieces import Rect
from shoplib.measure import MM, to_mm


def sheets_text(found: LaidOut) -> str:
    """The text of sheets.json: the same layouts give the same bytes, on every system."""
    return json.dumps(sheets_dict(found), indent=1, ensure_ascii=False, allow_nan=False) + "\n"


def sheets_dict(found: LaidOut) -> dict:
    """The layouts as plain values. Lengths are millimetres, exact to 1e-6.

    On each sheet `x` runs along its length, which is the way of its grain, and `y` along its width, both from the same
    corner; `w` is a size along x, `h` one along y. A `turned` part lies across the grain. `trim` comes off each end
    and each long edge before all else. A solid board is as thick as it comes, rough; `planed` is what it is planed
    to, null for a sheet. `fence` of a cut is the size of what comes `off`, from the blade to what the cut is
    `set_by`: fence, stop, thin-strip stop, or a line that a guided saw follows; `left` is the rest of the `piece`, null
    where the blade takes it. Of a `trim` cut, `off` is what is kept. Cuts with the same `setting` follow one another; a
    `short` one runs along the grain of a piece too short for the fence, one that comes `again` was set before, a `skim`
    takes less than the blade off. `left_to_size` has the letters of parts whose size is only what remains. `left_of`
    names the sheet whose offcut this is, where an earlier stage leaves it.

    `areas` are whole square units of `area_unit`; parts, kerf, trim and offcuts together are the sheet. `jobs` tell
    what was laid out together, what its stock costs, and the least that any layout can cost. `wood` tells of each solid
    sheet what becomes of its rough boards, `bought` standing for all of them, those in the shop too; a solid part has
    its rough size here. `notes` are sentences to read before boards are cut.
    """
    return {
        "format": 1,
        "units": "mm",
        "area_unit": f"mm2 / {MM**2}",
        "name": found.cabinet.name,
        "stopped": found.stopped,
        "jobs": [_job(job, found) for job in found.jobs],
        "sheets": [_sheet(sheet) for sheet in found.sheets],
        "order": _order(found),
        "wood": {name: _wood(wood) for name, wood in wood_used(found).items()},
        "notes": boards_told(found),
    }


def _job(job: LaidJob, found: LaidOut) -> dict:
    money = found.cabinet.project.buying.currency
    return {
        "sheet": job.ask.sheet.name,
        "stages": list(job.ask.stages),
        "sheets": [sheet.name for sheet in job.sheets],
        "cost": job.layout.cost,
        "bound": job.layout.bound,
        "cost_in": f"hundredths of {money}" if job.on.priced else "mm2",
    }


def _sheet(sheet: LaidSheet) -> dict:
    stock = sheet.stock
    return {
        "name": sheet.name,
        "sheet": sheet.sheet.name,
        "stages": list(sheet.stages),
        "bought": sheet.bought,
        "left_of": sheet.held.left_of if sheet.held else "",
        "length": to_mm(stock.length),
        "width": to_mm(stock.width),
        "thickness": to_mm(sheet.thickness),
        "planed": to_mm(sheet.sheet.thickness) if sheet.sheet.kind == "solid" else None,
        "kerf": to_mm(sheet.kerf),
        "trim": {"ends": to_mm(stock.trim_ends), "edges": to_mm(stock.trim_edges)},
        "parts": [_part(piece) for piece in sheet.pieces],
        "offcuts": [_rect(rest) for rest in sheet.sawn.offcuts],
        "areas": {
            "sheet": stock.length * stock.width,
            "parts": sum(piece.placed.at.area for piece in sheet.pieces),
            "kerf": sheet.sawn.kerf,
            "trim": sheet.sawn.trim,
            "offcuts": sum(rest.area for rest in sheet.sawn.offcuts),
        },
    }


def _part(piece: Piece) -> dict:
    return {
        "board": piece.board.name,
        "stave": piece.stave,
        "letter": piece.letter,
        **_rect(piece.placed.at),
        "turned": piece.placed.turned,
    }


def _rect(at: Rect) -> dict:
    return {"x": to_mm(at.x), "y": to_mm(at.y), "w": to_mm(at.w), "h": to_mm(at.h)}


def _order(found: LaidOut) -> list[dict]:
    """All saw cuts, step by step, numbered as in cut_order.csv, where joint cuts stand between them."""
    return [_step(step, turn) for turn in turns(found) for step in turn.cuts]


def _step(step: Step, turn: Turn) -> dict:
    job = turn.job
    on = job.sheets[step.sheet]
    return {
        "step": turn.steps + step.number,
        "setting": turn.settings + step.setting,
        "sheet": on.name,
        "kind": step.kind,
        "set_by": step.set_by,
        "fence": to_mm(step.fence),
        "piece": _made(step.piece, on),
        "cuts": [
            {
                "piece": _rect(cut.piece),
                "off": _rect(cut.off),
                "left": None if cut.left is None else _rect(cut.left),
            }
            for cut in step.cuts
        ],
        "off": [_made(piece, on) for piece in step.off],
        "left": None if step.left is None else _made(step.left, on),
        "heavy": step.heavy,
        "short": step.short,
        "again": step.again,
        "skim": to_mm(step.skim),
        "left_to_size": [job.ask.letters[part] for part in step.to_size],
    }


def _wood(wood: Wood) -> dict:
    amounts = {name: getattr(wood, name) for name in ("bought", "finished", "planed", "kerf", "trim", "offcuts")}
    return {
        "board_feet": round(float(board_feet(wood.bought)), 6),
        "m3": {name: round(float(cubic_metres(volume)), 9) for name, volume in amounts.items()},
        "waste_percent": round(float(wood.waste), 3),
    }


def _made(piece: OnSaw, on: LaidSheet) -> dict:
    mark = piece.mark if piece.part is None else board_of(piece, on)
    return {"mark": mark, "part": piece.part is not None, **_rect(piece.at)}
