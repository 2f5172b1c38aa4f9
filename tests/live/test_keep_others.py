"""What stands on the drawer, front, hardware and joint panels is kept in a project file, and comes back the same."""

import random
import shutil
from pathlib import Path

import pytest

from shoplib.documents.examples import example
from shoplib.documents.project_file import project_from_text, read_project
from shoplib.documents.project_text import project_text
from shoplib.live.carcass_panel import carcass_panel
from shoplib.live.drawer_panel import drawer_panel
from shoplib.live.front_panel import front_panel
from shoplib.live.hardware_panel import hardware_panel
from shoplib.live.joint_panel import joint_panel
from shoplib.live.length_control import LengthControl
from shoplib.live.project_panel import project_panel


def whole_case(unit, folder):
    return project_panel(example("under_bench_case"), unit, folder)


PANELS = {"drawer": drawer_panel, "fronts": front_panel, "hardware": hardware_panel, "joints": joint_panel}
NOT_KEPT = ("part", "over", "wood", "cut", "made", "driest", "dampest", "panel", "seen")

each = pytest.mark.parametrize("name", PANELS)
UNITS = pytest.mark.parametrize("unit", ["in", "mm"])


class Kept:
    """A panel, all of it unfolded, with its fields and buttons for keeping."""

    def __init__(self, make, unit, folder):
        self.panel = make(unit, folder)
        for _ in self.panel.groups[1:]:
            self.panel.unfold()
        self.name, self.save, self.saved, self.load, self._says = self.panel.groups[-1].others

    def keep(self, name):
        self.name.value = name
        self.save.click()
        return self._says.value

    def bring(self, name):
        self.load.click()
        self.saved.value = name
        self.load.click()
        return self._says.value

    def at_random(self, draw):
        """Set every control anywhere between its limits, as often as that gives something to build."""
        while True:
            for one in self.panel.controls.values():
                if isinstance(one, LengthControl):
                    one.ticks = one.low + (one.high - one.low) * draw.randint(0, 64) // 64
                elif hasattr(one, "options"):
                    one.value = draw.choice(one.options)
            if not self.panel.stale:
                return


@pytest.mark.parametrize("name", [*PANELS, "whole case"])
@UNITS
def test_what_is_saved_comes_back_in_a_new_panel(name, unit, tmp_path, count):
    draw = random.Random(5)
    first, second = (Kept((PANELS | {"whole case": whole_case})[name], unit, tmp_path) for _ in range(2))
    for number in range(count(5, 12)):
        first.at_random(draw)
        assert f"Saved as case {number}.toml" in first.keep(f"case {number}")
        project = read_project(tmp_path / f"case {number}.toml")
        assert project_from_text(project_text(project)) == project
        said = second.bring(f"case {number}")
        assert "on the panel now" in said
        controls = first.panel.controls
        second.panel.put({
            one: getattr(controls[one], "ticks" if isinstance(controls[one], LengthControl) else "value")
            for one in NOT_KEPT if one in controls
        })
        assert second.panel.outcome.tables == first.panel.outcome.tables
        assert second.panel.outcome.findings == first.panel.outcome.findings


@each
def test_a_file_of_another_panel_or_unit_is_refused_and_changes_nothing(name, tmp_path):
    Kept(PANELS[name], "mm", tmp_path).keep("other unit")
    Kept(carcass_panel, "in", tmp_path).keep("carcass")
    for other in (set(PANELS) - {name}):
        Kept(PANELS[other], "in", tmp_path).keep(other)
    for shipped in Path(example("under_bench_case")).parent.glob("*.toml"):
        shutil.copy(shipped, tmp_path)
    kept = Kept(PANELS[name], "in", tmp_path)
    before = vars(kept.panel.values)
    assert "it was kept in millimetres" in kept.bring("other unit")
    for path in sorted(tmp_path.glob("*.toml")):
        if path.stem != "other unit":
            said = kept.bring(path.stem)
            assert "there is more in it than these controls can set" in said or "it was kept in" in said, path.stem
    assert vars(kept.panel.values) == before


@pytest.mark.parametrize(("name", "line", "far", "told"), [
    ("drawer", 'height = "7 in"', 'height = "60 in"', "Opening, height goes from"),
    ("fronts", 'height = "24 in"', 'height = "60 in"', "Opening, height goes from"),
    ("hardware", 'height = "24 in"', 'height = "60 in"', "Opening, height goes from"),
    ("joints", 'depth = "1/4 in"', 'depth = "0.65 in"', "Depth of the cut goes from 1/16 in to 5/8 in here"),
])
def test_a_size_beyond_the_controls_is_told_and_changes_nothing(name, line, far, told, tmp_path):
    kept = Kept(PANELS[name], "in", tmp_path)
    kept.keep("case")
    path = tmp_path / "case.toml"
    text = path.read_text()
    assert line in text
    path.write_text(text.replace(line, far))
    before = vars(kept.panel.values)
    assert told in kept.bring("case")
    assert vars(kept.panel.values) == before


@pytest.mark.parametrize("make, what", [
    (front_panel, "The part that is off, and the season,"), (hardware_panel, "The tools and their panel"),
])
def test_what_is_not_kept_is_said(make, what, tmp_path):
    assert f"{what} are not kept." in Kept(make, "in", tmp_path).panel.groups[-1].words
