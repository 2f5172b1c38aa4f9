"""What the stages of the work are called."""

STAGES = {1: "case", 2: "drawer boxes and pull-outs", 3: "fronts and strips"}
"""By the number that each board carries; see `model/board.py`."""
