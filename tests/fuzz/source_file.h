// A shipped file, as the fuzzers need it beside their own input.
#pragma once

#include <fstream>
#include <iterator>
#include <string>

namespace fb::fuzz {

[[nodiscard]] inline std::string shippedFile(const char* path)
{
    std::ifstream file(std::string(FINGERBREADTH_SOURCE_DIR) + "/resources/" + path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

// A broken law ends the run, with the input kept by the fuzzer.
inline void demand(bool law)
{
    if (!law)
        __builtin_trap();
}

}  // namespace fb::fuzz
