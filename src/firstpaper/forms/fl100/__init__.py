"""FL-100, the petition: one module for each part of the form.

Each module has `answers(case, on)`, the answers to its concepts for a petition filed on the day `on`.
A module whose items may run over also has `attachment_page(case, on)`, the page that takes the rest; the
answers tick that page exactly where the function returns one. All of them read standing facts: see
`firstpaper.intake.standing`.
"""

FORM = "FL-100"
