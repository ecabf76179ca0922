// Notices that a file on disk has changed, by asking a few times a second.
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>

namespace viewer {

class WatchFile {
 public:
  static constexpr double kEvery = 0.3;  // seconds between two looks

  explicit WatchFile(std::string path);
  const std::string& path() const { return path_; }
  // `now` in seconds of any steady clock. True once for each change, when two looks running have
  // found the file the same: an editor may still be writing at the first.
  bool changed(double now);
  // True while a file that was there has gone, by two looks running.
  bool gone() const { return gone_; }
  // What is there now is known: whoever calls this has just written it.
  void accept() { known_ = last_ = look(); }

 private:
  struct Look {
    bool there = false;
    std::uintmax_t size = 0;
    std::filesystem::file_time_type written{};
    bool operator==(const Look&) const = default;
  };
  Look look() const;

  std::string path_;
  Look known_, last_;
  double lastLook_ = -1e9;
  bool gone_ = false;
};

}  // namespace viewer
