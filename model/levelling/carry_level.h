// How a level is carried from the instrument to one that it cannot read: over change points, or
// down or up a steel tape.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "model/levelling/instrument.h"
#include "model/vec.h"

namespace model {

struct CarryStep {
  Vec2 changePoint{0, 0};      // on open ground
  double changeLevel = 0;      // its level
  double foresight = 0;        // on it, from the set-up before
  std::optional<double> tape;  // from it to a new mark, measured plumb; negative is downwards
  double mark = 0;  // level of the backsight's mark: the change point itself or the new one
  // The next set-up; none when the tape ends at the level that was wanted.
  struct Standing {
    Vec2 at{0, 0};
    double collimation = 0;  // expected, the tripod standing as it needs to
    double backsight = 0;    // on the mark, then
  };
  std::optional<Standing> next;
  bool onFloor = false;  // the change point, not on the ground: for its words, by whoever knows
};

struct CarryPlan {
  std::vector<CarryStep> steps;   // none when the level can be read as the instrument stands
  std::optional<double> reading;  // on the staff at the target in the end; none when it is taped
  bool reached = false;           // false: not with this staff; set up nearer first
  size_t setUps() const;          // with the one that stands already
};

// From the instrument, which stands at `stand`, to `level` at `target`. `ground` is the level of
// the open ground, dug as it is at the time. Change points and standings are looked for along the
// straight way to the target; sights are at least 1.5 m long and end 0.1 m inside the staff
// (common practice, no source). As few set-ups as that way allows.
CarryPlan carryLevel(const Instrument& instrument, Vec2 stand, Vec2 target, double level,
                     const std::function<double(Vec2)>& ground, const Tripod& tripod = {});

// What to do, a line for each move and one for the last reading.
std::vector<std::string> carryTexts(const CarryPlan& plan, double level);

}  // namespace model
