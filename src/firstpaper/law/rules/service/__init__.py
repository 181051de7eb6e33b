"""Handing the first papers over, and proving it."""
