#include "model/programme/stage_days.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace model {
namespace {

using E = ElementKind;
using K = StageKind;

// What a crew gets through in a day, in the unit that each thing is counted in. All common
// practice, no source.
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
    {E::Core, Unit::CubicMetre, 8},
    {E::Formwork, Unit::CubicMetre, 2},
    {E::CellarMembrane, Unit::CubicMetre, 0.75},
    {E::Backfill, Unit::CubicMetre, 35},
    {E::Hardcore, Unit::CubicMetre, 12},
    {E::GroundSlab, Unit::CubicMetre, 12},
    {E::BeamFloor, Unit::CubicMetre, 5},
    {E::FloorInsulation, Unit::CubicMetre, 6},
    {E::Screed, Unit::CubicMetre, 3},
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
    {E::StairTread, Unit::Each, 16},
    {E::Handrail, Unit::Metre, 10},  // with its newels and balusters
    {E::WallPlate, Unit::CubicMetre, 0.15},
    {E::Lintel, Unit::Each, 16},
    {E::Window, Unit::Each, 5},
    {E::Door, Unit::Each, 4},
    {E::LevelPin, Unit::Each, 60},
    {E::ProfileBoard, Unit::Each, 16},
};

// Concrete into the cores of hollow blocks, by the volume of the wall. The same.
constexpr double kFilledBlocksInDay = 16;

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

UsualDays::UsualDays(const LayingRates& laying, const Works& works) {
  for (const Element& element : works.elements) {
    if (element.unitCount > 0) {
      countLaid(laying, element);
      continue;
    }
    if (element.kind == E::Core) countRise(laying, element);
    const Output* output = outputOf(element.kind);
    if (!output) continue;
    const StageRate counted{nameOf(element.kind), model::nameOf(output->unit),
                            amountOf(element, output->unit), output->aDay};
    count(element.placed.stage, counted, slowness(element));
    // Only digging and taking down are work in proportion; forms and boards come off quickly.
    const bool dug = element.removed && !isTemporary(element.kind);
    if (dug && element.removed->stage != element.placed.stage)
      count(element.removed->stage, counted, slowness(element));
  }
}

void UsualDays::count(const StageKey& stage, const StageRate& counted, double slowness) {
  std::vector<Counted>& all = counted_[stage];
  auto same = std::find_if(all.begin(), all.end(),
                           [&](const Counted& each) { return each.rate.what == counted.what; });
  if (same == all.end()) {
    all.push_back({{counted.what, counted.unit, 0, counted.perDay}, 0});
    same = all.end() - 1;
  }
  same->rate.amount += counted.amount;
  same->days += counted.amount / counted.perDay * slowness;
}

void UsualDays::countLaid(const LayingRates& laying, const Element& leaf) {
  const bool brick = leaf.material == Material::Brick;
  const double each = double(brick ? laying.bricksInDay : laying.blocksInDay) * laying.layers;
  count(leaf.placed.stage,
        {brick ? "bricks" : "blocks", model::nameOf(Unit::Each), double(leaf.unitCount), each}, 1);
  // Hollow blocks are filled the day after they are laid.
  const bool filled = leaf.kind == E::CellarWall && leaf.placed.stage.kind == K::CellarWalls;
  if (filled)
    count(leaf.placed.stage,
          {"filled blockwork", model::nameOf(Unit::CubicMetre), volume(leaf.solid),
           kFilledBlocksInDay},
          1);
  countRise(laying, leaf, filled ? 2 : 1);
}

void UsualDays::countRise(const LayingRates& laying, const Element& element, double days) {
  const auto [found, isNew] =
      rises_.try_emplace(element.placed.stage, Rise{element.underside, element.top, 0});
  Rise& rise = found->second;
  rise.from = std::min(rise.from, element.underside);
  rise.to = std::max(rise.to, element.top);
  rise.days = days * std::ceil((rise.to - rise.from) / laying.dayRise - 1e-6);
}

double UsualDays::rounded(const StageKey& stage, double days) const {
  const double halves = std::max(0.5, std::ceil((fixedDays(stage.kind) + days) * 2 - 1e-9) / 2);
  // A lift is a day's work for both of its stages, corners and run; what is higher takes more days.
  const auto rise = rises_.find(stage);
  return rise == rises_.end() || rise->second.days < 2 ? halves
                                                       : std::max(halves, rise->second.days);
}

double UsualDays::of(const StageKey& stage) const {
  double days = 0;
  const auto all = counted_.find(stage);
  if (all != counted_.end()) {
    for (const Counted& each : all->second) days += each.days;
  }
  return rounded(stage, days);
}

const UsualDays::Counted* UsualDays::mostOf(const StageKey& stage) const {
  const auto all = counted_.find(stage);
  if (all == counted_.end() || all->second.empty()) return nullptr;
  return &*std::max_element(all->second.begin(), all->second.end(),
                            [](const Counted& a, const Counted& b) { return a.days < b.days; });
}

double UsualDays::at(const StageKey& stage, double perDay) const {
  const Counted* most = mostOf(stage);
  if (!most || perDay <= 0) return of(stage);
  double days = most->rate.amount / perDay;
  for (const Counted& each : counted_.at(stage)) days += &each == most ? 0 : each.days;
  return rounded(stage, days);
}

std::optional<StageRate> UsualDays::rateOf(const StageKey& stage) const {
  const Counted* most = mostOf(stage);
  if (!most) return std::nullopt;
  return most->rate;
}

double usualWaitDays(StageKind kind, const StageTraits& traits) {
  // Grouted beams carry the next day: common practice, no source.
  if (kind == K::GroundSlab && traits.beamFloor) return 1;
  // The leaves harden before concrete goes between them: common practice, no source.
  if (kind == K::CellarForms && traits.cellarWalls == CellarWallKind::FilledCavity) return 3;
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
