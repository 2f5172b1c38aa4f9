"""The exercise engine, and one module of exercises for each lesson.

Wherever a page imports from here, errors in a learner's own cell are told kindly from then on.
"""

from shoplib.live.kind_faults import tell_kindly

tell_kindly()
