"""The tiers of tests: which programs, checks and figures each one works.
Usage: tiers.py quick|full|nightly [PART...]|one NAME"""
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
FULL_FIGURES = ['sources', 'faults', 'causes', 'stranger', 'kill', 'old', 'guided', 'blind', 'stand', 'pictures', 'determinism']
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


def deeper():
    """Test cases too long for a push, which hide behind a tag."""
    tagged = [(name, command) for name, command in tally.test_programs() if holds_nightly_cases(name)]
    return tally.run_all([functools.partial(tally.program, f'{name} nightly', command + ['[.nightly]']) for name, command in tagged])


def holds_nightly_cases(program_name):
    folder = tally.ROOT / 'tests' / program_name.split('_')[0]
    return any('[.nightly]' in path.read_text() for path in folder.rglob('*.cpp'))


def nightly_parts():
    """What nightly consists of, in order; each can also be worked alone, on a machine that has no whole night."""
    parts = {'full': lambda: full(deep={'RC_PARAMS': 'max_success=1000'}), 'deeper': deeper,
             'tidy': lambda: tally.run_all(checks(NIGHTLY_CHECKS))}
    for name in NIGHTLY_FIGURES:
        parts[name] = functools.partial(figures, [name])
    return parts


def nightly(names):
    parts = nightly_parts()
    unknown = [name for name in names if name not in parts]
    if unknown:
        print(f'nightly has no part "{unknown[0]}"; its parts are {", ".join(parts)}', file=sys.stderr)
        sys.exit(2)
    outcomes = []
    for name in names or parts:
        outcomes += parts[name]()
    return outcomes


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
    """Each result keeps the commit it was shown at; parts worked on their own replace only their own."""
    def git(*words):
        return subprocess.run(['git', *words], cwd=tally.ROOT, text=True, capture_output=True).stdout.strip()
    path = tally.ROOT / 'tests' / 'nightly.json'
    kept = json.loads(path.read_text()) if path.exists() else {}
    commit = git('rev-parse', '--short=12', 'HEAD') or 'not under version control'
    if git('status', '--porcelain', '--untracked-files=no', '--', ':!tests/nightly.json'):
        commit += ' with changes'
    for o in outcomes:
        kept[o.name] = {'passed': o.passed, 'failed': o.failed, 'skipped': o.skipped, 'commit': commit,
                        'date': datetime.date.today().isoformat(), 'last_line': o.last_line()}
    path.write_text(json.dumps(dict(sorted(kept.items())), indent=1, ensure_ascii=False) + '\n')


def main():
    tier = sys.argv[1]
    if tier == 'one':
        outcomes = one(sys.argv[2])
    elif tier == 'nightly':
        outcomes = nightly(sys.argv[2:])
    else:
        outcomes = {'quick': quick, 'full': full}[tier]()
    if tier == 'nightly':
        write_nightly(outcomes)
    passed, failed, skipped = (sum(getattr(o, which) for o in outcomes) for which in ('passed', 'failed', 'skipped'))
    print(f'{passed} passed, {failed} failed' + (f', {skipped} skipped' if skipped else ''))
    sys.exit(0 if passed and not failed else 1)


if __name__ == '__main__':
    main()
