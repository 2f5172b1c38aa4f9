"""The commands that print or write something: each module's `run` returns an exit status."""
