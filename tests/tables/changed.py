"""A file of data with one piece of its text changed, for the tests of what is refused."""

from pathlib import Path


def changed(folder: Path, source: Path, old: str, new: str) -> Path:
    """A copy of `source`, under its own name in `folder`, in which `new` stands wherever `old` stood."""
    text = source.read_text(encoding="utf-8")
    assert old in text, f"{source.name} has no {old!r} to change"
    path = folder / source.name
    path.write_text(text.replace(old, new), encoding="utf-8")
    return path
