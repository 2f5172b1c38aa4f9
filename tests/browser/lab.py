"""Real JupyterLab and real Chromium, for tests that press keys and look at pixels.

JupyterLab runs on loopback with throwaway folders for settings, workspaces, kernels' runtime files and
notebooks, so that nothing of the user's is read or written. The browser may reach loopback only; what it
asks for elsewhere is refused and written down in `Lab.outside`.
"""

import json
import os
import secrets
import shutil
import socket
import subprocess
import sys
import time
import urllib.error
import urllib.request
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from statistics import median
from urllib.parse import quote, urlsplit

import nbformat

from tests.browser.settled import AT_REST, WATCH_FROM_THE_START

ROOT = Path(__file__).resolve().parents[2]
CHROMIUM = Path("/usr/bin/chromium")
FLAGS = [
    "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run",
    "--disable-background-networking", "--disable-component-update", "--disable-sync",
    "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1",
]
NOTIFICATIONS = "@jupyterlab/apputils-extension/notification.jupyterlab-settings"

# Waits until the kernel is connected: asked before that to run cells, JupyterLab 4.6 drops the request without a word.
OPEN_HERE = """async (path) => {
  const {commands, shell} = window.jupyterapp;
  const opened = await commands.execute('docmanager:open', {path});
  await opened.context.ready;
  await opened.context.sessionContext.ready;
  for (const other of [...shell.widgets('main')]) if (other !== opened) other.dispose();  // the launcher
}"""
"""Opens a notebook in a window that has none, so that it stands there alone, as in a new one."""

CLOSE_HERE = """async () => {
  for (const opened of [...window.jupyterapp.shell.widgets('main')]) {
    await opened.context?.sessionContext.shutdown();
    opened.dispose();
  }
  window.shopRest.heard = 0;
  return document.querySelector('.jp-Dialog, .lm-Menu') === null;
}"""
"""Ends the kernel of a notebook and closes it, unsaved; gives whether nothing else is left over the window."""

# Notes when a key went down, when a drawing next changed, and when the frame after that began.
WATCH = """() => {
  window.shopMoves = [];
  window.shopStopWatching?.();
  let pressed = 0;
  const press = (event) => { pressed = event.timeStamp; };
  const watcher = new MutationObserver(() => {
    if (!pressed) return;
    const [from, changed] = [pressed, performance.now()];
    pressed = 0;
    requestAnimationFrame((frame) => {
      window.shopMoves.push({changed: changed - from, pixels: Math.max(frame, changed) - from});
    });
  });
  document.addEventListener('keydown', press, true);
  for (const sheet of document.querySelectorAll('.shop-picture-sheet')) {
    watcher.observe(sheet, {childList: true, subtree: true});
  }
  window.shopStopWatching = () => {
    watcher.disconnect();
    document.removeEventListener('keydown', press, true);
  };
}"""


def missing() -> str:
    """What a browser test lacks on this machine, as the reason to skip; empty if it lacks nothing."""
    if not CHROMIUM.exists():
        return f"{CHROMIUM} is not installed"
    try:
        import playwright  # noqa: F401
    except ModuleNotFoundError:
        return "playwright is not installed"
    return ""


def free_port() -> int:
    """A port of loopback that nobody listens on now."""
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        return probe.getsockname()[1]


@contextmanager
def chromium():
    """Debian's Chromium under Playwright."""
    from playwright.sync_api import sync_playwright

    with sync_playwright() as engine:
        browser = engine.chromium.launch(executable_path=str(CHROMIUM), args=FLAGS)
        try:
            yield browser
        finally:
            browser.close()


