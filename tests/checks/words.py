"""One word for one thing, British spelling, and errors that say what to do instead: in papers, comments, scenarios and messages."""
import re

import frame

# second word -> the project's own
INSTEAD = {
    r'students?|pupils?|players?': 'trainee', r'score ?sheets?|score ?cards?|report cards?': 'mark sheet',
    r'work orders?|job sheets?|repair orders?': 'job card', r'spec sheets?': "maker's sheet",
    r'disk[- ]brakes?': 'disc brake', r'lock rings?': 'lockring', r'thread ?lock(?!er)': 'threadlocker',
    r'brake dis[ck]s?': 'rotor', r'play ?throughs?': 'attempt',
    r'colors?|colored': 'colour, coloured', r'grays?': 'grey', r'centers?|centered': 'centre', r'behaviors?': 'behaviour',
    r'modeled|modeling': 'modelled, modelling', r'meters? per': 'metres', r'newton meters?': 'newton metre', r'favorites?': 'favourite',
    r'catalogs?': 'catalogue', r'neighbors?': 'neighbour', r'labels?ed': 'labelled', r'canceled': 'cancelled', r'millimeters': 'millimetres',
}
WORDS = re.compile('|'.join(rf'\b(?P<w{number}>{pattern})\b' for number, pattern in enumerate(INSTEAD)), re.I)
OURS = list(INSTEAD.values())
NO_ADVICE = re.compile(r'\bError\{(?:[^{}]|\{[^{}]*\})*,\s*""\s*\}')


def prose_of(path, text):
    """What a person reads in a file: all of a paper or scenario, the comments of a source."""
    if path.suffix in ('.md', '.toml', '.hand', '.txt'):
        # code spans are not prose
        return re.sub(r'`[^`\n]*`', lambda span: ' ' * len(span.group(0)), text)
    kept = []
    for match in re.finditer(r'"(?:\\.|[^"\\\n])*"|//[^\n]*|\n', text):
        word = match.group(0)
        kept.append(word if word.startswith('//') else '\n' if word == '\n' else '')
    return ''.join(kept)


def faults_of(root):
    faults = []
    papers = [path for path in root.glob('*.md')]
    texts = frame.files(root, '.toml', '.hand', under=('scenarios', 'demo')) + frame.files(root, '.h', '.cpp', under=('sim',))
    for path in papers + texts:
        name, text = path.relative_to(root).as_posix(), path.read_text()
        prose = prose_of(path, text)
        for match in WORDS.finditer(prose):
            ours = OURS[int(match.lastgroup[1:])]
            faults.append(f'{name}:{frame.line_of(prose, match.start())}: "{match.group(0)}"; this project writes: {ours}')
        if path.suffix in ('.h', '.cpp'):
            for match in NO_ADVICE.finditer(text):
                faults.append(f'{name}:{frame.line_of(text, match.start())}: an error without its last part; say what to write or do instead')
    return faults


frame.judge(faults_of,
            bad=[{'README.md': 'The student looks at the rotor.\n'}, {'sim/base/a.h': '// the color of it\n'},
                 {'sim/base/a.cpp': 'return Error{"code", "where", "what", ""};\n'}],
            good=[{'README.md': 'The trainee looks; `color` is code.\n', 'sim/base/a.cpp': 'auto s = "color:red"; return Error{"c", "", "w", "do"};\n'}])
