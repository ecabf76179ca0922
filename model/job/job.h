// The job: the numbers on the designer's drawing, as plain structs and nothing computed.
//
// A default-constructed Job with an outline is a complete building: every other field has a
// sound default, or is optional, in which case deriveSettingOut() works the value out.
// Units here are the model's: metres and, for levels, metres above the job's datum. (The file
// itself is in millimetres for lengths and metres for levels; see model/job/read_job.h.)
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/job/masonry.h"
#include "model/job/programme_input.h"
#include "model/job/site_work.h"
#include "model/vec.h"

namespace model {

using Outline = std::vector<Vec2>;  // corners in order, not closed (first is not repeated)

// ---- site -----------------------------------------------------------------

struct SpotLevel {
  Vec2 at{0, 0};
  double level = 0;  // of the ground before work starts
};

struct BenchMark {
  std::string name = "Bench mark";
  Vec2 at{0, 0};
  double level = 0;
};

enum class BuildingKind {
  Existing,   // on this site, stays
  Neighbour,  // next door, stays
  Demolish,   // on this site, taken down in the first stages
};

// A building that is there already, shown as quiet massing.
struct StandingBuilding {
  std::string name;
  BuildingKind kind = BuildingKind::Existing;
  Outline outline;
  double height = 2.7;           // of its walls, above the lowest ground at its outline
  double foundationDepth = 0.6;  // below the lowest ground at its outline, as far as known
};

struct Site {
  Outline boundary;                    // empty: a margin of 8 m round everything else
  std::vector<SpotLevel> spots;        // none: level ground 0.150 below the datum
  std::optional<BenchMark> benchMark;  // the main one
  std::vector<BenchMark> marks;        // further ones
  std::optional<SiteGrid> grid;        // none: coordinates are the drawing's own
  std::vector<StandingBuilding> buildings;
  double latitude = 52.0;   // degrees, north positive; for the sun
  double northBearing = 0;  // degrees clockwise from the drawing's +y to true north
};

// ---- ground ---------------------------------------------------------------

struct Ground {
  double topsoil = 0.150;       // stripped first
  double goodGround = 0.600;    // depth below the ground surface at which it may bear
  double bulking = 1.30;        // loose volume over volume in the bank
  double batter = 90;           // degrees of the cellar dig's sides; 90 = upright, supported
  double workingSpace = 0.600;  // clear of the cellar walls, all round, at the bottom
};

// ---- walls ----------------------------------------------------------------

// What cross joints give either way: common practice, no source.
inline constexpr double kJointGives = 0.002;

// The wall from outside in. The outline is the outer face of the outer leaf.
struct WallBuildUp {
  double render = 0;  // its thickness, outside the outline
  double outerLeaf = 0.1025;
  double cavity = 0.100;
  double innerLeaf = 0.100;
  double insulation = 0.100;  // in the cavity, against the inner leaf; = cavity is full fill
  // What the sizes of units were read from, unless the file gives them; they count, not the names.
  BrickFormat bricks = BrickFormat::Uk;
  BlockFormat blocks = BlockFormat::Uk100;
  double brickLength = 0.215;  // work sizes
  double brickHeight = 0.065;
  double blockLength = 0.440;
  double blockHeight = 0.215;
  double joint = 0.010;
  // Of the cross joints, when the bond is laid dry; default: `joint` less and more kJointGives.
  std::optional<double> jointLeast, jointMost;
  std::optional<double> leastCut;       // the shortest piece of brick; default: half a brick
  std::optional<double> dampCourse;     // level; default: a whole course at or under the floor
                                        // and 150 or more above the ground outside
  std::optional<double> top;            // level at which the wall plate beds; default: the last
                                        // storey's floor + 2.400, in whole courses
  BondKind bond = BondKind::Stretcher;  // of the outer leaf
  BlockBondKind blockBond = BlockBondKind::Half;  // of the inner leaf
  BuiltIn builtIn;

