#include "viewer/number_origin.h"

#include <cmath>
#include <cstdio>
#include <optional>
#include <variant>

#include "model/job/key_table.h"

namespace viewer {
namespace {

using model::ElementKind;

constexpr double kSame = 0.0005;  // metres

// A key of the job file that may be the reason for a number.
struct Key {
  const char* table;
  const char* name;
  std::size_t index = 0;     // which of a repeated table
  bool whereverItIs = true;  // else only when a side of the thing measures just that
};

// As the file has it: 102.5 stays 102.5.
std::string millimetres(double metres) {
  char text[32];
  const double mm = metres * 1000;
  std::snprintf(text, sizeof text, std::abs(mm - std::round(mm)) < 0.05 ? "%.0f" : "%.1f", mm);
  return text;
}

class Origins {
 public:
  Origins(const model::Model& model, const model::KeyPlaces& places, const model::Element& element)
      : model_(model), job_(model.job), places_(places), element_(element) {}

  std::string level(Figure figure) const {
    const double level = figure == Figure::Top ? element_.top : element_.underside;
    const std::vector<Key> keys = levelKeys(figure == Figure::Top);
    for (const Key& key : keys) {
      const auto value = valueOf(key);
      if (value && std::abs(*value - level) < kSame) return pathOf(key) + ", " + sourceOf(key);
    }
    for (const Key& key : keys)
      if (!valueOf(key)) return "worked out; " + pathOf(key) + " is not given";
    return "worked out";
  }

  std::string sizes() const {
    std::string words;
    for (const Key& key : sizeKeys()) {
      const auto value = valueOf(key);
      if (!value || (!key.whereverItIs && !measures(*value))) continue;
      words += (words.empty() ? "" : "; ") + pathOf(key) + " " + millimetres(*value) + ", " +
               sourceOf(key);
    }
    return words;
  }

 private:
  std::vector<Key> levelKeys(bool top) const;
  std::vector<Key> sizeKeys() const;
  std::vector<Key> concreteKeys() const;
  std::optional<std::size_t> opening() const;

  bool ofCellar() const { return element_.id.rfind("cellar/", 0) == 0; }

  bool measures(double size) const {
    const model::Bounds box = model::bounds(element_.solid);
    const model::Vec3 by = box.high - box.low;
    return std::abs(by.x - size) < kSame || std::abs(by.y - size) < kSame ||
           std::abs(by.z - size) < kSame;
  }

  // Nothing when the key is optional and not given, or when there is no such table in the job.
  std::optional<double> valueOf(const Key& key) const {
    const model::TableSpec* table = model::findTable(key.table);
    if (!table || (table->form != model::TableForm::Always && key.index >= table->count(job_)))
      return std::nullopt;
    const model::Slot slot = model::findKey(key.table, key.name)->slot(job_, key.index);
    if (const auto* value = std::get_if<double*>(&slot)) return **value;
    if (const auto* value = std::get_if<std::optional<double>*>(&slot)) return **value;
    return std::nullopt;
  }

  static std::string pathOf(const Key& key) { return std::string(key.table) + "." + key.name; }

  std::string sourceOf(const Key& key) const {
    const bool many = model::findTable(key.table)->form == model::TableForm::Many;
    const std::string index = many ? "[" + std::to_string(key.index) + "]" : "";
    const auto place = places_.find(key.table + index + "." + key.name);
    if (place == places_.end()) return "by default";
    return "line " + std::to_string(place->second.line);
  }

