"""One thin file a command: read the arguments, call the parts that do the work, hand back a result."""
