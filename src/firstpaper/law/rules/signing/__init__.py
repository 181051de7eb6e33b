"""What the filer states above the signature."""
