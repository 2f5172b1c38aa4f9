"""Who answers in these tests. Each name draws givens of its own."""

LEARNERS = [f"learner {number}" for number in range(200)]
ONE = LEARNERS[0]
