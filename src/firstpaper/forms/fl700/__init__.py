"""FL-700, the joint petition."""
