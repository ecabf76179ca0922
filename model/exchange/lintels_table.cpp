// The schedule of lintels and sills, opening by opening.
#include "model/exchange/tables.h"
#include "model/walls/leaf_plan.h"

namespace model {

namespace {

std::string sizeOf(const Rect& r) {
  return lengthText(r.s1 - r.s0) + " x " + lengthText(r.z1 - r.z0);
}

std::string lintelOf(const LeafPlan& plan, size_t opening) {
  for (const LintelPlan& lintel : plan.lintels)
    if (lintel.opening == opening) return sizeOf(lintel.rect);
  return "";
}

std::string bearingsOf(const LeafPlan& plan, const BuiltOpening& opening, size_t index) {
  for (const LintelPlan& lintel : plan.lintels)
    if (lintel.opening == index)
      return lengthText(opening.s0 - lintel.rect.s0) + " and " +
             lengthText(lintel.rect.s1 - opening.s1);
  return "";
}

std::string padstonesOf(const LeafPlan& plan, size_t opening) {
  int count = 0;
  std::string size;
  for (const PadstonePlan& padstone : plan.padstones) {
    if (plan.lintels[padstone.lintel].opening != opening) continue;
    ++count;
    size = sizeOf(padstone.rect);
  }
  return count == 0 ? "" : std::to_string(count) + " of " + size;
}

std::string sillOf(const LeafPlan& plan, size_t opening) {
  for (const SillPlan& sill : plan.sills)
    if (sill.opening == opening) return sizeOf(sill.rect);
  return "";
}

}  // namespace

Table lintelsTable(const Model& model) {
  Table table;
  table.title = "Lintels and sills of " + model.job.name;
  table.columns = {
      "opening",         "wall",        "width mm",     "underside m", "outer lintel mm",
      "inner lintel mm", "bearings mm", "padstones mm", "sill mm"};
  table.numeric = {false, false, true, true, false, false, false, false, false};
  const SettingOut& out = model.settingOut;
  std::vector<LeafPlan> outer, inner;
  for (size_t wall = 0; wall < out.walls.size(); ++wall) {
    outer.push_back(leafPlan(model.job, out, wall, LeafSide::Outer));
    inner.push_back(leafPlan(model.job, out, wall, LeafSide::Inner));
  }
  for (size_t i = 0; i < out.openings.size(); ++i) {
    const BuiltOpening& opening = out.openings[i];
    const LeafPlan &front = outer[opening.wall], &back = inner[opening.wall];
    table.rows.push_back({openingLabel(out, i), out.walls[opening.wall].name,
                          lengthText(opening.s1 - opening.s0), levelText(opening.head),
                          lintelOf(front, i), lintelOf(back, i), bearingsOf(front, opening, i),
                          padstonesOf(back, i), sillOf(front, i)});
  }
  return table;
}

}  // namespace model
