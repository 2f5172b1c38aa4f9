"""What is laid on the wood: labels, story stick, templates."""
