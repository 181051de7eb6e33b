"""One rule a file; the path is the rule's id."""
