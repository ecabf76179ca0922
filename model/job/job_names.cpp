#include "model/job/job_names.h"

namespace model {

std::string letterOfCorner(size_t index) {
  std::string letters;
  for (size_t rest = index + 1; rest > 0; rest = (rest - 1) / 26) {
    letters.insert(letters.begin(), static_cast<char>('A' + (rest - 1) % 26));
  }
  return letters;
}

std::string nameOfWall(size_t index, size_t corners) {
  return letterOfCorner(index) + "-" + letterOfCorner((index + 1) % corners);
}

std::optional<size_t> wallNamed(const std::string& name, size_t corners) {
  for (size_t i = 0; i < corners; ++i) {
    const std::string from = letterOfCorner(i);
    const std::string to = letterOfCorner((i + 1) % corners);
    if (name == from + "-" + to || name == to + "-" + from) return i;
  }
  return std::nullopt;
}

}  // namespace model
