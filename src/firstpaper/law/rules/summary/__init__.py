"""The short ways to end a marriage or partnership: by summary dissolution, or by notice to the state."""
