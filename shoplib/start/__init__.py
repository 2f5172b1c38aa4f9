"""Set up, start, test: makes the environment and hands over to what runs in it.

Everything here uses the standard library alone, because it runs before anything is installed.
"""
