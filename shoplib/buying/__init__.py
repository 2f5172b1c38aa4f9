"""From the solved cabinet to the yard: what is laid out on which stock, what is bought, what can wait."""
