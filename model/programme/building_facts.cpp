#include <algorithm>
#include <set>

#include "model/level_text.h"
#include "model/programme/fact_text.h"
#include "model/settingout/gable_edges.h"
#include "model/works/scaffold_room.h"

namespace model {
namespace {

bool hasKind(const Works& works, ElementKind kind) {
  return std::any_of(works.elements.begin(), works.elements.end(),
                     [&](const Element& e) { return e.kind == kind; });
}

// Those over level barriers come with the run.
bool traysOverLintels(const Works& works) {
  return std::any_of(works.elements.begin(), works.elements.end(), [](const Element& e) {
    return e.kind == ElementKind::CavityTray && e.id.find("/cavity tray/") != std::string::npos;
  });
}

void addWalls(const Job& job, const SettingOut& out, const Works& works, Facts& facts) {
  const WallBuildUp& walls = job.walls;
  facts["render"] = lengthText(walls.render);
  facts["render-bottom"] = levelText(out.levels.renderBottom);
  facts["tied"] = walls.cavity > 0 ? ", tied across" : "";
  facts["trays"] =
      traysOverLintels(works) ? "; the trays over them follow as the inner leaf comes up" : "";
  facts["marked"] = out.openings.empty() ? "" : " with every opening marked";
  const bool windows = hasKind(works, ElementKind::Window),
             doors = hasKind(works, ElementKind::Door);
  facts["frames"] = !windows ? "doors" : doors ? "windows and doors" : "windows";
  const bool open =
      std::any_of(out.openings.begin(), out.openings.end(),
                  [](const BuiltOpening& o) { return o.kind == OpeningKind::Opening; });
  facts["closed"] = open ? "Every frame is in" : "A closed shell";
}

void addFloors(const Job& job, const SettingOut& out, const Works& works, Facts& facts) {
  bool insulation = false, screed = false;
  for (const Element& e : works.elements) {
    insulation |= e.kind == ElementKind::FloorInsulation;
    screed |= e.kind == ElementKind::Screed;
  }
  facts["finish-floors"] = !screed ? "Insulate" : insulation ? "Insulate and screed" : "Screed";
  facts["floor-layers"] = !screed      ? "insulation"
                          : insulation ? "insulation and the screed"
                                       : "screed";
  facts["finish-later"] = job.groundFloor.screed + job.groundFloor.insulation > 0
                              ? ", the structural level; the finished floor comes later"
                              : "";
  std::vector<double> floors;
  if (!out.levels.finishedFloor.empty()) floors.push_back(out.levels.finishedFloor.front());
  if (job.cellar) floors.push_back(out.levels.cellarFinishedFloor);
  facts["finished-floors"] = levelsInSeries(floors);
}

bool gableAt(const SettingOut& out, size_t wall) {
  return out.walls[wall % out.walls.size()].eaves == EavesKind::Gable;
}

// What stands at the end of the roof's scaffold.
void addRoofScaffold(const Job& job, const SettingOut& out, Facts& facts) {
  const std::string bare = bareSidesInWords(job, out);
  facts["rails"] = bare.empty() ? "Rails all round" : "Rails";
  facts["no-rails"] = bare.empty() ? "" : ", but none along " + bare;
  std::vector<std::string> reached;
  size_t gables = 0;
  const std::vector<BareSide> sides =
      out.walls.empty() ? std::vector<BareSide>{} : bareSides(job, out);
  for (size_t i = 0; i < out.walls.size(); ++i) {
    if (!gableAt(out, i)) continue;
    ++gables;
    const bool bareHere = std::any_of(sides.begin(), sides.end(),
                                      [&](const BareSide& side) { return side.wall == i; });
    if (!bareHere) reached.push_back(out.walls[i].name);
  }
  const bool all = reached.size() == gables;
  const std::string tops =
      all ? "every gable's top" : "the top of the gable of " + inSeries(reached);
  facts["gable-boards"] = reached.empty() ? "" : ", and boards within reach of " + tops;
  facts["gable-scaffold"] =
      reached.empty() ? "" : "go on up the gables as far as they need boards, ";
}

// "Parapet on E-F 300 over the covering: ..."
std::string parapetText(const Job& job, const SettingOut& out) {
  std::vector<std::string> walls;
  bool coping = false;
  for (size_t i = 0; i < out.walls.size(); ++i) {
    const RoofEdge* parapet = parapetOn(job, out, i);
    if (!parapet) continue;
    walls.push_back(out.walls[i].name + " " + lengthText(parapet->parapet));
    coping |= parapet->coping > 0;
  }
  if (walls.empty()) return "";
  return " Parapets go on past the roof, square to the slope over its covering: " +
         inSeries(walls) +
         ". Return their ends and close the cavity there, and step trays through it over the "
         "slope" +
         (coping
              ? "; then a damp course over both leaves, kneelers, and the coping from its foot up."
              : ".");
}

void addRoofShape(const Job& job, const SettingOut& out, Facts& facts) {
  bool gabled = false, verges = false, eavesMeet = false;
  for (size_t i = 0; i < out.walls.size(); ++i) {
    gabled = gabled || gableAt(out, i);
    verges = verges || (gableAt(out, i) && !parapetOn(job, out, i));
    eavesMeet = eavesMeet || (!gableAt(out, i) && !gableAt(out, i + 1));
  }
  std::set<RoofLineKind> lines;
  for (const RoofLine& line : out.roof.lines) lines.insert(line.kind);
  std::vector<std::string> timbers;
  if (lines.count(RoofLineKind::Ridge)) timbers.push_back("ridge");
  if (lines.count(RoofLineKind::Hip)) timbers.push_back("hips");
  if (lines.count(RoofLineKind::Valley)) timbers.push_back("valleys");
  timbers.push_back("rafters");
  facts["roof-timbers"] = inSeries(timbers);
  facts["strap-gables"] = gabled ? ", and strap the gables" : "";
  facts["roof-held"] = gabled ? "braced and strapped" : "braced";
  facts["lapped"] = eavesMeet ? "at the corners" : "where two lengths meet";
  facts["mitred"] = eavesMeet ? "mitred at the corners, " : "";
  facts["edge-boards"] = verges ? "fascia and barge boards" : "fascia boards";
  facts["roof-top"] = lines.count(RoofLineKind::Ridge) ? "ridge" : "peak";
  facts["parapets"] = parapetText(job, out);
  facts["flashing"] = facts["parapets"].empty()
                          ? ""
                          : " Flash it to the parapets as it goes up, into the bed joints.";
  facts["slopes"] = out.roof.faces.size() == 2 ? "both slopes" : "all slopes";
}

}  // namespace

void addBuildingFacts(const Job& job, const SettingOut& out, const Works& works, Facts& facts) {
  addWalls(job, out, works, facts);
  addFloors(job, out, works, facts);
  addRoofShape(job, out, facts);
  addRoofScaffold(job, out, facts);
  facts["pitch"] = degreesText(job.roof.pitch);
  facts["wall-top"] = levelText(out.levels.wallTop);
  facts["plate-top"] = levelText(out.levels.plateTop);
  facts["eaves"] = levelText(out.levels.eaves);
  facts["ridge"] = levelText(out.levels.ridge);
}

}  // namespace model
