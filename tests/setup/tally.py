"""Runs test programs, checks and figures, a few at a time, and sums what they found.

A test program is what CTest knows (Catch2: its cases are counted); a check is a script in tests/checks; a figure is a
program of its own kind, tests/NAME/run or proofstand_NAME, whose last line is its figure and whose exit code judges it.
"""
import concurrent.futures
import json
import os
import pathlib
import re
import subprocess
import sys
import time

ROOT = pathlib.Path(__file__).resolve().parents[2]
LONGEST_S = 1500  # a program that takes longer hangs
LONGEST_FIGURE_S = 4 * 3600  # bare systems build everything twice


class Outcome:
    def __init__(self, name, passed, failed, seconds, said, skipped=0):
        self.name, self.passed, self.failed, self.skipped = name, passed, failed, skipped
        self.seconds, self.said = seconds, said

    def line(self):
        words = [f'{self.passed} passed'] if self.passed or not self.skipped else []
        words += [f'{self.failed} FAILED'] if self.failed else []
        words += [f'{self.skipped} skipped'] if self.skipped else []
        return f'   {self.name:<24} {", ".join(words):<28} {self.seconds:6.1f} s'

    def last_line(self):
        lines = [line for line in self.said.strip().split('\n') if line.strip()]
        return lines[-1] if lines else ''


def work(command, environment=None, longest_s=LONGEST_S):
    """Exit code, everything it said, seconds. 124 when it did not end in time."""
    begin = time.monotonic()
    try:
        done = subprocess.run([str(word) for word in command], cwd=ROOT, stdin=subprocess.DEVNULL, timeout=longest_s,
                              stdout=subprocess.PIPE, stderr=subprocess.STDOUT, env={**os.environ, **(environment or {})})
        code, said = done.returncode, done.stdout.decode('utf-8', 'replace')
    except subprocess.TimeoutExpired as late:
        code, said = 124, (late.stdout or b'').decode('utf-8', 'replace') + f'\ndid not end within {longest_s} s'
    except OSError as trouble:
        code, said = 126, f'{command[0]}: {trouble.strerror}'
    return code, said, time.monotonic() - begin


def catch_counts(said, code):
    """(passed, failed) test cases of one Catch2 run, edition 2 or 3. Another program, or one that died, counts as one."""
    whole = re.findall(r'^All tests passed \(\d+ assertions? in (\d+) test cases?\)', said, re.M)
    if whole and code == 0:
        return int(whole[-1]), 0
    parts = re.findall(r'^test cases:([^\n]*)', said, re.M)
    if parts:
        def count(word):
            found = re.search(r'(\d+) ' + word + r'\b(?! as)', parts[-1])
            return int(found.group(1)) if found else 0
        passed, failed = count('passed'), count('failed')
        return passed, max(failed, 1 if code else 0)
    if re.search(r'^No tests? (ran|cases matched)', said, re.M):
        return 0, 0
    return (0, 1) if code else (1, 0)


def program(name, command, environment=None):
    code, said, seconds = work(command, environment)
    passed, failed = catch_counts(said, code)
    return Outcome(name, passed, failed, seconds, said)


def check(path):
    code, said, seconds = work([sys.executable, path])
    if code == 77:  # cannot be judged on this system; it says why
        return Outcome(path.stem, 0, 0, seconds, said, skipped=1)
    return Outcome(path.stem, int(code == 0), int(code != 0), seconds, said)


def figure_command(name, build='dev'):
    """How a figure is worked, or None where this tree has none of that name."""
    script = ROOT / 'tests' / name / 'run'
    if script.exists():
        return [script]
    for found in sorted((ROOT / 'build' / build / 'tests').rglob(f'proofstand_{name}')):
        if found.is_file():
            return [found]
    return None


def figure(name, command):
    code, said, seconds = work(command, longest_s=LONGEST_FIGURE_S)
    return Outcome(name, int(code == 0), int(code != 0), seconds, said)


def test_programs(build='dev'):
    """(name, command) of every test program that CTest knows in a build."""
    listed = subprocess.run(['ctest', '--test-dir', f'build/{build}', '--show-only=json-v1'], cwd=ROOT, text=True,
                            capture_output=True, check=True)
    return [(test['name'], test['command']) for test in json.loads(listed.stdout)['tests'] if test.get('command')]


def run_all(jobs, at_once=None):
    """jobs: callables that return an Outcome. Prints each as it ends; a failure with everything it said."""
    outcomes = []
    with concurrent.futures.ThreadPoolExecutor(at_once or os.cpu_count() or 1) as pool:
        for done in concurrent.futures.as_completed([pool.submit(job) for job in jobs]):
            outcome = done.result()
            outcomes.append(outcome)
            if outcome.failed:
                print(outcome.said.rstrip())
            elif outcome.skipped:
                print(f'   {outcome.last_line()}')
            print(outcome.line(), flush=True)
    return outcomes
