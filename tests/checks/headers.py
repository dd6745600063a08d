"""Every header of sim/ compiles alone: CMake's verification of header sets."""
import subprocess

import frame

TARGET = 'all_verify_interface_header_sets'


def faults_of(root):
    build = root / 'build' / 'dev'
    if not (build / 'build.ninja').exists():
        configured = subprocess.run(['cmake', '-S', root, '-B', build, '-G', 'Ninja', '-DPROOFSTAND_HEADERS=ON'],
                                    capture_output=True, text=True)
        if configured.returncode:
            return [configured.stderr]
    done = subprocess.run(['cmake', '--build', build, '--target', TARGET, '--', '-k', '0'], capture_output=True, text=True)
    if done.returncode == 0:
        return []
    errors = [line for line in (done.stdout + done.stderr).splitlines() if 'error' in line]
    return [f'{line}; a header must include what it uses' for line in errors[:20]] or [done.stdout[-2000:] + done.stderr[-2000:]]


PROJECT = '''cmake_minimum_required(VERSION 3.25)
project(sample LANGUAGES CXX)
add_library(sample STATIC a.cpp)
target_sources(sample PUBLIC FILE_SET headers TYPE HEADERS FILES a.h)
set_target_properties(sample PROPERTIES VERIFY_INTERFACE_HEADER_SETS ON)
'''
frame.judge(faults_of,
            bad=[{'CMakeLists.txt': PROJECT, 'a.cpp': '#include <vector>\n#include "a.h"\n', 'a.h': '#pragma once\nstd::vector<int> f();\n'}],
            good=[{'CMakeLists.txt': PROJECT, 'a.cpp': '#include "a.h"\n', 'a.h': '#pragma once\n#include <vector>\nstd::vector<int> f();\n'}])
