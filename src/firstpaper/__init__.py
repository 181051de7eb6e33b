"""Firstpaper drafts the opening papers of a California divorce, legal separation or nullity."""

__version__ = "0.2.0"
