"""The dimensions of a drawing by name, so that a size that is picked on it can be explained."""

from shoplib.draw.scene import Chain, Running, Scene


def dimension(scene: Scene, ask: str) -> int:
    """The length that a dimension tells, in ticks, by the name that `draw(..., asked=True)` gave it.

    It is read off the scene, so a scene drawn of a cabinet that carries its working carries it too. Raises
    LookupError for a name that the scene does not have.

    >>> scene = Scene("Bench", "inches", "A bench.", (0, 0, 9, 9), (Chain("below", 0, (0, 4, 9), ("4", "5")),))
    >>> dimension(scene, "0.1")
    5
    """
    number, _, k = ask.partition(".")
    try:
        item, place = scene.items[int(number)], int(k)
        if isinstance(item, Chain):
            if item.sizes:
                return item.sizes[place]
            return item.at[place + 1] - item.at[place]
        if isinstance(item, Running):
            return abs(item.at[place] - item.datum)
    except (ValueError, IndexError):
        pass
    raise LookupError(f"{scene.title}: there is no dimension {ask!r}")
