"""The law as dated data and small rules. Same case and same day in, same findings out."""
