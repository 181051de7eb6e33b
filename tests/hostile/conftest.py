"""The fixtures of the command line serve here too."""

from tests.cli.conftest import home, run, sit

__all__ = ["home", "run", "sit"]
