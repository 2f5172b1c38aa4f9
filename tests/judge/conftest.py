"""The plan made by hand, fresh for each test."""

import pytest

from tests.judge.hand_made import tool_box


@pytest.fixture
def plan():
    """A sound plan that a test may spoil."""
    return tool_box()
