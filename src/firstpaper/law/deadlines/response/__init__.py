"""Until when the other side can answer, and what opens after that."""
