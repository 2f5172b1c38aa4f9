"""What is posed to a learner is the same each time, so it is worked out once."""


def posed_once(pose):
    """`pose`, which takes an exercise or a set, a learner and a unit, with what it gave kept."""
    kept = {}

    def posed(asked, learner, unit):
        key = asked.id, learner, unit
        if key not in kept:
            kept[key] = pose(asked, learner, unit)
        return kept[key]

    return posed
