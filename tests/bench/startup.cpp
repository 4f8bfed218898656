// Starts both windows by turns and prints medians: from the start of the process to the first
// painted window, from there to the plate, and the peak of resident memory.
//
// Offscreen unless QT_QPA_PLATFORM says otherwise. `startup 21` takes 21 starts of each.
#include <fcntl.h>
#include <spawn.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cstdlib>
#include <cstring>
#include <string>
#include <vector>

#include "tests/bench/start_clock.h"

namespace fb::bench {

struct Start {
    double first = 0.0;   // ms to the first painted window
    double plate = 0.0;   // ms from there to the plate; 0: none
    double memory = 0.0;  // MiB at the peak
};

double timeOf(const std::string& told, const char* word)
{
    const auto at = told.find(std::string(word) + " ");
    return at == std::string::npos ? 0.0 : std::strtod(told.c_str() + at + std::strlen(word), nullptr);
}

std::string readAll(int file)
{
    std::string text;
    std::array<char, 256> buffer{};
    for (ssize_t n = 0; (n = read(file, buffer.data(), buffer.size())) > 0;)
        text.append(buffer.data(), static_cast<std::size_t>(n));
    return text;
}

Start started(const char* program)
{
    std::array<int, 2> pipes{};
    if (pipe2(pipes.data(), O_CLOEXEC) != 0)
        std::abort();
    posix_spawn_file_actions_t actions;
    posix_spawn_file_actions_init(&actions);
    posix_spawn_file_actions_adddup2(&actions, pipes[1], STDOUT_FILENO);
    std::string name = program;
    std::array<char*, 2> words{name.data(), nullptr};
    pid_t child = 0;
    const long long from = nanosecondsNow();
    if (posix_spawn(&child, program, &actions, nullptr, words.data(), environ) != 0)
        std::abort();
    close(pipes[1]);
    const std::string told = readAll(pipes[0]);
    close(pipes[0]);
    posix_spawn_file_actions_destroy(&actions);
    int status = 0;
    rusage usage{};
    wait4(child, &status, 0, &usage);
    const double first = timeOf(told, "first");
    const double plate = timeOf(told, "plate");
    if (status != 0 || first == 0.0) {
        std::fprintf(stderr, "%s did not start: %s\n", program, told.c_str());
        std::exit(1);
    }
    return {(first - static_cast<double>(from)) / 1e6, plate > 0.0 ? (plate - first) / 1e6 : 0.0,
            static_cast<double>(usage.ru_maxrss) / 1024.0};
}

double median(const std::vector<Start>& starts, double Start::*value)
{
    std::vector<double> values;
    for (const Start& start : starts)
        values.push_back(start.*value);
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

}  // namespace fb::bench

int main(int argc, char** argv)
{
    using namespace fb::bench;
    setenv("QT_QPA_PLATFORM", "offscreen", 0);
    const int count = argc > 1 ? std::max(1, std::atoi(argv[1])) : 11;
    std::vector<Start> empty;
    std::vector<Start> app;
    for (int i = -1; i < count; ++i) {  // the first of each only warms the disk
        const Start a = started(START_EMPTY);
        const Start b = started(START_APP);
        if (i >= 0) {
            empty.push_back(a);
            app.push_back(b);
        }
    }
    const double floor = median(empty, &Start::first);
    const double first = median(app, &Start::first);
    std::printf("%d starts of each, %s\n", count, std::getenv("QT_QPA_PLATFORM"));
    std::printf("first painted window: empty %.1f ms, program %.1f ms, ratio %.2f\n", floor, first,
                first / floor);
    std::printf("plate visible after that: %.1f ms\n", median(app, &Start::plate));
    std::printf("peak memory: empty %.1f MiB, program %.1f MiB, ratio %.2f\n", median(empty, &Start::memory),
                median(app, &Start::memory), median(app, &Start::memory) / median(empty, &Start::memory));
    return 0;
}
