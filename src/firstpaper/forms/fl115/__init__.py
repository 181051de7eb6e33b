"""FL-115, the proof of service."""
