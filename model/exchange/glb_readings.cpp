#include "model/exchange/glb_readings.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "model/asbuilt/words.h"

namespace model {

namespace {

constexpr double kMarker = 0.070;  // half its width, metres

// Eight faces round a point; `up` and `down` are its two tips.
Solid octahedron(const Vec3& at, double half, double up, double down) {
  Solid solid;
  solid.points = {at + Vec3{half, 0, 0},  at + Vec3{0, half, 0}, at + Vec3{-half, 0, 0},
                  at + Vec3{0, -half, 0}, at + Vec3{0, 0, up},   at - Vec3{0, 0, down}};
  for (std::uint32_t i = 0; i < 4; ++i) {
    const std::uint32_t next = (i + 1) % 4;
    solid.triangles.push_back({i, next, 4});
    solid.triangles.push_back({next, i, 5});
  }
  return solid;
}

// Stands on its point, so that what was read does not hide it.
Solid markerOf(const Deviation& d) {
  const auto stood = [&](double half, double up, double down) {
    const Vec3 at{d.place.at.x, d.place.at.y, d.place.level + down};
    return octahedron(at, half, up, down);
  };
  const double point = 4 * kMarker, back = kMarker / 4;
  if (d.verdict == Verdict::Within) return stood(kMarker, kMarker, kMarker);
  if (d.verdict == Verdict::AtTheEdge) return stood(kMarker, 2 * kMarker, 2 * kMarker);
  return d.off > 0 ? stood(1.5 * kMarker, point, back) : stood(1.5 * kMarker, back, point);
}

// The kinds of thing that a target is read on; with a storey, only that storey's.
std::vector<ElementKind> kindsOf(const std::string& target) {
  using K = ElementKind;
  const std::string family = target.substr(0, target.find(':'));
  const bool ground = target.ends_with(":0");
  if (family == "top-of-concrete" || family == "foundation-outer" || family == "foundation-inner")
    return {K::Foundation};
  if (family == "blinding") return {K::Blinding};
  if (family == "cellar-slab-top") return {K::CellarSlab};
  if (family == "cellar-wall-top") return {K::CellarWall};
  if (family == "structural-floor" && ground) return {K::GroundSlab, K::BeamFloor};
  if (family == "finished-floor" && ground) return {K::Screed};
  if (family == "damp-course") return {K::DampCourse};
  if (family == "plate-top" || family == "wall-top") return {K::WallPlate};
  if (family == "outer-face" || family == "outer-leaf-back") return {K::OuterLeaf};
  if (family == "inner-face" || family == "inner-leaf-front") return {K::InnerLeaf};
  return {};
}

// The walls whose things a reading is of; none: things that belong to no wall.
std::vector<std::string> wallsOf(const SettingOut& out, const ReadAt& place) {
  const size_t n = out.walls.size();
  if (place.wall) return {out.walls[*place.wall].name};
  if (place.corner)
    return {out.walls[(*place.corner + n - 1) % n].name, out.walls[*place.corner].name};
  return {};
}

class Gathering {
 public:
  void add(const Deviation& d) {
    said_ += (said_.empty() ? "" : "; ") + d.what + ": " + d.words;
    if (!worst_ || d.verdict > worst_->verdict ||
        (d.verdict == worst_->verdict && std::abs(d.off) > std::abs(worst_->off)))
      worst_ = &d;
  }
  GlbExtras extras() const {
    GlbExtras extras;
    if (!worst_) return extras;
    extras.say("asBuilt", said_);
    extras.say("asBuiltVerdict", std::string_view(nameOf(worst_->verdict)));
    extras.say("asBuiltWorstMm", worst_->off * 1000);
    return extras;
  }

 private:
  std::string said_;
  const Deviation* worst_ = nullptr;
};

void addElements(const Model& model, const AsBuilt& built, GlbReadings& result) {
  std::unordered_map<std::string, Gathering> byElement;
  for (const Deviation& d : built.deviations) {
    const std::vector<ElementKind> kinds = kindsOf(d.target);
    if (!d.latest || kinds.empty()) continue;
    const std::vector<std::string> walls = wallsOf(model.settingOut, d.place);
    for (const Element& element : model.works.elements) {
      if (std::find(kinds.begin(), kinds.end(), element.kind) == kinds.end()) continue;
      const bool mine = element.wall.empty() ||
                        std::find(walls.begin(), walls.end(), element.wall) != walls.end();
      if (mine) byElement[element.id].add(d);
    }
  }
  for (const auto& [id, gathering] : byElement) result.ofElements[id] = gathering.extras();
  for (const RafterChange& r : built.roof.rafters) {
    GlbExtras& extras = result.ofElements[r.id];
    extras.say("longerRidgeHeldMm", r.ridgeHeld * 1000);
    extras.say("longerPitchHeldMm", r.pitchHeld * 1000);
  }
}

void addMarkers(const Model& model, const AsBuilt& built, GlbReadings& result) {
  for (const Deviation& d : built.deviations) {
    if (!d.latest) continue;
    const ReadingSet& set = model.job.readings[d.set];
    const Reading& reading = set.rows[d.row];
    Element marker;
    marker.name = "Reading: " + d.what + ", " + offText(d.kind, d.off);
    marker.solid = markerOf(d);
    result.markers.elements.push_back(std::move(marker));
    result.verdicts.push_back(d.verdict);
    GlbExtras extras;
    extras.say("kind", std::string_view("reading"));
    extras.say("what", d.what);
    extras.say("deviation", d.words);
    extras.say("deviationMm", d.off * 1000);
    extras.say("verdict", std::string_view(nameOf(d.verdict)));
    extras.say("allowedBy", d.allowed.source);
    extras.say("set", set.name);
    extras.say("date", set.date);
    extras.say("by", set.by);
    extras.say("readingNote", reading.note);
    extras.say("photo", reading.photo);
    if (!model.programme.stages.empty()) extras.say("stage", model.programme.stages.back().name);
    result.extras.push_back(std::move(extras));
  }
}

}  // namespace

std::optional<GlbReadings> glbReadings(const Model& model) {
  const auto& sets = model.job.readings;
  const bool any =
      std::any_of(sets.begin(), sets.end(), [](const auto& set) { return !set.rows.empty(); });
  if (!any) return std::nullopt;
  const AsBuilt built = deriveAsBuilt(model.job, model.settingOut);
  GlbReadings result;
  addMarkers(model, built, result);
  addElements(model, built, result);
  return result;
}

}  // namespace model
