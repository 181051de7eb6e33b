"""Whether somebody has lived here long enough, and in which county to file."""
