"""What ends a case that does not move."""
