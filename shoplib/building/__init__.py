"""How a shop builds the cabinet: the steps in their order, clamps, glue and its open time, what is measured between."""
