"""HiGHS as the layouts use it."""

import highspy


class Solver(highspy.Highs):
    """HiGHS on one core, the same each time, silent."""

    def enableCallbacks(self) -> None:
        """Called where a model begins: none are needed, and before them HiGHS would print its name."""
        self.setOptionValue("output_flag", False)
        self.setOptionValue("threads", 1)
        self.setOptionValue("random_seed", 1)
