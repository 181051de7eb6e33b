"""Change the code in small ways, one at a time, and see whether a test notices.

    python tests/mutation.py src/firstpaper/counting src/firstpaper/law/rules/joint
    python tests/mutation.py --part 0/2 src/firstpaper/law/measures

A script for a developer's machine, not part of the test run. The changes are those of cosmic-ray (in
the dev extra): a comparison, a number, a condition, an "and", a sign. Each is tried in a forked child
that reads the changed module in place of the real one; nothing on disk is touched. For a rule the cases
of all rules that can see it run, its own first; for anything else the cases of all rules and the tests of
its folder. A change that never comes to an end is noticed. One that nobody notices is shown, unless
`docs/explanation/mutation.md` explains it. Ends with 1 where one is left unexplained.
"""

import argparse
import ast
import gc
import importlib
import importlib.machinery
import importlib.util
import os
import signal
import sys
from collections import Counter
from collections.abc import Callable, Iterator, Sequence
from contextlib import redirect_stderr, redirect_stdout
from dataclasses import dataclass
from functools import cache
from itertools import pairwise
from pathlib import Path
from types import CodeType

import grimp
import hypothesis
import numpy  # noqa: F401  (loaded once here, and not in each child)
import pydantic  # noqa: F401
import pytest
from cosmic_ray.ast import ast_nodes, get_ast
from cosmic_ray.mutating import mutate_code
from cosmic_ray.plugins import get_operator

ROOT = Path(__file__).parents[1]
SOURCE = ROOT / "src"
EXPLAINED = ROOT / "docs" / "explanation" / "mutation.md"
READ_ANEW = ("firstpaper.counting", "firstpaper.law", "firstpaper.intake", "firstpaper.forms", "tests")
LONGEST = 60
"""Seconds of work after which a change that loops counts as noticed; time spent waiting does not count."""
RULES = "firstpaper.law.rules."

TESTS = {
    "counting": ("tests/counting",),
    "law/measures": ("tests/law/measures",),
    "law": tuple(f"tests/law/test_{name}.py" for name in ("rule_cases", "changes", "figures", "register")),
}
"""What runs for the files of a folder that are no rules, besides the cases of all rules."""

ALONE = ("-x", "-o", "addopts=--import-mode=importlib -p no:cacheprovider")
"""In this process and no other, so that the change is read."""

PAIRS = {
    "Comparison": (
        "Lt_LtE Lt_GtE LtE_Lt LtE_Gt Gt_GtE Gt_LtE GtE_Gt GtE_Lt Eq_NotEq NotEq_Eq Is_IsNot IsNot_Is"
    ),
    "Binary": (
        "Add_Sub Sub_Add Mul_FloorDiv FloorDiv_Mul Mul_Add Mod_Mul BitAnd_BitOr BitOr_BitAnd BitXor_BitAnd"
    ),
    "Unary": "Delete_Not Delete_USub USub_UAdd",
}
OPERATORS = (
    *(f"core/Replace{kind}Operator_{pair}" for kind, pairs in PAIRS.items() for pair in pairs.split()),
    "core/AddNot",
    "core/NumberReplacer",
    "core/ReplaceAndWithOr",
    "core/ReplaceOrWithAnd",
    "core/ReplaceTrueWithFalse",
    "core/ReplaceFalseWithTrue",
    "core/ReplaceBreakWithContinue",
    "core/ReplaceContinueWithBreak",
    "core/ExceptionReplacer",
    "core/ZeroIterationForLoop",
    "core/RemoveDecorator",
)


@dataclass(frozen=True)
class Mutant:
    """One small change to one file."""

    path: Path
    operator: str
    line: int
    old: str
    new: str
    code: str

    @property
    def module(self) -> str:
        return ".".join(self.path.relative_to(SOURCE).with_suffix("").parts)

    @property
    def explained(self) -> bool:
        """Whether the page on survivors shows this change, old and new, under this file."""
        place = self.path.relative_to(SOURCE / "firstpaper").as_posix()
        return f"`{place}`: `{self.old}` -> `{self.new}`" in EXPLAINED.read_text("utf-8")

    def __str__(self) -> str:
        place = self.path.relative_to(SOURCE / "firstpaper").as_posix()
        return f"`{place}`: `{self.old}` -> `{self.new}` (line {self.line}, {self.operator})"


