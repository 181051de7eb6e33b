"""One date of a case a file; the path is the date's key."""
