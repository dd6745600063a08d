"""The few checks of .clang-tidy over sim/, with the commands of the dev build."""
import concurrent.futures
import os
import shutil
import subprocess
import sys

import frame


def faults_of(root):
    build = root / 'build' / 'dev'
    if not (build / 'compile_commands.json').exists():
        build = None

    def tidy(path):
        told = ['-p', build] if build else ['--', '-std=c++20', f'-I{root}']
        front = told if build else []
        back = [] if build else told
        done = subprocess.run(['clang-tidy', f'--config-file={frame.ROOT / ".clang-tidy"}', '--quiet', *front, path, *back],
                              capture_output=True, text=True)
        return [line for line in done.stdout.splitlines() if ': error:' in line or ': warning:' in line]
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
        found = list(pool.map(tidy, frame.files(root, '.cpp', under=['sim'])))
    return sorted({line for lines in found for line in lines})


if not shutil.which('clang-tidy'):
    print('skipped: clang-tidy is not installed (tests/setup/install nightly)')
    sys.exit(77)
frame.judge(faults_of, bad=[{'sim/base/a.cpp': 'int f(int a) { double x = a / 2; return static_cast<int>(x); }\n'}],
            good=[{'sim/base/a.cpp': 'int f(int a) { return a / 2; }\n'}])
