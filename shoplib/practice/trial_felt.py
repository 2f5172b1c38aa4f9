"""What is felt and seen of a joint that is put together, look by look; nothing of it needs a caliper."""

from shoplib.measure import Style
from shoplib.practice.fit import Felt, small
from shoplib.practice.trial_kind import Look, Stood, Trial


def judged(look: Look, stood: Stood, style: Style) -> tuple[str, str, str]:
    """How a look turns out: "good", "more" or "less"; that in few words; and in a sentence.

    >>> from shoplib.practice.trial import begin, cut_pair, set_scale
    >>> from shoplib.practice.trial_spreads import PERFECT
    >>> session = begin("rabbet", "Noor", "in", PERFECT)
    >>> session = set_scale(set_scale(session, "fence", "0.7065 in").session, "depth", "0.25 in").session
    >>> judged(session.trial.looks[1], cut_pair(session).session.pair, session.style)[:2]
    ('less', 'floor: 0.109 in under')
    """
    amount = look.amount(stood)
    if look.sort == "fit":
        felt = Felt(amount, style.unit)
        came = "less" if not felt.enters else "more" if felt.loose else "good"
        said = f"{look.good}: {felt.said(style)}. {felt.fit.feels}"
        return came, f"{look.name}: {felt.said(style)}", said
    size = small(abs(amount), style)
    if abs(amount) <= look.allow:
        return "good", f"{look.name}: closed" if size == small(0, style) else f"{look.name}: {size} off", look.good
    came = "more" if amount > 0 else "less"
    sentence = (look.more if amount > 0 else look.less)[0].format(size=size)
    return came, f"{look.name}: {size} {'over' if amount > 0 else 'under'}", sentence


def looks_of(trial: Trial, stood: Stood) -> tuple[Look, ...]:
    """What can be looked at: all of it, or only the fits where a board does not go in."""
    return tuple(look for look in trial.looks if not stood.tight or look.sort == "fit")


def felt_said(trial: Trial, stood: Stood, style: Style) -> tuple[tuple[str, str], ...]:
    """All that is felt of a test joint: in few words, and in a sentence."""
    return tuple(
        judged(look, stood, style)[1:] for look in looks_of(trial, stood) if look.felt
    )
