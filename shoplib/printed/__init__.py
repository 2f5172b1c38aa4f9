"""What a person takes to the bench on paper: plan set, labels, story stick, templates, and what marks their pages."""
