"""The cabinet as boards: what a project asks for, solved into boards with cuts, joints and travel."""
