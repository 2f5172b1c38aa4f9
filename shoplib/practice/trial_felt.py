"""What is felt and seen of a joint that is put together, look by look; nothing of it needs a caliper."""

from shoplib.measure import Style, to_step
from shoplib.practice.fit import FINEST, Felt, small
from shoplib.practice.trial_kind import Look, Stood, Trial


def judged(look: Look, stood: Stood, style: Style) -> tuple[str, str, str]:
    """How a look turns out: "good", "more" or "less"; that in few words; and in a sentence.

    What is off is judged as it is written, so that the same size never passes once and fails another time. What passes
    is told all the same, and near its limit as the fault that it will soon be.

    >>> from shoplib.practice.trial import begin, cut_pair, set_scale
    >>> from shoplib.practice.trial_spreads import PERFECT
    >>> def rabbet(depth):
    ...     session = set_scale(begin("rabbet", "Noor", "in", PERFECT), "fence", "0.707 in").session
    ...     session = cut_pair(set_scale(session, "depth", depth).session).session
    ...     return judged(session.trial.looks[1], session.pair, session.style)
    >>> rabbet("0.25 in")[:2]
    ('less', 'bottom stops 0.109 in too early')
    >>> rabbet("0.357 in")[2]
    'The bottom goes home, but for 0.002 in.'
    >>> rabbet("0.355 in")[2]
    'The bottom stops 0.004 in before it is home: the rabbet is too shallow. Up to 0.005 in a shop lets pass.'
    """
    amount = look.amount(stood)
    if look.sort == "fit":
        felt = Felt(amount, style.unit)
        came = "less" if not felt.enters else "more" if felt.loose else "good"
        said = f"{look.good}: {felt.said(style)}. {felt.fit.feels}"
        return came, f"{look.brief[0]}: {felt.said(style)}", said
    size, off, limit = small(abs(amount), style), _read(amount, style), _read(look.allow, style)
    if not off:
        return "good", look.brief[0], look.good
    which = "more" if amount > 0 else "less"
    fault = (look.more if amount > 0 else look.less)[0].format(size=size)
    brief = look.brief[1 if amount > 0 else 2].format(size=size)
    if off > limit:
        return which, brief, fault
    if near_limit(look, amount, style):
        return "good", brief, f"{fault} Up to {small(look.allow, style)} a shop lets pass."
    return "good", brief, f"{look.good.removesuffix('.')}, but for {size}."


def near_limit(look: Look, amount: int, style: Style) -> bool:
    """Whether a gap that still passes is over half of what a shop lets pass."""
    off, limit = _read(amount, style), _read(look.allow, style)
    return look.sort == "gap" and limit < 2 * off <= 2 * limit


def _read(amount: int, style: Style) -> int:
    return to_step(abs(amount), FINEST[style.unit])


def looks_of(trial: Trial, stood: Stood) -> tuple[Look, ...]:
    """What can be looked at: all of it, or only the fits where a board does not go in."""
    return tuple(look for look in trial.looks if not stood.tight or look.sort == "fit")


def felt_said(trial: Trial, stood: Stood, style: Style) -> tuple[tuple[str, str], ...]:
    """All that is felt of a test joint: in few words, and in a sentence."""
    found = []
    for look in looks_of(trial, stood):
        if look.felt:
            _, short, said = judged(look, stood, style)
            near = near_limit(look, look.amount(stood), style)
            found.append((short, f"{said} The next cut may be past that: set it right first." if near else said))
    return tuple(found)
