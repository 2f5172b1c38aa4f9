"""What any paper is made of: blocks, the stamp, and the one template that sets them in type."""
