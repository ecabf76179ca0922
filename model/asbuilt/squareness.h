// Corners as built: open or closed against the drawing, and what that does to the hips on them.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <vector>

#include "model/asbuilt/deviation.h"

namespace model {

// A hip on a corner of another angle runs on its new bisector. Run is the common rafters' at its
// top, from the plate; plan length = run / sin(angle / 2), sloping length by Pythagoras with the
// rise as drawn.
struct HipChange {
  double drawn = 0, built = 0;  // sloping lengths from the plate's corner, metres
  std::string id;               // of its board in the works
};

struct CornerAsBuilt {
  size_t corner = 0;
  bool byTape = false;          // from a diagonal and two sides; else from three positions
  double drawn = 0, built = 0;  // interior angle, radians
  // What the next corner is off square to the line of the wall before, over the wall after;
  // positive when the corner is open (wider than drawn).
  double over = 0;
  std::optional<HipChange> hip;
  std::string words;  // "corner B is open: C-D swings 13 out over its 6065"; "" when it is not
};

// Wherever the latest readings of one line give three corners' positions, or the diagonal across a
// corner; sides that were not read are taken as drawn. Positions count before tapes.
std::vector<CornerAsBuilt> deriveCorners(const Job& job, const SettingOut& settingOut,
                                         const std::vector<Deviation>& deviations);

// The sloping length of a hip.
double hipLength(double run, double rise, double angle);

}  // namespace model
