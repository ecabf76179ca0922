// Likely numbers: what lies far off is another unit or another point.
#include <cmath>

#include <glm/geometric.hpp>

#include "model/job/lengths.h"
#include "model/job/reading_checks.h"
#include "model/job/value_words.h"

namespace model {

namespace {

constexpr double kFarFromFloor = 30;  // metres, as of the levels in the job file
constexpr double kOutOfLine = 500;    // mm: no face is built so far off its line
constexpr double kOffDrawing = 1500;  // mm: more than any face lies inside another
constexpr double kFarthest = 1e6;     // mm

std::string millimetres(double mm) { return lengthWords(mm / 1000); }

// As somebody would write it in millimetres.
std::string inMillimetres(double metres) { return numberValueText(std::round(metres * 1000)); }

}  // namespace

bool ReadingChecks::value(const ReadingRow& row, const Reading& reading) {
  switch (reading.kind) {
    case ReadingKind::Level:
      return level(row, reading);
    case ReadingKind::Staff:
      return staff(row, reading);
    case ReadingKind::Corner:
      return corner(row, reading);
    case ReadingKind::Face:
    case ReadingKind::Side:
    case ReadingKind::Diagonal:
      break;
  }
  return tape(row, reading);
}

bool ReadingChecks::level(const ReadingRow& row, const Reading& reading) {
  const double floor = job_.storeys.empty() ? 0 : job_.storeys.front().floor;
  const double value = reading.value, off = std::abs(value - floor);
  if (off <= kFarFromFloor) return true;
  const bool mm = std::abs(value / 1000 - floor) <= kFarFromFloor;
  const bool ordnance =
      job_.ordnanceDatum && std::abs(value - *job_.ordnanceDatum - floor) <= kFarFromFloor / 2;
  return fail(row, ReadingColumn::Value,
              "this level is " + levelWords(value) + ", far from the ground floor",
              ordnance ? "levels are above the job's 0.000, not ordnance datum; write " +
                             levelValueText(std::round((value - *job_.ordnanceDatum) * 1000) / 1000)
              : mm ? "levels are in metres; for " + numberValueText(value) + " mm write " +
                         levelValueText(value / 1000)
                   : "give it from the job's 0.000");
}

bool ReadingChecks::staff(const ReadingRow& row, const Reading& reading) {
  double length = 0;
  for (const SetUp& setUp : job_.setUps) {
    if (setUp.name == reading.setUp) length = setUp.staff;
  }
  const double value = reading.value;
  if (std::abs(value) <= length + 1e-9) return true;
  const bool mm = std::abs(value) >= 100 && std::abs(value / 1000) <= length;
  return fail(row, ReadingColumn::Value,
              "this staff reading is " + metresWords(value) + ", and the staff " +
                  metresWords(length) + " long",
              mm ? "the staff is read in metres; for " + numberValueText(value) + " mm write " +
                       levelValueText(value / 1000)
                 : "check the reading, or give the set-up's staff");
}

bool ReadingChecks::tape(const ReadingRow& row, const Reading& reading) {
  const double value = reading.value, size = std::abs(value);
  const auto inMetres = [&](const std::string& who) {
    return fail(row, ReadingColumn::Value, who + " is " + millimetres(value),
                "it is in mm; for " + numberValueText(value) + " m write " + inMillimetres(value));
  };
  if (reading.kind == ReadingKind::Face) {
    if (value != 0 && size < 0.2) return inMetres("this face");
    if (size <= kOutOfLine) return true;
    return fail(row, ReadingColumn::Value,
                "this face is " + millimetres(size) + " " + (value > 0 ? "outside" : "inside") +
                    " its line",
                "give what it is off its own line, in mm; outside counts up");
  }
  const std::string who = std::string("this ") + wordOf(reading.kind);
  const double drawn = points_.distance(*points_.twoCorners(reading.at)) * 1000;
  if (value <= 0 || value > kFarthest) {
    return fail(row, ReadingColumn::Value, who + " is " + millimetres(value),
                "a distance between two corners is needed, in mm");
  }
  if (std::abs(value * 1000 - drawn) <= kOffDrawing) return inMetres(who);
  if (std::abs(value - drawn) > kOffDrawing) {
    warn(row, ReadingColumn::Value,
         who + " is " + millimetres(value) + ", and " + millimetres(std::round(drawn)) +
             " on the drawing",
         "check the figure and the corners");
  }
  return true;
}

bool ReadingChecks::corner(const ReadingRow& row, const Reading& reading) {
  if (!reading.position) {
    return fail(row, ReadingColumn::X, "this corner has no position", "give x and y, in mm");
  }
  const Vec2 drawn = points_.cornerAt(*points_.corner(reading.at)) * 1000.0;
  const Vec2& at = *reading.position;
  const double off = glm::distance(at, drawn);
  if (off <= kOffDrawing) return true;
  if (glm::distance(at * 1000.0, drawn) <= kOffDrawing) {
    return fail(row, ReadingColumn::X, "corner " + reading.at + " is given in metres",
                "it is in mm; write " + inMillimetres(at.x) + " and " + inMillimetres(at.y));
  }
  if (off > kFarthest) {
    return fail(row, ReadingColumn::X, "this position is far off the site",
                "give it in the drawing's own coordinates, in mm");
  }
  warn(row, ReadingColumn::X,
       "this is " + millimetres(std::round(off)) + " from corner " + reading.at + " on the drawing",
       "check the figures; they are the drawing's own coordinates, not the site's grid");
  return true;
}

}  // namespace model
