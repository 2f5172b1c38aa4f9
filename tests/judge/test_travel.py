"""Travel, hardware and gaps: each fault is told, and a runner in its groove is none."""

from copy import deepcopy

import pytest

from tests.judge.hand_made import BOX, CASE
from tests.judge.judge import judge
from tests.judge.mutate import board, move, told


class TestTravel:
    def test_a_strip_in_the_way(self, plan):
        strip = deepcopy(board(plan, "bottom"))
        strip |= {"name": "strip", "origin": [100, -200, 250], "size": [50, 50, CASE], "cuts": []}
        plan["boards"].append(strip)
        plan["outside"]["depth"] = plan["envelope"]["depth"] = 700
        faults = judge(plan)
        assert any("travel: bay 1 drawer 1 box front runs into strip" in f for f in faults)
        assert not any("drawer 2" in f for f in faults)

    def test_a_runner_in_the_groove_that_it_lies_in_is_free(self, plan):
        """A side-hung runner: the hull of the box side would fill the groove, its pieces do not."""
        name = "bay 1 drawer 1 left"
        low, high = [0, 60, 0], [450, 80, 5]
        board(plan, name)["cuts"].append({"kind": "groove", "low": low, "high": high, "for": ""})
        x = CASE + 12.7
        runner = {
            "name": "runner",
            "group": "case",
            "stage": 2,
            "sheet": "box sheet",
            "origin": [x + 4.9 - BOX, 40, 281],
            "size": [400, 18, BOX],
            "axes": ["+y", "+z", "+x"],
            "cuts": [],
        }
        plan["boards"].append(runner)
        plan["hardware"] = []
        assert judge(plan) == []
        runner["origin"][2] = 279  # 1 mm below the groove's lower wall at z = 280
        assert told(plan, "travel: bay 1 drawer 1 left runs into runner")
        runner["origin"][2] = 281
        board(plan, name)["cuts"][-1]["high"][0] = 300  # the runner is longer
        assert told(plan, "overlap: bay 1 drawer 1 left and runner")

    def test_a_groove_stopped_at_the_rear(self, plan):
        """Closed it is free; running out, the wood behind the groove's end strikes the runner."""
        name = "bay 1 drawer 1 left"
        board(plan, name)["cuts"].append(
            {"kind": "groove", "low": [0, 60, 0], "high": [430, 80, 5], "for": ""}
        )
        plan["boards"].append(
            {
                "name": "runner",
                "group": "case",
                "stage": 2,
                "sheet": "box sheet",
                "origin": [CASE + 12.7 + 4.9 - BOX, 40, 281],
                "size": [400, 18, BOX],
                "axes": ["+y", "+z", "+x"],
                "cuts": [],
            }
        )
        plan["hardware"] = []
        faults = judge(plan)
        way = 440 - (CASE + 430 - 400)  # from the runner's rear end to where the groove's end comes to
        assert len(faults) == 1
        assert "travel: bay 1 drawer 1 left runs into runner" in faults[0]
        assert float(faults[0].split("(")[1].split()[0]) == pytest.approx(way * 4.9 * 18, abs=1e-3)


class TestHardware:
    def test_slide_into_the_back(self, plan):
        plan["hardware"][0]["high"][1] += 50
        assert told(plan, "hardware: slide on left side stands in back")

    def test_slide_out_of_the_cabinet(self, plan):
        plan["hardware"][0]["low"][1] = -5
        assert told(plan, "slide on left side reaches out of the cabinet")

    def test_slide_off_its_board(self, plan):
        plan["hardware"][0]["low"][0] += 1
        assert told(plan, "slide on left side does not touch it")

    def test_slide_thicker_than_its_room(self, plan):
        plan["hardware"][0]["high"][0] += 0.5
        assert told(plan, "slide on left side stands in bay 1 drawer 1 left")


class TestGaps:
    def test_gap(self, plan):
        plan["gaps"][0]["size"] = 3
        assert told(plan, "gap: between", "there are 2.000000 mm along z, not 3")

    def test_a_front_moved(self, plan):
        move(plan, "bay 1 drawer 1 front", (0.1, 0, 0))
        assert told(plan, "gap: between bay 1 drawer 1 front and left side there are 2.1")
