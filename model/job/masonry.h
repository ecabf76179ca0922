// What the drawing says of brickwork and blockwork beyond the sizes of the build-up.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/vec.h"

namespace model {

// How bricks lie over one another. In a half-brick leaf all but the first and `Stack` show the face
// of a thicker wall: their headers are snapped.
enum class BondKind {
  Stretcher,
  Header,
  Stack,
  English,
  Flemish,
  EnglishGardenWall,  // three courses of stretchers to one of headers
  FlemishGardenWall,  // three stretchers to one header in every course
};

enum class BlockBondKind { Half, Third, Stack };

// Bricks and blocks by name; what each is, is in model/job/unit_formats.
enum class BrickFormat {
  Uk,
  UkModular,
  UsModular,
  UsStandard,
  UsEngineer,
  UsClosure,
  UsNorman,
  UsRoman,
  UsUtility,
  Nf,
  Df,
  TwoDf,
  Wf,
  Wdf,
  Danish,
  Swedish,
  Australian,
  IndianModular,
};
enum class BlockFormat {
  Uk100,
  Uk140,
  Uk215,
  Us4,
  Us6,
  Us8,
  TwoDf,
  ThreeDf,
  EightDf,
  TenDf,
  TwelveDf,
};

// Wall ties, insulation boards and the rest that is built in as the leaves rise. Metres.
struct BuiltIn {
  double tieAcross = 0.900, tieUp = 0.450;  // LABC Warranty, "How to use cavity wall ties"
  double tieUpBeside =
      0.300;                 // at jambs, verges and movement joints: Approved Document A, notes to
  double tieWithin = 0.225;  // its table of ties, as is how near to the edge they are
  double boardLength = 1.200, boardHeight = 0.450;  // common practice, no source
  double weepSpacing = 0.900;                       // at most 1 m: common practice, no source
};

// How far a wall is raised and what it takes to load it out.
struct LayingRates {
  double dayRise = 1.500;  // most in a day: LABC Warranty
  int bricksInDay = 400;   // by one layer: common practice, no source
  int blocksInDay = 70;    // the same
  int layers = 2;          // on the job
  int bricksInPack = 400;  // common practice, no source; as are the two below
  int blocksInPack = 72;
  double mixSand = 5;  // parts by volume of sand to one of cement
};

// A straight joint through a leaf from its foot to its top.
struct MovementJoint {
  std::string wall;  // "A-B"
  std::string from;  // the corner that `at` is measured from
  double at = 0;     // along the outer face, to the middle of the joint
  double width = 0.016;
};

// A ventilator through the wall.
struct AirBrick {
  std::string wall, from;
  double at = 0;     // to its middle
  double level = 0;  // of its underside; sits on the course at or under it
};

// Closes the cavity to fire and smoke, where the drawing has it: upright from the foot of the
// cavity to its top, or level along a whole wall.
struct CavityBarrier {
  std::string wall, from;
  std::optional<double> at;     // upright: along the outer face to its middle
  std::optional<double> level;  // level: of its underside
  double width = 0.100;         // as seen on the elevation: across when upright, high when level
};

// A length of wall along which the outer leaf's damp course is a step higher, because the ground
// outside is.
struct DampCourseStep {
  std::string wall, from;
  double at = 0,
         to = 0;    // along the outer face, to where it steps up and to where it is down again
  int courses = 1;  // whole courses over the damp course
};

// Courses of the outer leaf that each stand out past the one below. Over them the wall goes on in
// its own face.
struct Corbel {
  std::string wall;
  double level = 0;     // of the underside of the first; it is the course at or under this
  int courses = 1;      // that stand out
  double step = 0.020;  // how far each of them does, past the one below
};

// How a new wall is joined to a building that stands there already.
enum class JunctionKind {
  StarterTies,  // ties from a strip that is fixed to the old wall, in the bed joints of the new
  Toothed,      // every other course of the new wall goes into a pocket of the old
  BlockBonded,  // three courses do, then three do not
};

struct WallJunction {
  std::string wall, corner;  // which end of which wall meets the building
  std::string building;      // its name
  JunctionKind kind = JunctionKind::StarterTies;
  double pocket = 0.1025;  // how deep bricks go into the old wall
  double tieUp = 0.225;    // starter ties, apart in height: as the maker has it
};

// A solid wall that stands by itself: in the garden, or round an area. Its thickness, height and
// foundation are the drawing's; no default is a design.
struct GardenWall {
  std::string name;
  std::vector<Vec2> line;  // one face; the wall stands on the left of it, walked along from point 1
  double bricks = 1;       // thickness in bricks: 0.5, 1, 1.5 or 2
  BondKind bond = BondKind::English;
  double base = -0.450;              // level that it stands on: top of its concrete
  double top = 1.200;                // of the brickwork, under the coping
  double coping = 0.075;             // its thickness; 0: none
  double pierEvery = 0;              // most between the middles of piers; 0: none but at its ends
  double pierBricks = 0;             // size of the square piers in bricks; 0: none
  std::optional<double> dampCourse;  // level, in a bed joint; none unless given
  int corbelCourses = 0;  // at its top, each standing out past the one below at each side
  double corbelStep = 0.028;
  double foundationWidth = 0.500;  // of the strip, which is central under wall and piers
  double foundationThickness = 0.200;
};

}  // namespace model
