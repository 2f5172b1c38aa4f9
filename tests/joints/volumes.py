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
    """Sockets of both boards, side by side, are as wide as the board and half a fit with each; the last, which runs out
    of the edge, has none."""
    count, half = stock.width // v["finger"], v["fit"] // 2
    rest = stock.width - count * v["finger"]
    own, mate = count // 2, (count + 1) // 2
    lost = own * (v["finger"] + half) + (rest - half if count % 2 == 0 else 0)
    kept = mate * (v["finger"] + half) + (rest - half if count % 2 else 0)
    return {
        "bottom": lost * (stock.receives.thickest + v["proud"]) * stock.enters.thickness,
        "side": kept * (stock.enters.thickest + v["proud"]) * stock.receives.thickness,
    }


def _half_lap(stock, v):
    across, long = stock.across, v["long"]
    return {
        "rail": (stock.enters.thickness - v["lap"]) * (across + long) * stock.width,
        "stile": v["lap"] * (stock.width + long) * across,
    }


def _cross_lap(stock, v):
    return {
        "rail": (stock.enters.thickness - v["lap"]) * (stock.across + v["fit"]) * stock.width,
        "stile": v["lap"] * (stock.width + v["fit"]) * stock.across,
    }


def _bridle(stock, v):
    return {
        "rail": (stock.enters.thickness - v["tongue"]) * (stock.across + v["long"]) * stock.width,
        "stile": (v["tongue"] + v["fit"]) * (stock.width + v["long"]) * stock.across,
    }


def _dowel(stock, v):
    """A regular figure of 16 corners is 8 r^2 sin(22.5 degrees)."""
    radius, long = v["diameter"] // 2, v["into end"] + v["into side"]
    waste = (4 - 8 * sin(pi / 8)) * radius**2 * long
    return {f"dowel {number}": waste for number in range(1, v["count"] + 1)}


def _spline(stock, v):
    half = v["spline width"] // 2
    section = (v["spline"] + v["fit"]) * (stock.enters_length - 2 * v["stop"])
    return {
        "left board": (half + v["end gap"]) * section,
        "right board": (v["spline width"] - half + v["end gap"]) * section,
    }


def _mortise_and_tenon(stock, v):
    high = stock.width - v["top shoulder"] - v["bottom shoulder"]
    long, tenon, fit, gap, haunch = v["length"], v["tenon"], v["fit"], v["end gap"], v["haunch"]
    rail = long * (stock.enters.thickness * stock.width - tenon * high) - haunch * tenon * v["top shoulder"]
    deep = long if long >= stock.across else long + gap
    deep_haunch = haunch + gap if haunch else 0
    leg = (tenon + fit) * (deep * high + deep_haunch * v["top shoulder"])
    if v["rails"] == 1:
        return {"rail": rail, "stile": leg}
    # The tip of each tenon: the part within `gap` of the diagonal, or beyond it.
    face, back = v["set in"] + v["front shoulder"], v["set in"] + v["front shoulder"] + tenon
    past = back - (stock.across - long)  # how far the tenon's back reaches into the other's way
    if past > 0:
        slope = min(past + gap, tenon)
        rail += ((past + gap) * slope - slope**2 / 2) * high
    # Both mortises share a square, from where they end to the far wall of the other.
    far = back + fit - fit // 2
    square = far - max(face - fit // 2, stock.across - deep)
    shared = far - max(face - fit // 2, stock.across - deep_haunch)
    leg = 2 * leg - max(square, 0) ** 2 * high - max(shared if haunch else 0, 0) ** 2 * v["top shoulder"]
    return {"rail": rail, "second rail": rail, "leg": leg}


def _dovetail(stock, v):
    tails, pin, half, fit = v["tails"], v["pin"], v["half-pin"], v["fit"]
    long, high = stock.receives.thickest + v["proud"], stock.enters.thickest + v["proud"]
    rise = 10 * long / v["slope"]
    area = (tails - 1) * (pin + rise + fit) * long
    if half:
        area += (2 * half + rise + fit) * long
    flanks = 2 * tails if half else 2 * (tails - 1)
    lean = rise * (1 + (long - stock.receives.thickness) / long) / 2  # on the mean of the side's two faces
    gone = stock.width - (tails - 1) * pin - 2 * half - flanks * lean
    return {"bottom": area * stock.enters.thickness, "side": gone * stock.receives.thickness * high}


def _splined_mitre(stock, v):
    slot = (v["spline"] + v["fit"]) * v["slot"] * (stock.width - 2 * v["stop"])
    wide = 2 * (v["slot"] - v["end gap"])
    return {
        "bottom": stock.enters.thickness**2 / 2 * stock.width + slot,
        "side": stock.receives.thickness**2 / 2 * stock.width + slot,
        "spline": (wide**2 + v["spline"] ** 2) / 2 * (stock.width - 2 * v["stop"]),
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
    "half lap": _half_lap,
    "cross lap": _cross_lap,
    "dowel": _dowel,
    "spline": _spline,
    "bridle": _bridle,
    "mortise and tenon": _mortise_and_tenon,
    "dovetail": _dovetail,
    "splined mitre": _splined_mitre,
}
SLANTED = {"pocket screws", "dowel", "dovetail", "splined mitre"}
"""Their corners are rounded to ticks, so the formula is met within some parts in a hundred thousand."""


def _round(count, diameter, depth):
    return count * pi / 4 * diameter**2 * depth


def _pilot_depth(stock, v):
    """2/3 of the thread (US Army course EN5155 p. 1-37), which is 2/3 of the screw (Noyes pp. 125-126), to the nearest
    step, a half going up; no deeper than the screw reaches."""
    step = stock.style.step
    return min((8 * v["screw"] + 9 * step) // (18 * step) * step, v["screw"] - stock.receives.thickness)


HOLES = {
    "butt": lambda stock, v: {
        "side": _round(v["count"], v["clearance hole"], stock.receives.thickness),
        "bottom": _round(v["count"], v["pilot hole"], _pilot_depth(stock, v)),
    },
    "dowel": lambda stock, v: {
        "side": _round(v["count"], v["diameter"] + v["fit"], v["into side"] + v["end gap"]),
        "bottom": _round(v["count"], v["diameter"] + v["fit"], v["into end"] + v["end gap"]),
    },
}
"""Bored away, where a joint is bored."""
