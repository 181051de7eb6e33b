"""Court fees and fee waivers."""
