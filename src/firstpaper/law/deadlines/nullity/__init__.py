"""Until when a nullity can be asked for."""
