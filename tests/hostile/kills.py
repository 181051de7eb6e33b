"""A real interview killed at random moments, again and again, by the one signal that nothing can catch.

What is typed is known here, so it is known what must be on the disk: every answer after which the next
question was shown, and at most the one line more that was on its way.
"""

import subprocess
import threading
from collections.abc import Iterator
from contextlib import suppress
from pathlib import Path
from random import Random

from firstpaper.casefile import CaseFile, OpenCase
from firstpaper.casefile.copies import Copies
from firstpaper.casefile.reading import content_of, read_case_file
from firstpaper.intake import next_question, put, read_answer
from tests.cli.person import COMMAND, NEXT_LINE, ON, PROMPT, answers_of, environment
from tests.hostile.targets import TODAY

PASSPHRASE = "marble otter seven violins"
ASKS = ["ask", "home.case", "--on", ON]
STARTING, ANSWERING = 0.5, 0.1
"""Seconds within which a process is killed: after its start, or after a question."""
MOST_ANSWERS = 8
"""How many answers a process gets before the question after which it is killed."""


def killed_again_and_again(folder: Path, times: int, random: Random, *, sealed: bool) -> dict[str, int]:
    """Kill `times` processes on their way through interviews, and check the file after each."""
    path = folder / "home.case"
    (folder / "words").write_text(PASSPHRASE)
    answers = {**answers_of("plain-childless-divorce"), "residence.petitioner.own_county": "Fresno"}
    seen = {"kills": 0, "answers saved": 0, "lines lost on their way": 0, "interviews finished": 0}
    while seen["kills"] < times or not seen["answers saved"]:
        before = _on_disk(path)
        sitting = _Sitting(path, answers, before, sealed=sealed)
        killed = sitting.run(random)
        after = _on_disk(path)
        assert after in (sitting.acknowledged, sitting.on_its_way), "an answer was lost"
        _check_copies(path)
        seen["kills"] += killed
        seen["answers saved"] += sitting.answered
        seen["lines lost on their way"] += after != sitting.on_its_way
        if not killed:
            assert next_question(after.case, after.passed) is None
            seen["interviews finished"] += 1
            path.unlink()
            Copies(path).clear()
    return seen


def left_over(path: Path) -> list[str]:
    """What lies in the folder after the next sitting has swept it."""
    with OpenCase(path, begin=True, passphrases=[PASSPHRASE]):
        pass
    return sorted(one.name for one in path.parent.iterdir())


def _on_disk(path: Path) -> CaseFile:
    return CaseFile.load(path, [PASSPHRASE]) if path.exists() else CaseFile()


def _check_copies(path: Path) -> None:
    """Every copy is whole, and opens with the same key as the file."""
    copies = Copies(path).newest_first()
    _content, seal = content_of(copies[0], [PASSPHRASE]) if copies else (b"", None)
    for copy in copies:
        data = read_case_file(copy)
        CaseFile.parsed(copy, seal.open(copy, data) if seal else data)


class _Sitting:
    """One process, fed line by line, with a model of what it must have saved."""

    def __init__(self, path: Path, answers: dict[str, str], start: CaseFile, *, sealed: bool) -> None:
        locking = ["--passphrase-from", "words", *([] if path.exists() else ["--seal"])] if sealed else []
        self._process = subprocess.Popen(
            [*COMMAND, *ASKS, *locking],
            cwd=path.parent,
            env=environment(),
            stdin=subprocess.PIPE,
            stderr=subprocess.PIPE,
            stdout=subprocess.DEVNULL,
        )
        self._answers = answers
        self.acknowledged = self.on_its_way = start
        self.answered = 0

    def run(self, random: Random) -> bool:
        """Answer until killed or done; whether it was killed."""
        while_starting = random.random() < 0.2
        killer = threading.Timer(
            random.uniform(0, STARTING if while_starting else ANSWERING), self._process.kill
        )
        before = -1 if while_starting else random.randrange(MOST_ANSWERS)
        if while_starting:
            killer.start()
        with suppress(BrokenPipeError):
            for number, prompt in enumerate(self._prompts()):
                if number == before:
                    killer.start()
                self._meet(prompt)
        killer.cancel()
        status = self._process.wait()
        for stream in (self._process.stdin, self._process.stderr):
            with suppress(BrokenPipeError):
                assert stream
                stream.close()
        return status < 0

    def _prompts(self) -> Iterator[str]:
        assert self._process.stderr
        heard = ""
        while part := self._process.stderr.read1(4096):
            heard += part.decode("utf-8", "replace")
            if heard.endswith(PROMPT):
                yield PROMPT
                heard = ""
            elif heard.endswith(NEXT_LINE):
                yield NEXT_LINE
                heard = ""
        if self.on_its_way is not self.acknowledged and self._process.poll() == 0:
            self._acknowledge()

    def _meet(self, prompt: str) -> None:
        if prompt == NEXT_LINE:
            self._type("")
            return
        if self.on_its_way is not self.acknowledged:
            self._acknowledge()
        one = next_question(self.acknowledged.case, self.acknowledged.passed)
        assert one
        line = self._answers[one.key]
        value = read_answer(one, line, TODAY)
        self.on_its_way = self.acknowledged.with_case(put(self.acknowledged.case, one.key, value))
        self._type(line)

    def _acknowledge(self) -> None:
        self.acknowledged = self.on_its_way
        self.answered += 1

    def _type(self, line: str) -> None:
        assert self._process.stdin
        self._process.stdin.write(f"{line}\n".encode())
        self._process.stdin.flush()
