"""The time to respond, and what follows from silence."""
