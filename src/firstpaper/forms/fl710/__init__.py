"""FL-710, the joint summons."""
