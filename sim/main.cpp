// Joins the program's faces into one; nothing else.
#include "sim/cli/command_line.h"

int main(int argc, char** argv) { return proofstand::cli::run_command_line(argc, argv, PROOFSTAND_VERSION); }
