"""How names of boards, amounts and directions are said: what the rooms that speak to people share."""
