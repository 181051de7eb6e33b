"""A command line that cannot be understood, in our words: what is wrong, and what to type.

What was typed is not repeated: it may be somebody's answer.
"""

import re
from typing import Any

from firstpaper.errors import UserError
from firstpaper.locale import _

_ONE_OF = "is not one of"
"""How the parser says that a value is none of the choices; they follow in quotes."""


class UsageError(UserError):
    """{what}

    Nothing was done. To see how it is used, type:

    firstpaper {name} --help
    """

    code = "usage"


class ProgramUsageError(UserError):
    """{what}

    Nothing was done. To see all commands, type:

    firstpaper --help
    """

    code = "usage_of_program"


def explained(error: Any) -> UserError:
    """What the parser found wrong, as an error for people."""
    kind = type(error).__name__
    command = error.ctx.info_name if error.ctx is not None and error.ctx.parent is not None else ""
    if command:
        return UsageError(what=_what(error, kind), name=command)
    if kind == "UsageError":
        none = _("There is no such command.")
        return ProgramUsageError(what=f"{none} {_close_command(error)}".strip())
    return ProgramUsageError(what=_what(error, kind))


def _close_command(error: Any) -> str:
    """The command that was most likely meant; empty where none is close."""
    from difflib import get_close_matches

    typed = error.format_message().partition("'")[2].partition("'")[0]
    names = list(error.ctx.command.commands) if error.ctx else []
    close = get_close_matches(typed.lower(), names, n=1, cutoff=0.6)
    return _("Did you mean {name}?").format(name=close[0]) if close else ""


def _what(error: Any, kind: str) -> str:
    if kind == "NoSuchOption":
        close = ", ".join(error.possibilities or ())
        words = _("This command has no such option.")
        near = _("Close to it: {names}.").format(names=close)
        return f"{words} {near}" if close else words
    if kind == "MissingParameter":
        return _("Something is missing: {name}.").format(name=_name(error))
    if kind == "BadOptionUsage":
        return _("The option {name} needs a value after it, or takes none.").format(name=error.option_name)
    if kind == "BadParameter":
        return _bad(error)
    return _("There are more words than this command takes, or an option stands in a wrong place.")


def _bad(error: Any) -> str:
    name, message = _name(error), error.format_message()
    if choices := re.findall(r"'([^']*)'", message.partition(_ONE_OF)[2]):
        return _("The value of {name} must be one of these: {names}.").format(
            name=name, names=", ".join(choices)
        )
    if limit := re.search(r"(greater|less) than or equal to (\d+)", message):
        words = {
            "greater": _("The value of {name} must be at least {limit}."),
            "less": _("The value of {name} can be {limit} at most."),
        }[limit[1]]
        return words.format(name=name, limit=limit[2])
    if "integer" in message:
        return _("The value of {name} must be a whole number.").format(name=name)
    return _("The value of {name} cannot be used.").format(name=name)


def _name(error: Any) -> str:
    parameter = error.param
    if parameter is None:
        return error.param_hint or "?"
    options: list[str] = [one for one in parameter.opts if one.startswith("-")]
    return max(options, key=len) if options else str(parameter.metavar or parameter.name)