def mutants(path: Path) -> Iterator[Mutant]:
    """Every change to a file that still is Python, but to what is declared about a rule and to types."""
    source = path.read_text("utf-8")
    left_out = set(_declared_lines(source))
    for name, changed in _changes(source):
        if (line := _changed_line(source, changed)) not in left_out and _is_python(changed):
            old, new = source.splitlines()[line - 1 : line], changed.splitlines()[line - 1 : line]
            yield Mutant(
                path, name.removeprefix("core/"), line, *(one[0].strip() for one in (old, new)), changed
            )


def _changes(source: str) -> Iterator[tuple[str, str]]:
    """The name of an operator and the source as it changes it, statement by statement, which is quick."""
    for before, statement, after in _statements(source):
        nodes = list(ast_nodes(get_ast(statement)))
        for name in OPERATORS:
            operator = get_operator(name)()
            places = sum(len(list(operator.mutation_positions(node))) for node in nodes)
            for number in range(places):
                yield name, f"{before}{mutate_code(statement, operator, number)}{after}"


def _statements(source: str) -> Iterator[tuple[str, str, str]]:
    """What stands before each statement of the module, the statement, and what stands after it."""
    lines = source.splitlines(keepends=True)
    begins = [min(_lines_of(node)) - 1 for node in ast.parse(source).body]
    for begin, end in pairwise([*begins, len(lines)]):
        yield "".join(lines[:begin]), "".join(lines[begin:end]), "".join(lines[end:])


def _lines_of(node: ast.stmt) -> Iterator[int]:
    yield node.lineno
    yield from (each.lineno for each in getattr(node, "decorator_list", ()))


def _declared_lines(source: str) -> Iterator[int]:
    """Lines that declare: `@rule(...)`, which is data as figures are, `@dataclass(...)`, and signatures."""
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.FunctionDef | ast.ClassDef):
            for each in node.decorator_list:
                if isinstance(each, ast.Call):
                    yield from range(each.lineno, (each.end_lineno or each.lineno) + 1)
            yield from range(node.lineno, node.body[0].lineno)
        elif isinstance(node, ast.AnnAssign) and node.value is None:
            yield node.lineno


def _changed_line(source: str, changed: str) -> int:
    before, after = source.splitlines(), changed.splitlines()
    pairs = enumerate(zip(before, after, strict=False), 1)
    return next((number for number, (old, new) in pairs if old != new), len(before))


def _is_python(code: str) -> bool:
    try:
        ast.parse(code)
    except SyntaxError:
        return False
    return True


def noticed(mutant: Mutant) -> bool:
    """Whether any test fails with the change, in a child of this process."""
    child = os.fork()
    if child == 0:
        signal.setitimer(signal.ITIMER_PROF, LONGEST)
        try:
            with Path(os.devnull).open("w") as nowhere, redirect_stdout(nowhere), redirect_stderr(nowhere):
                failed = _fails(mutant)
        except BaseException:  # whatever breaks has noticed the change
            failed = True
        os._exit(int(failed))
    _pid, status = os.waitpid(child, 0)
    return status != 0


def _fails(mutant: Mutant) -> bool:
    sys.meta_path.insert(0, _Changed(mutant))
    if mutant.module.startswith(RULES):
        return _rule_fails(mutant)
    for name in [name for name in sys.modules if name.startswith(READ_ANEW)]:
        del sys.modules[name]
    folder = next(each for each in TESTS if mutant.path.is_relative_to(SOURCE / "firstpaper" / each))
    return _cases_fail() or pytest.main([*ALONE, *TESTS[folder]]) != 0


def _rule_fails(mutant: Mutant) -> bool:
    """Whether a case fails of a rule that the change can reach. Only these rules are read anew."""
    from firstpaper.law import register  # noqa: PLC0415  (loaded before the fork)

    reached = [mutant.module, *sorted(_import_graph().find_downstream_modules(mutant.module))]
    reached = [name for name in reached if name.startswith(RULES)]
    for name in reached:
        sys.modules.pop(name, None)
        register._DECLARED.pop(name.removeprefix(RULES), None)
    for name in reached:
        importlib.import_module(name)
    register.all_rules.cache_clear()
    return _cases_fail([name.removeprefix(RULES) for name in reached])


