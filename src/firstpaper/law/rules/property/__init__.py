"""How the petition speaks of what the two own and owe."""
