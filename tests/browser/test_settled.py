"""`settle` comes back when a page is at rest, and not before: shown with a slow kernel and with what comes late.

And a window whose notebook was closed is as good as a new one.
"""

import nbformat
import pytest
from playwright.sync_api import Error

from tests.browser.settled import AT_REST, WATCH_FROM_THE_START

pytestmark = pytest.mark.browser

LATE = {
    "a timer": "setTimeout(() => { document.title = 'here'; }, 200)",
    "a timer after another": "setTimeout(() => setTimeout(() => { document.title = 'here'; }, 150), 150)",
    "a file": "fetch('http://127.0.0.1/late').then(() => { document.title = 'here'; })",
    "a script": "(async () => {"
    " const does = 'await fetch(\"http://127.0.0.1/late\")';"
    " const name = URL.createObjectURL(new Blob([does], {type: 'text/javascript'}));"
    " await import(name); URL.revokeObjectURL(name); document.title = 'here'; })()",
    "a few frames": "(() => { let left = 30; const step = () => { document.body.id = `at${left}`;"
    " if (left--) requestAnimationFrame(step); else document.title = 'here'; }; step(); })()",
}


@pytest.fixture
def bare(browser):
    context = browser.new_context()
    context.add_init_script(f"({WATCH_FROM_THE_START})()")
    page = context.new_page()
    page.route("**/late", lambda route: (page.wait_for_timeout(300), route.fulfill(body="")))
    page.route("**/page", lambda route: route.fulfill(body="<p>a page</p>", content_type="text/html"))
    page.goto("http://127.0.0.1/page")
    yield page
    context.close()


@pytest.mark.parametrize("what", LATE)
def test_what_comes_late_is_waited_for(bare, what):
    bare.evaluate("shopRest.heard = 1")
    bare.evaluate(f"() => {{ {LATE[what]}; }}")
    bare.evaluate(AT_REST, 5_000)
    assert bare.title() == "here"


def test_a_page_that_never_rests_or_has_no_kernel_is_told(bare):
    with pytest.raises(Error, match="no kernel of this page was heard"):
        bare.evaluate(AT_REST, 500)
    bare.evaluate("shopRest.heard = 1")
    bare.evaluate("() => { setInterval(() => { document.body.id += 'x'; }, 5); }")
    with pytest.raises(Error, match="no rest in 500 ms: the page moves"):
        bare.evaluate(AT_REST, 500)


def test_who_set_the_timers_of_a_page_that_moves_is_told(bare):
    bare.evaluate("shopRest.heard = 1")
    bare.evaluate("() => { (function again() { document.body.id += 'x'; setTimeout(again, 7); })(); }")
    with pytest.raises(Error, match=r"no rest in 500 ms: the page moves, timers\n.*7 ms +at again"):
        bare.evaluate(AT_REST, 500)


def test_timers_that_change_nothing_do_not_keep_a_page_from_its_rest(bare):
    bare.evaluate("shopRest.heard = 1")
    bare.evaluate("() => { (function again() { setTimeout(again, 7); })(); }")
    assert 2_000 <= bare.evaluate(AT_REST, 20_000) < 20_000


def test_a_timer_may_be_ended_as_an_interval(bare):
    bare.evaluate("shopRest.heard = 1")
    bare.evaluate("() => clearInterval(setTimeout(() => {}, 200))")
    assert bare.evaluate("shopRest.timers.size") == 0


def test_a_slow_kernel_is_waited_for(lab):
    cell = nbformat.v4.new_code_cell("import time\ntime.sleep(1)\nprint('rested')")
    kernel = {"name": "python3", "display_name": "Python 3", "language": "python"}
    nbformat.write(nbformat.v4.new_notebook(cells=[cell], metadata={"kernelspec": kernel}), lab.work / "slow.ipynb")
    opened = lab.open(f"{lab.work.name}/slow.ipynb")
    opened.run_all()
    opened.page.locator(".jp-CodeCell").first.click()
    opened.page.keyboard.press("Control+Enter")
    opened.settle()
    assert opened.page.locator(".jp-InputPrompt").first.text_content() == "[2]:"
    opened.close()


def test_a_window_takes_the_next_notebook_and_keeps_nothing_of_the_last(lab):
    def written(name, text):
        kernel = {"name": "python3", "display_name": "Python 3", "language": "python"}
        cells = [nbformat.v4.new_markdown_cell(f"# {text}"), nbformat.v4.new_code_cell(f"print({text!r})")]
        nbformat.write(nbformat.v4.new_notebook(cells=cells, metadata={"kernelspec": kernel}), lab.work / name)
        return f"{lab.work.name}/{name}"

    names = {written(f"{text}.ipynb", text): text for text in ("first", "second")}
    for name, text in names.items():
        opened = lab.open(name, width=1100, height=700)
        opened.run_all()
        page = opened.page
        tabs = page.locator("#jp-main-dock-panel .lm-TabBar-tab")
        assert page.locator(".jp-NotebookPanel").count() == tabs.count() == 1
        assert page.locator(".jp-Notebook h1").all_inner_texts()[0].startswith(text)
        assert page.locator(".jp-OutputArea-output").all_inner_texts() == [f"{text}\n"]
        assert page.viewport_size == {"width": 1100, "height": 700}
        running = page.evaluate("fetch('/api/sessions').then((answer) => answer.json())")
        assert [one["path"] for one in running if one["path"] in names] == [name]
        opened.close()
        assert lab.windows.spare[-1] is page
    alone = lab.open(next(iter(names)), alone=True)
    assert alone.page is not page
    alone.close()
    assert alone.page.is_closed() and not page.is_closed()
