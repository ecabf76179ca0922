// The list that a walkthrough leaves in its folder, so that the next one can take its files away:
// pictures of two jobs side by side would mislead.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace viewer {

class ContentsList {
 public:
  static constexpr const char* kName = "contents.txt";

  // Reads the list of an earlier walkthrough, when the folder has one.
  explicit ContentsList(std::filesystem::path folder);

  // A file of that name is there that no walkthrough wrote: it is nobody's to replace.
  bool foreign() const { return foreign_; }

  // Takes away what the earlier walkthrough wrote, and its list. What is not on the list stays, and
  // so does what was changed since it was written: its names are returned.
  std::vector<std::string> clear();

  // Lists one more file, just written in the folder, at once: a run that is cut short has its list
  // too. An exit code, with a message when the list cannot be saved.
  int note(const std::string& name);

 private:
  std::filesystem::path folder_;
  std::vector<std::string> lines_;  // "fingerprint  name"
  bool foreign_ = false;
};

}  // namespace viewer
