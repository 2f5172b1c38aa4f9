"""What is cut, listed: kinds of board, their cuts in words, and a typed list held against them."""
