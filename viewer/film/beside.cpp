#include "viewer/film/beside.h"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>
#include <string>

#include "model/job/follow_links.h"

namespace viewer {
namespace {

namespace fs = std::filesystem;

// Of a file or a folder; false when the disk reports a fault.
bool flush(const fs::path& path) {
  const int descriptor = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
  if (descriptor < 0) return false;
  const bool flushed = ::fsync(descriptor) == 0;
  return ::close(descriptor) == 0 && flushed;
}

}  // namespace

Beside::Beside(const std::string& place) {
  std::error_code ignored;
  fs::path named = fs::absolute(place, ignored);
  if (fs::is_directory(named, ignored)) named = fs::canonical(named, ignored);
  if (!named.has_filename()) named = named.parent_path();  // a folder's name with / at its end
  place_ = model::followLinks(named).value_or(named);
  for (int n = 0;; ++n) {
    making_ =
        place_.parent_path() / ("." + place_.filename().string() + "." +
                                std::to_string(::getpid()) + "-" + std::to_string(n) + ".tmp");
    if (!fs::exists(fs::symlink_status(making_, ignored))) break;
  }
}

Beside::~Beside() {
  std::error_code ignored;
  fs::remove_all(making_, ignored);
}

std::string Beside::putInPlace() {
  const auto failed = [](const char* doing) {
    return std::string(doing) + ": " + std::strerror(errno);
  };
  if (!flush(making_)) return failed("it cannot be flushed to the disk");
  if (::rename(making_.c_str(), place_.c_str()) != 0) return failed("it cannot be put in place");
  flush(place_.parent_path());
  return "";
}

}  // namespace viewer
