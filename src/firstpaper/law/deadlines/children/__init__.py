"""Last days that have to do with who a parent is."""
