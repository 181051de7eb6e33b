"""The six months before a marriage can end."""
