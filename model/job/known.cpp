#include "model/job/known.h"

namespace model {

namespace {

std::string item(const std::string& list, size_t index) {
  return list + "[" + std::to_string(index) + "]";
}

}  // namespace

bool Known::has(std::string path) const {
  while (true) {
    if (broken_.count(path)) return false;
    const size_t cut = path.find_last_of(".[");
    if (cut == std::string::npos) return true;
    path.erase(cut);
  }
}

bool Known::has(std::initializer_list<const char*> paths) const {
  for (const char* path : paths) {
    if (!has(std::string(path))) return false;
  }
  return true;
}

bool Known::hasAllOf(const std::string& part) const {
  if (!has(part)) return false;
  for (auto inside = broken_.upper_bound(part);
       inside != broken_.end() && inside->compare(0, part.size(), part) == 0; ++inside) {
    const char next = (*inside)[part.size()];
    if (next == '.' || next == '[') return false;
  }
  return true;
}

bool Known::hasOfEach(const std::string& list, size_t count, const std::string& key) const {
  // What is past the last item was left out because there are too many.
  if (!has(item(list, count))) return false;
  for (size_t i = 0; i < count; ++i) {
    if (!has(item(list, i) + "." + key)) return false;
  }
  return true;
}

bool Known::wallThickness() const {
  return has({"walls.outer_leaf", "walls.cavity", "walls.inner_leaf"});
}

bool Known::courses() const { return has({"walls.brick_height", "walls.joint"}); }

bool Known::groundFloor() const { return storeyFloor(0); }

bool Known::storeyFloor(size_t storey) const {
  return storey < job_.storeys.size() && has(item("storey", storey) + ".floor");
}

bool Known::lastFloor() const {
  const size_t count = job_.storeys.size();
  return count > 0 && storeyFloor(count - 1) && has(item("storey", count));
}

bool Known::slabUnderside() const {
  return groundFloor() &&
         has({"ground_floor.screed", "ground_floor.insulation", "ground_floor.slab"});
}

bool Known::dampCourse() const { return groundFloor() && has("walls.damp_course"); }

bool Known::wallTop() const {
  if (!has("walls.top")) return false;
  return job_.walls.top || (lastFloor() && dampCourse() && courses());
}

bool Known::eavesUnderside() const {
  return wallTop() && has({"walls.outer_leaf", "walls.cavity", "roof.pitch", "roof.plate_width",
                           "roof.plate_depth", "roof.rafter_depth"});
}

bool Known::outerLeafTop() const { return eavesUnderside() && dampCourse() && courses(); }

bool Known::groundAtPlan() const { return has("outline.corners") && hasAllOf("site.spots"); }

bool Known::roofEdges() const { return hasAllOf("roof.edge"); }

bool Known::foundationSteps() const {
  const size_t count = job_.foundations.steps.size();
  return hasOfEach("foundations.step", count, "wall") &&
         hasOfEach("foundations.step", count, "top");
}

bool Known::lowestConcrete() const {
  if (!foundationSteps() || !has({"foundations.kind", "foundations.top"})) return false;
  return job_.foundations.top ||
         (groundAtPlan() &&
          has({"ground.good_ground", "foundations.thickness", "foundations.blinding"}));
}

}  // namespace model
