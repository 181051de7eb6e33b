"""From when on a marriage or partnership can end."""
