"""What the floors from base to record take from the platform: no mathematics beyond sqrt, floor, ceil and fmod (fabs and the
like are bits), no chance, clock, environment, locale or network. Looks at the built libraries and at the words in the sources,
since a compiler may fold a call on constants away. The files that wrap an outside library (sim/floors.txt) are not looked at.
"""
import pathlib
import re
import subprocess
import sys
import tempfile

import floors
import frame

EXACT = {'sqrt', 'floor', 'ceil', 'fmod', 'fabs', 'isfinite', 'isnan', 'isinf', 'signbit', 'copysign'}
PLATFORM = {'rand', 'srand', 'rand_r', 'random', 'srandom', 'drand48', 'getrandom', 'getentropy', 'arc4random', 'time', 'clock',
            'clock_gettime', 'gettimeofday', 'localtime', 'gmtime', 'mktime', 'getenv', 'secure_getenv', 'setlocale', 'localeconv',
            'newlocale', 'uselocale', 'socket', 'connect', 'bind', 'listen', 'accept', 'send', 'recv', 'getaddrinfo'}
SPEAKS_OF_PLACE = re.compile(r'std::(chrono|locale|random_device|this_thread)|std::__cxx11::(basic_[io]?stringstream)')


def mathematics():
    """Every function of the system's mathematics library, but for the exact ones."""
    said = subprocess.run(['c++', '-print-file-name=libm.so.6'], capture_output=True, text=True, check=True).stdout.strip()
    listed = subprocess.run(['nm', '-D', '--defined-only', said], capture_output=True, text=True, check=True).stdout
    return {line.split()[-1].split('@')[0] for line in listed.splitlines()} - EXACT


def wrappers(root):
    """The files that wrap an outside library: name of the floor -> names of its files."""
    return {floor: {file for files in doors.values() for file in files} for floor, (_, doors) in floors.read_floors(root).items()}


def faults_in_sources(root, banned):
    faults = []
    for floor in floors.CLOCKLESS:
        for path in frame.files(root, '.h', '.cpp', under=[f'sim/{floor}']):
            code = frame.code_of(path.read_text())
            for match in re.finditer(r'(?:std|)::(' + '|'.join(sorted(banned, key=len, reverse=True)) + r')\s*\(', code):
                if match.group(0).startswith('::') and re.search(r'\w$', code[:match.start()]):
                    continue  # a name of ours
                faults.append(f'{path.relative_to(root).as_posix()}:{frame.line_of(code, match.start())}: {match.group(1)} differs '
                              'between machines; use sim/base/math.h, ticks or what base offers')
    return faults


def faults_in_libraries(root, banned):
    faults = []
    known = wrappers(root)
    for floor in floors.CLOCKLESS:
        library = root / f'build/dev/libstand_{floor}.a'
        if not library.exists():
            continue
        said = subprocess.run(['nm', '-A', '-C', '-u', library], capture_output=True, text=True, check=True).stdout
        for line in said.splitlines():
            needed = re.match(r'[^:]*:([^:]*):\s*U (.*)', line)
            if not needed:
                continue
            member, symbol = needed.groups()
            if member.removesuffix('.o') in known.get(floor, ()):
                continue
            if symbol.split('@')[0] in banned or SPEAKS_OF_PLACE.match(symbol):
                faults.append(f'sim/{floor}/{member.removesuffix(".o")}: needs {symbol} of the platform; results would depend on the machine')
    return faults


def faults_of(root):
    banned = mathematics() | PLATFORM
    return faults_in_sources(root, banned) + faults_in_libraries(root, banned)


def library_of(code):
    """The bytes of a library made of one source."""
    with tempfile.TemporaryDirectory() as folder:
        subprocess.run(['c++', '-O0', '-x', 'c++', '-c', '-', '-o', f'{folder}/a.cpp.o'], input=code.encode(), check=True)
        subprocess.run(['ar', 'rcs', f'{folder}/a.a', f'{folder}/a.cpp.o'], check=True)
        return pathlib.Path(folder, 'a.a').read_bytes()


def samples(bad):
    if '--self' not in sys.argv:
        return []
    table = {'sim/floors.txt': 'base | |\n'}
    if bad:
        return [{**table, 'sim/base/a.cpp': 'double f() { return std::sin(0.5); }\n'},
                {**table, 'sim/base/a.cpp': 'long f() { return ::time(nullptr); }\n'},
                {**table, 'build/dev/libstand_base.a': library_of('extern "C" double pow(double, double); double f(double x) { return pow(x, x); }')}]
    return [{**table, 'sim/base/a.cpp': 'double f(double x) { return std::sqrt(x) + base::log(x); } // std::sin(x)\n',
             'build/dev/libstand_base.a': library_of('extern "C" double fmod(double, double); double f(double x) { return fmod(x, x); }')}]


frame.judge(faults_of, bad=samples(bad=True), good=samples(bad=False))
