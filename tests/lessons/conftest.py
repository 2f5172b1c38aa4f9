import pytest

from shoplib.lessons import lesson_template
from shoplib.lessons.course import lessons
from shoplib.lessons.posed import pose
from tests.lessons.learners import LEARNERS
from tests.lessons.posed_once import posed_once

ALL = [*(one for lesson in lessons() for one in lesson.exercises), *lesson_template.EXERCISES]
EXERCISES = [one for one in ALL if not one.counted]
COUNTING = [one for one in ALL if one.counted]
"""The exercises that ask for a length, and those that ask for a number of things."""
SETS = [one for lesson in lessons() for one in lesson.sets]


def pytest_generate_tests(metafunc):
    if "exercise" in metafunc.fixturenames:
        metafunc.parametrize("exercise", EXERCISES, ids=lambda exercise: exercise.id)
    if "counting" in metafunc.fixturenames:
        metafunc.parametrize("counting", COUNTING, ids=lambda exercise: exercise.id)
    if "whole_set" in metafunc.fixturenames:
        metafunc.parametrize("whole_set", SETS, ids=lambda exercise: exercise.id)
    if "unit" in metafunc.fixturenames:
        metafunc.parametrize("unit", ["in", "mm"])


@pytest.fixture(scope="session")
def learners(count):
    """Those whose givens the sums by hand are held to."""
    return LEARNERS[:count(40, 200)]


@pytest.fixture(scope="session")
def few(count):
    """Those who answer with every slip there is."""
    return LEARNERS[:count(5, 12)]


@pytest.fixture(scope="module")
def posed_to():
    """Poses an exercise to a learner, the same one once for all tests of a module."""
    return posed_once(pose)


@pytest.fixture
def own_folder(tmp_path, monkeypatch):
    """A folder of the test's own for what the workbook remembers."""
    monkeypatch.setenv("SHOPLIB_WORKBOOK", str(tmp_path / "kept"))
    return tmp_path / "kept"
