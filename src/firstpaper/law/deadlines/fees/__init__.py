"""Dates that a request to waive the fee starts."""
