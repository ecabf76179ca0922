#include "viewer/watch_file.h"

#include <utility>

namespace viewer {

WatchFile::WatchFile(std::string path) : path_(std::move(path)) { known_ = last_ = look(); }

WatchFile::Look WatchFile::look() const {
  std::error_code error;
  Look found;
  found.size = std::filesystem::file_size(path_, error);
  if (error) return {};
  found.written = std::filesystem::last_write_time(path_, error);
  if (error) return {};
  found.there = true;
  return found;
}

bool WatchFile::changed(double now) {
  if (now - lastLook_ < kEvery) return false;
  lastLook_ = now;
  const Look found = look();
  const bool settled = found == last_;
  last_ = found;
  gone_ = known_.there && settled && !found.there;
  // A file that has gone for a moment is being replaced: wait for what comes.
  if (!settled || !found.there || found == known_) return false;
  known_ = found;
  return true;
}

}  // namespace viewer
