#include "model/programme/check_programme.h"

#include <algorithm>
#include <map>
#include <numeric>

namespace model {
namespace {

// Levenshtein's distance: how many letters must change to make one word the other.
size_t lettersApart(const std::string& a, const std::string& b) {
  std::vector<size_t> row(b.size() + 1);
  std::iota(row.begin(), row.end(), size_t{0});
  for (size_t i = 0; i < a.size(); ++i) {
    size_t diagonal = row[0];
    row[0] = i + 1;
    for (size_t j = 0; j < b.size(); ++j) {
      const size_t replaced = diagonal + (a[i] == b[j] ? 0 : 1);
      diagonal = row[j + 1];
      row[j + 1] = std::min({row[j] + 1, row[j + 1] + 1, replaced});
    }
  }
  return row.back();
}

std::string nearestId(const Programme& programme, const std::string& wanted) {
  const auto nearest = std::min_element(
      programme.stages.begin(), programme.stages.end(), [&](const Stage& a, const Stage& b) {
        return lettersApart(a.id, wanted) < lettersApart(b.id, wanted);
      });
  return nearest == programme.stages.end() ? "" : nearest->id;
}

Place placeOf(const KeyPlaces& places, size_t index) {
  for (const char* table : {"programme.stage[", "programme.stages["}) {
    for (const char* key : {"].stage", "]"}) {
      const auto found = places.find(table + std::to_string(index) + key);
      if (found != places.end()) return found->second;
    }
  }
  return {};
}

}  // namespace

Problems checkProgramme(const Job& job, const Programme& programme, const std::string& file,
                        const KeyPlaces& places) {
  Problems problems;
  std::map<size_t, size_t> saidBefore;
  for (size_t i = 0; i < job.programme.stages.size(); ++i) {
    const std::string& wanted = job.programme.stages[i].stage;
    Problem problem{file, placeOf(places, i), Severity::Warning, "", ""};
    const auto index = programme.find(wanted);
    if (!index) {
      problem.what = "programme.stage: this job has no stage \"" + wanted + "\"";
      problem.instead = "did you mean \"" + nearestId(programme, wanted.substr(0, 64)) +
                        "\"? `stages` lists them all";
      problems.push_back(problem);
    } else if (!saidBefore.emplace(*index, i).second) {
      problem.what = "programme.stage: stage \"" + wanted + "\" is changed twice";
      problem.instead = "keep one of the two; the last one counts";
      problems.push_back(problem);
    }
  }
  return problems;
}

}  // namespace model
