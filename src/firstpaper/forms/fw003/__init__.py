"""FW-003, the order on court fees."""
