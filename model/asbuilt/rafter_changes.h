// What the wall plates as measured do to every rafter.
//
// Geometry. A wall's plate is measured d outside its line and h above its level, both changing
// along the wall; a rafter at s has the values there. R is its run on plan from the plate's line
// (or the valley it starts on) to the ridge, hip or valley that it is cut to, H = R tan(pitch) its
// rise, L = R / cos(pitch) its length. Two answers, since ridge, pitch and plate cannot all stay:
//
// Ridge held: its upper end stays where it is drawn, and the pitch gives way.
//   longer by hypot(R + d, H - h) - L.
// Pitch held: every slope keeps its pitch through its own plate; ridges, hips and valleys move. A
//   plate h higher is one further out by h / tan(pitch), so that a slope's shift is
//   e = d + h / tan(pitch). With c the cosine of the angle between the directions up the two slopes
//   (-1 at a ridge, 0 at a hip over a square corner), the line between slopes 1 and 2 moves along
//   the rafter, towards its upper end, by (e2 - e1) / (1 - c). The upper end moves so, the lower
//   end by -d on a plate and like the upper on a valley; the difference of the two is the run's,
//   and longer by that / cos(pitch).
//   So plates all lower by one amount: 0. One of two facing plates out by d: d / (2 cos(pitch)) on
//   both sides, and the ridge d / 2 tan(pitch) higher; both out by d: d / cos(pitch).
//
// Lengths are along the slope from the plate to the theoretical line at the top; half a ridge board
// comes off as ever, and the tail is cut to the fascia's line. Nothing here judges what a timber
// carries.
#pragma once

#include <string>
#include <vector>

#include "model/asbuilt/deviation.h"
#include "model/asbuilt/words.h"

namespace model {

// Of one wall, as measured.
struct PlateLine {
  size_t wall = 0;
  WallProfile up;   // top of plate, else its bed
  WallProfile out;  // front of the inner leaf, on which its edge lies, else the inner face
  bool read() const { return !up.empty() || !out.empty(); }
};

struct RafterChange {
  std::string id;  // as in Works: "rafters/A-B/7"
  size_t wall = 0;
  double s = 0;                          // along the wall from its start
  double run = 0, rise = 0, length = 0;  // as drawn, metres
  bool onPlate = true;                   // false: it starts on a valley
  bool beyond = false;                   // of the readings: taken from the nearest
  double out = 0, up = 0;                // of its plate there
  double ridgeHeld = 0;                  // longer (+) or shorter by this
  double pitchThen = 0;                  // degrees, with the ridge held
  double pitchHeld = 0;                  // longer or shorter
  double topUp = 0;                      // rise of its upper end, pitch held
  bool atRidge = false;
};

// Of a wall some of whose rafters change by 3 mm or more; of a ridge that does.
struct PlateWords {
  size_t wall = 0;
  std::string words;
};

struct RafterChanges {
  std::vector<PlateLine> plates;      // that were read, by wall
  std::vector<RafterChange> rafters;  // all but tails that end before the plate
  std::vector<PlateWords> words;
};

// "3 longer", "2 shorter", "as drawn".
std::string longerText(double change);
// Of a rafter's plate there: "on", "3 out, 2 low"; "starts on a valley".
std::string plateText(const RafterChange& rafter);

RafterChanges deriveRafterChanges(const Job& job, const SettingOut& settingOut,
                                  const std::vector<Deviation>& deviations);

}  // namespace model
