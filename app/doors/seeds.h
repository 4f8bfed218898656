// Where a new run gets its seed: the only chance in the program, behind a door so that a
// test knows what comes.
#pragma once

#include <cstdint>

namespace fb {

class Seeds {
public:
    Seeds() = default;
    Seeds(const Seeds&) = delete;
    Seeds& operator=(const Seeds&) = delete;
    virtual ~Seeds() = default;

    [[nodiscard]] virtual std::uint64_t fresh() = 0;
};

// Five digits, 10000 to 99999: short enough to read out across a lab and to type.
class SystemSeeds : public Seeds {
public:
    [[nodiscard]] std::uint64_t fresh() override;
};

}  // namespace fb
