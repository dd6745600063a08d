"""The layout of the sources, by .clang-format. Judged with the formatter of Debian 12 (edition 14); others lay out otherwise."""
import shutil
import subprocess
import sys

import frame


def edition():
    if not shutil.which('clang-format'):
        return 'none'
    said = subprocess.run(['clang-format', '--version'], capture_output=True, text=True).stdout
    return said.split('version ')[1].split('.')[0]


def faults_of(root):
    paths = frame.files(root, '.h', '.cpp')
    done = subprocess.run(['clang-format', f'--style=file:{frame.ROOT / ".clang-format"}', '--dry-run', '-Werror',
                           *map(str, paths)], capture_output=True, text=True)
    names = sorted({line.split(':')[0] for line in done.stderr.splitlines() if 'error:' in line})
    return [f'{name}: not laid out by .clang-format; run clang-format -i on it' for name in names]


if edition() != '14':
    print(f'skipped: format is judged with clang-format 14 (Debian 12); here it is {edition()}')
    sys.exit(77)
frame.judge(faults_of, bad=[{'sim/base/a.h': 'int  a( int b );\n'}], good=[{'sim/base/a.h': 'int a(int b);\n'}])
