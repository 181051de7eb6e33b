"""The orders printed with the summons, and whom they bind."""
