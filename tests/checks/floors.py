"""Who may include whom: every include line of sim/ against sim/floors.txt, and no clocks, threads or hash order below report."""
import re

import frame

# what could let the time, the place or the order of memory into a result, or what the browser's compiler lacks
CLOCKLESS = ['base', 'physics', 'event', 'bench', 'rules', 'scenario', 'hand', 'record']
NOT_BELOW_REPORT = {'iostream', 'random', 'unordered_map', 'unordered_set', 'thread', 'mutex', 'condition_variable', 'future',
                    'chrono', 'ctime', 'time.h', 'locale', 'clocale', 'format', 'ranges', 'source_location', 'regex',
                    'math.h', 'memory_resource', 'execution', 'filesystem'}


def read_floors(root):
    """{floor: (floors it may include, {outside header: files that may})}"""
    table = {}
    for line in (root / 'sim/floors.txt').read_text().splitlines():
        if not line.strip() or line.startswith('#'):
            continue
        floor, below, outside = (part.strip() for part in line.split('|'))
        doors = {}
        for entry in filter(None, (part.strip() for part in outside.split(','))):
            header, file = entry.split(' in ')
            doors.setdefault(header, set()).add(file)
        table[floor] = (set(below.split()), doors)
    return table


def faults_of(root):
    table = read_floors(root)
    faults = []
    for path in frame.files(root, '.h', '.cpp', under=['sim']):
        name = path.relative_to(root).as_posix()
        floor = name.split('/')[1]
        if floor not in table:
            if name != 'sim/main.cpp':
                faults.append(f'{name}: no floor of sim/floors.txt; move it or add a row')
            continue
        below, doors = table[floor]
        for number, line in enumerate(path.read_text().splitlines(), 1):
            where = f'{name}:{number}'
            ours = re.match(r'\s*#\s*include\s*"([^"]+)"', line)
            theirs = re.match(r'\s*#\s*include\s*<([^>]+)>', line)
            if ours:
                parts = ours.group(1).split('/')
                if parts[0] != 'sim' or len(parts) < 3:
                    faults.append(f'{where}: includes "{ours.group(1)}"; write the full path from sim/')
                elif parts[1] != floor and parts[1] not in below:
                    faults.append(f'{where}: {floor} may not include {parts[1]}; its row allows: {" ".join(sorted(below)) or "nothing"}')
            elif theirs:
                header = theirs.group(1)
                if header in doors:
                    folders = {f'{part}/' for part in name.split('/')[2:-1]}
                    if not doors[header] & ({path.name, '*'} | folders):
                        faults.append(f'{where}: only {" ".join(sorted(doors[header]))} may include <{header}>')
                elif '/' in header or header.endswith(('.h', '.hpp')):
                    faults.append(f'{where}: <{header}> is not in the row of {floor} in sim/floors.txt')
                elif floor in CLOCKLESS and header in NOT_BELOW_REPORT:
                    faults.append(f'{where}: <{header}> may not be used from base to record; results would depend on the machine')
    return faults


if __name__ == '__main__':
    TABLE = 'base | | sodium.h in hash.cpp\nphysics | base |\nreport | base | big/json.hpp in *, pane.h in window/\n'
    frame.judge(faults_of,
                bad=[{'sim/floors.txt': TABLE, 'sim/base/a.h': '#include "sim/physics/b.h"\n'},
                     {'sim/floors.txt': TABLE, 'sim/base/a.h': '#include <unordered_map>\n'},
                     {'sim/floors.txt': TABLE, 'sim/base/a.cpp': '#include <sodium.h>\n'},
                     {'sim/floors.txt': TABLE, 'sim/physics/a.cpp': '#include "a.h"\n'},
                     {'sim/floors.txt': TABLE, 'sim/report/panels/a.cpp': '#include <pane.h>\n'},
                     {'sim/floors.txt': TABLE, 'sim/attic/a.cpp': '\n'}],
                good=[{'sim/floors.txt': TABLE, 'sim/base/hash.cpp': '#include <sodium.h>\n#include <vector>\n',
                       'sim/physics/b.h': '#include "sim/base/a.h"\n', 'sim/report/c.cpp': '#include <big/json.hpp>\n',
                       'sim/report/window/d.cpp': '#include <pane.h>\n'}])
