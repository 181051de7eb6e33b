"""FL-117, the notice and acknowledgment of receipt."""
