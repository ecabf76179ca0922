#include "viewer/commands/contents_list.h"

#include <cstdint>
#include <cstdio>
#include <fstream>
#include <iterator>
#include <optional>

#include "viewer/commands/output.h"

namespace viewer {
namespace {

constexpr const char* kTitle = "What a walkthrough wrote here.";
constexpr const char* kHead =
    "What a walkthrough wrote here. The next one into this folder takes these files away first.\n"
    "Everything else stays, and so does a file of these that is changed in between.\n\n";
constexpr size_t kDigits = 16;

// Of a file's bytes; nothing when it is no plain file of the folder's own, or cannot be read.
// FNV-1a in 64 bits: against mix-ups, not against malice.
std::optional<std::string> fingerprint(const std::filesystem::path& path) {
  std::error_code ignored;
  if (std::filesystem::symlink_status(path, ignored).type() != std::filesystem::file_type::regular)
    return std::nullopt;
  std::ifstream file(path, std::ios::binary);
  if (!file) return std::nullopt;
  std::uint64_t hash = 14695981039346656037u;
  for (std::istreambuf_iterator<char> at(file), end; at != end; ++at)
    hash = (hash ^ static_cast<unsigned char>(*at)) * 1099511628211u;
  char digits[kDigits + 1];
  std::snprintf(digits, sizeof digits, "%016llx", static_cast<unsigned long long>(hash));
  return digits;
}

// The name on a line of the list; empty when it is none, or would lead out of the folder.
std::string nameOn(const std::string& line) {
  if (line.size() <= kDigits + 2 || line.compare(kDigits, 2, "  ") != 0) return "";
  const std::string name = line.substr(kDigits + 2);
  const bool plain = name != "." && name != ".." && name.find('/') == std::string::npos;
  return plain ? name : "";
}

}  // namespace

ContentsList::ContentsList(std::filesystem::path folder) : folder_(std::move(folder)) {
  std::error_code ignored;
  const auto path = folder_ / kName;
  if (!std::filesystem::exists(std::filesystem::symlink_status(path, ignored))) return;
  std::ifstream file(path, std::ios::binary);
  std::string line;
  foreign_ = !std::getline(file, line) || line.rfind(kTitle, 0) != 0;
  while (!foreign_ && std::getline(file, line))
    if (!nameOn(line).empty()) lines_.push_back(line);
}

std::vector<std::string> ContentsList::clear() {
  std::vector<std::string> changed;
  std::error_code ignored;
  for (const std::string& line : lines_) {
    const auto path = folder_ / nameOn(line);
    if (fingerprint(path) == line.substr(0, kDigits))
      std::filesystem::remove(path, ignored);
    else if (std::filesystem::exists(path, ignored))
      changed.push_back(nameOn(line));
  }
  lines_.clear();
  std::filesystem::remove(folder_ / kName, ignored);
  return changed;
}

int ContentsList::note(const std::string& name) {
  const auto print = fingerprint(folder_ / name);
  if (!print) return kWell;  // taken away again already: nothing to list
  lines_.push_back(*print + "  " + name);
  std::string text = kHead;
  for (const std::string& line : lines_) text += line + "\n";
  return saveOut((folder_ / kName).string(), text);
}

}  // namespace viewer
