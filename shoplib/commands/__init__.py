"""The commands that work on project files: each module's `run` returns an exit status."""
