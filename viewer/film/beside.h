// A file or folder that is made beside its place and put there when it is whole.
#pragma once

#include <filesystem>
#include <string>

namespace viewer {

// Links on the way are followed, so that a link stays and its target changes.
class Beside {
 public:
  explicit Beside(const std::string& place);
  // What was made and not put in place is taken away.
  ~Beside();
  Beside(const Beside&) = delete;
  Beside& operator=(const Beside&) = delete;

  // Under this name it is made; hidden, and nothing else has it.
  const std::filesystem::path& making() const { return making_; }
  const std::filesystem::path& place() const { return place_; }
  // Flushed to the disk and renamed; says what went wrong.
  std::string putInPlace();

 private:
  std::filesystem::path place_, making_;
};

}  // namespace viewer
