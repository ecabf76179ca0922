// Letters of the corners in circles, beside the corners at the ground.
#include <algorithm>
#include <array>

#include <glm/geometric.hpp>

#include "viewer/overlays/overlay_sheet.h"
#include "viewer/overlays/words.h"

namespace viewer {
namespace {

constexpr float kRadius = 13;                                // units
constexpr std::array<double, 3> kBeside = {0.9, 1.65, 2.4};  // metres from the corner

// A corner that could be lettered, before anything is known of the others.
struct Candidate {
  size_t corner = 0;
  model::Vec2 away{0, 0};  // on plan, out of the building
  bool behind = false;
  float depth = 0;  // from the eye
};

// Whether the building, or what stands round it, hides the corner itself. Looked for just inside
// the walls: past their face one sees along them to corners on the far side. Twice, because a
// single pole of the scaffold is no hiding.
bool behindSomething(const OverlaySheet& sheet, const model::Corner& corner,
                     const model::Vec2& away) {
  constexpr double kInside = 0.05, kOverGround = 0.3, kAgain = 0.27;
  const model::SettingOut& out = sheet.model.settingOut;
  const model::Vec2 at = corner.at - away * kInside;
  const double ground = std::max(out.terrain.levelAt(corner.at), out.levels.groundHigh);
  for (const double up : {kOverGround, kOverGround + kAgain})
    if (!sheet.hidden(sheet.scene.local({at, ground + up}))) return false;
  return true;
}

std::vector<Candidate> candidates(const OverlaySheet& sheet) {
  const model::SettingOut& out = sheet.model.settingOut;
  std::vector<Candidate> all;
  for (size_t i = 0; i < out.corners.size(); ++i) {
    const model::Corner& corner = out.corners[i];
    const model::WallLine& next = out.walls[i];
    const model::WallLine& last = out.walls[(i + out.walls.size() - 1) % out.walls.size()];
    Candidate c;
    c.corner = i;
    c.away = glm::normalize(next.outward + last.outward + 1e-9 * next.along);
    const glm::vec3 foot = sheet.scene.local({corner.at, out.terrain.levelAt(corner.at)});
    const auto seen = sheet.frame.camera.project(foot, sheet.aspect());
    if (!seen) continue;
    c.depth = seen->z;
    c.behind = behindSomething(sheet, corner, c.away);
    all.push_back(c);
  }
  // What is seen takes its place first, the nearest before what it covers.
  constexpr float kSame = 0.01f;
  std::stable_sort(all.begin(), all.end(), [](const Candidate& a, const Candidate& b) {
    if (a.behind != b.behind) return b.behind;
    return a.depth < b.depth - kSame;
  });
  return all;
}

}  // namespace

std::vector<CornerRing> placeCornerLetters(OverlaySheet& sheet) {
  const model::SettingOut& out = sheet.model.settingOut;
  const float u = sheet.pen.unit(), radius = kRadius * u;
  const bool plan = isPlan(sheet.frame.camera), elevation = isElevation(sheet.frame.camera);
  std::vector<CornerRing> rings;
  for (const Candidate& c : candidates(sheet)) {
    const model::Corner& corner = out.corners[c.corner];
    const auto tip = sheet.onSheet(sheet.scene.local({corner.at, out.terrain.levelAt(corner.at)}));
    if (!tip) continue;
    for (const double beside : kBeside) {
      // On elevations further out would be another place of the building.
      if (beside > kBeside[0] && (elevation || (c.behind && !plan))) break;
      const model::Vec2 stand = corner.at + c.away * beside;
      const glm::vec3 foot = sheet.scene.local({stand, out.terrain.levelAt(corner.at)});
      if (sheet.cutAway(foot)) continue;
      const auto at = sheet.onSheet(foot);
      if (!at || !sheet.layout.sheet.grown(-radius).contains(*at)) continue;
      const Box box = Box::at(*at - radius, glm::vec2(2 * radius));
      if (std::any_of(sheet.taken.begin(), sheet.taken.end(),
                      [&](const Box& taken) { return taken.overlaps(box); }))
        continue;
      sheet.taken.push_back(box);
      rings.push_back({corner.letter, *at, *tip, radius, c.behind, beside > kBeside[0]});
      break;
    }
  }
  return rings;
}

void drawCornerLetters(const OverlaySheet& sheet, const std::vector<CornerRing>& rings) {
  const Pen& pen = sheet.pen;
  for (const CornerRing& ring : rings) {
    // Behind something the ring is faint; the letter stays readable.
    const float strong = ring.behind ? 0.35f : 1.0f;
    if (ring.aside) {
      const glm::vec2 towards = glm::normalize(ring.corner - ring.at);
      pen.line(ring.at + towards * ring.radius, ring.corner, ink::kInk, 1, 0.7f * strong);
    }
    pen.list()->AddCircleFilled(im(ring.at), ring.radius,
                                colour(ink::kCard, ring.behind ? 0.75f : 0.92f));
    pen.list()->AddCircle(im(ring.at), ring.radius, colour(ink::kInk, strong), 0,
                          1.5f * pen.unit());
    const Cut cut = ring.behind ? Cut::Text : Cut::Bold;
    const Pen fit = pen.fitted(ring.letter, 1.6f * ring.radius, cut);
    const glm::vec2 size = fit.size(ring.letter, cut);
    fit.text(ring.at - size * 0.5f, ring.behind ? ink::kSoft : ink::kInk, ring.letter, cut);
  }
}

}  // namespace viewer
