// What the job says of the work on site itself: how it is set out, the limits it must keep to,
// where the instrument stood, and what was read. Part of Job; units as there.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/problems.h"
#include "model/vec.h"

namespace model {

// How lines are set out.
struct SettingOutInput {
  // Of profile boards from the edge of the dig and its working space. Canadian Wood-Frame House
  // Construction (CMHC): at least 1.2 m.
  double boardClear = 1.200;
  // Of level pins along foundations, and of both ways of their grid over slabs; common practice, no
  // source.
  double pinSpacing = 1.800;
  double tape = 30;  // its length: no distance to set out is longer
};

// The drawing in the coordinates of a survey. A point (x, y) of the drawing, turned clockwise by
// `turn` about (0, 0), is moved to (east, north).
struct SiteGrid {
  double east = 0, north = 0;  // of the drawing's (0, 0)
  double turn = 0;             // degrees clockwise from grid north to the drawing's +y
};

// Set by a permission or an agreement.
enum class LimitKind { Boundary, Building, Ridge, Eaves };

struct Limit {
  LimitKind kind = LimitKind::Boundary;
  std::string wall;             // Boundary and Building: whose distance; empty: of every wall
  std::optional<double> least;  // Boundary, Building: distance on plan from the finished face
  std::optional<double> most;   // Ridge, Eaves: level of the covering
  std::string note;             // where it comes from: "permission, condition 4"
};

// What a set-up calls the cellar's floor.
inline constexpr const char* kCellarFloor = "cellar";

// One standing of the levelling instrument or laser. Its height of collimation is the mark's level
// plus the backsight.
struct SetUp {
  std::string name = "1";
  std::string date;  // "2026-04-21"; may be empty
  Vec2 at{0, 0};
  std::string mark;      // bench mark's name; empty: the job's first
  double backsight = 0;  // staff reading on it, metres
  double staff = 5;      // length of the staff
  std::string floor;     // that it stands on: a storey's name, or kCellarFloor; empty: the ground
};

// ---- readings ---------------------------------------------------------------

enum class ReadingKind {
  Level,     // of a point, metres above the datum
  Staff,     // on a point, from a named set-up
  Face,      // of a wall off its line, metres; positive is outside it
  Corner,    // position of a corner of a face
  Side,      // tape distance between two neighbouring corners
  Diagonal,  // tape distance between any two corners
};

struct Reading {
  ReadingKind kind = ReadingKind::Level;
  std::string target;  // of readingTargets(): "top-of-concrete", "outer-face"
  // Corner "C", wall "A-B", two corners "A-C", an opening, "pin 3"; any name with a position.
  std::string at;
  std::optional<double> along;  // a wall's: metres from its first-named corner
  double value = 0;             // metres; unused for Corner
  // A corner's; of a level, where it was read when that is no corner, wall or opening.
  std::optional<Vec2> position;
  std::string setUp;        // Staff only
  std::string note, photo;  // photo: the picture's file name
  Place place;              // in the set's file
};

// Read on one day by one hand. The rows stand in a file of their own beside the job's.
struct ReadingSet {
  std::string name;
  std::string date;  // "2026-04-21"
  std::string by;
  std::string file;           // CSV; relative to the job file
  std::vector<Reading> rows;  // read from it; not of the job file's own text
};

// Allowed deviation of one kind of target, in place of the published one.
struct Tolerance {
  std::string of;        // a name of readingTargets()
  double over = 0.010;   // above the level, outside the line
  double under = 0.010;  // below, inside
  std::string note;      // where it comes from
};

// Asked of the designer with the readings.
struct Question {
  std::string about;
  std::string text;
};

}  // namespace model
