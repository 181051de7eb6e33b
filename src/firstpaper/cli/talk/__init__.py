"""Conversations at a terminal: the engine (`conversation.py`), and one module for each kind of talk."""
