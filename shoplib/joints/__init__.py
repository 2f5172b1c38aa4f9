"""The joints of the bench, in the order in which they are learnt."""

from shoplib.joints.bench_pair import JointKind
from shoplib.joints.bridle import BRIDLE
from shoplib.joints.butt import BUTT
from shoplib.joints.cross_lap import CROSS_LAP
from shoplib.joints.dado import DADO
from shoplib.joints.dovetail import DOVETAIL
from shoplib.joints.dowel import DOWEL
from shoplib.joints.drawer_lock import DRAWER_LOCK
from shoplib.joints.finger import FINGER_JOINT
from shoplib.joints.groove import GROOVE
from shoplib.joints.half_lap import HALF_LAP
from shoplib.joints.mortise_and_tenon import MORTISE_AND_TENON
from shoplib.joints.pocket_screws import POCKET_SCREWS
from shoplib.joints.rabbet import RABBET
from shoplib.joints.spline import SPLINE
from shoplib.joints.splined_mitre import SPLINED_MITRE
from shoplib.joints.stopped_dado import STOPPED_DADO
from shoplib.joints.tongue import TONGUE_IN_DADO

JOINTS: tuple[JointKind, ...] = (
    BUTT,
    POCKET_SCREWS,
    RABBET,
    DADO,
    STOPPED_DADO,
    GROOVE,
    TONGUE_IN_DADO,
    DRAWER_LOCK,
    FINGER_JOINT,
    HALF_LAP,
    CROSS_LAP,
    DOWEL,
    SPLINE,
    BRIDLE,
    MORTISE_AND_TENON,
    DOVETAIL,
    SPLINED_MITRE,
)
"""All of them: those of cases and drawers, of frames, and those with slanting cuts."""


def joint(name: str) -> JointKind:
    """The joint of that name; ValueError names those there are.

    >>> joint("dado").title
    'dado'
    """
    for kind in JOINTS:
        if kind.name == name:
            return kind
    raise ValueError(f"there is no joint called {name!r}; there are {', '.join(kind.name for kind in JOINTS)}.")
