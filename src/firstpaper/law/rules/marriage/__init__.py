"""How long the union lasted, and what hangs on that."""
