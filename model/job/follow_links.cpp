#include "model/job/follow_links.h"

namespace model {

std::optional<std::filesystem::path> followLinks(std::filesystem::path path) {
  namespace fs = std::filesystem;
  for (int hops = 0; hops < 40; ++hops) {
    std::error_code none;
    if (!fs::is_symlink(fs::symlink_status(path, none))) return path;
    const fs::path target = fs::read_symlink(path, none);
    if (none) return std::nullopt;
    path = target.is_absolute() ? target : path.parent_path() / target;
  }
  return std::nullopt;
}

}  // namespace model
