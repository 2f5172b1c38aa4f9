"""A whole cabinet as solids, seen from the front, the right and above: closed, and drawn apart.

Where there are more boards than can be told in one picture, the exploded view shows the boards of the case with whole
drawers before it, and one drawer of each build is drawn apart in a picture of its own.
"""

from collections.abc import Mapping
from dataclasses import replace

import shapely

from shoplib.draw.apart import apart
from shoplib.draw.chains import bare, unit_note
from shoplib.draw.marks import DOT_STEP
from shoplib.draw.scene import Region, Scene, Told
from shoplib.draw.solid_view import END_GRAIN, solid_view
from shoplib.draw.solids_named import named, out_of_sight
from shoplib.model.board import Board
from shoplib.model.box import Point
from shoplib.model.solved import Cabinet
from shoplib.words.naming import and_list, boards_in_short, in_short

MOST = 20
"""So many boards are drawn apart in one picture: more names make it too small on a page that stands."""

_CASE = "case"
_FARTHER = (1, 2, 3)
"""How many times as far boards are moved apart, tried in turn while any of them is out of sight."""
SMALLEST = (400.0, 240.0)
"""No picture of a whole is drawn smaller, in units of the page: what is told under it is seen at this size too."""
_NO_HARDWARE = "No hardware is drawn."


def whole_scenes(cabinet: Cabinet) -> list[tuple[str, Scene]]:
    """Every picture of the whole, after the stem of its file: the closed cabinet, the exploded view, and each drawer
    that is drawn apart by itself."""
    return [
        ("assembled-view", assembled_view(cabinet)), ("exploded-view", exploded_view(cabinet)),
        *((f"exploded-{name.replace(' ', '-')}", scene) for name, scene in drawers_apart(cabinet)),
    ]


def assembled_view(cabinet: Cabinet) -> Scene:
    """The closed cabinet: the boards that are seen by name, of a large one each drawer; the others told under it.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("finger_jointed_drawers")
    >>> assembled_view(cabinet).title
    'Assembled view: Finger-jointed drawers'
    """
    note = unit_note(cabinet.style, f"Over all {_over_all(cabinet)}. {_NO_HARDWARE}")
    texts = _by_text(cabinet)
    return _with_sizes(_told(_drawn(f"Assembled view: {cabinet.name}", note, texts, {}), texts), cabinet)


def exploded_view(cabinet: Cabinet) -> Scene:
    """The cabinet drawn apart, every board by name; of a large one, every board of the case and every whole drawer.

    >>> from shoplib.documents.examples import cabinet_from
    >>> exploded_view(cabinet_from("finger_jointed_drawers")).title
    'Exploded view: Finger-jointed drawers'
    """
    whole = drawers_stay_whole(cabinet)
    made = tuple(
        f"Not drawn apart here: {and_list(in_short(names))}{'; each is' if names[1:] else ','} made of "
        f"{and_list([_part(board, names[0]) for board in boards])}."
        for names, boards in (_builds(cabinet) if whole else ())
    )
    note = unit_note(cabinet.style, f"Moved apart; together {_over_all(cabinet)}. {_NO_HARDWARE}")
    return _with_sizes(_apart(f"Exploded view: {cabinet.name}", note, _by_text(cabinet), whole, made), cabinet)


def _by_text(cabinet: Cabinet) -> dict[str, list[Board]]:
    """What is named in a picture of the whole, and the boards of it."""
    whole = drawers_stay_whole(cabinet)
    texts: dict[str, list[Board]] = {}
    for board in cabinet.boards:
        texts.setdefault(board.group if whole and board.group != _CASE else board.name, []).append(board)
    return texts


def drawers_stay_whole(cabinet: Cabinet) -> bool:
    """Whether the exploded view shows whole drawers, and `drawers_apart` their boards.

    >>> from shoplib.documents.examples import cabinet_from
    >>> [drawers_stay_whole(cabinet_from(name)) for name in ("finger_jointed_drawers", "rolling_stand")]
    [False, True]
    """
    return len(cabinet.boards) > MOST and any(board.group != _CASE for board in cabinet.boards)


def drawers_apart(cabinet: Cabinet) -> list[tuple[str, Scene]]:
    """One drawer (or pull-out) of each build drawn apart, after its name; none where the exploded view has all boards.

    What differs in its sizes alone is of one build, and is named under the picture.

    >>> from shoplib.documents.examples import cabinet_from
    >>> [name for name, _ in drawers_apart(cabinet_from("rolling_stand"))]
    ['bay 1 drawer 1']
    """
    return [(names[0], _drawer(names, boards)) for names, boards in _builds(cabinet)] \
        if drawers_stay_whole(cabinet) else []


