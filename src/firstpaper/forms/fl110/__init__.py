"""FL-110, the summons."""
