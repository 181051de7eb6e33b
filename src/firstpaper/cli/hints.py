"""Commands that a person is told to type. Each runs as it is printed, and stays on one line."""

from shlex import quote

from firstpaper.cli.terminal import KEEPS_TOGETHER


def command(*words: object) -> str:
    """A command of this program with its arguments, quoted for the shell, to stand inside a sentence."""
    return KEEPS_TOGETHER.join(["firstpaper", *(_quoted(str(word)) for word in words)])


def to_type(words: str, *arguments: object) -> str:
    """What a command is good for, and the command on a line of its own."""
    return f"{words}\n  {command(*arguments)}"


def _quoted(word: str) -> str:
    return quote(word).replace(" ", KEEPS_TOGETHER)
