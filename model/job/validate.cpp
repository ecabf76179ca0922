#include "model/job/validate.h"

namespace model {

Place Validation::placeOf(std::string path) const {
  while (!path.empty()) {
    const auto found = places.find(path);
    if (found != places.end()) return found->second;
    const size_t cut = path.find_last_of(".[");
    if (cut == std::string::npos) break;
    path.erase(cut);
  }
  return {};
}

void Validation::error(const std::string& path, std::string what, std::string instead) const {
  problems.push_back({file, placeOf(path), Severity::Error, std::move(what), std::move(instead)});
}

void Validation::warning(const std::string& path, std::string what, std::string instead) const {
  problems.push_back({file, placeOf(path), Severity::Warning, std::move(what), std::move(instead)});
}

Problems validateReadable(const Job& job, const std::string& file, const KeyPlaces& places,
                          const BrokenParts& broken) {
  Problems problems;
  const Validation v{job, file, places, broken, problems};
  (void)v;
  return problems;
}

}  // namespace model