@cache
def _import_graph() -> grimp.ImportGraph:
    return grimp.build_graph("firstpaper")


def _cases_fail(rules: Sequence[str] | None = None) -> bool:
    """Whether a case fails, of these rules in their order, or of all."""
    from tests.law.rule_cases import RULE_CASES  # noqa: PLC0415  (read anew where a change is no rule)
    from tests.law.test_rule_cases import (  # noqa: PLC0415
        test_the_rule_says_what_the_case_expects,
    )

    known = [case for case in RULE_CASES if rules is None or case.rule in rules]
    try:
        for case in sorted(known, key=lambda each: rules.index(each.rule) if rules else 0):
            test_the_rule_says_what_the_case_expects(case)
    except BaseException:
        return True
    return False


class _Changed(importlib.machinery.PathFinder):
    """Finds the changed module, and reads the change in place of its file."""

    def __init__(self, mutant: Mutant) -> None:
        self._mutant = mutant

    def find_spec(self, name, path=None, target=None):  # type: ignore[no-untyped-def,override]
        if name != self._mutant.module:
            return None
        spec = importlib.machinery.PathFinder.find_spec(name, path, target)
        assert spec is not None
        assert spec.origin is not None
        spec.loader = _ChangedLoader(name, spec.origin, self._mutant.code)
        return spec


class _ChangedLoader(importlib.machinery.SourceFileLoader):
    def __init__(self, name: str, path: str, code: str) -> None:
        super().__init__(name, path)
        self._code = code

    def get_code(self, fullname: str) -> CodeType:
        return compile(self._code, self.path, "exec")


def _survivors(paths: Sequence[Path], part: int, parts: int, tell: Callable[[Mutant, bool], None]) -> None:
    """Try every `parts`-th change, from the `part`-th on. The file as it is must pass first."""
    for path in paths:
        if noticed(Mutant(path, "nothing", 0, "", "", path.read_text("utf-8"))):
            sys.exit(f"{path}: the tests fail without any change")
        for number, mutant in enumerate(mutants(path)):
            if number % parts == part:
                tell(mutant, noticed(mutant))


def _load() -> None:
    """Load once what every change to a rule is tried with, and what a rule reads when it first runs."""
    from tests.law.rule_cases import CASE_FILES  # noqa: PLC0415
    from tests.law.test_rule_cases import (  # noqa: PLC0415
        test_the_rule_says_what_the_case_expects,
    )

    for each in CASE_FILES:
        test_the_rule_says_what_the_case_expects(each.cases[0])
    _import_graph()
    gc.freeze()


def main() -> int:
    """Try the changes to the files named; see the top of this file."""
    parser = argparse.ArgumentParser(
        description="Change the code in small ways, and see whether a test notices."
    )
    parser.add_argument("paths", nargs="+", type=Path)
    parser.add_argument("--part", default="0/1", help="only one part of the work, as 0/2 and 1/2")
    chosen = parser.parse_args()
    os.environ["PYTEST_DISABLE_PLUGIN_AUTOLOAD"] = "1"
    os.chdir(ROOT)
    sys.path.insert(0, str(ROOT))
    _load()
    hypothesis.settings.register_profile(
        "steady", derandomize=True, deadline=None, max_examples=60, database=None
    )
    hypothesis.settings.load_profile("steady")
    part, parts = map(int, chosen.part.split("/"))
    count: Counter[str] = Counter()

    def tell(mutant: Mutant, seen: bool) -> None:
        outcome = "noticed" if seen else "explained" if mutant.explained else "survived"
        count[outcome] += 1
        if outcome == "survived":
            print(mutant, flush=True)

    files = [
        file for path in chosen.paths for file in (sorted(path.rglob("*.py")) if path.is_dir() else [path])
    ]
    _survivors([file.resolve() for file in files if file.name != "__init__.py"], part, parts, tell)
    print(", ".join(f"{number} {outcome}" for outcome, number in count.items()), file=sys.stderr)
    return 1 if count["survived"] else 0


if __name__ == "__main__":
    sys.exit(main())
