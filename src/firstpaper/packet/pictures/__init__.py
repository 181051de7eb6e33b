"""Pictures of days: what is drawn is data, and every picture can be said in sentences.

`timeline`, `residence` and `homes` make a `Chart` from the facts; `words` says one in text; `drawing`
lays one out in shapes; `packet.paper` draws the shapes on paper and `svg` shows them on a screen. Only the
last three need to know how wide a letter is.
"""
