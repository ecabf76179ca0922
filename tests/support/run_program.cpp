#include "tests/support/run_program.h"

#include <fcntl.h>
#include <poll.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <chrono>
#include <stdexcept>

namespace test_support {
namespace {

using Clock = std::chrono::steady_clock;
constexpr auto kLongest = std::chrono::minutes(2);
constexpr int kPollMilliseconds = 5;

struct Pipe {
  int read = -1, write = -1;
  Pipe() {
    std::array<int, 2> ends{};
    if (pipe2(ends.data(), O_CLOEXEC) != 0) throw std::runtime_error("no pipe");
    read = ends[0];
    write = ends[1];
  }
  void closeWrite() {
    if (write >= 0) close(write);
    write = -1;
  }
  ~Pipe() {
    close(read);
    closeWrite();
  }
};

[[noreturn]] void becomeProgram(const std::vector<std::string>& arguments,
                                const ProgramSettings& settings, const Pipe& out, const Pipe& err) {
  if (!settings.folder.empty() && chdir(settings.folder.c_str()) != 0) _exit(127);
  int outEnd = out.write;
  if (!settings.outTo.empty()) outEnd = open(settings.outTo.c_str(), O_WRONLY | O_CREAT, 0600);
  dup2(outEnd, STDOUT_FILENO);
  dup2(err.write, STDERR_FILENO);
  for (const auto& [name, value] : settings.environment) setenv(name.c_str(), value.c_str(), 1);
  std::vector<char*> argv;
  for (const std::string& argument : arguments) {
    argv.push_back(const_cast<char*>(argument.c_str()));  // execv does not write to them
  }
  argv.push_back(nullptr);
  execv(argv[0], argv.data());
  _exit(127);
}

// Appends what is there to read; false at the end.
bool drain(int from, std::string& to) {
  std::array<char, 65536> bytes{};
  const ssize_t got = read(from, bytes.data(), bytes.size());
  if (got > 0) to.append(bytes.data(), static_cast<size_t>(got));
  return got > 0;
}

void collect(pid_t child, Pipe& out, Pipe& err, const ProgramSettings& settings, ProgramRun& run) {
  bool outOpen = true, errOpen = true, interrupted = false;
  const auto end = Clock::now() + kLongest;
  while (outOpen || errOpen) {
    std::array<pollfd, 2> ends{
        {{outOpen ? out.read : -1, POLLIN, 0}, {errOpen ? err.read : -1, POLLIN, 0}}};
    poll(ends.data(), ends.size(), kPollMilliseconds);
    if (ends[0].revents != 0) outOpen = drain(out.read, run.out);
    if (ends[1].revents != 0) errOpen = drain(err.read, run.err);
    if (settings.interruptWhen && !interrupted && settings.interruptWhen()) {
      interrupted = true;
      kill(child, SIGINT);
    }
    if (Clock::now() > end) kill(child, SIGKILL);
  }
}

}  // namespace

ProgramRun runProgram(const std::vector<std::string>& arguments, const ProgramSettings& settings) {
  Pipe out, err;
  const pid_t child = fork();
  if (child < 0) throw std::runtime_error("no process");
  if (child == 0) becomeProgram(arguments, settings, out, err);
  out.closeWrite();
  err.closeWrite();
  ProgramRun run;
  collect(child, out, err, settings, run);
  int status = 0;
  waitpid(child, &status, 0);
  run.exitCode = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
  if (run.exitCode == 127) throw std::runtime_error("cannot start " + arguments.at(0));
  return run;
}

}  // namespace test_support
