"""When a question is asked, by topic. Each function answers one plain question about what was told so far.

No law and no clock: whether an answer is good enough is for the rules to say. A fact that was not
told, or that the person does not know, never makes a question appear unless its predicate says so.
The banks name these functions under `when`, `spared_if` and `needless_if`; those for the questions of one
child, thing or debt take that row too.
"""

_TOPICS = ("matter", "residence", "children", "grounds", "requests", "shortcuts")
OF_THE_INTERVIEW = tuple(f"{__name__}.{topic}" for topic in _TOPICS)
OF_THE_LISTING = (f"{__name__}.listing", f"{__name__}.children")
OF_EVENTS = (f"{__name__}.events",)
"""The modules in which each bank looks for a predicate, in this order; one is loaded when it is reached."""
