"""The dates of the union: possible, in order, and which one is the separation."""
