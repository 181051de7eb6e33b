"""The private money pages: what is owned and owed, what it comes to, estimates, support, what is left out.

None of them is a part of the packet. Each says at its foot that it is private. Three groups are kept apart:
what can be said for sure, what is an estimate and ends with a lawyer, and what is left out.
"""
