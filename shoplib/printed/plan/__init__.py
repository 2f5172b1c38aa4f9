"""The plan set, a module for each of its parts."""
