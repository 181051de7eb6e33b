"""What goes in each item of each official form. Concepts here; item numbers in `editions/`."""
