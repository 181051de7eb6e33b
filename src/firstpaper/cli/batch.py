"""One command for many case files: each by itself, a line each, a count at the end, the worst exit status."""

from collections.abc import Callable, Sequence
from contextvars import copy_context
from pathlib import Path

from firstpaper.cli.result import Exit, Result
from firstpaper.errors import ProgramFault, UserError
from firstpaper.locale import _n

_WORST = (Exit.COULD_NOT_RUN, Exit.STOPS, Exit.OPEN, Exit.FINE)
"""The exit statuses that one case can have, the worst first."""


def for_each(paths: Sequence[Path], work: Callable[[Path], Result]) -> Result:
    """The result of `work` for one case file as it is; for many, a line each, and what went wrong with any.

    A case that fails is left as it was, and the others are done all the same. What is said inside of one is
    said in its language, and the count of all in that of the command.
    """
    if len(paths) == 1:
        return work(paths[0])
    return together([(path, copy_context().run(tried, work, path)) for path in dict.fromkeys(paths)])


def tried(work: Callable[[Path], Result], path: Path) -> Result:
    """The result for one case; what went wrong with it is a result too."""
    try:
        return work(path)
    except UserError as error:
        return Result(errors=(error,), exit=error.exit_code)
    except LookupError as error:
        from firstpaper.cli.law_day import no_law_for

        return _failed(no_law_for(error) or ProgramFault(fault=type(error).__name__))
    except Exception as error:  # a fault of ours in one case must not keep the others from being done
        return _failed(ProgramFault(fault=type(error).__name__))


def together(results: Sequence[tuple[Path, Result]]) -> Result:
    """Many results as one."""
    worst = min((_rank(result.exit) for _path, result in results), default=len(_WORST) - 1)
    lines = [f"{path}: {_line(result)}" for path, result in results]
    failed = sum(bool(result.errors) for _path, result in results)
    return Result(
        data={"cases": [_data(path, result) for path, result in results]},
        text="\n".join([*lines, "", _count(len(results), failed)]),
        exit=_WORST[worst],
    )


def _failed(error: UserError) -> Result:
    return Result(errors=(error,), exit=Exit.COULD_NOT_RUN)


def _rank(status: int) -> int:
    return next((rank for rank, one in enumerate(_WORST) if one == status), 0)


def _line(result: Result) -> str:
    """What is said of one case: its line, or what went wrong, indented below."""
    if result.errors:
        return "\n  ".join(part for error in result.errors for part in error.message.split("\n") if part)
    return result.line or result.text.partition("\n")[0]


def _data(path: Path, result: Result) -> dict[str, object]:
    errors = [{"code": error.code, "message": error.message} for error in result.errors]
    return {"file": str(path), "exit": int(result.exit), "data": dict(result.data), "errors": errors}


def _count(cases: int, failed: int) -> str:
    done = _n("{count} case file.", "{count} case files.", cases).format(count=cases)
    if not failed:
        return done
    left = _n("{count} was left as it was.", "{count} were left as they were.", failed).format(count=failed)
    return f"{done} {left}"
