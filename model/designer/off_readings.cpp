// Readings that are out, with what they change or what comes on them next.
#include <string_view>

#include "model/designer/sheet_parts.h"

namespace model {

namespace {

// Which changes a target can be the reason of.
bool mayChange(const Deviation& d, ChangeOf of) {
  const std::string_view target = d.target;
  if (of == ChangeOf::FirstBed) return target == "top-of-concrete";
  if (of == ChangeOf::Rafters) return target == "wall-top" || target == "plate-top";
  return d.kind != ReadingKind::Level;
}

bool there(const SettingOut& out, const Deviation& d, const std::string& where) {
  if (where == d.place.words) return true;
  const auto named = [&](size_t wall) { return out.walls[wall].name == where; };
  if (d.place.wall && named(*d.place.wall)) return true;
  if (d.place.corner) {
    const size_t after = *d.place.corner;
    if (where == "corner " + out.corners[after].letter || named(after) ||
        named((after + out.walls.size() - 1) % out.walls.size()))
      return true;
  }
  return false;
}

// What is built on it next, where nothing more is known.
const char* nextOn(const Deviation& d) {
  const std::string_view target = std::string_view(d.target).substr(0, d.target.find(':'));
  if (d.kind != ReadingKind::Level)
    return "what stands on that line: leaves, cavity, bearings, distances to the boundary";
  if (target == "formation" || target == "blinding" || target.ends_with("-formation") ||
      target.ends_with("-blinding"))
    return "the thickness of the concrete over it";
  if (target == "top-of-concrete") return "the first bed, and the gauge up to the damp course";
  if (target.starts_with("cellar")) return "the cellar's floor, walls and headroom";
  if (target == "oversite" || target == "slab-underside" || target == "structural-floor" ||
      target == "finished-floor")
    return "what lies over it up to the finished floor, and thresholds";
  if (target == "damp-course") return "the courses above: sills, heads, the plate";
  if (target == "sill" || target == "head") return "what goes into the opening, and its lintel";
  if (target == "joist-bearing" || target == "ceiling") return "the floor over it";
  return "plate, rafters and ridge";
}

}  // namespace

std::vector<OffReading> offReadings(const SheetData& data) {
  std::vector<OffReading> off;
  for (size_t i = 0; i < data.built.deviations.size(); ++i) {
    const Deviation& d = data.built.deviations[i];
    if (!d.latest || d.verdict != Verdict::Out) continue;
    OffReading reading{i, ""};
    for (const Change& change : data.built.changes)
      if (mayChange(d, change.of) && there(data.model.settingOut, d, change.where))
        reading.touches += (reading.touches.empty() ? "" : "; ") + change.words;
    if (reading.touches.empty()) reading.touches = nextOn(d);
    off.push_back(std::move(reading));
  }
  return off;
}

}  // namespace model
