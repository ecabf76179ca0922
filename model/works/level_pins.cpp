#include "model/works/level_pins.h"

#include <algorithm>
#include <cmath>

#include "model/works/ground_floor.h"
#include "model/works/ground_parts.h"
#include "model/works/parts.h"
#include "model/works/plan_shapes.h"

namespace model {

namespace {

constexpr double kPin = 0.016;  // thickness
constexpr double kFromEnd = 0.300;
constexpr double kFromMitre = 0.100;
constexpr double kShortest = 0.300;  // between two pins: a shorter length has one, in its middle

// From the end of a run: where that is a corner, clear of the mitre with the next wall's concrete.
double fromEnd(const SettingOut& settingOut, const WallLine& wall, double end, double centre) {
  const bool atStart = end<1e-6, atEnd = end> wall.length - 1e-6;
  if (!atStart && !atEnd) return kFromEnd;
  const double half = settingOut.corners[atStart ? wall.from : wall.to].angle / 2;
  return std::max(kFromEnd, centre / std::tan(half) + kFromMitre);
}

// Where the pins of one run stand (s), `spacing` apart at most.
std::vector<double> pinPlaces(const SettingOut& settingOut, const FoundationRun& run, double centre,
                              double spacing) {
  const WallLine& wall = settingOut.walls[run.wall];
  const double from = run.from + fromEnd(settingOut, wall, run.from, centre);
  const double to = run.to - fromEnd(settingOut, wall, run.to, centre);
  if (to < from) return {};
  if (to - from < kShortest) return {(from + to) / 2};
  const double spaces = std::ceil((to - from) / spacing);
  std::vector<double> places;
  for (double k = 0; k <= spaces; ++k) places.push_back(from + (to - from) * k / spaces);
  return places;
}

// True where a lower run's concrete goes on under the higher one: no pin can stand there.
bool overLap(const std::vector<FoundationLap>& laps, size_t run, double s) {
  return std::any_of(laps.begin(), laps.end(), [&](const FoundationLap& lap) {
    return lap.upper == run && s > lap.from - kPin && s < lap.to + kPin;
  });
}

std::vector<LevelPin> trenchPins(const Job& job, const SettingOut& settingOut) {
  std::vector<FoundationBand> bands;
  for (size_t i = 0; i < settingOut.walls.size(); ++i) {
    bands.push_back(foundationBand(settingOut, i));
  }
  const auto laps = foundationLaps(job, settingOut, bands);
  const auto count = static_cast<double>(settingOut.foundations.size());
  const double centre = settingOut.faceDistances.innerFace / 2;
  std::vector<LevelPin> pins;
  for (size_t i = 0; i < settingOut.foundations.size(); ++i) {
    const FoundationRun& run = settingOut.foundations[i];
    if (run.onCellar || run.top - run.underside < 1e-3) continue;
    const std::vector<double> places =
        pinPlaces(settingOut, run, centre, job.settingOut.pinSpacing);
    for (size_t k = 0; k < places.size(); ++k) {
      if (overLap(laps, i, places[k])) continue;
      LevelPin pin;
      pin.name = std::to_string(pins.size() + 1);
      pin.at = settingOut.walls[run.wall].at(places[k], centre);
      pin.foot = run.underside;
      pin.top = run.top;
      pin.wall = run.wall;
      pin.along = places[k];
      pin.inward = centre;
      pin.run = i;
      pin.share =
          (static_cast<double>(i) + static_cast<double>(k) / static_cast<double>(places.size())) /
          count;
      pins.push_back(std::move(pin));
    }
  }
  return pins;
}

// Square to the wall that it is taped from.
Solid solidOf(const SettingOut& settingOut, const LevelPin& pin) {
  return prism(Region{rectangleOnPlan(pin.at, settingOut.walls[pin.wall].along, kPin, kPin), {}},
               pin.foot, pin.top);
}

// Cast in as the concrete comes up, or along, round it.
void setTimes(const Job& job, const SettingOut& settingOut, const LevelPin& pin,
              const std::vector<double>& turn, Element& element) {
  const auto last = [&](StageKind stage) {
    return whole({stage}, kBedLaid + (1 - kBedLaid) * 0.9 * pin.share);
  };
  const auto first = [&](StageKind stage) { return whole({stage}, kBeforePour * 0.9 * pin.share); };
  if (pin.concrete == PinnedConcrete::Foundation) {
    const auto count = static_cast<double>(turn.size());
    element.placed = whole({StageKind::LevelPins}, pin.share);
    element.removed = upward({StageKind::FoundationPour}, pin.foot, pin.top, turn[pin.run] / count,
                             (turn[pin.run] + 1) / count);
  } else if (pin.concrete == PinnedConcrete::CellarSlab) {
    element.placed =
        job.cellar->blinding > 0 ? last(StageKind::CellarBlinding) : first(StageKind::CellarSlab);
    element.removed = upward({StageKind::CellarSlab}, pin.foot, pin.top, kBeforePour, 1);
  } else {
    element.placed =
        job.groundFloor.hardcore > 0 ? last(StageKind::Oversite) : first(StageKind::GroundSlab);
    element.removed = groundFloorLaid(job, settingOut);
  }
}

}  // namespace

const char* nameOf(PinnedConcrete concrete) {
  switch (concrete) {
    case PinnedConcrete::CellarSlab:
      return "cellar slab";
    case PinnedConcrete::GroundSlab:
      return "ground slab";
    case PinnedConcrete::Foundation:
      break;
  }
  return "foundation";
}

std::vector<LevelPin> levelPins(const Job& job, const SettingOut& settingOut) {
  std::vector<LevelPin> pins = trenchPins(job, settingOut);
  for (LevelPin& pin : slabPins(job, settingOut)) pins.push_back(std::move(pin));
  return pins;
}

void buildLevelPins(const Job& job, const SettingOut& settingOut, Works& works) {
  const auto turn = foundationTurns(settingOut);
  for (const LevelPin& pin : levelPins(job, settingOut)) {
    Element element;
    const std::string& wall = settingOut.walls[pin.wall].name;
    if (pin.concrete == PinnedConcrete::Foundation) {
      element.id = "level pin/wall " + wall + "/" + pin.name;
      element.name = "Level pin " + pin.name + ", wall " + wall;
      element.wall = wall;
    } else {
      element.id = std::string("level pin/") + nameOf(pin.concrete) + "/" + pin.name;
      element.name = "Level pin " + pin.name + ", " + nameOf(pin.concrete);
    }
    element.kind = ElementKind::LevelPin;
    element.material = Material::Steel;
    element.solid = solidOf(settingOut, pin);
    element.quantity = {1, Unit::Each};
    setTimes(job, settingOut, pin, turn, element);
    add(works, std::move(element));
  }
}

}  // namespace model
