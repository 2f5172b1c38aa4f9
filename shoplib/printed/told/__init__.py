"""What several papers say alike: readings to fill in, solid wood, spacers, findings in a frame."""
