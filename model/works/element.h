// The building as things a crew makes: each with its solid, its stage, its levels, its quantity.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/bond/masonry_unit.h"
#include "model/geometry/solid.h"
#include "model/settingout/stage_key.h"

namespace model {

// ---- when -----------------------------------------------------------------

// When inside a stage. A thing that grows is there, at a point p, from the fraction
//   begin + (end - begin) * clamp((dot(direction, p) - low) / (high - low), 0, 1)
// of its stage; a thing without a direction is there from `begin`, whole. For a removal the same
// formula says when the point goes: a dig goes down with direction (0, 0, -1).
struct Placement {
  StageKey stage;
  double begin = 0;
  double end = 1;
  Vec3 direction{0, 0, 0};
  double low = 0, high = 1;
};

Placement whole(StageKey stage, double begin = 0);
// Grows from level `from` up to level `to` between two fractions of the stage.
Placement upward(StageKey stage, double from, double to, double begin = 0, double end = 1);
// Goes from level `from` down to level `to`.
Placement downward(StageKey stage, double from, double to, double begin = 0, double end = 1);
// The formula above, in 0..1.
double fractionAt(const Placement& placement, const Vec3& p);

// ---- what -----------------------------------------------------------------

enum class ElementKind {
  Ground,  // what stays
  Topsoil,
  Spoil,  // soil that is dug: there from the start, removed by its stage
  StandingBuilding,
  Blinding,
  Foundation,
  CellarSlab,
  CellarWall,
  CellarMembrane,
  Backfill,
  Hardcore,
  GroundSlab,
  BeamFloor,  // beams and blocks, or a slab, over a void or the cellar
  FloorInsulation,
  Screed,
  OuterLeaf,
  InnerLeaf,
  CavityFill,
  CavityInsulation,
  CavityCloser,
  Render,
  DampCourse,
  WallTie,
  CavityTray,  // with its stop ends
  WeepVent,
  Lintel,
  Padstone,
  MasonrySill,  // in the outer leaf, under a window
  AirBrick,
  CavityBarrier,
  JointFiller,   // in a movement joint
  StarterStrip,  // on a standing building, with its ties
  Core,          // concrete between the leaves of a cellar wall
  VentSleeve,    // from an air brick through the cavity
  GardenWall,    // solid brickwork that stands by itself, and its piers
  Coping,        // on a garden wall, and the caps of its piers
  Joist,         // trimmers too
  Deck,
  StairString,
  StairTread,
  StairRiser,
  Newel,
  Handrail,
  Baluster,
  WallPlate,
  Rafter,
  FasciaBoard,
  BargeBoard,
  RoofCovering,
  Window,
  Door,
  // Temporary works:
  ProfileBoard,
  Peg,
  LevelPin,
  TrenchSupport,
  Formwork,
  Scaffold,
  EdgeProtection,
  WellCover,  // boards over a stairwell until its stair is in
};

enum class Material {
  Earth,
  Topsoil,
  Hardcore,
  Concrete,
  LeanConcrete,
  Brick,
  Block,
  Insulation,
  Screed,
  Membrane,
  Timber,
  Plywood,
  Steel,
  Tile,
  Glass,
  Render,
  Clay,     // fired, in one piece: air bricks
  Masonry,  // standing buildings
};

// Trade names for people: "outer leaf", "facing brick".
const char* nameOf(ElementKind kind);
const char* nameOf(Material material);
bool isTemporary(ElementKind kind);

enum class Unit { Each, Metre, SquareMetre, CubicMetre };
const char* nameOf(Unit unit);  // "no.", "m", "m2", "m3"

struct Quantity {
  double amount = 0;
  Unit unit = Unit::CubicMetre;
};

struct Element {
  std::string id;    // survives edits: "wall A-B/outer leaf/First floor/lift 2"; unique in Works
  std::string name;  // for people: "Wall A-B, outer leaf, lift 2"
  ElementKind kind = ElementKind::Ground;
  Material material = Material::Earth;
  Solid solid;
  Quantity quantity;
  Placement placed;
  std::optional<Placement> removed;
  double underside = 0, top = 0;  // levels of the solid's lowest and highest point
  std::string wall;               // wall's name when it belongs to one
  // Of masonry: its units in Works::units, in the order they are laid, and their frame. They fill
  // the solid but for the joints.
  size_t firstUnit = 0, unitCount = 0;
  size_t frame = 0;  // into Works::frames
};

// A string pulled between two profile boards; thinner than any solid, so kept as a line.
struct StringLine {
  std::string name;  // "A-B outer face"
  Vec3 a{0, 0, 0}, b{0, 0, 0};
  Placement placed;
  std::optional<Placement> removed;
};

struct Works {
  std::vector<Element> elements;
  std::vector<StringLine> strings;
  std::vector<MasonryUnit> units;  // element after element
  std::vector<UnitFrame> frames;   // one for each leaf of a wall
};

// Fills in underside and top from the solid and adds the element; drops one with an empty solid.
void add(Works& works, Element element);

}  // namespace model
