// Sizes of the building and its parts, and its openings, with where each comes from.
#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>

#include "model/asbuilt/words.h"
#include "model/decimal_text.h"
#include "model/designer/sheet_parts.h"
#include "model/settingout/coursing.h"
#include "model/walls/leaf_plan.h"

namespace model {

namespace {

constexpr double kSquareWithin = 0.005;  // degrees: told with two places

class Dimensions {
 public:
  Dimensions(const SheetData& data, const QuestionsOfKeys& asked)
      : data_(data), job_(data.model.job), out_(data.model.settingOut), asked_(asked) {}

  std::vector<SheetDimension> all() {
    outline();
    walls();
    foundations();
    cellar();
    floors();
    stairs();
    roof();
    return std::move(rows_);
  }

 private:
  void put(const char* part, const std::string& what, const std::string& value, Source source) {
    rows_.push_back({part, what, value, std::move(source)});
  }
  void key(const char* part, const std::string& what, const KeyRef& ref) {
    const std::string value = data_.given.value(ref);
    if (!value.empty()) put(part, what, value, sourceOf(data_, ref, asked_));
  }
  Source workedOut(const std::string& words, const std::vector<KeyRef>& from) {
    Source source;
    source.origin = Origin::WorkedOut;
    source.words = words;
    for (const KeyRef& ref : from) restOn(data_, ref, asked_, source);
    return source;
  }

  void outline() {
    const KeyRef corners{"outline", "corners"};
    for (const WallLine& wall : out_.walls)
      put("outline", "outer face " + wall.name, millimetres(wall.length),
          sourceOf(data_, corners, asked_));
    for (const Corner& corner : out_.corners) {
      const double degrees = corner.angle * 180 / std::numbers::pi;
      const double square = degrees < 180 ? 90 : 270;
      if (std::abs(degrees - square) > kSquareWithin)
        put("outline", "corner " + corner.letter + ", angle inside",
            decimalText(degrees, 2) + "\u00b0", sourceOf(data_, corners, asked_));
    }
  }

  void walls() {
    const auto wall = [&](const char* what, const char* name) {
      key("walls", what, {"walls", name});
    };
    wall("render, outside the outline", "render");
    wall("outer leaf", "outer_leaf");
    wall("cavity, with its insulation", "cavity");
    wall("insulation in the cavity", "insulation");
    wall("inner leaf", "inner_leaf");
    put("walls", "through both leaves", millimetres(job_.walls.total()),
        workedOut("outer leaf, cavity and inner leaf",
                  {{"walls", "outer_leaf"}, {"walls", "cavity"}, {"walls", "inner_leaf"}}));
    wall("brick, length", "brick_length");
    wall("brick, height", "brick_height");
    wall("block, length", "block_length");
    wall("block, height", "block_height");
    wall("joint", "joint");
    put("walls", "course of bricks", millimetres(job_.walls.course()),
        workedOut("brick and joint", {{"walls", "brick_height"}, {"walls", "joint"}}));
    wall("bond of the outer leaf", "bond");
  }

  void foundations() {
    key("foundations", "kind", {"foundations", "kind"});
    key("foundations", "width of the concrete", {"foundations", "width"});
    const KeyRef thickness{"foundations", "thickness"};
    if (data_.given.given(thickness)) {
      key("foundations", "thickness", thickness);
    } else if (const auto run =
                   std::find_if(out_.foundations.begin(), out_.foundations.end(),
                                [](const FoundationRun& each) { return !each.onCellar; });
               run != out_.foundations.end()) {
      put("foundations", "thickness", millimetres(run->top - run->underside),
          sourceOf(data_, thickness, asked_));
    }
    key("foundations", "blinding", {"foundations", "blinding"});
    key("foundations", "good ground, under the surface", {"ground", "good_ground"});
  }

  void cellar() {
    if (!job_.cellar) return;
    const auto put = [&](const char* what, const char* name) {
      key("cellar", what, {"cellar", name});
    };
    put("walls are of", "walls");
    put("thickness of walls", "wall");
    if (job_.cellar->kind == CellarWallKind::FilledCavity) put("leaf of its walls", "leaf");
    put("slab", "slab");
    put("toe of the slab", "toe");
    put("slab to finished floor", "make_up");
    put("blinding", "blinding");
    put("membrane and its protection", "membrane");
  }

  void floors() {
    const auto ground = [&](const char* what, const char* name) {
      key("ground floor", what, {"ground_floor", name});
    };
    const bool slab = job_.groundFloor.kind == GroundFloorKind::Slab;
    ground("kind", "kind");
    ground("screed", "screed");
    ground("insulation", "insulation");
    ground(slab ? "slab" : "beams and blocks", "slab");
    ground(slab ? "hardcore" : "clear void", "hardcore");
    if (job_.storeys.size() < 2) return;
    const auto upper = [&](const char* what, const char* name) {
      key("upper floors", what, {"upper_floor", name});
    };
    upper("finish over the deck", "finish");
    upper("deck", "deck");
    upper("joists, depth", "joist_depth");
    upper("joists, width", "joist_width");
    upper("joists, centre to centre", "spacing");
    upper("ceiling", "ceiling");
  }

