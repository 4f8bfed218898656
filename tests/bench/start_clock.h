// What a started program tells its launcher: a word and the time, in nanoseconds of the
// monotonic clock, on standard output.
#pragma once

#include <cstdio>
#include <ctime>

namespace fb::bench {

[[nodiscard]] inline long long nanosecondsNow()
{
    timespec now{};
    clock_gettime(CLOCK_MONOTONIC, &now);
    return now.tv_sec * 1'000'000'000LL + now.tv_nsec;
}

inline void tellTime(const char* word)
{
    std::printf("%s %lld\n", word, nanosecondsNow());
    std::fflush(stdout);
}

}  // namespace fb::bench
