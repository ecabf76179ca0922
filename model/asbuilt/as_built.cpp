#include "model/asbuilt/as_built.h"

#include <cmath>

namespace model {

namespace {

constexpr double kSquare = 0.005;  // common practice, no source: what a tape can tell

void gather(const SettingOut& out, AsBuilt& built) {
  const auto wall = [&](size_t i) { return out.walls[i].name; };
  const auto add = [&](ChangeOf of, const std::string& where, const std::string& words) {
    built.changes.push_back({of, where, words});
  };
  for (const FirstBed& bed : built.beds) {
    const Deviation& d = built.deviations[bed.deviation];
    if (bed.answer == BedAnswer::Normal || bed.asDrawn) continue;
    add(ChangeOf::FirstBed, d.place.words, bed.words);
  }
  for (const CornerAsBuilt& corner : built.corners) {
    if (std::abs(corner.over) >= kSquare - 1e-9)
      add(ChangeOf::Corner, "corner " + out.corners[corner.corner].letter, corner.words);
  }
  for (const FaceAsBuilt& face : built.faces) {
    if (face.changes) add(ChangeOf::Face, wall(face.wall), face.words);
  }
  for (const SpanAsBuilt& span : built.spans) {
    if (span.changes) add(ChangeOf::ClearSpan, wall(span.wall), span.words);
  }
  for (const CavityAsBuilt& cavity : built.cavities) {
    if (cavity.changes) add(ChangeOf::Cavity, wall(cavity.wall), cavity.words);
  }
  for (const BearingAsBuilt& bearing : built.bearings) {
    if (bearing.changes) add(ChangeOf::Bearing, wall(bearing.wall), bearing.words);
  }
  for (const PlateWords& plate : built.roof.words)
    add(ChangeOf::Rafters, wall(plate.wall), plate.words);
}

}  // namespace

const char* nameOf(ChangeOf of) {
  switch (of) {
    case ChangeOf::FirstBed:
      return "first bed";
    case ChangeOf::Corner:
      return "corner";
    case ChangeOf::Face:
      return "face";
    case ChangeOf::ClearSpan:
      return "span";
    case ChangeOf::Cavity:
      return "cavity";
    case ChangeOf::Bearing:
      return "bearing";
    case ChangeOf::Rafters:
      break;
  }
  return "rafters";
}

AsBuilt deriveAsBuilt(const Job& job, const SettingOut& settingOut) {
  AsBuilt built;
  Deviations deviations = deriveDeviations(job, settingOut);
  built.deviations = std::move(deviations.held);
  built.unheld = std::move(deviations.unheld);
  built.beds = deriveFirstBeds(job, settingOut, built.deviations);
  built.corners = deriveCorners(job, settingOut, built.deviations);
  built.faces = deriveFaceLines(job, settingOut, built.deviations);
  built.spans = deriveSpans(settingOut, built.deviations);
  built.cavities = deriveCavities(job, settingOut, built.deviations);
  built.bearings = deriveBearings(job, settingOut, built.deviations);
  built.roof = deriveRafterChanges(job, settingOut, built.deviations);
  gather(settingOut, built);
  return built;
}

}  // namespace model
