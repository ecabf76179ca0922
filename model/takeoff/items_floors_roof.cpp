#include <map>
#include <string>
#include <utility>

#include "model/level_text.h"
#include "model/takeoff/items.h"
#include "model/takeoff/measure.h"
#include "model/takeoff/unit_rates.h"

namespace model {
namespace {

// Common practice, no source: sawn timber is sold in steps of 300 mm.
constexpr double kTimberStep = 0.3;

std::string section(const char* what, double width, double depth) {
  return std::string(what) + " " + lengthText(width) + " x " + lengthText(depth);
}

// What the thing itself says where it is counted in that unit: its card and the takeoff agree.
double amountIn(const Element& e, Unit unit, double otherwise) {
  return e.quantity.unit == unit ? e.quantity.amount : otherwise;
}

// Area of a sheet laid to a thickness.
void countSheet(const TakeoffInput& in, Tally& tally, ElementKind kind, const std::string& item,
                double thickness, double allowance) {
  if (thickness <= 0) return;
  for (const Element& e : in.works.elements) {
    if (e.kind != kind) continue;
    tally.add({item, Unit::SquareMetre, allowance, 1, "plan area"},
              amountIn(e, Unit::SquareMetre, volume(e.solid) / thickness), e.placed.stage);
  }
}

// Running metres of a timber, and how many there are.
void countTimber(const TakeoffInput& in, Tally& tally, ElementKind kind, const std::string& item,
                 double width, double depth) {
  if (width <= 0 || depth <= 0) return;
  for (const Element& e : in.works.elements) {
    if (e.kind != kind) continue;
    tally.add({item, Unit::Metre, waste::kTimber, kTimberStep, "true lengths"},
              amountIn(e, Unit::Metre, volume(e.solid) / (width * depth)), e.placed.stage);
  }
  for (const Element& e : in.works.elements) {
    if (e.kind != kind) continue;
    tally.add({item + ", number", Unit::Each, 0, 1, "pieces as drawn, before joints"},
              static_cast<double>(pieceCount(e.solid)), e.placed.stage);
  }
}

// "Rafters", or the board that the timber's name begins with.
std::string roofTimber(const Element& e) {
  for (const char* board : {"Ridge", "Hip", "Valley"}) {
    if (e.name.rfind(board, 0) == 0) return std::string(board) + " boards";
  }
  return "Rafters";
}

}  // namespace

void countFloors(const TakeoffInput& in, Tally& tally) {
  const GroundFloor& ground = in.job.groundFloor;
  const UpperFloor& upper = in.job.upperFloor;
  countSheet(in, tally, ElementKind::BeamFloor, "Beam and block floor", ground.slab, 0);
  for (const Element& e : in.works.elements) {
    if (e.kind != ElementKind::FloorInsulation) continue;
    const double depth = e.top - e.underside;
    tally.add({"Floor insulation, " + lengthText(depth), Unit::SquareMetre, waste::kBoards, 1,
               "plan area"},
              volume(e.solid) / depth, e.placed.stage);
  }
  for (const Element& e : in.works.elements) {
    if (e.kind != ElementKind::Screed) continue;
    tally.add({"Screed", Unit::CubicMetre, waste::kConcrete, 0.25, "as drawn, net"},
              volume(e.solid), e.placed.stage);
  }
  countTimber(in, tally, ElementKind::Joist, section("Joists", upper.joistWidth, upper.joistDepth),
              upper.joistWidth, upper.joistDepth);
  countSheet(in, tally, ElementKind::Deck, "Floor deck, " + lengthText(upper.deck), upper.deck,
             waste::kBoards);
}

void countRoof(const TakeoffInput& in, Tally& tally) {
  const Roof& roof = in.job.roof;
  countTimber(in, tally, ElementKind::WallPlate,
              section("Wall plate", roof.plateWidth, roof.plateDepth), roof.plateWidth,
              roof.plateDepth);
  const double area = roof.rafterWidth * roof.rafterDepth;
  for (const Element& e : in.works.elements) {
    if (e.kind != ElementKind::Rafter || area <= 0) continue;
    const double run = amountIn(e, Unit::Metre, volume(e.solid) / area);
    const std::string item = section(roofTimber(e).c_str(), roof.rafterWidth, roof.rafterDepth);
    tally.add({item, Unit::Metre, waste::kTimber, kTimberStep, "true lengths on the slope"}, run,
              e.placed.stage);
    tally.add({item + ", number", Unit::Each, 0, 1, "pieces as drawn"},
              static_cast<double>(pieceCount(e.solid)), e.placed.stage);
  }
  for (const Element& e : in.works.elements) {
    const bool barge = e.kind == ElementKind::BargeBoard;
    if (!barge && e.kind != ElementKind::FasciaBoard) continue;
    tally.add({barge ? "Barge boards" : "Fascia boards", Unit::Metre, waste::kTimber, kTimberStep,
               barge ? "along the slope, outer face" : "outer face, before joints"},
              e.quantity.amount, e.placed.stage);
  }
  if (roof.covering <= 0) return;
  for (const Element& e : in.works.elements) {
    if (e.kind != ElementKind::RoofCovering) continue;
    // The covering's thickness is square to the slope, so this is the area of the slope itself.
    tally.add({"Roof covering", Unit::SquareMetre, waste::kCovering, 1, "area of the slopes"},
              volume(e.solid) / roof.covering, e.placed.stage);
  }
}

void countOpenings(const TakeoffInput& in, Tally& tally) {
  const StageKey stage{StageKind::WindowsAndDoors};
  const auto count = [&](OpeningKind kind, const char* what) {
    std::map<std::pair<int, int>, int> sizes;  // smallest first, as they are ordered
    for (const BuiltOpening& opening : in.settingOut.openings) {
      if (opening.kind != kind) continue;
      ++sizes[{std::stoi(lengthText(opening.s1 - opening.s0)),
               std::stoi(lengthText(opening.head - opening.sill))}];
    }
    for (const auto& [size, number] : sizes) {
      const std::string item = std::string(what) + " " + std::to_string(size.first) + " x " +
                               std::to_string(size.second);
      tally.add({item, Unit::Each, 0, 1, "built opening, width x height"}, number, stage);
    }
  };
  count(OpeningKind::Window, "Window");
  count(OpeningKind::Door, "Door");
  count(OpeningKind::Garage, "Garage door");
  for (const Element& e : in.works.elements) {
    if (e.kind != ElementKind::Window || e.quantity.unit != Unit::Metre) continue;
    tally.add({"Window sills", Unit::Metre, 0, 0, "widths of the built openings"},
              e.quantity.amount, e.placed.stage);
  }
}

void countTemporary(const TakeoffInput& in, Tally& tally) {
  for (const Element& e : in.works.elements) {
    if (e.kind == ElementKind::LevelPin) {
      tally.add({"Level pins", Unit::Each, 0, 1, "in trenches and over slabs"},
                static_cast<double>(pieceCount(e.solid)), e.placed.stage);
    } else if (e.kind == ElementKind::ProfileBoard) {
      tally.add({"Profile boards", Unit::Each, 0, 1, "one at each end of every line"}, 1,
                e.placed.stage);
    } else if (e.kind == ElementKind::WellCover) {
      tally.add({"Boards over stairwells", Unit::SquareMetre, 0, 1, "the holes"}, e.quantity.amount,
                e.placed.stage);
    } else if (e.kind == ElementKind::Formwork && e.quantity.unit == Unit::SquareMetre) {
      tally.add({"Wall forms", Unit::SquareMetre, 0, 1, "both faces"}, e.quantity.amount,
                e.placed.stage);
    }
  }
}

}  // namespace model
