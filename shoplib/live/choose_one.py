"""One of a few, asked for with a list that opens."""

from collections.abc import Iterable

import ipywidgets


def choose_one(label: str, options: Iterable[str | int], value: str | int | None = None) -> ipywidgets.Dropdown:
    """A list of `options` under a label; the first is chosen unless `value` says which.

    >>> choose_one("Saw", ("on the line", "beside it")).value
    'on the line'
    """
    options = tuple(options)
    return ipywidgets.Dropdown(
        options=options,
        value=options[0] if value is None else value,
        description=label,
        style={"description_width": "auto"},
        layout={"width": "auto"},
    )
