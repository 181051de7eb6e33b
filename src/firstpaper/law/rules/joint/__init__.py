"""One petition for both."""
