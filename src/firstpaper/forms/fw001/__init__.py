"""FW-001, the request to waive court fees."""
