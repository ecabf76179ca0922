// All that the drawing implies and nobody should type twice: corners, wall lines, every level.
//
// SettingOut is the single source of every height and offset. Geometry, overlays, tables and
// sheets all read it; none of them works a level out again.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/geometry/skeleton.h"
#include "model/geometry/solid.h"
#include "model/job/job.h"
#include "model/job/stair_flight.h"
#include "model/settingout/terrain.h"
#include "model/settingout/wall_faces.h"

namespace model {

// Corners run anticlockwise here whatever the file's order, and keep the file's letters. The first
// corner is A.
struct Corner {
  std::string letter;  // "A" ... "Z", "AA" ...
  Vec2 at{0, 0};       // outer face of the finished masonry
  double angle = 0;    // interior, radians; over pi at a re-entrant corner
};

// A wall runs from corner `from` to corner `to` = the next one anticlockwise. Its own coordinates
// are s, metres along the outer face from `start`, and z.
struct WallLine {
  std::string name;  // "A-B" as letters stand in the file's order round the outline
  size_t from = 0, to = 0;
  Vec2 start{0, 0}, end{0, 0};
  Vec2 along{1, 0};     // unit, start to end
  Vec2 outward{0, -1};  // unit
  double length = 0;
  EavesKind eaves = EavesKind::Hip;

  // Outer-face point at s, moved `inward` metres into the wall.
  Vec2 at(double s, double inward = 0) const { return start + along * s - outward * inward; }
};

// An opening with nothing left to default. s runs along its wall from `start`.
struct BuiltOpening {
  size_t jobIndex = 0;  // into Job::openings
  std::string name;
  OpeningKind kind = OpeningKind::Window;
  size_t wall = 0;
  double s0 = 0, s1 = 0;
  double sill = 0, head = 0;  // structural levels
  int storey = 0;
};

// A length of one wall's concrete at one level. Runs of a wall are in order and cover it.
struct FoundationRun {
  size_t wall = 0;
  double from = 0, to = 0;  // s
  double top = 0;           // top of concrete: what the wall stands on from `from` to `to`
  double underside = 0;     // of the concrete
  double formation = 0;     // the dug surface: under the blinding
  bool onCellar = false;    // stands on the cellar wall: no concrete of its own, top = its head
};

// A height to which both leaves are raised from one standing, before a scaffold is lifted.
struct Lift {
  int storey = 0;
  int number = 1;  // within its storey, from 1
  double bottom = 0, top = 0;
};

// Everything scheduled, in metres above the job's datum. Formation, top of concrete, structural
// and finished floor are different things and have different names.
struct Levels {
  double groundLow = 0, groundHigh = 0;  // existing ground along the outline
  double dampCourse = 0;
  std::vector<double> finishedFloor;    // per storey
  std::vector<double> structuralFloor;  // per storey: top of slab, of beams and blocks, of deck
  std::vector<double> joistBearing;     // per storey, underside of joists; [0] unused
  // Per storey, the underside of the ceiling under the joists of the floor over it: one fewer than
  // there are storeys, since the last has the roof over it.
  std::vector<double> ceiling;
  // Per storey, the commonest lintel soffit (the lowest of equals); nothing without openings. A
  // lift ends there when it lies between the storey's first and last course.
  std::vector<std::optional<double>> commonHead;
  double slabUnderside = 0;  // ground floor slab or beams
  double oversite = 0;       // formation under the ground floor's hardcore or void
  double wallTop = 0;        // top of the inner leaf: the plate's bed
  double outerLeafTop = 0;   // at eaves: whole courses, clear under the rafters
  double plateTop = 0;
  double eavesUnderside = 0;  // underside of rafters at the outer face of a hip wall
  double eaves = 0;           // top of the covering at its lower edge
  double ridge = 0;           // top of the covering at the highest point
  // Lower edge of the render: the damp course, or the ground outside where that is higher.
  double renderBottom = 0;
  double foundationTop = 0;  // the general one; runs may differ
  double foundationFormation = 0;
  // Cellar, only when the job has one:
  double cellarFinishedFloor = 0;
  double cellarSlabTop = 0;
  double cellarSlabUnderside = 0;
  double cellarFormation = 0;
  double cellarWallTop = 0;  // = underside of the floor over it
};

// One line of the schedule of levels.
struct ScheduledLevel {
  std::string key;   // stable, e.g. "top-of-concrete", "sill:kitchen window"
  std::string name;  // "top of concrete"
  double level = 0;
  double course = 0;         // courses above (+) or below (-) the damp course
  bool wholeCourse = false;  // course is whole to within 1 mm
  std::string where;         // "", or a wall, corner or opening
};

struct SettingOut {
  std::vector<Corner> corners;   // anticlockwise, A first
  std::vector<WallLine> walls;   // wall i starts at corner i
  Polygon outline;               // corner points
  FaceDistances faceDistances;   // inward from the outer face
  std::vector<WallFaces> faces;  // their lines, by wall
  Terrain terrain;
  Levels levels;
  std::vector<ScheduledLevel> schedule;  // highest first
  std::vector<BuiltOpening> openings;    // in job order
  std::vector<StairFlight> stairs;       // in job order
  std::vector<FoundationRun> foundations;
  std::vector<Lift> lifts;  // from the damp course to the plate, bottom first
  Polygon cellarOutline;    // anticlockwise; empty when there is no cellar
  Skeleton roof;            // over `eavesOutline`
  Polygon eavesOutline;     // outline moved out by eaves and verge overhangs
  double tanPitch = 0;
  double rafterSeat = 0;  // of the birdsmouths on the plates, on plan from their outer edge

  // The outline moved `inward` (negative: outward), point for corner.
  Polygon ring(double inward) const { return offsetMitred(outline, inward); }
  // The underside of the rafters over roof face `face` (index into roof.faces).
  Plane rafterUnderside(size_t face) const;
  // The lowest of those planes over a point inside the eaves outline, by the face that holds it.
  double rafterUndersideAt(const Vec2& p) const;
  // Index of a wall by name, either way round ("A-B" or "B-A"); nothing if there is none.
  std::optional<size_t> wallNamed(const std::string& name) const;
  std::optional<size_t> cornerNamed(const std::string& letter) const;
};

// Letters for corner i: A, B, ... Z, AA, AB ...
std::string cornerLetter(size_t index);

// The job must be free of errors (validateJob). Equal jobs give equal results.
SettingOut deriveSettingOut(const Job& job);

}  // namespace model
