"""The build order as pages: step by step, what is done and what is measured first."""
