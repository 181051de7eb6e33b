"""What each side must show the other about money and property."""
