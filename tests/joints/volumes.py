"""The wood that the cuts of each joint take, board by board, by closed formulas (cubic ticks)."""


def _dado(stock, v):
    return {"side": v["depth"] * (stock.enters.thickest + v["fit"]) * stock.width}


def _stopped_dado(stock, v):
    return {
        "side": v["depth"] * (stock.enters.thickest + v["fit"]) * (stock.width - v["stop"]),
        "shelf": (v["depth"] - v["end gap"]) * v["stop"] * stock.enters.thickness,
    }


FORMULAS = {
    "rabbet": _dado,
    "dado": _dado,
    "stopped dado": _stopped_dado,
}
