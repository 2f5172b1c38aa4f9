"""The wood that the cuts of each joint take, board by board, by closed formulas (cubic ticks); holes apart."""

from math import pi, radians, sin


def _dado(stock, v):
    return {"side": v["depth"] * (stock.enters.thickest + v["fit"]) * stock.width}


def _stopped_dado(stock, v):
    return {
        "side": v["depth"] * (stock.enters.thickest + v["fit"]) * (stock.width - v["stop"]),
        "shelf": (v["depth"] - v["end gap"]) * v["stop"] * stock.enters.thickness,
    }


def _pocket(stock, v):
    axis = stock.enters.thickness / 2 / sin(radians(v["angle"])) - v["web"]
    return {"shelf": v["count"] * (v["pocket"] ** 2 * axis + v["shank hole"] ** 2 * v["web"])}


def _tongue(stock, v):
    return {
        "side": v["depth"] * (v["tongue"] + v["fit"]) * stock.width,
        "bottom": (v["depth"] - v["end gap"]) * (stock.enters.thickness - v["tongue"]) * stock.width,
    }


def _drawer_lock(stock, v):
    tongue = stock.receives.thickness - v["lip"] - v["groove"]
    side, long = stock.enters.thickest, v["tongue length"]
    return {
        "front": (v["groove"] * side + tongue * (side - long)) * stock.width,
        "side": (long + v["end gap"]) * (tongue + v["fit"]) * stock.width,
    }


def _finger(stock, v):
    """Of the width, the lying board loses every second finger and a fit with each, the other what is left."""
    count = stock.width // v["finger"]
    rest = stock.width - count * v["finger"]
    lost = count // 2 * (v["finger"] + v["fit"])
    if count % 2 == 0:  # the last socket of the lying board runs out of its edge: half its fit less, and the rest
        lost += rest - (v["fit"] - v["fit"] // 2)
    kept = (count + 1) // 2 * v["finger"] + (rest if count % 2 else 0)
    return {
        "bottom": lost * (stock.receives.thickest + v["proud"]) * stock.enters.thickness,
        "side": kept * (stock.enters.thickest + v["proud"]) * stock.receives.thickness,
    }


FORMULAS = {
    "butt": lambda stock, v: {},
    "pocket screws": _pocket,
    "rabbet": _dado,
    "dado": _dado,
    "stopped dado": _stopped_dado,
    "groove": _dado,
    "tongue": _tongue,
    "drawer lock": _drawer_lock,
    "finger": _finger,
}
SLANTED = {"pocket screws"}
"""Their corners are rounded to ticks, so the formula is met within some parts in a hundred thousand."""


def _round(count, diameter, depth):
    return count * pi / 4 * diameter**2 * depth


HOLES = {
    "butt": lambda stock, v: {
        "side": _round(v["count"], v["clearance hole"], stock.receives.thickness),
        "bottom": _round(v["count"], v["pilot hole"], v["screw"] - stock.receives.thickness),
    },
}
"""Bored away, where a joint is bored."""
