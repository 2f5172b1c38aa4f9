"""`python3 -m shoplib` for real: JupyterLab on loopback, with a token, without the news pop-up."""

import json
import os
import re
import signal
import subprocess
import sys
import time
import urllib.error
import urllib.request
from contextlib import contextmanager
from pathlib import Path

import pytest

from shoplib.start import lab
from shoplib.start.place import Place

pytestmark = [
    pytest.mark.browser,
    pytest.mark.skipif(sys.platform != "linux", reason="reads Linux's tables of sockets"),
]
LISTEN = "0A"  # the state TCP_LISTEN in /proc/net/tcp


@contextmanager
def started(folder: Path):
    """Start JupyterLab on a made-up copy of the workbook, as the command does; gives address and token.

    The copy has the environment that runs this test, with the settings that set-up lays down.
    """
    place = Place(folder, windows=False)
    place.start_page.parent.mkdir()
    page = {"cells": [], "metadata": {}, "nbformat": 4, "nbformat_minor": 5}
    page["cells"].append({"cell_type": "markdown", "id": "a", "metadata": {}, "source": "# Start here"})
    place.start_page.write_text(json.dumps(page))
    subprocess.run([sys.executable, "-m", "venv", "--without-pip", place.venv], check=True)
    packages = next(place.venv.glob("lib/*/site-packages"))
    here = next(Path(sys.prefix).glob("lib/*/site-packages"))
    (packages / "here.pth").write_text(f"{here}\n")
    share = place.venv / "share" / "jupyter"
    (share / "lab").mkdir(parents=True)
    for part in ["static", "schemas", "themes"]:
        (share / "lab" / part).symlink_to(Path(sys.prefix) / "share" / "jupyter" / "lab" / part)
    (share / "kernels").symlink_to(Path(sys.prefix) / "share" / "jupyter" / "kernels")
    lab.write_settings(place)
    start = "import sys; from pathlib import Path; from shoplib.start import lab, place; "
    start += "lab.start(place.Place(Path(sys.argv[1]), windows=False))"
    root = str(Path(__file__).parents[2])
    variables = os.environ | {"BROWSER": "true", "HOME": str(folder / "home"), "PYTHONPATH": root}
    log = folder / "log"
    with log.open("w") as output:
        server = subprocess.Popen(
            [sys.executable, "-c", start, folder], env=variables, stdout=output, stderr=output, cwd=folder
        )
    try:
        yield (*_address(server, log), server)
    finally:
        server.send_signal(signal.SIGTERM)
        server.wait(20)


def _address(server, log):
    for _ in range(300):
        found = re.search(r"(http://127\.0\.0\.1:\d+)/lab\S*\?token=(\w+)", log.read_text())
        if found:
            return found.groups()
        assert server.poll() is None, log.read_text()
        time.sleep(0.2)
    pytest.fail(log.read_text())


def test_it_opens_on_the_start_page_for_who_has_the_token(tmp_path, browser):
    with started(tmp_path) as (address, token, server):
        with pytest.raises(urllib.error.HTTPError) as refused:
            urllib.request.urlopen(f"{address}/api/contents")
        assert refused.value.code == 403
        assert len(token) >= 32
        assert _listens_on(server.pid) == {"127.0.0.1"}
        page = browser.new_page()
        asked = []
        page.on("request", lambda request: asked.append(request.url))
        page.goto(f"{address}/?token={token}")
        page.wait_for_selector(".jp-Notebook h1:has-text('Start here')", timeout=60_000)
        page.wait_for_timeout(3_000)  # the question about news comes a moment after the page
        assert page.url.endswith("/lab/tree/notebooks/00_start_here.ipynb")
        assert page.locator(".jp-toastContainer, .Toastify__toast").count() == 0
        assert [url for url in asked if not url.startswith((address, "data:", "blob:"))] == []
        page.close()
    assert not (tmp_path / "home").exists()


def _listens_on(pid):
    """The IPv4 addresses on which a process listens, from Linux's tables (not its kernels')."""
    sockets = {os.readlink(link) for link in Path(f"/proc/{pid}/fd").iterdir() if link.is_symlink()}
    rows = [line.split() for line in Path(f"/proc/{pid}/net/tcp").read_text().splitlines()[1:]]
    listening = [row[1] for row in rows if row[3] == LISTEN and f"socket:[{row[9]}]" in sockets]
    hosts = {bytes.fromhex(place.split(":")[0]) for place in listening}
    return {".".join(map(str, reversed(host))) for host in hosts}