  void stairs() {
    for (const StairFlight& flight : out_.stairs) {
      const size_t i = flight.jobIndex;
      const std::string name = flight.name.empty() ? "stair " + std::to_string(i + 1) : flight.name;
      const auto each = [&](const char* what, const char* of) {
        key("stairs", name + ", " + what, {"stair", of, i});
      };
      each("clear width", "width");
      each("risers", "risers");
      const KeyRef risers{"stair", "risers", i};
      put("stairs", name + ", rise of each", millimetres(flight.rise),
          workedOut("both finished floors and the number of risers", {risers}));
      each("going", "going");
      each("treads", "treads");
      put("stairs", name + ", length of the well", millimetres(flight.wellTo - flight.wellFrom),
          sourceOf(data_, {"stair", "well", i}, asked_));
      each("joists round the well", "trimming");
      each("height of guarding", "guard");
    }
  }

  void roof() {
    const auto put = [&](const char* what, const char* name) { key("roof", what, {"roof", name}); };
    put("pitch", "pitch");
    put("eaves, overhang on plan", "eaves");
    const bool gables = std::any_of(out_.walls.begin(), out_.walls.end(), [](const WallLine& wall) {
      return wall.eaves == EavesKind::Gable;
    });
    if (gables) put("verge, overhang at gables", "verge");
    put("rafters, depth", "rafter_depth");
    put("rafters, width", "rafter_width");
    put("rafters, centre to centre", "spacing");
    put("covering with its battens", "covering");
    put("wall plate, width", "plate_width");
    put("wall plate, depth", "plate_depth");
    edges();
    spans();
  }

  void edges() {
    for (const WallLine& wall : out_.walls) {
      Source source;
      const bool some = !job_.roof.edges.empty();
      source.origin = some ? Origin::WorkedOut : Origin::Assumed;
      source.words = some ? "not among the walls named" : "no gable is named";
      const auto asked = asked_.find("roof.edge[0].kind");
      if (!some && asked != asked_.end()) source.questions = asked->second;
      for (size_t i = 0; i < job_.roof.edges.size(); ++i)
        if (out_.wallNamed(job_.roof.edges[i].wall) == size_t(&wall - out_.walls.data()))
          source = sourceOf(data_, {"roof.edge", "wall", i}, asked_);
      put("roof", "over wall " + wall.name, wall.eaves == EavesKind::Gable ? "gable" : "hip",
          source);
    }
  }

  void spans() {
    const std::string words = "from the plan of the roof";
    const std::vector<KeyRef> from{{"roof.edge", "kind", 0}};
    for (const RoofFace& face : out_.roof.faces) {
      const double run = *std::max_element(face.run.begin(), face.run.end()) - job_.roof.eaves;
      put("roof",
          "longest run over " + out_.walls[face.edge].name + ", on plan from the outer face",
          millimetres(run), workedOut(words, from));
    }
    std::set<std::pair<size_t, size_t>> said;
    for (const RoofLine& line : out_.roof.lines) {
      if (line.kind != RoofLineKind::Ridge || std::abs(line.runA - line.runB) > 1e-6) continue;
      const auto pair = std::minmax(line.faceA, line.faceB);
      if (line.faceA == line.faceB || !said.insert({pair.first, pair.second}).second) continue;
      put("roof",
          "span under the ridge, " + out_.walls[pair.first].name + " to " +
              out_.walls[pair.second].name + ", outer faces",
          millimetres(2 * (line.runA - job_.roof.eaves)), workedOut(words, from));
    }
  }

  const SheetData& data_;
  const Job& job_;
  const SettingOut& out_;
  const QuestionsOfKeys& asked_;
  std::vector<SheetDimension> rows_;
};

const char* wordOf(OpeningKind kind) {
  switch (kind) {
    case OpeningKind::Door:
      return "door";
    case OpeningKind::Window:
      return "window";
    case OpeningKind::Garage:
      return "garage door";
    case OpeningKind::Opening:
      break;
  }
  return "opening";
}

}  // namespace

std::vector<SheetDimension> sheetDimensions(const SheetData& data, const QuestionsOfKeys& asked) {
  return Dimensions(data, asked).all();
}

std::vector<SheetOpening> sheetOpenings(const SheetData& data, const QuestionsOfKeys& asked) {
  const SettingOut& out = data.model.settingOut;
  const WallBuildUp& walls = data.model.job.walls;
  std::vector<SheetOpening> openings;
  for (size_t i = 0; i < out.openings.size(); ++i) {
    const BuiltOpening& built = out.openings[i];
    const Opening& drawn = data.model.job.openings[built.jobIndex];
    SheetOpening opening;
    opening.opening = i;
    opening.name = openingLabel(out, i);
    opening.wall = out.walls[built.wall].name;
    opening.kind = wordOf(built.kind);
    opening.from = drawn.from;
    opening.at = drawn.at;
    opening.width = built.s1 - built.s0;
    const int halves = halfBricksOfOpening(walls, opening.width);
    opening.coordinating = coordinatingLength(walls, halves, 1);
    opening.halfBricks = halves;
    opening.sill = built.sill;
    opening.head = built.head;
    opening.widthFrom = sourceOf(data, {"opening", "width", built.jobIndex}, asked);
    opening.sillFrom = sourceOf(data, {"opening", "sill", built.jobIndex}, asked);
    opening.headFrom = sourceOf(data, {"opening", "head", built.jobIndex}, asked);
    openings.push_back(std::move(opening));
  }
  return openings;
}

}  // namespace model