@contextmanager
def running_lab(folder: Path) -> Iterator[tuple[str, str, Path]]:
    """JupyterLab over `folder`/notebooks: gives its address, its token and that folder."""
    work = folder / "notebooks"
    settings = folder / "settings"
    (settings / NOTIFICATIONS).parent.mkdir(parents=True)
    (settings / NOTIFICATIONS).write_text(json.dumps({"fetchNews": "false", "checkForUpdates": False}))
    work.mkdir()
    environment = {
        **os.environ,
        "HOME": str(folder),
        "IPYTHONDIR": str(folder / "ipython"),
        "JUPYTER_CONFIG_DIR": str(folder / "config"),
        "JUPYTER_DATA_DIR": str(folder / "data"),
        "JUPYTER_RUNTIME_DIR": str(folder / "runtime"),
        "JUPYTERLAB_SETTINGS_DIR": str(settings),
        "JUPYTERLAB_WORKSPACES_DIR": str(folder / "workspaces"),
        "PATH": os.pathsep.join((str(Path(sys.executable).parent), os.environ["PATH"])),
    }
    token, port = secrets.token_hex(16), free_port()
    command = [
        sys.executable, "-m", "jupyterlab", "--no-browser", "--allow-root", "--ServerApp.ip=127.0.0.1",
        f"--ServerApp.port={port}", "--ServerApp.port_retries=0", f"--IdentityProvider.token={token}",
        f"--ServerApp.root_dir={work}", "--LabApp.expose_app_in_browser=True",
    ]
    address = f"http://127.0.0.1:{port}"
    with (folder / "lab.log").open("w") as log:
        server = subprocess.Popen(command, env=environment, stdout=log, stderr=log)
        try:
            _wait_for(f"{address}/api/status?token={token}", server, folder / "lab.log")
            yield address, token, work
        finally:
            server.terminate()
            try:
                server.wait(15)
            except subprocess.TimeoutExpired:
                server.kill()
                server.wait()


def _wait_for(url: str, server: subprocess.Popen, log: Path, seconds: float = 60) -> None:
    limit = time.monotonic() + seconds
    while time.monotonic() < limit:
        if server.poll() is not None:
            said = log.read_text()[-2000:]
            raise RuntimeError(f"JupyterLab ended with status {server.returncode}:\n{said}")
        try:
            with urllib.request.urlopen(url, timeout=2):
                return
        except (urllib.error.URLError, OSError):
            time.sleep(0.2)
    raise RuntimeError(f"JupyterLab did not answer in {seconds:.0f} s:\n{log.read_text()[-2000:]}")


class Windows:
    """The windows of one browser on a running JupyterLab, which load its scripts once.

    To load JupyterLab takes longer than to run a page, so a window whose notebook was closed takes the next one.
    """

    def __init__(self, browser, address: str, token: str):
        self.address, self.token = address, token
        self.spare: list = []
        self.outside: list[str] = []
        self.context = browser.new_context()
        self.context.on("request", self._note_outside)
        self.context.add_init_script(f"({WATCH_FROM_THE_START})()")

    def show(self, name: str, width: int, height: int, alone: bool) -> "Page":
        """A notebook in a spare window, or in a new one; `alone` in a new one that no other notebook gets."""
        page = self.spare.pop() if self.spare and not alone else None
        if page:
            page.set_viewport_size({"width": width, "height": height})
            page.evaluate(OPEN_HERE, name)
        else:
            page = self.context.new_page()
            page.set_viewport_size({"width": width, "height": height})
            page.goto(f"{self.address}/lab/tree/{quote(name)}?token={self.token}&reset")
        page.wait_for_selector(".jp-Notebook .jp-Cell", timeout=60_000)
        return Page(page, None if alone else self.spare)

    def close(self) -> None:
        """Close every window, and forget what the browser kept for them."""
        self.context.close()

    def _note_outside(self, request) -> None:
        if urlsplit(request.url).hostname not in ("127.0.0.1", None):
            self.outside.append(request.url)


class Lab:
    """A running JupyterLab seen through `windows`; `work` is the folder under its `root` that notebooks lie in."""

    def __init__(self, windows: Windows, root: Path, folder: str):
        self.windows, self.root, self.work = windows, root, root / folder
        self.work.mkdir(exist_ok=True)

    @property
    def outside(self) -> list[str]:
        """What the windows have asked for elsewhere than on this machine."""
        return self.windows.outside

    def copy(self, notebook: Path, name: str | None = None) -> str:
        """Put a throwaway copy of a notebook before JupyterLab; gives its path there."""
        target = self.work / (name or notebook.name)
        shutil.copy(notebook, target)
        return target.relative_to(self.root).as_posix()

    def open(self, name: str, width: int = 1400, height: int = 1200, alone: bool = False) -> "Page":
        """Open a notebook in a window, where it is the only one.

        What is open in another window as well needs one `alone`: they share a kernel, which would end with the first.
        """
        return self.windows.show(name, width, height, alone)

    def open_cell(self, code: str, name: str, height: int) -> "Page":
        """Open a notebook with this one cell of code, run."""
        kernel = {"name": "python3", "display_name": "Python 3", "language": "python"}
        cells = [nbformat.v4.new_markdown_cell("# Practise"), nbformat.v4.new_code_cell(code)]
        nbformat.write(nbformat.v4.new_notebook(cells=cells, metadata={"kernelspec": kernel}), self.work / name)
        opened = self.open((self.work / name).relative_to(self.root).as_posix(), height=height)
        opened.run_all(awake=1)
        return opened


