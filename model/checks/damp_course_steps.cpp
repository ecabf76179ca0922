// The ground outside against a damp course that is stepped up.
#include "model/walls/damp_course_steps.h"
#include <cmath>

#include "model/checks/parts.h"
#include "model/job/value_words.h"

namespace model {

// Source of the 150 mm: check M15, NHBC Good Craftsmanship Guide, Brickwork; Approved Document C.
void checkGroundUnderSteps(const Checking& check) {
  constexpr double kOverGround = 0.150, kTolerance = 1e-6;
  const SettingOut& out = check.settingOut;
  for (size_t wall = 0; wall < out.walls.size(); ++wall) {
    const WallLine& line = out.walls[wall];
    for (const DampStepPlan& step : dampStepsIn(check.job, out, wall)) {
      const double ground = levelsAlong(out.terrain, line.at(step.from), line.at(step.to)).high;
      const double above = std::round((step.level - ground) * 1000) / 1000;
      if (above > kOverGround - kTolerance) continue;
      check.warning(
          "damp_course_step[" + std::to_string(step.step) + "].courses",
          "step " + std::to_string(step.step + 1) + " of the damp course lies at " +
              levelWords(step.level) + ", " +
              (above > 0 ? "only " + lengthWords(above) + " above" : "under") +
              " the ground along it, which goes up to " + levelWords(ground),
          "150 mm above outside ground is the usual least (NHBC Good Craftsmanship Guide, "
          "Brickwork); more courses, or lower the ground outside");
    }
  }
}

}  // namespace model
