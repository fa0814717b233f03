// Figures of the real program, seen from outside.
//
//   whole_program start     -> start_to_curve 212.4 ms
//   whole_program memory    -> memory_at_rest 71.3 MiB
#include <algorithm>
#include <array>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <fstream>
#include <iterator>
#include <optional>
#include <sstream>
#include <string>
#include <string_view>
#include <thread>
#include <vector>

#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>

extern char** environ;

namespace {

using Clock = std::chrono::steady_clock;
using namespace std::chrono_literals;

constexpr char program[] = BLINKWRIGHT_PROGRAM;
constexpr char sample[] = BLINKWRIGHT_SAMPLES "/mole-light.blinkwright";

/// Ends the measurement where it means nothing any more.
[[noreturn]] void giveUp(const std::string& why) {
    std::fprintf(stderr, "%s\n", why.c_str());
    std::exit(1);
}

/// The program on the sample, without a display, its output sent to standard error.
class Child {
  public:
    explicit Child(bool exitAfterFirstCurve) {
        setenv("QT_QPA_PLATFORM", "offscreen", 1);
        if (exitAfterFirstCurve) {
            setenv("BLINKWRIGHT_EXIT_AFTER_FIRST_CURVE", "1", 1);
        } else {
            unsetenv("BLINKWRIGHT_EXIT_AFTER_FIRST_CURVE");
        }
        std::array<char*, 3> arguments{const_cast<char*>(program), const_cast<char*>(sample), nullptr};
        posix_spawn_file_actions_t actions;
        posix_spawn_file_actions_init(&actions);
        posix_spawn_file_actions_adddup2(&actions, STDERR_FILENO, STDOUT_FILENO);
        const int fault = posix_spawn(&m_pid, program, &actions, nullptr, arguments.data(), environ);
        posix_spawn_file_actions_destroy(&actions);
        if (fault != 0) {
            giveUp(std::string("cannot start ") + program + ": " + std::strerror(fault));
        }
    }
    Child(const Child&) = delete;
    Child& operator=(const Child&) = delete;
    ~Child() {
        if (!m_ended) {
            kill(m_pid, SIGTERM);
            waitpid(m_pid, nullptr, 0);
        }
    }

    pid_t pid() const { return m_pid; }

    /// Waits for its end, asleep, so that it has the machine for itself.
    /// @return its exit code, or nothing where a signal ended it.
    std::optional<int> waitForEnd() {
        int status = 0;
        waitpid(m_pid, &status, 0);
        m_ended = true;
        return WIFEXITED(status) ? std::optional(WEXITSTATUS(status)) : std::nullopt;
    }

    /// Whether it has ended by now, without waiting.
    bool hasEnded() {
        m_ended = m_ended || waitpid(m_pid, nullptr, WNOHANG) == m_pid;
        return m_ended;
    }

  private:
    pid_t m_pid = 0;
    bool m_ended = false;
};

/// Processor time that a process has used so far, in clock ticks: utime + stime of proc_pid_stat(5).
long ticksUsed(pid_t pid) {
    std::ifstream file("/proc/" + std::to_string(pid) + "/stat");
    const std::string text{std::istreambuf_iterator<char>(file), {}};
    // The name, in parentheses, may hold spaces; utime and stime are the 12th and 13th word after it.
    std::istringstream words(text.substr(std::min(text.size(), text.rfind(')') + 1)));
    const std::vector<std::string> word{std::istream_iterator<std::string>(words), {}};
    return word.size() > 12 ? std::stol(word[11]) + std::stol(word[12]) : -1;
}

/// Proportional set size [kB]: each shared page divided by the number of processes that share it.
std::optional<double> proportionalSetSize_kB(pid_t pid) {
    std::ifstream file("/proc/" + std::to_string(pid) + "/smaps_rollup");
    for (std::string line; std::getline(file, line);) {
        if (line.starts_with("Pss:")) {
            return std::stod(line.substr(4));
        }
    }
    return std::nullopt;
}

void measureStart() {
    constexpr int warmUps = 3;
    constexpr int starts = 15;
    alarm(120); // a program that never paints must not hold up the rest
    std::vector<double> times_ms;
    for (int i = 0; i < warmUps + starts; ++i) {
        const auto begin = Clock::now();
        Child child(true);
        const std::optional<int> code = child.waitForEnd();
        const std::chrono::duration<double, std::milli> took = Clock::now() - begin;
        if (code != 0) {
            giveUp("the program did not end with 0 after its first curve");
        }
        if (i >= warmUps) {
            times_ms.push_back(took.count());
        }
    }
    std::sort(times_ms.begin(), times_ms.end());
    std::fprintf(stderr, "start: %.1f to %.1f ms over %d starts\n", times_ms.front(), times_ms.back(),
                 starts);
    std::printf("start_to_curve %.1f ms\n", times_ms[starts / 2]);
}

void measureMemory() {
    constexpr auto restNeeded = 2s;
    const auto begin = Clock::now();
    Child child(false);
    auto restSince = begin;
    long ticks = 0;
    while (Clock::now() - restSince < restNeeded) {
        std::this_thread::sleep_for(100ms);
        if (child.hasEnded()) {
            giveUp("the program ended by itself");
        }
        if (Clock::now() - begin > 60s) {
            giveUp("the program is not at rest after a minute");
        }
        if (const long now = ticksUsed(child.pid()); now != ticks) {
            ticks = now;
            restSince = Clock::now();
        }
    }
    const std::optional<double> size_kB = proportionalSetSize_kB(child.pid());
    if (!size_kB) {
        giveUp("no proportional set size in smaps_rollup");
    }
    std::printf("memory_at_rest %.1f MiB\n", *size_kB / 1024);
}

} // namespace

int main(int count, char** arguments) {
    const std::string_view what = count == 2 ? arguments[1] : "";
    if (what == "start") {
        measureStart();
    } else if (what == "memory") {
        measureMemory();
    } else {
        std::fprintf(stderr, "usage: whole_program start|memory\n");
        return 2;
    }
    return 0;
}
