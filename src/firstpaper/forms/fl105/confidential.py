"""The box that says why addresses are left out. Which are left out is decided in `facts.addresses`."""

from firstpaper.facts import Case, known
from firstpaper.facts.addresses import keeps_addresses_off
from firstpaper.locale import _


def marks_the_box(case: Case) -> bool | None:
    """Whether the filer alleges violence or abuse and marks the box; None while that is not known."""
    return False if known(case.safety.dangers) == () else known(case.uccjea.kept_private)


def wants_help_first(case: Case) -> bool:
    """Whether the address must stay hidden, and yet the filer will not allege what the law asks for that."""
    return keeps_addresses_off(case) and marks_the_box(case) is False


def get_help_first() -> str:
    """What to do then: nothing of ours shows the address, and the law may want it shown."""
    return _(
        "Your address must stay hidden, but you do not want to speak of violence or abuse here. The law "
        "lets you leave addresses out only if you do. Talk to a lawyer or the hotline before you fill this "
        "in."
    )