class Page:
    """One notebook open in JupyterLab."""

    def __init__(self, page, spare: list | None):
        self.page = page
        self.spare = spare
        self.complaints: list[str] = []
        page.on("pageerror", self._complain)

    def close(self) -> None:
        """Close the notebook; a window that is as it was without it can take another."""
        self.page.remove_listener("pageerror", self._complain)
        if self.spare is not None and not self.complaints and self.page.evaluate(CLOSE_HERE):
            self.spare.append(self.page)
        else:
            self.page.close()

    def _complain(self, error) -> None:
        self.complaints.append(str(error))

    def menu(self, command: str, menu: str = "Run") -> None:
        """Choose the menu item that carries `command`, such as `runmenu:run-all`."""
        self.page.locator(".lm-MenuBar-item", has_text=menu).first.click()
        self.page.locator(f'.lm-Menu-item[data-command="{command}"]').click()

    def run_all(self, seconds: float = 90, awake: int = 0) -> None:
        """Run every cell and wait until all have run and so many panels and boxes live.

        Folded code shows no prompt to wait for, so a lesson says how many of its outputs will live.
        """
        # Asked before the kernel is connected, JupyterLab 4.6 drops the request without a word.
        self.page.locator("#jp-main-statusbar", has_text="| Idle").wait_for(timeout=60_000)
        self.menu("runmenu:run-all")
        self.page.wait_for_function(
            "awake => { const cells = [...document.querySelectorAll('.jp-CodeCell')];"
            " return cells.every(c => /^$|\\[\\d+\\]/.test(c.querySelector('.jp-InputPrompt')?.textContent ?? ''))"
            " && document.querySelectorAll('.shop-awake').length >= awake; }",
            arg=awake,
            timeout=seconds * 1000,
        )
        self.page.locator("#jp-main-statusbar", has_text="| Idle").wait_for(timeout=60_000)
        self.settle(60_000)  # all cells of a long page are drawn at once, beside two other browsers
        faults = self.page.locator('[data-mime-type$=".stderr"], [data-mime-type$=".error"]')
        assert faults.count() == 0, faults.first.inner_text()

    def panel(self):
        """The first living panel on the page."""
        self.page.wait_for_selector(".shop-panel .shop-awake svg", timeout=60_000)
        return self.page.locator(".shop-panel").first

    def drag(self, slider, start: float, end: float) -> None:
        """Drag a slider with the mouse between two parts of its width, from 0 to 1."""
        slider.scroll_into_view_if_needed()
        box = slider.bounding_box()
        middle = box["y"] + box["height"] / 2
        self.page.mouse.move(box["x"] + box["width"] * start, middle)
        self.page.mouse.down()
        self.page.mouse.move(box["x"] + box["width"] * end, middle, steps=12)
        self.page.mouse.up()
        self.settle()

    def pick(self, panel, number) -> str:
        """Pick a number of a panel with the mouse, another than before; gives what the panel then says of it."""
        said = panel.locator(".shop-working-said")
        before = said.text_content()
        number.click()
        self.page.wait_for_function(
            "([said, before]) => said.textContent !== before", arg=[said.element_handle(), before], timeout=5_000
        )
        return said.inner_text()

    def settle(self, limit_ms: int = 20_000) -> None:
        """Wait until messages on their way have been answered and drawn, on a slow machine too."""
        self.page.evaluate(AT_REST, limit_ms)

    def key_to_pixels(self, slider, keys: list[str], pause_ms: int = 150) -> dict[str, float]:
        """Press keys on a slider one by one: median ms to the change of the drawing and to its frame.

        Raises AssertionError where more than a quarter of the presses changed no drawing.
        """
        slider.focus()
        self.page.evaluate(WATCH)
        for key in keys:
            self.page.keyboard.press(key)
            self.page.wait_for_timeout(pause_ms)
        self.settle()
        moves = self.page.evaluate("window.shopMoves")
        # A busy kernel draws two moves at once: that is merging as meant, so a few may be missing.
        assert len(moves) * 4 >= len(keys) * 3, f"{len(keys)} key presses, {len(moves)} drawings"
        return {what: median(move[what] for move in moves) for what in ("changed", "pixels")}
