"""The days after which a case ends, or can end, for delay."""
