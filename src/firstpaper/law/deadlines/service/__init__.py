"""Dates that mailing the papers starts."""
