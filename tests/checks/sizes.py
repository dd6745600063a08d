"""The ten longest files and functions. It informs; only a file past its hard limit fails (headers 300, sources 600)."""
import frame

LIMITS = {'.h': 300, '.cpp': 600}


def functions(text):
    """(lines, first line's text) of every block that starts and ends at the left margin, as the formatter lays functions."""
    begin = None
    lines = text.split('\n')
    for number, line in enumerate(lines):
        if line[:1] not in ('', ' ', '}', '#', '/', 'n') and '(' in line and begin is None:
            begin = number
        if line.rstrip().endswith(';') and not line.startswith(' '):
            begin = None
        if line.startswith('}') and begin is not None:
            yield number - begin + 1, lines[begin].strip()
            begin = None


def faults_of(root):
    sizes, longest, faults = [], [], []
    for path in frame.files(root, '.h', '.cpp'):
        text = path.read_text()
        name, length = path.relative_to(root).as_posix(), text.count('\n')
        sizes.append((length, name))
        longest += [(lines, f'{name}: {head}') for lines, head in functions(text)]
        if length > LIMITS[path.suffix]:
            faults.append(f'{name}: {length} lines, limit {LIMITS[path.suffix]}; does it hold more than one idea?')
    for title, rows in (('files', sizes), ('functions', longest)):
        print(f'longest {title}:')
        for length, name in sorted(rows, reverse=True)[:10]:
            print(f'  {length:5} {name[:110]}')
    return faults


frame.judge(faults_of, bad=[{'sim/base/a.h': '\n' * 301}, {'sim/base/a.cpp': '\n' * 601}], good=[{'sim/base/a.h': '\n' * 299}])
