#include "viewer/point_sight.h"

#include <cmath>

#include "model/lines/level_sights.h"

namespace viewer {
namespace {

double toMillimetre(double metres) { return std::round(metres * 1000) / 1000; }

bool same(const model::SetUp& a, const model::SetUp& b) {
  return a.name == b.name && a.at == b.at && a.mark == b.mark && a.backsight == b.backsight &&
         a.staff == b.staff;
}

}  // namespace

const std::vector<std::string>& PointSight::words(const model::Job& job,
                                                  const model::SettingOut& settingOut,
                                                  const model::SetUp& setUp,
                                                  const model::Vec3& point) {
  const model::Vec3 at{toMillimetre(point.x), toMillimetre(point.y), toMillimetre(point.z)};
  if (point_ && *point_ == at && same(setUp_, setUp)) return words_;
  point_ = at;
  setUp_ = setUp;
  words_.clear();
  const auto sight = model::sightOfPoint(job, settingOut, setUp, at);
  // Its first words say why; the card does so too.
  if (sight && !sight->reading.canBeRead() && !sight->words.empty())
    words_.assign(sight->words.begin() + 1, sight->words.end());
  return words_;
}

}  // namespace viewer