def _builds(cabinet: Cabinet) -> list[tuple[list[str], list[Board]]]:
    """The drawers that go together in one way, whatever their sizes, and the boards of the first of them: as many
    boards, called alike, each with the same kinds of cuts."""
    units: dict[str, list[Board]] = {}
    for board in cabinet.boards:
        if board.group != _CASE:
            units.setdefault(board.group, []).append(board)
    builds: dict[tuple, list[str]] = {}
    for name, boards in units.items():
        build = tuple((_part(board, name), frozenset(cut.kind for cut in board.cuts)) for board in boards)
        builds.setdefault(build, []).append(name)
    return [(names, units[names[0]]) for names in builds.values()]


def _part(board: Board, drawer: str) -> str:
    return board.name.removeprefix(f"{drawer} ")


def _drawer(names: list[str], boards: list[Board]) -> Scene:
    alike = (f"Made of the same boards, in sizes of their own: {and_list(in_short(names[1:]))}.",) if names[1:] else ()
    texts = {_part(board, names[0]): [board] for board in boards}
    note = f"Moved apart. For sizes see the cut list. {_NO_HARDWARE}"
    return _apart(f"Exploded view: {names[0]}", note, texts, False, alike)


def _apart(
    title: str, note: str, texts: Mapping[str, list[Board]], whole_drawers: bool, more: tuple[str, ...],
) -> Scene:
    """The boards moved apart, as far as it takes to see something of each, or as much as can be."""
    boards = [board for mine in texts.values() for board in mine]
    best, fewest = None, len(texts) + 1
    for times in _FARTHER:
        scene = _drawn(title, note, texts, apart(boards, whole_drawers, times))
        hidden = len(out_of_sight(scene, _names(texts)))
        if hidden < fewest:
            best, fewest = scene, hidden
        if not hidden:
            break
    return _told(best, texts, more)


def _drawn(title: str, note: str, texts: Mapping[str, list[Board]], moved: Mapping[str, Point]) -> Scene:
    """The boards where `moved` puts them, not named yet."""
    boards = [board for mine in texts.values() for board in mine]
    return _dotted_where_seen(solid_view(boards, title, note, said={}, moved=moved, ways=False))


def _dotted_where_seen(scene: Scene) -> Scene:
    """The scene with dots for end grain on faces that have room for them alone; where none has, nothing is told of
    dots either."""
    scale = min(fit / size for fit, size in zip(SMALLEST, scene.size, strict=True))
    items = tuple(
        replace(item, dotted=False) if isinstance(item, Region) and item.dotted and not _has_dots(item, scale) else item
        for item in scene.items
    )
    seen = any(isinstance(item, Region) and item.dotted for item in items)
    legend = tuple(line for line in scene.legend if seen or line != END_GRAIN)
    return replace(scene, items=items, legend=legend)


def _has_dots(face: Region, scale: float) -> bool:
    """Whether it is as wide as its dots stand apart: in what is narrower a dot falls here and there, like dirt."""
    area = shapely.Polygon(face.rings[0], face.rings[1:])
    return not shapely.buffer(area, -DOT_STEP / 2 / scale, quad_segs=2).is_empty


def _told(scene: Scene, texts: Mapping[str, list[Board]], more: tuple[str, ...] = ()) -> Scene:
    """The scene with each of `texts` on or beside its boards; what is out of sight is told in words."""
    found = named(scene, _names(texts))
    called = {text: text for text in texts}
    if found.crowded:
        # A number has room on most boards: the names then stand in a list.
        called = {str(number): text for number, text in enumerate(texts, 1)}
        found = named(scene, _names({number: texts[text] for number, text in called.items()}), plates=True)
    hidden = [called[short] for short in found.hidden]
    out = boards_in_short(board for text in hidden for board in texts[text])
    numbers = "; ".join(f"{short}: {text}" for short, text in called.items() if short != text and text not in hidden)
    legend = (
        *((f"{numbers}.",) if numbers else ()), *((f"Out of sight: {out}.",) if hidden else ()), *more,
    )
    seen = and_list([text for text in texts if text not in hidden])
    return scene.with_items(*found.items, legend=legend, alt=" ".join([f"Named: {seen}.", *legend]))


def _names(texts: Mapping[str, list[Board]]) -> dict[str, list[str]]:
    return {text: [board.name for board in boards] for text, boards in texts.items()}


def _over_all(cabinet: Cabinet) -> str:
    wide, deep, high = (bare(size, cabinet.style) for size in cabinet.outside.size)
    return f"{wide} wide, {deep} deep, {high} high"


def _with_sizes(scene: Scene, cabinet: Cabinet) -> Scene:
    """The scene, whose note can be asked for the sizes over all."""
    called = ("width over all", "depth over all", "height over all")
    return scene.with_items(told=(Told(scene.note, tuple(zip(called, cabinet.outside.size, strict=True))),))
