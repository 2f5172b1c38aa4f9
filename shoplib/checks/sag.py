"""Will shelves and drawer bottoms hold what is put in, or sag more than is seen as sound?"""

from collections.abc import Iterable
from dataclasses import dataclass

from shoplib.measure import narrowest, thickest, to_step, write_brief
from shoplib.measure.quantity import read_quantity, write_load
from shoplib.model.board import Board
from shoplib.model.laden import drawer_groups
from shoplib.model.material import Material, material_of
from shoplib.model.sag import Sag, between, board_sag, bottom_sag
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.naming import and_list, boards_in_short

SHELVES = ("fixed shelf", "loose shelf")


@dataclass(frozen=True, slots=True)
class _Bent:
    board: Board
    material: Material
    sag: Sag

    @property
    def part_of_limit(self) -> tuple[int, int]:
        """How near the limit it comes, to compare by: in thousandths, then the sag itself."""
        return 1000 * self.sag.most // self.sag.allowed, self.sag.most


def find_sagging_shelves(cabinet: Cabinet) -> tuple[Finding, ...]:
    """One finding for all shelves: "warn" about those that may pass the limit, else about the one nearest to it.

    The limit is that of KCMA A161.1 (read). Shelves are taken as simply supported; a dado holds them better. The
    amount is the most that it may sag in years.
    """
    shelves = [board for board in cabinet.boards if board.role in SHELVES]
    mend = "Make its span shorter or the shelf thicker, or put less on it; a strip on edge under its front helps too"
    return _finding(cabinet, shelves, "shelves", mend)


def find_sagging_bottoms(cabinet: Cabinet) -> tuple[Finding, ...]:
    """One finding for the bottoms of all drawers, about those that may pass the limit, or the one nearest to it.

    A bottom is taken as a strip over its shorter way, which is on the safe side: grooves hold it on four sides.
    """
    bottoms = [
        board for group in drawer_groups(cabinet) for board in cabinet.groups[group] if board.role == "box bottom"
    ]
    mend = "Take a thicker bottom or a narrower drawer, put less in it, or glue a strip under its middle"
    return _finding(cabinet, bottoms, "drawer bottoms", mend)


def _finding(cabinet: Cabinet, boards: list[Board], what: str, mend: str) -> tuple[Finding, ...]:
    if not boards or cabinet.project is None:
        return ()
    bent = list(_bent(cabinet, boards))
    told = _unknown(cabinet, boards, what)
    if not bent:
        return told
    worst = sorted(bent, key=lambda each: each.part_of_limit)[-1]
    sag, style = worst.sag, cabinet.style
    load = write_load(read_quantity(cabinet.project.in_use.put_in), style.unit)
    if sag.too_much:
        told_of = [each for each in bent if each.sag.too_much and each.board.sheet == worst.board.sheet]
    else:
        told_of = [each for each in bent if each.sag == sag]
    alike, sags = [each.board for each in told_of], [each.sag for each in told_of]
    least, limit = narrowest([each.least for each in sags]), narrowest([each.allowed for each in sags])
    spans = [to_step(each.span, style.step) for each in sags]
    up_to = "up to " if any(span != spans[0] for span in spans) else ""
    strip = (
        " (a strip over the shorter way, its face grain along it; held on four sides it sags less, to a third where "
        "square)"
    )
    says = (
        f"{boards_in_short(alike)}: {'each bridges' if len(alike) > 1 else 'bridges'} {up_to}"
        f"{write_brief(thickest(spans), style)} and in years may sag "
        f"{between(least, sag.most, style)} under {load} and its own weight, by the range of "
        f"{worst.material.known_as}{strip if what == 'drawer bottoms' else ''}"
    )
    allowed = f"the {write_brief(limit, style, decimal=True)} that KCMA A161.1 allows a shelf"
    if sag.too_much:
        mending = Finding("sag", "warn", _names(alike), f"{says}: more than {allowed}. {mend}.", sag.most)
        return (mending, *told)
    others = "" if len(alike) == len(boards) else f" Of all {what} this comes nearest to it."
    return (Finding("sag", "note", _names(alike), f"{says}: within {allowed}.{others}", sag.most), *told)


def _bent(cabinet: Cabinet, boards: Iterable[Board]) -> Iterable[_Bent]:
    """The sag of each board that has a figure; equal boards are worked out once."""
    load, known = read_quantity(cabinet.project.in_use.put_in), {}
    for board in boards:
        material = _material(cabinet, board)
        wide, deep, thick = free_size(cabinet, board)
        if material is None or not (wide > 0 and deep > 0):
            continue
        key = (board.sheet, board.role == "box bottom", wide, deep, thick)
        if key not in known:
            bend = bottom_sag if board.role == "box bottom" else board_sag
            known[key] = bend(wide, deep, thick, material, load, cabinet.style)
        yield _Bent(board, material, known[key])


def free_size(cabinet: Cabinet, board: Board) -> tuple[int, int, int]:
    """Width and depth of a level board between what holds it, and its thickness (ticks): what is let in is not free."""
    size = list(board.box.size)
    for joint in cabinet.joints:
        if joint.enters == board.name and joint.depth:
            size["xyz".index(joint.axis[1])] -= joint.depth - joint.end_gap
    if board.role == "fixed shelf":
        size[1] = board.box.size[1]  # it is held at its ends; what its rear enters takes nothing from its section
    sheet = cabinet.sheets.get(board.sheet)
    return size[0], size[1], narrowest([size[2], sheet.thinnest]) if sheet else size[2]


def _material(cabinet: Cabinet, board: Board) -> Material | None:
    sheet = cabinet.sheets.get(board.sheet)
    return material_of(sheet) if sheet else None


def _unknown(cabinet: Cabinet, boards: list[Board], what: str) -> tuple[Finding, ...]:
    """One note for the boards of which no figure for their stiffness was read."""
    without = [board for board in boards if _material(cabinet, board) is None]
    if not without:
        return ()
    sheets = and_list(list(dict.fromkeys(board.sheet for board in without)))
    text = f"No stiffness of {sheets} stands in the tables here, so the sag of its {what} is not known."
    return (Finding("sag", "note", _names(without), text),)


def _names(boards: Iterable[Board]) -> tuple[str, ...]:
    return tuple(board.name for board in boards)
