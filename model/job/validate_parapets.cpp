#include "model/job/validate_parapets.h"

#include <cmath>

#include "model/job/job_names.h"
#include "model/job/value_words.h"

namespace model {

namespace {

constexpr double kPi = 3.14159265358979323846;
constexpr double kOffSquare = 0.00873;  // radians: half a degree
constexpr double kLeast = 0.075;        // a course: less is no parapet
constexpr double kFlashing = 0.150;     // over the covering: common practice, no source
constexpr double kBetweenFeet = 1.000;  // of slopes between the level feet

class ParapetCheck {
 public:
  ParapetCheck(const Validation& v, const PlanFacts& plan, size_t index, size_t wall)
      : v_(v),
        plan_(plan),
        edge_(v.job.roof.edges[index]),
        path_("roof.edge[" + std::to_string(index) + "]"),
        wall_(wall) {}

  bool sound(const std::vector<bool>& gable) const {
    const size_t n = plan_.corners(), before = (wall_ + n - 1) % n, after = (wall_ + 1) % n;
    const std::string who = "the parapet on " + plan_.wallName(wall_);
    const auto error = [&](const std::string& what, const std::string& instead) {
      v_.error(path_ + ".parapet", who + " " + what, instead);
      return false;
    };
    if (!gable[wall_])
      return error("is on a wall that is a hip", "write kind = \"gable\", or take parapet out");
    if (edge_.parapet < kLeast - 1e-6)
      return error("is " + lengthWords(edge_.parapet) + " over the covering",
                   "a course, " + lengthWords(kLeast) + ", is the least");
    for (const size_t corner : {wall_, after})
      if (std::abs(plan_.angle[corner] - kPi / 2) > kOffSquare)
        return error("ends at corner " + letterOfCorner(corner) +
                         ", which is no outside corner of 90 degrees",
                     "a parapet stands between two square outside corners: take parapet out");
    for (const size_t next : {before, after})
      if (gable[next])
        return error("meets the gable on " + plan_.wallName(next),
                     "the walls beside a parapet have eaves: make that one a hip");
    if (v_.known.wallThickness()) {
      const double least = 2 * v_.job.walls.total() + 2 * 0.050 + kBetweenFeet;
      if (plan_.length[wall_] < least)
        return error("is " + lengthWords(plan_.length[wall_]) + " long",
                     lengthWords(std::ceil(least * 1000) / 1000) +
                         " is the least, with its kneelers at both ends");
    }
    if (edge_.parapet < kFlashing - 1e-6)
      v_.warning(path_ + ".parapet",
                 who + " is " + lengthWords(edge_.parapet) + " over the covering",
                 "150 mm is usual, so that the flashing has its height under the coping");
    return true;
  }

 private:
  const Validation& v_;
  const PlanFacts& plan_;
  const RoofEdge& edge_;
  const std::string path_;
  const size_t wall_;
};

}  // namespace

bool hasParapet(const Job& job, size_t wall, size_t corners) {
  for (const RoofEdge& edge : job.roof.edges)
    if (wallNamed(edge.wall, corners) == wall)
      return edge.kind == EavesKind::Gable && edge.parapet > 0;
  return false;
}

bool validateParapets(const Validation& v, const PlanFacts& plan, const std::vector<bool>& gable) {
  bool good = true;
  for (size_t i = 0; i < v.job.roof.edges.size(); ++i) {
    const RoofEdge& edge = v.job.roof.edges[i];
    const auto wall = wallNamed(edge.wall, plan.corners());
    if (edge.parapet <= 0 || !wall) continue;
    if (!v.known.has("roof.edge[" + std::to_string(i) + "].parapet")) return false;
    good = ParapetCheck(v, plan, i, *wall).sound(gable) && good;
  }
  return good;
}

}  // namespace model
