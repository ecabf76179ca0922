#include "model/programme/stage_days.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace model {
namespace {

using E = ElementKind;
using K = StageKind;

// What a crew gets through in a day, in the unit that each thing is counted in. All common
// practice, no source, but bricks: 300 to 500 a layer a day is 5 to 8 m2 of half-brick wall.
struct Output {
  ElementKind kind;
  Unit unit;
  double aDay;
};
constexpr Output kOutputs[] = {
    {E::Topsoil, Unit::CubicMetre, 60},
    {E::Spoil, Unit::CubicMetre, 35},
    {E::StandingBuilding, Unit::CubicMetre, 30},
    {E::Blinding, Unit::CubicMetre, 8},
    {E::Foundation, Unit::CubicMetre, 12},
    {E::CellarSlab, Unit::CubicMetre, 8},
    {E::CellarWall, Unit::CubicMetre, 12},
    {E::Formwork, Unit::CubicMetre, 2},
    {E::CellarMembrane, Unit::CubicMetre, 0.75},
    {E::Backfill, Unit::CubicMetre, 35},
    {E::Hardcore, Unit::CubicMetre, 12},
    {E::GroundSlab, Unit::CubicMetre, 12},
    {E::BeamFloor, Unit::CubicMetre, 5},
    {E::FloorInsulation, Unit::CubicMetre, 6},
    {E::Screed, Unit::CubicMetre, 3},
    {E::OuterLeaf, Unit::CubicMetre, 1.4},   // two bricklayers
    {E::InnerLeaf, Unit::CubicMetre, 2.4},   // two bricklayers
    {E::GardenWall, Unit::CubicMetre, 1.4},  // two bricklayers
    {E::Coping, Unit::Each, 40},
    {E::CavityFill, Unit::CubicMetre, 3},
    {E::Render, Unit::SquareMetre, 25},  // both coats, two renderers
    {E::Rafter, Unit::CubicMetre, 0.4},
    {E::FasciaBoard, Unit::Metre, 30},
    {E::BargeBoard, Unit::Metre, 20},
    {E::RoofCovering, Unit::CubicMetre, 1.5},
    {E::Joist, Unit::CubicMetre, 0.8},
    {E::Deck, Unit::CubicMetre, 0.8},
    {E::WallPlate, Unit::CubicMetre, 0.15},
    {E::Lintel, Unit::Each, 16},
    {E::Window, Unit::Each, 5},
    {E::Door, Unit::Each, 4},
    {E::LevelPin, Unit::Each, 60},
    {E::ProfileBoard, Unit::Each, 16},
};

// Days before the quantities count, for the work that no quantity measures. Common practice, no
// source.
double fixedDays(StageKind kind) {
  switch (kind) {
    case K::SiteSetUp:
    case K::CellarSlab:  // steel
    case K::CellarForms:
    case K::ScaffoldLift:
    case K::ScaffoldRoof:
    case K::StrikeScaffold:
    case K::Completion:
      return 1;
    case K::OutsideWorks:
      return 2;
    case K::SettingOut:
    case K::LinesBack:
    case K::DampCourse:
    case K::CellarMembrane:
    case K::Rafters:
      return 0.5;
    default:
      return 0;
  }
}

// What is counted goes by its quantity: a frame counts, its glass and sill come with it.
double amountOf(const Element& element, Unit unit) {
  if (unit == Unit::CubicMetre) return volume(element.solid);
  return element.quantity.unit == unit ? element.quantity.amount : 0;
}

const Output* outputOf(ElementKind kind) {
  const auto* const found = std::find_if(std::begin(kOutputs), std::end(kOutputs),
                                         [&](const Output& o) { return o.kind == kind; });
  return found == std::end(kOutputs) ? nullptr : found;
}

// A trench deeper than this goes slower by as much: support goes in behind the digger, and the
// spoil is lifted further. Common practice, no source.
constexpr double kDugStraight = 2.500;

double slowness(const Element& element) {
  const bool trench =
      element.kind == E::Spoil && element.removed && element.removed->stage.kind == K::TrenchDig;
  return trench ? std::max(1.0, (element.top - element.underside) / kDugStraight) : 1;
}

}  // namespace

UsualDays::UsualDays(const Works& works) {
  for (const Element& element : works.elements) {
    const Output* output = outputOf(element.kind);
    if (!output) continue;
    const double days = amountOf(element, output->unit) / output->aDay * slowness(element);
    counted_[element.placed.stage] += days;
    // Only digging and taking down are work in proportion; forms and boards come off quickly.
    const bool dug = element.removed && !isTemporary(element.kind);
    if (dug && element.removed->stage != element.placed.stage)
      counted_[element.removed->stage] += days;
  }
}

double UsualDays::of(const StageKey& stage) const {
  const auto counted = counted_.find(stage);
  const double days = fixedDays(stage.kind) + (counted == counted_.end() ? 0 : counted->second);
  return std::max(0.5, std::ceil(days * 2 - 1e-9) / 2);
}

double usualWaitDays(StageKind kind, bool beamFloor) {
  // Grouted beams carry the next day: common practice, no source.
  if (kind == K::GroundSlab && beamFloor) return 1;
  switch (kind) {
    case K::CellarBlinding:  // walk on it next day: common practice, no source
    case K::TrenchBlinding:
    case K::FoundationPour:     // light blockwork next day: common practice, no source
    case K::GardenFoundations:  // brickwork next day: common practice, no source
    case K::CavityFill:
    case K::Render:     // to harden before the scaffold goes: common practice, no source
    case K::WallPlate:  // overnight at least before nailing on: common practice, no source
      return 1;
    case K::CellarSlab:  // 2 to 3 days before wall forms: common practice, no source
    case K::CellarWalls:
    case K::GroundSlab:
      return 3;
    default:
      return 0;
  }
}

}  // namespace model
