"""Which case it is: the caption, an amended petition, another case, and law that changes soon."""
