"""The ground of a divorce or a legal separation."""
