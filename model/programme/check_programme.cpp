#include "model/programme/check_programme.h"

namespace model {
namespace {

// Of the key itself, or of what it belongs to.
Place placeOf(const KeyPlaces& places, std::string key) {
  while (!key.empty()) {
    const auto found = places.find(key);
    if (found != places.end()) return found->second;
    const size_t cut = key.find_last_of(".[");
    if (cut == std::string::npos) break;
    key.erase(cut);
  }
  return {};
}

}  // namespace

Problems checkProgramme(const Programme& programme, const std::string& file,
                        const KeyPlaces& places) {
  Problems problems;
  for (const ProgrammeFault& fault : programme.faults) {
    problems.push_back(
        {file, placeOf(places, fault.key), fault.severity, fault.what, fault.instead});
  }
  return problems;
}

}  // namespace model
