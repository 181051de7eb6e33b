"""The court's own blank forms: read, matched with our items, confirmed by a person, filled and read back.

A blank stays the court's, and comes from the user. A map says which field takes which answer; it holds
nothing of anybody's case. Nothing is written into a field that no person confirmed.
"""
