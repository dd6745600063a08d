"""The tiers of tests: which programs, checks and figures each one works. Usage: tiers.py quick|full|nightly|one NAME"""
import datetime
import functools
import json
import pathlib
import re
import subprocess
import sys

import tally

CHECKS = tally.ROOT / 'tests' / 'checks'
QUICK_CHECKS = ['self', 'format', 'floors', 'sizes', 'units', 'names', 'words', 'symbols']
FULL_CHECKS = ['headers', 'papers']
NIGHTLY_CHECKS = ['tidy']
SLOW_PROGRAMS = {'determinism', 'fault'}
FULL_FIGURES = ['sources', 'faults', 'causes', 'stranger', 'kill', 'old', 'determinism']
NIGHTLY_FIGURES = ['sanitize', 'fuzz', 'speed', 'bare']


def checks(names):
    return [functools.partial(tally.check, CHECKS / f'{name}.py') for name in names if (CHECKS / f'{name}.py').exists()]


def programs(slow=True, environment=None):
    """Of a program that is also a figure, the quick tier takes the sample that CTest knows, the full tier the figure itself."""
    whole = {f'proofstand_{name}' for name in FULL_FIGURES}
    return [functools.partial(tally.program, name, command, environment) for name, command in tally.test_programs()
            if (pathlib.Path(command[0]).name not in whole if slow else name not in SLOW_PROGRAMS)]


def figures(names):
    outcomes = []
    for name in names:
        command = [tally.ROOT / 'tests' / 'run', name] if name == 'speed' else tally.figure_command(name)
        if command is None:  # a figure that went missing is a failure, not a saving
            print(f'   {name}: neither tests/{name}/run nor proofstand_{name} is there')
            outcomes.append(tally.Outcome(name, 0, 1, 0.0, 'missing'))
            continue
        print(f'-- {name} ...', flush=True)
        outcome = tally.run_all([functools.partial(tally.figure, name, command)])[0]
        if not outcome.failed:
            print(f'   {outcome.last_line()}', flush=True)
        outcomes.append(outcome)
    return outcomes


def quick():
    return tally.run_all(checks(QUICK_CHECKS) + programs(slow=False))


def full(deep=None):
    print('== Checks and tests')
    outcomes = tally.run_all(programs(environment=deep) + checks(QUICK_CHECKS + FULL_CHECKS))
    print('== Figures')
    return outcomes + figures(FULL_FIGURES)


def nightly():
    outcomes = full(deep={'RC_PARAMS': 'max_success=1000'})
    outcomes += tally.run_all(checks(NIGHTLY_CHECKS))
    return outcomes + figures(NIGHTLY_FIGURES)


def one(name):
    """A check, a test program, or every test case with this in its name."""
    if (CHECKS / f'{name}.py').exists():
        return tally.run_all(checks([name]))
    known = tally.test_programs()
    chosen = [(n, command) for n, command in known if n == name]
    if not chosen:
        pattern = '*' + re.sub(r'([,\[\]\\])', r'\\\1', name) + '*'
        chosen = [(n, command + [pattern]) for n, command in known]
    outcomes = [tally.program(n, command) for n, command in chosen]
    outcomes = [outcome for outcome in outcomes if outcome.passed or outcome.failed]
    for outcome in outcomes:
        print(outcome.said.rstrip())
        print(outcome.line())
    if not outcomes:
        print(f'Nothing is called "{name}": name a check (tests/checks), a test program or a test case; tests/run list',
              file=sys.stderr)
        sys.exit(2)
    return outcomes


def write_nightly(outcomes):
    def git(*words):
        return subprocess.run(['git', *words], cwd=tally.ROOT, text=True, capture_output=True).stdout.strip()
    kept = {'commit': git('rev-parse', 'HEAD') or 'not under version control',
            'changed_since_commit': bool(git('status', '--porcelain', '--untracked-files=no')),
            'date': datetime.date.today().isoformat(),
            'results': {o.name: {'passed': o.passed, 'failed': o.failed, 'skipped': o.skipped, 'last_line': o.last_line()}
                        for o in sorted(outcomes, key=lambda o: o.name)}}
    (tally.ROOT / 'tests' / 'nightly.json').write_text(json.dumps(kept, indent=1, ensure_ascii=False) + '\n')


def main():
    tier = sys.argv[1]
    outcomes = one(sys.argv[2]) if tier == 'one' else {'quick': quick, 'full': full, 'nightly': nightly}[tier]()
    if tier == 'nightly':
        write_nightly(outcomes)
    passed, failed, skipped = (sum(getattr(o, which) for o in outcomes) for which in ('passed', 'failed', 'skipped'))
    print(f'{passed} passed, {failed} failed' + (f', {skipped} skipped' if skipped else ''))
    sys.exit(0 if passed and not failed else 1)


if __name__ == '__main__':
    main()
