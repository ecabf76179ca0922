#include "model/job/reading_targets.h"

#include <algorithm>

namespace model {

const std::vector<ReadingTarget>& readingTargets() {
  constexpr auto kLevel = TargetKind::Level;
  constexpr auto kLine = TargetKind::Line;
  constexpr auto kDistance = TargetKind::Distance;
  constexpr auto kWalls = TargetPlace::Walls;
  static const std::vector<ReadingTarget> table{
      {"formation", kLevel, "formation"},
      {"blinding", kLevel, "top of blinding"},
      {"top-of-concrete", kLevel, "top of concrete", TargetPlace::Pins},
      {"cellar-formation", kLevel, "cellar formation"},
      {"cellar-blinding", kLevel, "top of blinding under the cellar"},
      {"cellar-slab-top", kLevel, "top of cellar slab", TargetPlace::CellarPins},
      {"cellar-floor", kLevel, "cellar finished floor"},
      {"cellar-wall-top", kLevel, "top of cellar wall"},
      {"oversite", kLevel, "oversite formation"},
      {"slab-underside", kLevel, "underside of ground floor"},
      {"structural-floor", kLevel, "structural floor", TargetPlace::SlabPins,
       TargetStoreys::FromGround},
      {"finished-floor", kLevel, "finished floor", kWalls, TargetStoreys::FromGround},
      {"damp-course", kLevel, "damp course"},
      {"sill", kLevel, "sill", TargetPlace::Openings},
      {"head", kLevel, "lintel soffit", TargetPlace::Openings},
      {"ceiling", kLevel, "ceiling", kWalls, TargetStoreys::FromGround},
      {"joist-bearing", kLevel, "joist bearing", kWalls, TargetStoreys::FromFirst},
      {"outer-leaf-top", kLevel, "top of outer leaf at eaves"},
      {"wall-top", kLevel, "top of wall, plate bed"},
      {"plate-top", kLevel, "top of wall plate"},
      {"eaves", kLevel, "eaves"},
      {"ridge", kLevel, "ridge"},
      {"foundation-outer", kLine, "outer edge of the foundation"},
      {"outer-face", kLine, "outer face"},
      {"outer-leaf-back", kLine, "back of the outer leaf"},
      {"inner-leaf-front", kLine, "front of the inner leaf"},
      {"inner-face", kLine, "inner face"},
      {"foundation-inner", kLine, "inner edge of the foundation"},
      {"corner", kDistance, "position of a corner"},
      {"side", kDistance, "length of a side"},
      {"diagonal", kDistance, "diagonal"},
  };
  return table;
}

const ReadingTarget* findReadingTarget(const std::string& name) {
  const std::string family = name.substr(0, name.find(':'));
  const auto& all = readingTargets();
  const auto found = std::find_if(all.begin(), all.end(),
                                  [&](const ReadingTarget& t) { return family == t.name; });
  return found == all.end() ? nullptr : &*found;
}

std::optional<size_t> storeyOfTarget(const std::string& name, size_t storeys) {
  const ReadingTarget* target = findReadingTarget(name);
  if (!target || target->storeys == TargetStoreys::None) return std::nullopt;
  const size_t lowest = target->storeys == TargetStoreys::FromFirst ? 1 : 0;
  size_t storey = lowest;
  if (const size_t colon = name.find(':'); colon != std::string::npos) {
    const std::string number = name.substr(colon + 1);
    if (number.empty() || number.size() > 2 ||
        number.find_first_not_of("0123456789") != std::string::npos)
      return std::nullopt;
    storey = static_cast<size_t>(std::stoi(number));
  }
  if (storey < lowest || storey >= storeys) return std::nullopt;
  return storey;
}

std::vector<std::string> readingTargetNames(std::optional<TargetKind> kind) {
  std::vector<std::string> names;
  for (const ReadingTarget& target : readingTargets()) {
    if (!kind || target.kind == *kind) names.emplace_back(target.name);
  }
  return names;
}

}  // namespace model