  double total() const { return outerLeaf + cavity + innerLeaf; }
  double course() const { return brickHeight + joint; }
};

enum class OpeningKind { Door, Window, Garage, Opening };

// A hole in a wall. `width` is the built (structural) width.
struct Opening {
  std::string name;
  OpeningKind kind = OpeningKind::Window;
  std::string wall;  // "A-B"
  std::string from;  // the corner that `at` is measured from, "A"
  double at = 0;     // along the outer face from that corner to the nearer jamb
  double width = 0.910;
  std::optional<double> sill;    // levels; defaults: window sill = floor + 1.050, door = floor;
  std::optional<double> head;    // head = floor + 2.100
  double lintelHeight = 0.150;   // common practice, no source
  double lintelBearing = 0.150;  // each end: check M20
  double padstone = 0;           // length of one under each end of the lintel; 0: none
  double sillHeight = 0;         // of a sill laid under a window, in the outer leaf; 0: none
  int storey = 0;                // index; whose floor the defaults are measured from
};

// ---- floors ---------------------------------------------------------------

struct Storey {
  std::string name = "Ground floor";
  double floor = 0;  // finished floor level
};

enum class GroundFloorKind { Slab, Suspended };

// From the top down: screed, insulation, slab (or beams and blocks), then hardcore (or void).
struct GroundFloor {
  GroundFloorKind kind = GroundFloorKind::Slab;
  double screed = 0.075;
  double insulation = 0.100;
  double slab = 0.150;
  double hardcore = 0.150;  // Suspended: the clear void instead
};

// Storeys above the ground floor.
struct UpperFloor {
  double finish = 0;  // above the deck
  double deck = 0.022;
  double joistDepth = 0.220;
  double joistWidth = 0.047;
  double spacing = 0.400;
  double ceiling = 0.0125;  // under the joists
};

// ---- stairs -----------------------------------------------------------------

enum class RiserKind { Closed, Open };
enum class TrimmingKind { Single, Double };

// One straight flight of timber from a floor to the next one up. Sizes are the drawing's.
struct Stair {
  std::string name = "Stair";
  std::string from;    // the floor that its foot stands on: a storey's name or kCellarFloor; empty:
                       // the ground floor
  Vec2 foot{0, 0};     // the middle of the first riser's face
  std::string up;      // "C-B": it climbs the way that one walks along that wall from C to B
  double width = 0.8;  // clear between the strings
  int risers = 13;
  double going = 0.225;
  RiserKind riserKind = RiserKind::Closed;
  std::optional<double> well;  // its length on plan, back from the floor at the top; default: what
                               // leaves kHeadroom (model/job/stair_flight.h) over the pitch line
  double guard = 0.900;        // height of the guarding, over the pitch line and over the floor
  TrimmingKind trimming = TrimmingKind::Single;  // the joists round the well, one or two thick
};

// ---- foundations and cellar -------------------------------------------------

enum class FoundationKind { Strip, TrenchFill };

// A length of wall whose concrete is at another level. From `from` to `to`, measured along the
// outer face from the first-named corner of `wall`; the ends may be the corners themselves.
struct FoundationStep {
  std::string wall;
  double from = 0;
  std::optional<double> to;  // default: the far corner
  double top = 0;
};

struct Foundations {
  FoundationKind kind = FoundationKind::Strip;
  double width = 0.600;
  std::optional<double> thickness;  // default: strip 0.200; trench fill up from good ground
  std::optional<double> top;        // level of top of concrete; default: whole courses down,
                                    // formation in good ground everywhere
  double blinding = 0;              // under the strip
  std::vector<FoundationStep> steps;
};

// Concrete: cast between forms. FilledCavity: two leaves of blocks with concrete between them.
// HollowBlock: one leaf of hollow blocks whose cores are filled.
enum class CellarWallKind { Concrete, FilledCavity, HollowBlock };

struct Cellar {
  Outline outline;        // outer face of the cellar's structural walls; empty: the whole plan
  double floor = -2.525;  // finished floor level
  double makeUp = 0.200;  // from structural slab to finished floor
  double slab = 0.300;
  double toe = 0.150;  // the slab's projection outside the walls
  double wall = 0.450;
  CellarWallKind kind = CellarWallKind::Concrete;
  double leaf = 0.100;  // FilledCavity: thickness of each leaf
  double cores = 0.45;  // HollowBlock: share of a block that is hollow: common practice, no source
  double blinding = 0.050;
  double membrane = 0.025;  // waterproofing and its protection, outside the walls
};

// ---- roof -----------------------------------------------------------------

enum class EavesKind { Hip, Gable };

struct RoofEdge {
  std::string wall;
  EavesKind kind = EavesKind::Hip;
  // Of a gable that goes up past the roof: its brickwork over the covering, square to the slope;
  // 0: the roof goes over the wall, to its verge. The coping is over that.
  double parapet = 0;
  double coping = 0.075;
};

struct Roof {
  double pitch = 40;            // degrees; one pitch for every slope
  std::vector<RoofEdge> edges;  // walls not named here are hips
  double eaves = 0.300;         // overhang on plan outside the outer face
  double verge = 0.150;         // the same at a gable
  double rafterDepth = 0.150;   // square to the slope
  double rafterWidth = 0.047;
  double spacing = 0.400;   // of rafters, centre to centre, on plan along the eaves
  double covering = 0.060;  // underlay, battens and tiles together, square to the slope
  double plateWidth = 0.100;
  double plateDepth = 0.050;
};

// ---- the job --------------------------------------------------------------

struct Job {
  std::string name = "Untitled job";
  std::string drawing;  // the designer's, by number and revision; may be empty
  std::string datumNote = "Finished ground floor";
  std::optional<double> ordnanceDatum;  // level of 0.000 above ordnance datum
  Outline outline;                      // outer face of the finished masonry, A first
  Site site;
  Ground ground;
  WallBuildUp walls;
  std::vector<Storey> storeys{Storey{}};
  Foundations foundations;
  std::optional<Cellar> cellar;
  GroundFloor groundFloor;
  UpperFloor upperFloor;
  std::vector<Opening> openings;
  std::vector<MovementJoint> movementJoints;
  std::vector<AirBrick> airBricks;
  std::vector<CavityBarrier> cavityBarriers;
  std::vector<DampCourseStep> dampCourseSteps;
  std::vector<Corbel> corbels;
  std::vector<WallJunction> junctions;
  std::vector<GardenWall> gardenWalls;
  std::vector<Stair> stairs;
  LayingRates laying;
  Roof roof;
  ProgrammeInput programme;
  SettingOutInput settingOut;
  std::vector<Limit> limits;
  std::vector<SetUp> setUps;
  std::vector<ReadingSet> readings;  // never mixed with the design above
  std::vector<Tolerance> tolerances;
  std::vector<Question> questions;
};

}  // namespace model
