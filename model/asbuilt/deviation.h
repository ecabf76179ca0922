// One reading held against the drawing.
#pragma once

#include <array>
#include <optional>
#include <string>
#include <utility>

#include "model/asbuilt/allowed.h"
#include "model/job/job.h"
#include "model/settingout/setting_out.h"

namespace model {

// Whole millimetres are judged, as they are read on a staff or a tape. AtTheEdge: four fifths of
// what is allowed, or more.
enum class Verdict { Within, AtTheEdge, Out };

// Where on the building a reading was taken.
struct ReadAt {
  std::string words;  // "corner C", "wall A-B at 3000", "kitchen window", "pin 3"
  Vec2 at{0, 0};      // as drawn
  double level = 0;   // where it is shown: the level read; of lines, what they stand on
  std::optional<size_t> corner, opening;
  std::optional<size_t> wall;                        // with s along it
  double s = 0;                                      // metres from the wall's start
  std::optional<std::pair<size_t, size_t>> between;  // two corners
};

// A corner's shift told by a wall that meets in it, metres.
struct CornerShift {
  size_t wall = 0;
  double along = 0;    // in the wall's direction
  double outward = 0;  // square to it
};

struct Deviation {
  size_t set = 0, row = 0;                // into Job::readings
  ReadingKind kind = ReadingKind::Level;  // a staff reading is held as the level it gives
  std::string target;                     // a storey's is always named: "finished-floor:0"
  std::string what;                       // "top of concrete, corner C"
  ReadAt place;
  double design = 0, read = 0;  // metres: levels, offsets of faces, distances
  // read - design: above, outside, longer is positive. Of a corner how far it is off, never
  // negative.
  double off = 0;
  std::array<CornerShift, 2> shifts{};  // of a corner: by the wall before it and the wall after
  Allowed allowed;
  Verdict verdict = Verdict::Within;
  bool latest = true;     // no later set has this point
  std::string offWords;   // "12 low"; of a corner over which walls too
  std::string limitText;  // "15": what is allowed that way, millimetres; "none"
  std::string words;      // "12 low, 15 allowed: within"
};

Verdict judge(double off, const Allowed& allowed);
const char* nameOf(Verdict verdict);  // "within", "at the edge", "out"

// "●" within, "◆" at the edge, "▲" out and high, outside or long, "▼" out the other way.
const char* shapeOf(const Deviation& deviation);
// Reads without colour: "● within", "◆ at the edge", "▲ out" (high, outside, long), "▼ out".
std::string markOf(const Deviation& deviation);

// "12 low", "3 high", "9 out", "4 in", "14 long", "2 short", "5 off", "on".
std::string offText(ReadingKind kind, double off);

}  // namespace model
