// How far a long command has come, and whether the user has had enough.
#pragma once

#include <string>

namespace viewer {

// One line on standard error: rewritten in place on a terminal, else printed now and then.
class Progress {
 public:
  explicit Progress(size_t total);
  ~Progress();
  Progress(const Progress&) = delete;
  Progress& operator=(const Progress&) = delete;
  void step(const std::string& what);

 private:
  size_t total_, done_ = 0;
  bool terminal_;
};

// While one stands, Ctrl-C does not end the program but is remembered. One at a time.
class StopOnRequest {
 public:
  StopOnRequest();
  ~StopOnRequest();
  StopOnRequest(const StopOnRequest&) = delete;
  StopOnRequest& operator=(const StopOnRequest&) = delete;
  // Since the one that stands was made.
  static bool asked();
};

}  // namespace viewer
