"""A number that crosses a header carries its unit in its name: every double in headers of physics, bench, rules, scenario."""
import re

import frame

FLOORS = ('physics', 'bench', 'rules', 'scenario')
# base units and what is made of them; _1: dimensionless; _si: in the unit that stands beside it
PARTS = {'1', 'si', 'm', 'm2', 'm3', 'm4', 'mm', 'mm2', 's', 's2', 'n', 'nm', 'pa', 'rad', 'kg', 'j', 'w', 'k', 'c', 'v', 'hz', 'nms'}
PLAIN = re.compile(r'_(' + '|'.join(sorted(PARTS)) + r')_?$')
# quotients: n_m (newton a metre), kg_m2, rad_s, n_rad, m_s2, j_kg_k, points
QUOTIENT = re.compile(r'_(1|m|n|nm|kg|rad|j|w|pa|m3)_(m|m2|m3|s|s2|n|nm|rad|kg|k|pa)(_(k|s|m|m2))?_?$')
# what returns a number whose unit its caller names
UNIT_OF_CALLER = {'word', 'parse_fixed'}
POINTS = re.compile(r'(^|_)points_?$')


def carries_unit(name):
    return bool(PLAIN.search(name) or QUOTIENT.search(name) or POINTS.search(name))


def faults_of(root):
    faults = []
    for path in frame.files(root, '.h', under=[f'sim/{floor}' for floor in FLOORS]):
        code = frame.code_of(path.read_text())
        # double name | vector<double> name | array<double, 6> name | map<..., double> name
        for match in re.finditer(r'\bdouble\b(?:\s*,\s*[\w:]+)?\s*>*\s*[&*]*\s*(?:const\s+)?([A-Za-z_]\w*)', code):
            name = match.group(1)
            if name in ('const', 'operator') or name in UNIT_OF_CALLER or carries_unit(name) or re.match(r'k[A-Z]', name):
                continue
            faults.append(f'{path.relative_to(root).as_posix()}:{frame.line_of(code, match.start())}: {name} has no unit in its name; '
                          'end it in _m, _n, _nm, _rad, _s, _1 ...')
    return faults


frame.judge(faults_of,
            bad=[{'sim/physics/a.h': 'double torque;\n'}, {'sim/bench/a.h': 'std::vector<double> clamps;\n'},
                 {'sim/rules/a.h': 'double compute_preload(int turns);\n'}],
            good=[{'sim/physics/a.h': 'double torque_nm; double stiffness_n_m(double x_1);\nstd::array<double, 6> clamp_n{};\n'},
                  {'sim/base/a.h': 'double anything;\n'}])
