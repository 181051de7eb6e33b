"""How long all rules take on a full case, warm: the median of processor time, printed, nothing asserted.

python tests/benchmarks/rules.py [RUNS]
"""

import sys
from datetime import date
from statistics import median
from time import process_time

from firstpaper.cli.files.households import households
from firstpaper.facts import Case
from firstpaper.intake import facts_from, standing
from firstpaper.law.register import findings

ON = date(2026, 11, 30)


def main(runs: int) -> None:
    for name, path in sorted(households().items()):
        case = standing(facts_from(path.read_text("utf-8"), ON)[0])
        times = [_milliseconds(case) for _ in range(runs + 1)][1:]
        print(f"{name:50s} {median(times):7.2f} ms")


def _milliseconds(case: Case) -> float:
    case = case.model_copy()  # a case not seen before, of which nothing is remembered
    start = process_time()
    findings(case, ON)
    return (process_time() - start) * 1000


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 50)
