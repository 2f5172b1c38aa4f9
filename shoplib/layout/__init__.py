"""Laying parts out on sheets and boards: plain rectangles in whole ticks, cut edge to edge.

This room knows no cabinet: `shoplib.buying` makes its parts and stock from a project.
"""
