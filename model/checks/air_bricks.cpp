// What air bricks lead to, and whether they stay clear of the ground.
#include <cmath>

#include "model/checks/parts.h"
#include "model/job/value_words.h"
#include "model/walls/leaf_plan.h"

namespace model {
namespace {

constexpr double kOverGround = 0.075;  // common practice, no source
constexpr double kHair = 1e-6;

class AirBrickCheck {
 public:
  AirBrickCheck(const Checking& check, const VentPlan& vent, const WallLine& line)
      : check_(check),
        out_(check.settingOut),
        vent_(vent),
        line_(line),
        path_("air_brick[" + std::to_string(vent.airBrick) + "].level"),
        who_("air brick " + std::to_string(vent.airBrick + 1)) {}

  void run() const {
    const double floor = out_.levels.finishedFloor.front();
    if (vent_.rect.z0 < floor - kHair) leadsUnderTheFloor();
    staysOverGround();
  }

 private:
  void leadsUnderTheFloor() const {
    const std::string at =
        who_ + ", from " + levelWords(vent_.rect.z0) + " to " + levelWords(vent_.rect.z1);
    if (check_.job.groundFloor.kind == GroundFloorKind::Slab) {
      check_.warning(
          path_, at + ", lies beside a solid ground floor and airs nothing",
          "leave it out, or give ground_floor.kind = \"suspended\"; the drawing decides");
      return;
    }
    // Its sleeve is straight.
    const double beams = out_.levels.slabUnderside, middle = (vent_.rect.z0 + vent_.rect.z1) / 2;
    if (middle < beams + kHair) return;
    check_.warning(path_,
                   at + ", lies over the underside of the floor's beams at " + levelWords(beams) +
                       ", and the void is under that",
                   "a ventilator that is stepped down in the cavity reaches it, and is not drawn; "
                   "or lower it; the drawing decides");
  }

  void staysOverGround() const {
    const double ground =
        levelsAlong(out_.terrain, line_.at(vent_.rect.s0), line_.at(vent_.rect.s1)).high;
    const double above =
        std::round((vent_.rect.z0 + check_.job.walls.joint - ground) * 1000) / 1000;
    if (above > kOverGround - kHair) return;
    check_.warning(path_,
                   who_ + " is " +
                       (above > 0 ? "only " + lengthWords(above) + " above the ground outside, "
                                  : "in the ground outside, which is at ") +
                       levelWords(ground),
                   "75 mm above it is the usual least, so that it stays open; raise it, or lower "
                   "the ground");
  }

  const Checking& check_;
  const SettingOut& out_;
  const VentPlan& vent_;
  const WallLine& line_;
  const std::string path_, who_;
};

}  // namespace

void checkAirBricks(const Checking& check) {
  if (check.job.airBricks.empty()) return;
  for (size_t wall = 0; wall < check.settingOut.walls.size(); ++wall) {
    const LeafPlan leaf = leafPlan(check.job, check.settingOut, wall, LeafSide::Outer);
    for (const VentPlan& vent : leaf.vents)
      AirBrickCheck(check, vent, check.settingOut.walls[wall]).run();
  }
}

}  // namespace model
