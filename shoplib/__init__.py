"""A workbook for people who build shop furniture: lessons, a cabinet solver, plans to print.

`python3 -m shoplib` starts it. This file uses the standard library alone and plain syntax, so that
a Python that is too old can still read it and say so.
"""