  const model::Model& model_;
  mutable model::Job job_;  // the table of keys hands out places in a job that may be changed
  const model::KeyPlaces& places_;
  const model::Element& element_;
};

// The opening that the thing belongs to, when its wall has one only of that name.
std::optional<std::size_t> Origins::opening() const {
  std::optional<std::size_t> found;
  for (const model::BuiltOpening& opening : model_.settingOut.openings) {
    if (model_.settingOut.walls[opening.wall].name != element_.wall) continue;
    const bool own = element_.id.find("/" + opening.name + "/") != std::string::npos ||
                     element_.name.rfind("Lintel over " + opening.name + ",", 0) == 0;
    if (!own) continue;
    if (found) return std::nullopt;
    found = opening.jobIndex;
  }
  return found;
}

// What may set the top of the concrete under the thing's wall.
std::vector<Key> Origins::concreteKeys() const {
  std::vector<Key> keys;
  const auto wall = model_.settingOut.wallNamed(element_.wall);
  for (std::size_t i = 0; wall && i < job_.foundations.steps.size(); ++i)
    if (model_.settingOut.wallNamed(job_.foundations.steps[i].wall) == wall)
      keys.push_back({"foundations.step", "top", i});
  keys.push_back({"foundations", "top"});
  return keys;
}

std::vector<Key> Origins::levelKeys(bool top) const {
  if (element_.placed.stage.kind == model::StageKind::GardenFoundations) return {};
  const auto storey = static_cast<std::size_t>(element_.placed.stage.storey);
  switch (element_.kind) {
    case ElementKind::Foundation:
    case ElementKind::LevelPin:  // over a slab it has no wall, and its level is worked out
      return top && !element_.wall.empty() ? concreteKeys() : std::vector<Key>{};
    case ElementKind::OuterLeaf:
    case ElementKind::InnerLeaf: {
      std::vector<Key> keys;
      if (!top) keys = concreteKeys();
      if (element_.kind == ElementKind::InnerLeaf) keys.push_back({"walls", "top"});
      // Only a level that is given can be told from one that is worked out here.
      std::erase_if(keys, [&](const Key& key) { return !valueOf(key); });
      return keys;
    }
    case ElementKind::Render:
      if (top || model_.settingOut.levels.renderBottom > model_.settingOut.levels.dampCourse)
        return {};
      return {{"walls", "damp_course"}};
    case ElementKind::DampCourse:
      return top ? std::vector<Key>{{"walls", "damp_course"}} : std::vector<Key>{};
    case ElementKind::WallPlate:
      return top ? std::vector<Key>{} : std::vector<Key>{{"walls", "top"}};
    case ElementKind::Screed:
      if (!top) return {};
      return ofCellar() ? std::vector<Key>{{"cellar", "floor"}}
                        : std::vector<Key>{{"storey", "floor", 0}};
    case ElementKind::Deck:
      return top ? std::vector<Key>{{"storey", "floor", storey}} : std::vector<Key>{};
    case ElementKind::Lintel:
    case ElementKind::Window:
    case ElementKind::Door: {
      const auto index = opening();
      if (!index || (element_.kind == ElementKind::Lintel && top)) return {};
      const bool head = top || element_.kind == ElementKind::Lintel;
      return {{"opening", head ? "head" : "sill", *index}};
    }
    default:
      return {};
  }
}

std::vector<Key> Origins::sizeKeys() const {
  // Each garden wall has its own, and its concrete none of the building's.
  if (element_.placed.stage.kind == model::StageKind::GardenFoundations) return {};
  switch (element_.kind) {
    case ElementKind::Blinding:
      return {{ofCellar() ? "cellar" : "foundations", "blinding", 0, false}};
    case ElementKind::Foundation:
      return {{"foundations", "width"}, {"foundations", "thickness", 0, false}};
    case ElementKind::CellarSlab:
      return {{"cellar", "slab"}, {"cellar", "toe"}};
    case ElementKind::CellarWall:
      return {
          {"cellar", job_.cellar->kind == model::CellarWallKind::FilledCavity ? "leaf" : "wall"}};
    case ElementKind::Core:
      return {{"cellar", "wall"}, {"cellar", "leaf"}};
    case ElementKind::CellarMembrane:
      return {{"cellar", "membrane"}};
    case ElementKind::Hardcore:
      return {{"ground_floor", "hardcore", 0, false}};
    case ElementKind::GroundSlab:
      return {{"ground_floor", "slab"}};
    case ElementKind::FloorInsulation:
      return {{"ground_floor", "insulation", 0, false}};
    case ElementKind::Screed:
      return {{"ground_floor", "screed", 0, false}};
    case ElementKind::OuterLeaf:
      return {{"walls", "outer_leaf"}};
    case ElementKind::InnerLeaf:
      return {{"walls", "inner_leaf"}};
    case ElementKind::CavityFill:
      return {{"walls", "cavity"}};
    case ElementKind::Render:
      return {{"walls", "render"}};
    case ElementKind::CavityInsulation:
      return {{"walls", "insulation"}};
    case ElementKind::Joist:
      return {{"upper_floor", "joist_width", 0, false}, {"upper_floor", "joist_depth", 0, false}};
    case ElementKind::Deck:
      return {{"upper_floor", "deck"}};
    case ElementKind::WallPlate:
      return {{"roof", "plate_width", 0, false}, {"roof", "plate_depth", 0, false}};
    case ElementKind::Rafter:
      return {{"roof", "rafter_width", 0, false}};
    case ElementKind::RoofCovering:
      return {{"roof", "covering"}};
    case ElementKind::Window:
    case ElementKind::Door:
      if (const auto index = opening()) return {{"opening", "width", *index, false}};
      return {};
    default:
      return {};
  }
}

}  // namespace

std::string originWords(const model::Model& model, const model::KeyPlaces& places,
                        const model::Element& element, Figure figure) {
  const Origins origins(model, places, element);
  return figure == Figure::Size ? origins.sizes() : origins.level(figure);
}

}  // namespace viewer
