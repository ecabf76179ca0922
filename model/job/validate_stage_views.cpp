// The views that the job keeps for its stages.
#include <cmath>
#include <string>

#include <glm/geometric.hpp>

#include "model/job/validate.h"
#include "model/job/value_words.h"

namespace model {

namespace {

constexpr double kNearest = 0.5, kFarthest = 1500;  // metres from the eye to what it looks at

void eyeApart(const Validation& v, const std::string& path, const std::string& who,
              const KeptView& view) {
  for (const char* key : {".eye", ".eye_level", ".target", ".target_level"})
    if (!v.known.has(path + key)) return;
  const double distance =
      glm::distance(Vec3(view.eye, view.eyeLevel), Vec3(view.target, view.targetLevel));
  if (distance < kNearest)
    v.error(path + ".target", who + ": the eye is " + lengthWords(distance) + " from its target",
            "the two are at least " + lengthWords(kNearest) + " apart");
  if (distance > kFarthest)
    v.error(path + ".eye_level",
            who + ": the eye is " + std::to_string(std::lround(distance)) + " m from its target",
            "points are in mm and levels in metres, both from the drawing's zero");
}

void planeGiven(const Validation& v, const std::string& path, const std::string& who,
                const KeptView& view) {
  if (!v.known.has(path + ".cut_away")) return;
  const bool level = view.cutAway == CutAway::Above;
  const bool upright = !level && view.cutAway != CutAway::Nothing;
  if (view.cutAt && !upright) {
    v.error(path + ".cut_at", who + " has cut_at and no upright plane",
            level ? "above goes with cut_level, in metres: cut_level = 1.200"
                  : "say which side is taken away: cut_away = \"south\"");
  }
  if (view.cutLevel && !level) {
    v.error(path + ".cut_level", who + " has cut_level and no level plane",
            upright ? "west, east, south and north go with cut_at, in mm: cut_at = 2245"
                    : "say what is taken away: cut_away = \"above\"");
  }
  if (level && !view.cutLevel && v.known.has(path + ".cut_level")) {
    v.error(path + ".cut_away", who + " takes away what is above no level",
            "add the plane's level, in metres: cut_level = 1.200");
  }
}

}  // namespace

void validateStageViews(const Validation& v) {
  for (size_t i = 0; i < v.job.programme.views.size(); ++i) {
    const KeptView& view = v.job.programme.views[i];
    const std::string path = "programme.view[" + std::to_string(i) + "]";
    const std::string who = "view " + std::to_string(i + 1);
    if (nearFloor(v, path + ".target_level", who + ": target_level", view.targetLevel))
      eyeApart(v, path, who, view);
    if (view.cutLevel) nearFloor(v, path + ".cut_level", who + ": cut_level", *view.cutLevel);
    planeGiven(v, path, who, view);
  }
}

}  // namespace model
