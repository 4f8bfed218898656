// The program without a window, for scripts and for reproducing any result.
#pragma once

namespace fb {

// locate, grade, draw, --help and --version with the program's own argc and argv (a name and
// at least one word after it). Returns the exit code: 0, or 2 after exactly one sentence on
// standard error and nothing on standard output. Numbers are written in the C locale.
[[nodiscard]] int runCommandLine(int argc, char** argv);

// Where there is no display: says so, then does one whole request on standard output: a
// patient, the target, a mark and its grade, and this patient's plate as a PNG in the folder
// for temporary files (or, failing that, the current one), whose path it prints. 0 when all of it went well.
[[nodiscard]] int runWithoutDisplay();

}  // namespace fb
