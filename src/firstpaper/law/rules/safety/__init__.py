"""Danger, a hidden address, and a shared computer. Never decided here, only pointed to help."""
