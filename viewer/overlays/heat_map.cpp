#include "viewer/overlays/heat_map.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <set>
#include <string>

#include <glm/geometric.hpp>

#include "model/asbuilt/level_surface.h"
#include "model/lines/face_list.h"

namespace viewer {
namespace {

constexpr double kCell = 0.3;  // metres

bool isSurface(const std::string& target) {
  static constexpr std::array<const char*, 10> kSurfaces{
      "formation",       "blinding",     "top-of-concrete", "cellar-formation", "cellar-blinding",
      "cellar-slab-top", "cellar-floor", "oversite",        "structural-floor", "finished-floor"};
  const std::string family = target.substr(0, target.find(':'));
  return std::find(kSurfaces.begin(), kSurfaces.end(), family) != kSurfaces.end();
}

bool isOfStrips(const std::string& target) {
  return target == "top-of-concrete" || target == "formation" || target == "blinding";
}

// What a slab or floor lies in. The triangles between readings reach across the notch of an L.
std::optional<model::Polygon> slabOf(const model::SettingOut& out, const std::string& target) {
  const std::string family = target.substr(0, target.find(':'));
  if (family == "cellar-slab-top" || family == "cellar-floor") return out.cellarOutline;
  if (family == "oversite" || family == "structural-floor" || family == "finished-floor")
    return out.ring(out.faceDistances.innerFace);
  return std::nullopt;
}

// A strip of the foundation, from edge to edge.
struct Strip {
  const model::WallLine* wall = nullptr;
  double outer = 0, inner = 0;  // inward of the outer face
  bool holds(const model::Vec2& p) const {
    const double s = glm::dot(p - wall->start, wall->along);
    const double inward = -glm::dot(p - wall->start, wall->outward);
    return inward >= outer && inward <= inner && s >= outer && s <= wall->length - outer;
  }
};

std::vector<Strip> stripsOf(const model::Job& job, const model::SettingOut& out) {
  std::vector<Strip> strips;
  for (size_t i = 0; i < out.walls.size(); ++i) {
    Strip strip{&out.walls[i], 0, 0};
    for (const model::SetOutFace& face : model::facesOf(job, out, i)) {
      if (face.key == "foundation-outer") strip.outer = face.inward;
      if (face.key == "foundation-inner") strip.inner = face.inward;
    }
    if (strip.inner > strip.outer) strips.push_back(strip);
  }
  return strips;
}

// When the level that a reading is held against is made; 0 when the schedule does not have it.
double madeAt(const model::SettingOut& out, const std::vector<double>& levelTimes,
              const model::Deviation& d) {
  constexpr double kSame = 5e-4;
  const std::string family = d.target.substr(0, d.target.find(':'));
  for (size_t i = 0; i < out.schedule.size(); ++i) {
    const model::ScheduledLevel& line = out.schedule[i];
    if (std::abs(line.level - d.design) < kSame && line.key.rfind(family, 0) == 0)
      return levelTimes[i];
  }
  return 0;
}

// The reading nearest to a place tells the step that it lies on, and what is allowed.
const model::Deviation* nearest(const std::vector<const model::Deviation*>& read,
                                const model::Vec2& p) {
  const model::Deviation* best = nullptr;
  for (const model::Deviation* d : read)
    if (!best || glm::distance(d->place.at, p) < glm::distance(best->place.at, p)) best = d;
  return best;
}

}  // namespace

const char* nameOf(HeatBand band) {
  static constexpr std::array<const char*, kHeatBands> kNames{
      "low, out", "low, at the edge", "within", "high, at the edge", "high, out"};
  return kNames[size_t(band)];
}

HeatBand bandOf(double off, const model::Allowed& allowed) {
  switch (model::judge(off, allowed)) {
    case model::Verdict::Out:
      return off < 0 ? HeatBand::LowOut : HeatBand::HighOut;
    case model::Verdict::AtTheEdge:
      return off < 0 ? HeatBand::LowEdge : HeatBand::HighEdge;
    default:
      return HeatBand::Within;
  }
}

std::vector<HeatCell> heatCells(const model::Job& job, const model::SettingOut& settingOut,
                                const std::vector<double>& levelTimes,
                                const model::AsBuilt& asBuilt, std::optional<size_t> set) {
  std::set<std::string> targets;
  for (const model::Deviation& d : asBuilt.deviations)
    if (d.kind == model::ReadingKind::Level && isSurface(d.target)) targets.insert(d.target);
  std::vector<HeatCell> cells;
  for (const std::string& target : targets) {
    const auto surface = model::levelSurface(asBuilt.deviations, target, set);
    const auto grid = model::gridOf(surface, kCell);
    std::vector<const model::Deviation*> read;
    for (const model::Deviation& d : asBuilt.deviations)
      if (d.target == target && (set ? d.set == *set : d.latest)) read.push_back(&d);
    const auto strips = isOfStrips(target) ? stripsOf(job, settingOut) : std::vector<Strip>{};
    std::map<const model::Deviation*, double> made;
    for (const model::Deviation* d : read) made[d] = madeAt(settingOut, levelTimes, *d);
    const auto slab = slabOf(settingOut, target);
    for (size_t row = 0; row < grid.rows; ++row)
      for (size_t column = 0; column < grid.columns; ++column) {
        const auto off = grid.off[row * grid.columns + column];
        const model::Vec2 p = grid.middle(column, row);
        if (!off || (slab && !model::contains(*slab, p))) continue;
        if (isOfStrips(target) && std::none_of(strips.begin(), strips.end(),
                                               [&](const Strip& strip) { return strip.holds(p); }))
          continue;
        const model::Deviation* by = nearest(read, p);
        cells.push_back({p, grid.cell / 2, by->design + *off, made[by], bandOf(*off, by->allowed)});
      }
  }
  return cells;
}

}  // namespace viewer
