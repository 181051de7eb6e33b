"""FL-311, the custody sheet behind item 6."""
