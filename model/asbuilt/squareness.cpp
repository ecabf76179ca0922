#include "model/asbuilt/squareness.h"

#include <algorithm>
#include <cmath>
#include <numbers>

#include <glm/geometric.hpp>

#include "model/asbuilt/words.h"

namespace model {

namespace {

constexpr double kSawn = 0.003;  // common practice, no source: a cut is no truer

class CornerReader {
 public:
  CornerReader(const SettingOut& out, const std::vector<Deviation>& deviations)
      : out_(out), deviations_(deviations) {}

  // Shift of a corner, and the length between two, as the latest readings of a line have them.
  std::optional<Vec2> shiftOf(size_t corner, const std::string& target) const {
    for (const Deviation& d : deviations_) {
      if (!d.latest || d.kind != ReadingKind::Corner || d.target != target) continue;
      if (d.place.corner != corner) continue;
      const WallLine& wall = out_.walls[d.shifts[1].wall];
      return wall.along * d.shifts[1].along + wall.outward * d.shifts[1].outward;
    }
    return std::nullopt;
  }
  const Deviation* tape(size_t a, size_t b, const std::string& target) const {
    for (const Deviation& d : deviations_) {
      if (d.latest && d.target == target && d.place.between &&
          *d.place.between == std::pair<size_t, size_t>(std::minmax(a, b)))
        return &d;
    }
    return nullptr;
  }

 private:
  const SettingOut& out_;
  const std::vector<Deviation>& deviations_;
};

double angleBetween(const Vec2& before, const Vec2& corner, const Vec2& after) {
  const Vec2 a = before - corner, b = after - corner;
  const double angle = std::atan2(cross(b, a), glm::dot(a, b));
  return angle < 0 ? angle + 2 * std::numbers::pi : angle;
}

// Interior angle of a triangle of these sides, between the first two.
std::optional<double> angleOf(double a, double b, double opposite) {
  const double c = (a * a + b * b - opposite * opposite) / (2 * a * b);
  if (!(std::abs(c) < 1)) return std::nullopt;
  return std::acos(c);
}

std::optional<double> angleByPositions(const CornerReader& reader, const Polygon& ring, size_t i,
                                       const std::string& target) {
  const size_t n = ring.size(), before = (i + n - 1) % n, after = (i + 1) % n;
  const auto a = reader.shiftOf(before, target), b = reader.shiftOf(i, target),
             c = reader.shiftOf(after, target);
  if (!a || !b || !c) return std::nullopt;
  return angleBetween(ring[before] + *a, ring[i] + *b, ring[after] + *c);
}

std::optional<double> angleByTape(const CornerReader& reader, const Polygon& ring, size_t i,
                                  const std::string& target, double drawn) {
  const size_t n = ring.size(), before = (i + n - 1) % n, after = (i + 1) % n;
  const Deviation* across = reader.tape(before, after, target);
  if (!across || n < 4) return std::nullopt;
  const auto length = [&](size_t a, size_t b) {
    const Deviation* read = reader.tape(a, b, target);
    return read ? read->read : glm::distance(ring[a], ring[b]);
  };
  const auto angle = angleOf(length(before, i), length(i, after), across->read);
  if (!angle) return std::nullopt;
  return drawn > std::numbers::pi ? 2 * std::numbers::pi - *angle : *angle;
}

std::optional<HipChange> hipAt(const Job& job, const SettingOut& out, const CornerAsBuilt& corner) {
  const size_t n = out.walls.size(), after = corner.corner, before = (after + n - 1) % n;
  for (const RoofLine& line : out.roof.lines) {
    if (line.kind != RoofLineKind::Hip) continue;
    if (std::minmax(line.faceA, line.faceB) != std::minmax(before, after)) continue;
    // Only the line that begins at the eaves is the corner's.
    if (std::min(line.runA, line.runB) > 1e-6) continue;
    const double fromEaves = job.roof.eaves + out.faceDistances.innerLeafFront;
    const double run = std::max(line.runA, line.runB) - fromEaves;
    if (run <= 0) return std::nullopt;
    HipChange hip;
    hip.drawn = hipLength(run, run * out.tanPitch, corner.drawn);
    hip.built = hipLength(run, run * out.tanPitch, corner.built);
    hip.id = "rafters/Hip board " + out.walls[line.faceA].name + " " + out.walls[line.faceB].name;
    return hip;
  }
  return std::nullopt;
}

std::string wordsOf(const SettingOut& out, const CornerAsBuilt& corner) {
  if (lengthText(std::abs(corner.over)) == "0") return "";
  const WallLine& wall = out.walls[corner.corner];
  std::string words = "corner " + out.corners[corner.corner].letter + " is " +
                      (corner.over > 0 ? "open" : "closed") + ": " + wall.name + " swings " +
                      lengthText(std::abs(corner.over)) + (corner.over > 0 ? " out" : " in") +
                      " over its " + lengthText(wall.length);
  if (!corner.hip) return words;
  const double change = corner.hip->built - corner.hip->drawn;
  if (std::abs(change) < kSawn) return words;
  return words + "; its hip is " + lengthText(std::abs(change)) +
         (change > 0 ? " longer" : " shorter") +
         ", and the jacks on its two sides are no pairs: measure each";
}

}  // namespace

double hipLength(double run, double rise, double angle) {
  return std::hypot(run / std::sin(angle / 2), rise);
}

std::vector<CornerAsBuilt> deriveCorners(const Job& job, const SettingOut& settingOut,
                                         const std::vector<Deviation>& deviations) {
  const CornerReader reader(settingOut, deviations);
  std::vector<CornerAsBuilt> all;
  std::vector<std::string> targets;
  for (const char* name : {"outer-face", "outer-leaf-back", "inner-leaf-front", "inner-face",
                           "foundation-outer", "foundation-inner"})
    targets.emplace_back(name);
  const FaceDistances& in = settingOut.faceDistances;
  const double distances[] = {in.outerFace, in.outerLeafBack,   in.innerLeafFront,
                              in.innerFace, in.foundationOuter, in.foundationInner};
  for (size_t i = 0; i < settingOut.corners.size(); ++i) {
    for (size_t t = 0; t < targets.size(); ++t) {
      const Polygon ring = settingOut.ring(distances[t]);
      CornerAsBuilt corner;
      corner.corner = i;
      corner.drawn = settingOut.corners[i].angle;
      auto angle = angleByPositions(reader, ring, i, targets[t]);
      if (!angle) {
        angle = angleByTape(reader, ring, i, targets[t], corner.drawn);
        corner.byTape = true;
      }
      if (!angle) continue;
      corner.built = *angle;
      corner.over = std::sin(corner.built - corner.drawn) * settingOut.walls[i].length;
      corner.hip = hipAt(job, settingOut, corner);
      corner.words = wordsOf(settingOut, corner);
      all.push_back(std::move(corner));
      break;
    }
  }
  return all;
}

}  // namespace model
