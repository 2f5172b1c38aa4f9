"""What can go wrong in set-up, each told in one sentence that says what to do."""

import errno
import re

from shoplib.start.place import Place


class Trouble(Exception):
    """Set-up cannot go on; the text says what is wrong and what to do."""


NO_SPACE = {errno.ENOSPC, errno.EDQUOT}
NOT_ALLOWED = {errno.EACCES, errno.EPERM, errno.EROFS}
WINDOWS_DISK_FULL = 112  # ERROR_DISK_FULL


def missing_venv(place: Place) -> Trouble:
    """Python came without the parts that make environments (Debian and Ubuntu split them off)."""
    if place.windows:
        cure = "install Python from python.org"
    else:
        cure = "install them (on Debian and Ubuntu: sudo apt install python3-venv)"
    return Trouble(
        "This Python cannot make an environment, because its parts `venv` and `ensurepip` are missing: "
        f"{cure}, then type again: {place.command}"
    )


def no_space(place: Place) -> Trouble:
    """The disk is full, or nearly so."""
    return Trouble(
        f"There is not enough room on the disk for the workbook's environment (about 1.2 GB): free "
        f"some, or move the workbook to another disk, then type again: {place.command}"
    )


def not_allowed(place: Place) -> Trouble:
    """The folder is read-only, or (on Windows) a file in the environment is in use."""
    if place.windows:
        in_use = " If it is yours already, close JupyterLab and every window that uses the workbook first."
    else:
        in_use = ""
    return Trouble(
        f"The folder {place.root} cannot be written to: copy the workbook to a folder of your own, "
        f"for example in your home folder, and type there: {place.command}.{in_use}"
    )


def from_error(error: OSError, place: Place) -> Trouble:
    """The sentence for an error of the file system."""
    if error.errno in NO_SPACE or getattr(error, "winerror", None) == WINDOWS_DISK_FULL:
        return no_space(place)
    if error.errno in NOT_ALLOWED:
        return not_allowed(place)
    return Trouble(f"The environment could not be made: {error}. Mend that, then type again: {place.command}")


SAID = [
    (r"No space left on device|Errno 28\b|not enough space|Disk quota exceeded", no_space),
    (r"Permission denied|Access is denied|Read-only file system|WinError (5|32)\b", not_allowed),
    (
        r"CERTIFICATE_VERIFY_FAILED",
        lambda place: Trouble(
            "The package server's certificate was refused, as happens behind a filter of a school or firm: "
            "ask who runs the network for its certificate file, name it in PIP_CERT, "
            f"then type again: {place.command}"
        ),
    ),
    (
        r"ConnectionError|Max retries|name resolution|Name or service not known|getaddrinfo|unreachable|"
        r"nodename nor servname|[Tt]imed out|Timeout|Connection (refused|reset|aborted|broken)|ProxyError|"
        r"WinError 100\d\d",
        lambda place: Trouble(
            "The packages could not be fetched: connect this computer to the Internet (it is needed only for "
            f"this set-up), then type again: {place.command}"
        ),
    ),
    (
        r"No matching distribution found|requires a different Python",
        lambda place: Trouble(
            "A package that the workbook needs does not exist for this Python or this system: install "
            f"Python 3.11, 3.12 or 3.13, then type again with it: {place.command}"
        ),
    ),
]
"""What the installer says of each cause, the plainest cause first.

A missing network and a full disk were read off pip 23 on Linux; the other texts are from memory.
"""


def from_output(output: str, place: Place) -> Trouble:
    """The sentence for what `venv` or `pip` said before it gave up."""
    for said, trouble in SAID:
        if re.search(said, output):
            return trouble(place)
    lines = [line.strip() for line in output.splitlines() if line.strip()]
    errors = [line for line in lines if line.lower().startswith("error")]
    last = (errors or lines or ["it did not say why"])[-1]
    return Trouble(f"The set-up stopped ({last}): mend that, then type again: {place.command}")
