"""Words that name nothing: no path, type or namespace may be called by them."""
import re

import frame

EMPTY = {'util', 'utils', 'utility', 'utilities', 'helper', 'helpers', 'common', 'manager', 'managers', 'misc'}


def words(name):
    return {word.lower() for word in re.findall(r'[A-Z]+(?![a-z])|[A-Z]?[a-z]+', name)}


def faults_of(root):
    faults = []
    for path in frame.files(root, '.h', '.cpp', '.py', '.txt', '.toml', '.hand', under=('sim', 'tests', 'scenarios', 'demo')):
        name = path.relative_to(root).as_posix()
        for word in sorted(words(name) & EMPTY):
            faults.append(f'{name}: "{word}" says nothing about what is inside; name the idea')
        if path.suffix not in ('.h', '.cpp'):
            continue
        code = frame.code_of(path.read_text())
        for match in re.finditer(r'\b(?:class|struct|union|enum(?: class)?|namespace|using)\s+([A-Za-z_]\w*)', code):
            for word in sorted(words(match.group(1)) & EMPTY):
                faults.append(f'{name}:{frame.line_of(code, match.start())}: "{match.group(1)}" holds "{word}"; name the idea')
    return faults


frame.judge(faults_of,
            bad=[{'sim/base/text_utils.h': ''}, {'sim/base/a.h': 'class BoltManager;\n'}, {'sim/base/a.h': 'namespace proofstand::base {\nstruct NumberHelper;\n'}],
            good=[{'sim/base/a.h': '#include <utility>\n// common practice\nconst char* kText = "common";\nstruct Commonwealth; int common_divisor(int a, int b);\n'}])
