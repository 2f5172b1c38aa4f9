"""What stands on the joint panel is kept in a project file and comes back setting by setting, or a refusal says why."""

import random
import subprocess
import sys
from pathlib import Path

import pytest

from shoplib.documents.project_file import project_from_text, read_project
from shoplib.documents.project_text import project_text
from shoplib.live.joint_choices import joint_choices
from shoplib.live.joint_panel import choices_from, joint_panel, joint_style
from shoplib.live.joint_project import JOINTS, JointChoices, joint_project
from shoplib.live.kept_choices import OtherProject
from shoplib.measure import INCH, write_brief
from shoplib.model.cabinet import solve
from tests.live.test_keep_others import Kept

UNITS = pytest.mark.parametrize("unit", ["in", "mm"])


def shown(kept):
    """The settings that the panel asks for with this kind of joint."""
    values = vars(kept.panel.values)
    return {name: values[name] for name, one in kept.panel.controls.items() if one.layout.display != "none"}


@UNITS
def test_every_setting_comes_back_from_its_text(unit, tmp_path, count):
    draw, kept, style = random.Random(17), Kept(joint_panel, unit, tmp_path), joint_style(unit)
    seen = set()
    for _ in range(count(50, 150)):
        kept.at_random(draw)
        seen.add(kept.panel.values.kind)
        project = joint_project(choices_from(kept.panel.values), style)
        back = joint_choices(project_from_text(project_text(project)), style)
        assert joint_project(back, style) == project
    assert seen == set(JOINTS)


@pytest.mark.parametrize("kind", JOINTS)
@UNITS
def test_what_the_panel_asks_for_stands_there_again(kind, unit, tmp_path):
    draw = random.Random(kind)
    first, second = (Kept(joint_panel, unit, tmp_path) for _ in range(2))
    for number in range(6):
        first.at_random(draw)
        first.panel.enter("kind", kind)
        if first.panel.stale:
            assert "What cannot be built is not saved" in first.keep(f"joint {number}")
            assert not (tmp_path / f"joint {number}.toml").exists()
            continue
        first.keep(f"joint {number}")
        second.at_random(draw)
        assert "on the panel now" in second.bring(f"joint {number}")
        assert shown(second) == shown(first)
        assert second.panel.message == first.panel.message
        assert [one.svg for one in second.panel.outcome.drawings] == [one.svg for one in first.panel.outcome.drawings]
    assert [path for path in tmp_path.iterdir() if path.suffix != ".toml"] == []  # nothing half-written


def test_a_side_that_was_read_once_stands_so_on_the_panel(tmp_path):
    """A groove takes the back; of the side the file tells one thickness, and the panel no other readings of it."""
    first, second = (Kept(joint_panel, "in", tmp_path) for _ in range(2))
    first.panel.enter("kind", "groove")
    first.panel.enter("reading_1", "0.6 in")
    first.keep("groove")
    second.bring("groove")
    assert {second.panel.controls[f"reading_{number}"].text for number in (1, 2, 3)} == {"0.6 in"}


@UNITS
def test_a_kept_joint_is_planned_to_what_the_panel_shows(unit, tmp_path):
    kept = Kept(joint_panel, unit, tmp_path / "my_projects")
    said = kept.keep("joint")
    path = tmp_path / "my_projects" / "joint.toml"
    assert "--to &quot;joint&quot;" in said
    command = [sys.executable, "-m", "shoplib", "plan", str(path), "--to", str(tmp_path / "plan")]
    done = subprocess.run(command, capture_output=True, text=True, cwd=Path(__file__).parents[2], timeout=120)
    assert done.returncode == 0, done.stdout + done.stderr
    assert (tmp_path / "plan" / "cut_list.csv").is_file()
    shelf = next(board for board in solve(read_project(path)).boards if board.role == "fixed shelf")
    told = dict(kept.panel.outcome.tables[0].rows)["shelf, left to right"]
    assert write_brief(shelf.length, joint_style(unit)) == told


@pytest.mark.parametrize(("was", "now"), [
    ('width = "24 in"', 'width = "25 in"'),                          # another case than the panel's
    ('"9 in"', '"10 in"'),                                           # its shelf at another height
    ('[carcass.shelf]', '[carcass.corner]\nkind = "rabbet"\n\n[carcass.shelf]'),  # two kinds of joint at once
    ('sheet = "case sheet"', 'sheet = "case sheet"\ntop = "over"'),
    ('"0.71 in"', '"0.71 in", "0.7 in"'),                          # four readings
])
def test_a_file_changed_by_hand_beyond_the_controls_is_refused_in_a_sentence(was, now, tmp_path):
    kept = Kept(joint_panel, "in", tmp_path)
    kept.keep("joint")
    path = tmp_path / "joint.toml"
    text = path.read_text()
    assert was in text, text
    path.write_text(text.replace(was, now, 1))
    before = vars(kept.panel.values)
    said = kept.bring("joint")
    assert "joint.toml cannot be shown here: there is more in it than these controls can set. Nothing was ch" in said
    assert vars(kept.panel.values) == before


def test_a_project_with_one_reading_has_no_three_to_show():
    choices = JointChoices("dado", (7 * INCH // 10,), INCH // 4, 7 * INCH // 10)
    with pytest.raises(OtherProject, match="more in it than these controls"):
        joint_choices(joint_project(choices, joint_style("in")), joint_style("in"))
