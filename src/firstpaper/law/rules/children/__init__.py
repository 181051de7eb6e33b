"""Which children the petition lists, and what follows from their birth dates."""
