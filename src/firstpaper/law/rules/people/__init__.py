"""What the court needs to know about the two people."""
