"""From when on a divorce can be filed here."""
