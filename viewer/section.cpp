#include "viewer/section.h"

#include <algorithm>
#include <cmath>

#include "viewer/scene.h"

namespace viewer {
namespace {

using model::Vec2;

constexpr double kStep = 0.05;       // metres between two places tried
constexpr double kClear = 0.15;      // from a face or a jamb
constexpr double kAlongside = 0.30;  // a wall that wanders less than this runs along the cut

double coordinate(const Vec2& p, Across across) { return across == Across::X ? p.x : p.y; }

// Metres of the cut inside a plan.
double chord(const model::Polygon& plan, Across across, double at) {
  const Across other = across == Across::X ? Across::Y : Across::X;
  std::vector<double> crossings;
  for (size_t i = 0; i < plan.size(); ++i) {
    const Vec2 &a = plan[i], &b = plan[(i + 1) % plan.size()];
    const double from = coordinate(a, across), to = coordinate(b, across);
    if ((from < at) == (to < at)) continue;
    const double part = (at - from) / (to - from);
    crossings.push_back(coordinate(a, other) +
                        part * (coordinate(b, other) - coordinate(a, other)));
  }
  std::sort(crossings.begin(), crossings.end());
  double length = 0;
  for (size_t i = 0; i + 1 < crossings.size(); i += 2) length += crossings[i + 1] - crossings[i];
  return length;
}

// Inside the cellar's room, not along one of its walls.
bool meetsCellar(const model::Model& model, Across across, double at) {
  if (!model.job.cellar) return false;
  const double clear = model.job.cellar->wall + kClear;
  const model::Polygon& cellar = model.settingOut.cellarOutline;
  return chord(cellar, across, at) > 0 && chord(cellar, across, at - clear) > 0 &&
         chord(cellar, across, at + clear) > 0;
}

int openingsMet(const model::SettingOut& out, Across across, double at) {
  int met = 0;
  for (const model::BuiltOpening& opening : out.openings) {
    const model::WallLine& wall = out.walls[opening.wall];
    const double a = coordinate(wall.at(opening.s0), across);
    const double b = coordinate(wall.at(opening.s1), across);
    met += at > std::min(a, b) + kClear && at < std::max(a, b) - kClear;
  }
  return met;
}

// True where the cut would split a wall along its length.
bool splitsAWall(const model::Model& model, Across across, double at) {
  const model::FaceDistances& faces = model.settingOut.faceDistances;
  const double thick = faces.innerFace + kClear, before = kClear - faces.finishedFace;
  for (const model::WallLine& wall : model.settingOut.walls) {
    const double a = coordinate(wall.start, across), b = coordinate(wall.end, across);
    if (std::abs(a - b) > kAlongside) continue;
    const double inward = a - coordinate(wall.outward, across) * thick;
    const double outward = a + coordinate(wall.outward, across) * before;
    if (at > std::min(inward, outward) && at < std::max(inward, outward)) return true;
  }
  return false;
}

}  // namespace

double tellingCut(const model::Model& model, Across across) {
  double low = 1e30, high = -1e30, longest = 0;
  const model::Polygon& plan = model.settingOut.outline;
  for (const Vec2& p : plan) {
    low = std::min(low, coordinate(p, across));
    high = std::max(high, coordinate(p, across));
  }
  if (low >= high) return low > high ? 0 : low;
  for (double at = low; at < high; at += kStep)
    longest = std::max(longest, chord(plan, across, at));
  const double middle = (low + high) / 2;
  double best = middle, most = -1e30;
  for (double at = low + kStep / 2; at < high; at += kStep) {
    // A cellar outweighs everything; half the building's width outweighs an opening or two.
    const double worth =
        (meetsCellar(model, across, at) ? 100 : 0) - (splitsAWall(model, across, at) ? 50 : 0) +
        2 * openingsMet(model.settingOut, across, at) + 6 * chord(plan, across, at) / longest -
        2 * std::abs(at - middle) / (high - low);
    if (worth <= most + 1e-9) continue;
    most = worth;
    best = at;
  }
  return best;
}

Section sectionAt(const Scene& scene, Across across, double at, int remove) {
  const glm::vec3 point = scene.local(model::Vec3(at, at, 0));
  const float sign = static_cast<float>(remove);
  Section section;
  section.on = true;
  section.plane = across == Across::X ? glm::vec4(sign, 0, 0, -sign * point.x)
                                      : glm::vec4(0, sign, 0, -sign * point.y);
  return section;
}

Section levelSection(double level) {
  return {true, glm::vec4(0, 0, 1, -static_cast<float>(level))};
}

Section standardSection(const model::Model& model, const Scene& scene) {
  return sectionAt(scene, Across::Y, tellingCut(model, Across::Y), -1);
}

}  // namespace viewer
