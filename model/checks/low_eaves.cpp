// The edge of the roof against openings under it and against the ground.
#include <algorithm>
#include <cmath>

#include "model/checks/parts.h"
#include "model/job/value_words.h"
#include "model/walls/leaf_plan.h"

namespace model {
namespace {

constexpr double kTolerance = 1e-3;
// A fascia that hangs a little under the heads is usual on a low wall; more is in the way of
// whoever walks out, and of what opens out: two courses at doors, three at windows (common
// practice, no source).
constexpr double kUnderDoorHead = 0.150, kUnderWindowHead = 0.225;
// Nearer to the ground than this the edge rots and nobody can fix a gutter: common practice, no
// source.
constexpr double kOverGround = 0.150;

// Where the rafters' feet and the fascia end, all along the eaves of a hip wall.
double edgeUnderside(const Checking& check) {
  return check.settingOut.levels.eavesUnderside - check.job.roof.eaves * check.settingOut.tanPitch;
}

}  // namespace

void checkEavesOverOpenings(const Checking& check) {
  const SettingOut& out = check.settingOut;
  const double under = edgeUnderside(check);
  std::vector<std::string> found;
  size_t first = 0;
  for (size_t i = 0; i < out.openings.size(); ++i) {
    const BuiltOpening& opening = out.openings[i];
    if (out.walls[opening.wall].eaves == EavesKind::Gable) continue;
    const bool window = opening.kind == OpeningKind::Window;
    const double usual = window ? kUnderWindowHead : kUnderDoorHead;
    if (opening.head - under <= usual + kTolerance) continue;
    if (found.empty()) first = opening.jobIndex;
    found.push_back(openingLabel(out, i) + " (head " + levelWords(opening.head) + ")");
  }
  if (found.empty()) return;
  check.warning("opening[" + std::to_string(first) + "].head",
                "the edge of the roof hangs down in front of " + listed(found) +
                    ": the underside of the rafters' feet and fascia is at " + levelWords(under),
                "ask the designer; a smaller overhang, a flatter roof or a higher wall plate "
                "brings it up");
}

void checkEavesOverGround(const Checking& check) {
  const SettingOut& out = check.settingOut;
  const double under = edgeUnderside(check);
  std::vector<std::string> walls;
  double highest = -1e300;
  for (const WallLine& wall : out.walls) {
    if (wall.eaves == EavesKind::Gable || out.eavesOutline.size() != out.walls.size()) continue;
    const double ground =
        levelsAlong(out.terrain, out.eavesOutline[wall.from], out.eavesOutline[wall.to]).high;
    if (under - ground >= kOverGround - kTolerance) continue;
    walls.push_back(wall.name);
    highest = std::max(highest, ground);
  }
  if (walls.empty()) return;
  check.error("roof.eaves",
              "the edge of the roof comes down to " + levelWords(under) + " along " +
                  listed(walls) + ", where the ground is " + levelWords(highest) +
                  (under < highest ? "; it would be in the ground" : ""),
              "keep it 150 mm or more over the ground: a smaller roof.eaves or roof.pitch, or "
              "higher walls");
}

}  // namespace model
