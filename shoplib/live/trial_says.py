"""What the practice bench of any joint tells: the log of test joints, what its model knows, what came of the pair."""

from shoplib.live.practice_says import Section
from shoplib.measure import to_step
from shoplib.practice.fit import small
from shoplib.practice.trial import DRAWN, TrialSession, hidden
from shoplib.practice.trial_kind import Scale, Trial
from shoplib.practice.trial_result import TrialResult
from shoplib.practice.trial_spreads import LEFT_OUT, PROTRACTOR, degrees, told

TOOLS = {
    "stacked dado set": "a stacked dado set", "single blade in passes": "a single blade in passes",
    "router": "a router", "hand tools": "hand tools", "drill": "a drill",
}


def ways(trial: Trial) -> dict[str, str]:
    """How the pair may be cut: what the learner chooses, by the slip that comes of it.

    >>> from shoplib.practice.trials import trial
    >>> ways(trial("rabbet"))["wrong face"]
    'the side with its outer face down'
    """
    return {
        "": "as it should be",
        **{slip.name: slip.way for slip in trial.slips},
        DRAWN: "in a hurry: anything may happen, or nothing",
    }


def log(session: TrialSession) -> dict[str, list]:
    """A row for each test joint: what was set, what was read, and what was felt, as far as it was."""
    scales, rows = session.trial.scales, []
    for number, test in enumerate(session.tests, 1):
        cells = [_set_and_read(session, scale, at, number) for scale, at in zip(scales, test.at, strict=True)]
        rows.append([str(number), *cells, "; ".join(session.felt_of(number)) or "not tried"])
    return {"head": ["Test joint", *(f"{_short(scale)}: set / read" for scale in scales), "Felt"], "rows": rows}


def _set_and_read(session: TrialSession, scale: Scale, at: int, test: int) -> str:
    read = session.reading(scale.name, test)
    return f"{session.written(scale, at)} / {'-' if read is None else session.written(scale, read.mean)}"


def model(session: TrialSession) -> tuple[Section, ...]:
    """What the bench knows, with its spreads, and what it leaves out."""
    sorts = [scale.sort for scale in session.trial.scales]
    return (
        Section("What it knows", told(session.off, sorts, session.style)), Section("What it leaves out", LEFT_OUT),
    )


def came_of_it(session: TrialSession, done: TrialResult) -> tuple[Section, ...]:
    """All that is told of this pair, in order."""
    sections = [Section("The joint, put together dry", tuple(each.said for each in done.came))]
    if done.slip:
        sections.append(Section("What happened", (done.slip,)))
    saved = tuple(each.saved for each in done.came if each.saved)
    if saved:
        sections.append(Section("What can be saved", saved))
    sections.append(Section("What was hidden in your machine", tuple(
        _out(session, scale) for scale in session.trial.scales
    )))
    count = len(session.tests)
    hand = done.practised
    sections.append(Section("Test joints", (
        f"You cut {count or 'no'} test joint{'' if count == 1 else 's'}; a practised hand cuts {hand.tests} here.",
    )))
    return (*sections, Section("What a practised hand does at this machine, with these boards", hand.said, steps=True))


def _out(session: TrialSession, scale: Scale) -> str:
    off = hidden(session, scale)
    size = _as_read(session, scale, abs(off))
    if size == _as_read(session, scale, 0):
        return f"{_begin(scale.makes)}: as it is set, as near as can be read."
    more = "larger" if off > 0 else "smaller"
    return f"{_begin(scale.makes)}: {size} {more} than it is set to."


def _as_read(session: TrialSession, scale: Scale, size: int) -> str:
    """No finer than a learner could have read it."""
    return degrees(to_step(size, PROTRACTOR)) if scale.sort == "angle" else small(size, session.style)


def _short(scale: Scale) -> str:
    return scale.label.partition(":")[0].partition(",")[0]


def _begin(text: str) -> str:
    return text[:1].upper() + text[1:]
