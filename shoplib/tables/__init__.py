"""Tables of published and trade values, read from `data/`; every row names its source."""
