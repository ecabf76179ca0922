#include "viewer/commands/progress.h"

#include <unistd.h>

#include <algorithm>
#include <csignal>
#include <iostream>

namespace viewer {
namespace {

// A signal handler can reach nothing but a global; nothing else reads it.
volatile std::sig_atomic_t stopAsked = 0;

void rememberStop(int) { stopAsked = 1; }

constexpr const char* kClearLine = "\r\033[K";

}  // namespace

Progress::Progress(size_t total) : total_(total), terminal_(isatty(STDERR_FILENO) == 1) {}

Progress::~Progress() {
  if (terminal_) std::cerr << kClearLine << std::flush;
}

void Progress::step(const std::string& what) {
  ++done_;
  const std::string line = "[" + std::to_string(done_) + "/" + std::to_string(total_) + "] " + what;
  if (terminal_) {
    std::cerr << kClearLine << line << std::flush;
  } else if (done_ == 1 || done_ == total_ || done_ % std::max<size_t>(10, total_ / 20) == 0) {
    std::cerr << line << "\n";
  }
}

StopOnRequest::StopOnRequest() {
  stopAsked = 0;
  std::signal(SIGINT, rememberStop);
  std::signal(SIGTERM, rememberStop);
}

StopOnRequest::~StopOnRequest() {
  std::signal(SIGINT, SIG_DFL);
  std::signal(SIGTERM, SIG_DFL);
}

bool StopOnRequest::asked() { return stopAsked != 0; }

}  // namespace viewer
