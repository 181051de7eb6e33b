"""What should not stand in papers that anybody can read."""
