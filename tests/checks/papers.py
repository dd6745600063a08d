"""The commands printed in README.md and DEVELOPERS.md work: those of the stand are run as printed, in order, in a fresh folder;
those of the tests must be what CI runs."""
import os
import pathlib
import re
import shlex
import subprocess
import tempfile

import frame

PAPERS = ('README.md', 'DEVELOPERS.md')
TOOLS = {'git', 'cmake', 'ninja', 'ctest', 'cd'}


def commands(text):
    """(line, command) of every shell block; a trailing backslash joins lines."""
    for block in re.finditer(r'^```sh\n(.*?)^```', text, re.M | re.S):
        number = frame.line_of(text, block.start(1))
        held, begin = '', number
        for offset, line in enumerate(block.group(1).splitlines()):
            if not held:
                begin = number + offset
            held += line.rstrip()
            if held.endswith('\\'):
                held = held[:-1] + ' '
                continue
            if held.strip() and not held.startswith('#'):
                yield begin, held
            held = ''


def fault_of(root, folder, command):
    try:
        words = shlex.split(command, comments=True)
    except ValueError as trouble:
        return f'cannot be read by a shell ({trouble})'
    first = words[0]
    if first in TOOLS:
        return None
    if first == 'build/release/proofstand':
        stand = root / 'build/dev/proofstand'
        if not stand.exists():
            return 'needs the program, which this build did not make'
        line = command.replace(first, shlex.quote(str(stand)))
        done = subprocess.run(['bash', '-c', line], cwd=folder, capture_output=True, text=True, stdin=subprocess.DEVNULL)
        # 1: judged negative, which a tour may show
        return None if done.returncode in (0, 1) else f'ends with {done.returncode}: {(done.stderr or done.stdout).strip()[:300]}'
    if not os.access(root / first, os.X_OK) or not (root / first).is_file():
        return f'{first} is not a program of this project'
    if first == 'tests/run' and len(words) > 1:
        listed = subprocess.run([root / first, 'help'], capture_output=True, text=True).stdout
        if not re.search(rf'^  {re.escape(words[1])}\b', listed, re.M):
            return f'tests/run knows no "{words[1]}"'
    return None


def faults_of(root):
    faults = []
    for paper in PAPERS:
        if not (root / paper).exists():
            faults.append(f'{paper}: is missing')
            continue
        with tempfile.TemporaryDirectory() as folder:
            for name in ('scenarios', 'assets', 'tests'):
                if (root / name).exists():
                    os.symlink(root / name, pathlib.Path(folder) / name)
            os.makedirs(f'{folder}/demo/out')
            if (root / 'demo/scripts').exists():
                os.symlink(root / 'demo/scripts', pathlib.Path(folder) / 'demo/scripts')
            for line, command in commands((root / paper).read_text()):
                fault = fault_of(root, folder, command)
                if fault:
                    faults.append(f'{paper}:{line}: {command.strip()[:100]}: {fault}')
    first_lines = (root / 'README.md').read_text().split('```') if (root / 'README.md').exists() else ['', '']
    if not {'demo/run', 'tests/run'} <= set((first_lines + [''])[1].split()):
        faults.append('README.md: its first block of commands must be demo/run and tests/run')
    return faults


README = '# A\n\n```sh\ndemo/run\ntests/run\n```\n'
TREE = {'README.md': README, 'DEVELOPERS.md': '', 'demo/run': '#!/bin/sh\n', 'tests/run': '#!/bin/sh\necho "  quick  fast"\n',
        'build/dev/proofstand': '#!/bin/sh\n[ "$1" = run ] || exit 2\n'}
frame.judge(faults_of,
            bad=[{**TREE, 'DEVELOPERS.md': '```sh\ntests/walk\n```\n'}, {**TREE, 'README.md': '# A\n'},
                 {**TREE, 'DEVELOPERS.md': '```sh\ntests/run slow\n```\n'},
                 {**TREE, 'README.md': README + '```sh\nbuild/release/proofstand --nonsense\n```\n'}],
            good=[{**TREE, 'README.md': README + '```sh\nbuild/release/proofstand run \\\n  a.toml\ntests/run quick\n```\n'}])
