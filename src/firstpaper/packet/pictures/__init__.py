"""Pictures of days and of shares: what is drawn is data, and every picture can be said in sentences.

`timeline`, `residence` and `homes` make a `Chart` of days from the facts, `estate` and `house` a chart of
`Shares`. `words` says one in text; `drawing` and `share_bars` lay one out in
shapes; `packet.paper` draws the shapes on paper and `svg` shows them on a screen. Only the
last three need to know how wide a letter is.
"""
