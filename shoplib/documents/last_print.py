"""What this program printed into a folder last, so that the next print takes away its own files and nobody else's.

A record lies in the folder: of which plan the print was, and of each file the SHA-256 of its content. A file whose
content is still that one is this program's; any other was made or changed by somebody else, and is kept.
"""

import hashlib
import json
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path, PurePosixPath

from shoplib.documents.atomic import HALFWAY

RECORD = ".last_print.json"
YOURS = "-as-you-left-it"
"""Added to the name of a file that was changed by hand and is printed anew."""


@dataclass(frozen=True, slots=True)
class LastPrint:
    """The print that lies in a folder: the plan it is of, and the digest of each file by its name."""

    plan: str
    digests: Mapping[str, str]

    def unchanged(self, folder: Path, name: str) -> bool:
        """Whether this print made the file and nobody changed it since."""
        return _is_file(folder / name) and _digest((folder / name).read_bytes()) == self.digests.get(name)

    def no_longer_made(self, folder: Path, files: Mapping[str, bytes]) -> list[str]:
        """Files of this print, as it made them, that the print of `files` does not have."""
        return sorted(name for name in self.digests if name not in files and self.unchanged(folder, name))

    def changed_by_hand(self, folder: Path, files: Mapping[str, bytes]) -> dict[str, bytes]:
        """Files of this print that were changed since and are printed anew: their content, by a name to keep it under.

        A list that was filled in is not lost with the next print.
        """
        changed = {}
        for name in self.digests:
            if name in files and _is_file(folder / name) and not self.unchanged(folder, name):
                content = (folder / name).read_bytes()
                if content != files[name]:
                    changed[kept_as(folder, name)] = content
        return changed


def last_print(folder: Path) -> LastPrint | None:
    """What was printed into `folder` last; None where that is not known, or where that run was ended halfway.

    >>> last_print(Path("no_such_folder"))
    """
    try:
        read = json.loads((folder / RECORD).read_text(encoding="utf-8"))
        known = LastPrint(str(read["plan"]), {str(name): str(digest) for name, digest in read["files"].items()})
    except (OSError, ValueError, KeyError, TypeError, AttributeError):
        return None
    stays_in = all(not PurePosixPath(name).is_absolute() and ".." not in name.split("/") for name in known.digests)
    return known if stays_in and not (folder / HALFWAY).exists() else None


def record(plan: str, files: Mapping[str, bytes]) -> bytes:
    """The record of a print, to be written beside its files as `RECORD`.

    >>> json.loads(record("2222-3333", {"labels.pdf": b"x"}))["plan"]
    '2222-3333'
    """
    digests = {name: _digest(content) for name, content in files.items()}
    return (json.dumps({"plan": plan, "files": digests}, indent=1) + "\n").encode()


def kept_as(folder: Path, name: str) -> str:
    """A free name beside the file: `to_measure-as-you-left-it.toml`, then with a number.

    >>> kept_as(Path("no_such_folder"), "to_measure.toml")
    'to_measure-as-you-left-it.toml'
    """
    path, number = PurePosixPath(name), 1
    kept = path.with_stem(path.stem + YOURS)
    while (folder / kept).exists():
        number += 1
        kept = path.with_stem(f"{path.stem}{YOURS}-{number}")
    return kept.as_posix()


def _is_file(path: Path) -> bool:
    return path.is_file() and not path.is_symlink()


def _digest(content: bytes) -> str:
    return hashlib.sha256(content).hexdigest()
