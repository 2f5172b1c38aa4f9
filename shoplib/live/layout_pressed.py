"""What was pressed, chosen or typed on the page of a layout by hand, handed to its panel."""

from collections.abc import Callable, Mapping
from typing import TYPE_CHECKING

from shoplib.live.exercise_box import typed_line
from shoplib.live.layout_fields import FIELDS
from shoplib.live.layout_says import KINDS, WAYS

if TYPE_CHECKING:
    from shoplib.live.layout_panel import LayoutPanel


def pressed(panel: "LayoutPanel", content: object) -> None:
    """Do what a message of the page asks for; what is none of its keys, fields and choices changes nothing."""
    if not isinstance(content, Mapping):
        return
    keys: dict[str, Callable[[], str]] = {
        "lay": panel.lay, "along": panel.lay_along, "back": panel.take_back, "again": panel.start_again,
        "best": panel.show_best, "mine": panel.back_to_mine,
    }
    key = content.get("press")
    if panel.face.best_shown and key not in ("again", "mine"):
        return
    if isinstance(key, str) and key in keys:
        keys[key]()
    elif key == "enter" and content.get("name") in list(FIELDS):
        panel.enter(content["name"], typed_line(content.get("text", "")))
    elif key == "part" and content.get("part") in range(len(panel.hand.job.parts)):
        panel.choose_part(int(content["part"]))
    elif key == "turn" and isinstance(content.get("turned"), bool):
        panel.turn(content["turned"])
    elif key == "way" and content.get("way") in list(WAYS):
        panel.choose_way(content["way"])
    elif key == "place" and [content.get("place")] in [[value] for value, _ in panel.face.places]:
        panel.choose_place(content["place"])
    elif key == "point" and isinstance(content.get("name"), str):
        panel.point(content["name"])
    elif key == "strip" and content.get("way") in list(KINDS):
        panel.cut_strip(content["way"], typed_line(content.get("text", "")))
