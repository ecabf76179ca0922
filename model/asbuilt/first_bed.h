// What the top of concrete as built does to the brickwork on it: the first bed joint, and the
// courses from there up to the damp course, whose level stays.
//
// The height from concrete to damp course is what n bricks and n bed joints come to:
//   height = bed + n * brick + (n - 1) * joint.
// Concrete that is low makes the first bed thicker by as much. Where one bed cannot take it up, a
// slip, a cut course or another course does, or all joints below ground share it: never those above
// it, which are seen.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/asbuilt/deviation.h"

namespace model {

// Limits of a bed and answers to concrete off its level: common practice, no source.
struct BedLimits {
  double thin = 0.005, normalLeast = 0.007;  // thinner than `thin` is no bed
  double normalMost = 0.015, thick = 0.025;  // thicker squeezes out
  double course = 0.040;                     // further off: another course, or break out
  // Of joints that share it below ground: common practice, no source; inside the 5 mm that one
  // joint may be off the mean of eight (warranty technical manual V7, chapter 1).
  double jointLeast = 0.008, jointMost = 0.012;
};

enum class BedAnswer {
  Normal,
  Thin,
  Thick,        // stiff mix, left to firm
  Slip,         // a thin unit between two beds: slate, tile, a brick cut lengthwise
  CutCourse,    // the first course cut lower
  ExtraCourse,  // one more course, cut where it must be
  BreakOut,     // or raise every level above, with the designer
};

// All joints from the concrete to the ground made alike; those above stay as drawn.
struct Regauge {
  int courses = 0;   // below ground, among which it is shared
  double joint = 0;  // each
  bool within = false;
};

struct FirstBed {
  size_t deviation = 0;  // into AsBuilt::deviations
  double height = 0;     // concrete as built to damp course
  int courses = 0;       // whole ones, as drawn
  double drawn = 0;      // bed as drawn
  double bed = 0;        // for the courses as drawn; may be negative
  BedAnswer answer = BedAnswer::Normal;
  bool asDrawn = false;  // within 5 mm, and the height drawn asks for the same answer
  double unit = 0;       // height of the slip or cut course between two joints; 0 where none
  int wholeCourses = 0;  // that stand beside it
  double bedThen = 0;    // first bed of the answer
  Regauge regauge;       // with the courses as drawn
  std::optional<Regauge> other;  // with a course more or less, where that is within and it is not
  std::string words;             // "corner C is 12 low: first bed 22, thick: ..."
};

// One for each latest reading of top of concrete, and of the top of cellar walls that walls stand
// on.
std::vector<FirstBed> deriveFirstBeds(const Job& job, const SettingOut& settingOut,
                                      const std::vector<Deviation>& deviations);

}  // namespace model
