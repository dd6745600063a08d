"""What every check is made of: a function from a tree to its faults, and small trees that prove it can fail.

A check calls judge(faults_of, bad=..., good=...). faults_of(root) lists sentences "where: what; what to do". bad and good
are lists of trees {path: text or bytes}. Run as it is, the check judges the project; with --self it judges the samples.
"""
import pathlib
import re
import sys
import tempfile

ROOT = pathlib.Path(__file__).resolve().parents[2]
SOURCES = ('sim', 'tests')


def files(root, *endings, under=SOURCES):
    """Paths of our own source files with these endings, in order; nothing that a build made."""
    found = []
    for folder in under:
        found += [path for path in (root / folder).rglob('*') if path.suffix in endings and path.is_file()]
    return sorted(found)


def code_of(text):
    """C++ text with comments and the insides of string literals blanked, lines kept."""
    def blank(match):
        word = match.group(0)
        if word.startswith(('"', 'R"')):
            return '"' + '\n' * word.count('\n') + '"'
        return '\n' * word.count('\n') if word.startswith('/') else word
    return re.sub(r'R"(\w*)\(.*?\)\1"|//[^\n]*|/\*.*?\*/|"(?:\\.|[^"\\\n])*"|\'(?:\\.|[^\'\\\n])+\'', blank, text, flags=re.S)


def line_of(text, place):
    return text.count('\n', 0, place) + 1


def judge(faults_of, bad, good):
    if '--self' in sys.argv:
        wrong = []
        for kind, trees in (('bad', bad), ('good', good)):
            for number, tree in enumerate(trees):
                with tempfile.TemporaryDirectory() as folder:
                    for path, text in tree.items():
                        place = pathlib.Path(folder) / path
                        place.parent.mkdir(parents=True, exist_ok=True)
                        place.write_bytes(text if isinstance(text, bytes) else text.encode())
                        if place.read_bytes().startswith(b'#!'):
                            place.chmod(0o755)
                    found = faults_of(pathlib.Path(folder))
                if bool(found) != (kind == 'bad'):
                    wrong.append(f'{kind} sample {number} gave {len(found)} faults: {found}')
        faults = wrong
    else:
        faults = faults_of(ROOT)
    for fault in faults:
        print(fault)
    sys.exit(1 if faults else 0)
