"""What a person takes to the bench on paper: the plan set, labels, story stick and templates, and what marks their pages."""
