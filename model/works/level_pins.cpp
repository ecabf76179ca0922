// Steel pins in the trenches, their tops at top of concrete: what the pour is levelled to.
#include <algorithm>
#include <cmath>

#include "model/works/ground_parts.h"
#include "model/works/parts.h"

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

Solid pin(const WallLine& wall, double s, double inward, double bottom, double top) {
  const auto at = [&](double along, double across) {
    return wall.at(s + along * kPin / 2, inward + across * kPin / 2);
  };
  // Anticlockwise: the wall's inside is on the left of its run.
  return prism(Region{{at(-1, -1), at(1, -1), at(1, 1), at(-1, 1)}, {}}, bottom, top);
}

}  // namespace

void buildLevelPins(const Job& job, const SettingOut& settingOut, Works& works) {
  std::vector<FoundationBand> bands;
  for (size_t i = 0; i < settingOut.walls.size(); ++i) {
    bands.push_back(foundationBand(settingOut, i));
  }
  const auto laps = foundationLaps(job, settingOut, bands);
  const auto turn = foundationTurns(settingOut);
  const auto count = static_cast<double>(turn.size());
  const double centre = settingOut.faceDistances.innerFace / 2;
  int number = 0;
  for (size_t i = 0; i < settingOut.foundations.size(); ++i) {
    const FoundationRun& run = settingOut.foundations[i];
    if (run.onCellar || run.top - run.underside < 1e-3) continue;
    const WallLine& wall = settingOut.walls[run.wall];
    const std::vector<double> places =
        pinPlaces(settingOut, run, centre, job.settingOut.pinSpacing);
    for (size_t k = 0; k < places.size(); ++k) {
      const double s = places[k];
      if (overLap(laps, i, s)) continue;
      Element element;
      ++number;
      element.id = "level pin/wall " + wall.name + "/" + std::to_string(number);
      element.name = "Level pin, wall " + wall.name;
      element.kind = ElementKind::LevelPin;
      element.material = Material::Steel;
      element.solid = pin(wall, s, centre, run.underside, run.top);
      element.quantity = {1, Unit::Each};
      element.placed = whole(
          {StageKind::LevelPins},
          (static_cast<double>(i) + static_cast<double>(k) / static_cast<double>(places.size())) /
              count);
      // Cast in as the concrete comes up round it.
      element.removed = upward({StageKind::FoundationPour}, run.underside, run.top, turn[i] / count,
                               (turn[i] + 1) / count);
      element.wall = wall.name;
      add(works, std::move(element));
    }
  }
}

}  // namespace model
