"""Support for each of the two, as the petition asks for it, keeps it open or ends it."""
