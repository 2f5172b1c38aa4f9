import pytest

from shoplib.lessons import lesson_00, lesson_01, lesson_02, lesson_03, lesson_04

EXERCISES = [*lesson_00.EXERCISES, *lesson_01.EXERCISES, *lesson_02.EXERCISES, *lesson_03.EXERCISES,
             *lesson_04.EXERCISES]
SETS = [*lesson_01.SETS, *lesson_02.SETS, *lesson_03.SETS, *lesson_04.SETS]


def pytest_generate_tests(metafunc):
    if "exercise" in metafunc.fixturenames:
        metafunc.parametrize("exercise", EXERCISES, ids=lambda exercise: exercise.id)
    if "whole_set" in metafunc.fixturenames:
        metafunc.parametrize("whole_set", SETS, ids=lambda exercise: exercise.id)
    if "unit" in metafunc.fixturenames:
        metafunc.parametrize("unit", ["in", "mm"])


@pytest.fixture
def own_folder(tmp_path, monkeypatch):
    """A folder of the test's own for what the workbook remembers."""
    monkeypatch.setenv("SHOPLIB_WORKBOOK", str(tmp_path / "kept"))
    return tmp_path / "kept"
