// What the drawing leaves out, so that a default stands in: a question for each matter, with all of
// its numbers, rather than one for each number.
#include <algorithm>
#include <map>

#include "model/designer/sheet_parts.h"
#include "model/level_text.h"
#include "model/walls/leaf_plan.h"

namespace model {

namespace {

struct NamedKey {
  KeyRef key;
  const char* name;  // "pitch"
};

// What one question is about.
struct Matter {
  const char* about;
  std::vector<NamedKey> keys;
  std::string changes;
  std::optional<size_t> stage;
};

class LeftOut {
 public:
  explicit LeftOut(const SheetData& data)
      : data_(data), job_(data.model.job), programme_(data.model.programme) {}

  std::vector<SheetQuestion> all() {
    paper();
    site();
    levels();
    ground();
    walls();
    floors();
    stairs();
    openings();
    roof();
    return std::move(questions_);
  }

 private:
  using K = StageKind;

  std::optional<size_t> first(std::initializer_list<StageKind> kinds) const {
    return firstOf(programme_, kinds);
  }
  // The walls over the damp course.
  std::optional<size_t> wallsBegin() const { return first({K::RaiseCorners, K::RunIn}); }
  std::optional<size_t> digging() const {
    return first({K::CellarDig, K::TrenchDig, K::FoundationPour});
  }

  void ask(const char* about, std::string text, std::string assumed, std::string changes,
           std::optional<size_t> stage, std::vector<std::string> keys) {
    SheetQuestion question;
    question.by = AskedBy::LeftOut;
    question.about = about;
    question.text = std::move(text);
    question.assumed = std::move(assumed);
    question.changes = std::move(changes);
    question.stage = stage;
    question.keys = std::move(keys);
    questions_.push_back(std::move(question));
  }

  // What stands in for a key: its default, or what the program works out with the rule for it.
  std::string standsFor(const KeyRef& key) const {
    const std::string value = data_.given.value(key);
    if (!value.empty()) return value == "0" ? "none" : value;
    const Levels& levels = data_.model.settingOut.levels;
    const auto& runs = data_.model.settingOut.foundations;
    const auto run = std::find_if(runs.begin(), runs.end(),
                                  [](const FoundationRun& each) { return !each.onCellar; });
    const std::string path = GivenKeys::pathOf(key), rule = data_.given.whenAbsent(key);
    std::string text;
    if (path == "walls.damp_course") text = levelText(levels.dampCourse);
    if (path.starts_with("stair[") && path.ends_with("].well"))
      for (const StairFlight& flight : data_.model.settingOut.stairs)
        if (GivenKeys::pathOf({"stair", "well", flight.jobIndex}) == path)
          text = lengthText(flight.wellTo - flight.wellFrom);
    if (path == "walls.top") text = levelText(levels.wallTop);
    if (path == "foundations.top") text = levelText(levels.foundationTop);
    if (path == "foundations.thickness" && run != runs.end())
      text = lengthText(run->top - run->underside);
    return text.empty() ? rule : text + " (" + rule + ")";
  }

  // Those of the matter's keys that are not given, in one question.
  void ask(const Matter& matter) {
    std::vector<std::string> names, values, paths;
    for (const NamedKey& each : matter.keys) {
      if (!data_.given.has(each.key) || data_.given.given(each.key)) continue;
      names.emplace_back(each.name);
      values.push_back(std::string(each.name) + " " + standsFor(each.key));
      paths.push_back(GivenKeys::pathOf(each.key));
    }
    if (names.empty()) return;
    std::string assumed;
    for (const std::string& value : values) assumed += (assumed.empty() ? "" : "; ") + value;
    ask(matter.about,
        "Not given: " + listedWords(names) +
            (names.size() == 1 ? ". Is what is assumed right?" : ". Are those assumed right?"),
        assumed, matter.changes, matter.stage, paths);
  }

  void paper() {
    if (job_.drawing.empty())
      ask("The drawing", "Which drawing, and which revision of it, are the numbers from?",
          "the numbers of this sheet, whatever drawing they are from", "every number of this sheet",
          first({K::SettingOut}), {"job.drawing"});
  }

  void site() {
    if (!job_.site.benchMark && job_.site.marks.empty())
      ask("Bench mark",
          "No bench mark is given. Which mark is there, where, and how high above " +
              (job_.datumNote.empty() ? std::string("0.000") : job_.datumNote + " (0.000)") +
              " or below it?",
          "levels are told from 0.000 alone", "every level that is set on site",
          first({K::TopsoilStrip, K::SettingOut}), {"site.bench_mark.level"});
    if (!job_.ordnanceDatum)
      ask("Ordnance datum", "How high is 0.000 above ordnance datum?",
          "levels are told from 0.000 alone",
          "how the building stands to roads, drains and neighbours of the survey",
          first({K::SettingOut}), {"job.ordnance_datum"});
    if (job_.site.spots.empty())
      ask("Ground before the work", "No spot levels are given. How high is the ground now?",
          "level ground at -0.150", "depths of digs, what is carted away, steps of the foundation",
          first({K::TopsoilStrip, K::CellarDig, K::TrenchDig}), {"site.spots[0].level"});
    if (job_.site.boundary.empty())
      ask("Boundary", "Where does the boundary run?", "8 m clear all round the work",
          "distances to the boundary, and room for boards and scaffold", first({K::SettingOut}),
          {"site.boundary"});
    std::vector<std::string> names, paths;
    for (size_t i = 0; i < job_.site.buildings.size(); ++i) {
      const StandingBuilding& building = job_.site.buildings[i];
      const KeyRef key{"site.building", "foundation_depth", i};
      if (building.kind == BuildingKind::Demolish || data_.given.given(key)) continue;
      names.push_back(building.name.empty() ? "building " + std::to_string(i + 1) : building.name);
      paths.push_back(GivenKeys::pathOf(key));
    }
    if (!names.empty())
      ask("Foundations of what stands",
          "How deep are the foundations of " + listedWords(names) + "?",
          "600 below the lowest ground beside them", "how near and how deep may be dug", digging(),
          paths);
  }

  void levels() {
    Matter floor{
        "Finished floors", {}, "every level of the building", first({K::CellarDig, K::TrenchDig})};
    for (size_t i = 0; i < job_.storeys.size(); ++i)
      floor.keys.push_back({{"storey", "floor", i},
                            job_.storeys[i].name.empty() ? "floor" : job_.storeys[i].name.c_str()});
    ask(floor);
    const bool concreteGiven = data_.given.given({"foundations", "top"});
    ask({"Damp course",
         {{{"walls", "damp_course"}, "level of the damp course"}},
         "the gauge of all brickwork, which counts from it",
         concreteGiven ? first({K::WallsBelowDampCourse, K::DampCourse}) : digging()});
    ask({"Wall plate",
         {{{"walls", "top"}, "level on which the plate beds"}},
         "the height of walls and roof",
         wallsBegin()});
  }

  void ground() {
    ask({"Good ground",
         {{{"ground", "good_ground"}, "depth at which the ground may bear"},
          {{"ground", "topsoil"}, "depth of topsoil"}},
         "depths of digs and of the concrete",
         first({K::TopsoilStrip, K::CellarDig, K::TrenchDig})});
    ask({"Foundations",
         {{{"foundations", "kind"}, "kind"},
          {{"foundations", "width"}, "width"},
          {{"foundations", "thickness"}, "thickness"},
          {{"foundations", "top"}, "top of concrete"},
          {{"foundations", "blinding"}, "blinding"}},
         "trenches and concrete",
         first({K::TrenchDig, K::FoundationPour})});
    Matter cellar{"Cellar",
                  {{{"cellar", "outline"}, "outline"},
                   {{"cellar", "floor"}, "finished floor"},
                   {{"cellar", "walls"}, "kind of walls"},
                   {{"cellar", "wall"}, "thickness of walls"},
                   {{"cellar", "slab"}, "slab"},
                   {{"cellar", "toe"}, "toe"},
                   {{"cellar", "make_up"}, "slab to finished floor"},
                   {{"cellar", "blinding"}, "blinding"},
                   {{"cellar", "membrane"}, "waterproofing and its protection"}},
                  "the cellar's dig, slab and walls",
                  first({K::CellarDig})};
    if (job_.cellar && job_.cellar->kind == CellarWallKind::FilledCavity)
      cellar.keys.push_back({{"cellar", "leaf"}, "leaf of its walls"});
    ask(cellar);
  }

  void walls() {
    ask({"Walls",
         {{{"walls", "render"}, "render"},
          {{"walls", "outer_leaf"}, "outer leaf"},
          {{"walls", "cavity"}, "cavity"},
          {{"walls", "insulation"}, "insulation in it"},
          {{"walls", "inner_leaf"}, "inner leaf"}},
         "all lines inside the outer face, rooms, width of concrete",
         first({K::SettingOut})});
    ask({"Bricks and blocks",
         {{{"walls", "brick_length"}, "length of bricks"},
          {{"walls", "brick_height"}, "height of bricks"},
          {{"walls", "joint"}, "joint"},
          {{"walls", "bond"}, "bond"},
          {{"walls", "block_length"}, "length of blocks"},
          {{"walls", "block_height"}, "height of blocks"}},
         "the gauge, the bond, what is ordered",
         first({K::FoundationPour, K::WallsBelowDampCourse})});
  }

  void floors() {
    const bool slab = job_.groundFloor.kind == GroundFloorKind::Slab;
    ask({"Ground floor",
         {{{"ground_floor", "kind"}, "kind"},
          {{"ground_floor", "screed"}, "screed"},
          {{"ground_floor", "insulation"}, "insulation"},
          {{"ground_floor", "slab"}, slab ? "slab" : "beams and blocks"},
          {{"ground_floor", "hardcore"}, slab ? "hardcore" : "void"}},
         "levels under the finished floor",
         first({K::FloorOverCellar, K::Oversite, K::GroundSlab})});
    if (job_.storeys.size() < 2) return;
    ask({"Upper floors",
         {{{"upper_floor", "finish"}, "finish"},
          {{"upper_floor", "deck"}, "deck"},
          {{"upper_floor", "joist_depth"}, "depth of joists"},
          {{"upper_floor", "joist_width"}, "width of joists"},
          {{"upper_floor", "spacing"}, "centre to centre"},
          {{"upper_floor", "ceiling"}, "ceiling"}},
         "where joists bear, heights of rooms",
         wallsBegin()});
  }

  void stairs() {
    for (const StairFlight& flight : data_.model.settingOut.stairs) {
      const size_t i = flight.jobIndex;
      ask({flight.name.empty() ? "Stair" : flight.name.c_str(),
           {{{"stair", "treads", i}, "closed or open treads"},
            {{"stair", "well", i}, "length of the well"},
            {{"stair", "trimming", i}, "joists round the well"},
            {{"stair", "guard", i}, "height of guarding"}},
           "joists, and the flight that is ordered",
           first({flight.inTimber() ? K::UpperFloor : K::FloorOverCellar})});
    }
  }

  // One question for all openings that lack the same. `value`: of one of them.
  template <typename Value>
  void lacking(const char* about, const char* name, const char* what, const std::string& changes,
               std::optional<size_t> stage, const Value& value) {
    const SettingOut& out = data_.model.settingOut;
    std::vector<std::string> names, paths;
    std::map<std::string, std::vector<std::string>> byValue;
    for (size_t i = 0; i < out.openings.size(); ++i) {
      const KeyRef key{"opening", name, out.openings[i].jobIndex};
      if (data_.given.given(key)) continue;
      names.push_back(openingLabel(out, i));
      paths.push_back(GivenKeys::pathOf(key));
      byValue[value(out.openings[i])].push_back(names.back());
    }
    if (names.empty()) return;
    const bool all = names.size() == out.openings.size() && names.size() > 1;
    std::string assumed;
    for (const auto& [each, of] : byValue)
      assumed += (assumed.empty() ? "" : "; ") + each +
                 (byValue.size() > 1 ? " of " + listedWords(of)
                  : names.size() > 1 ? " each"
                                     : "");
    ask(about,
        std::string("Not given: ") + what + " of " +
            (all ? "all " + std::to_string(names.size()) + " openings" : listedWords(names)) +
            (names.size() == 1 ? ". Is what is assumed right?" : ". Are those assumed right?"),
        assumed, changes, stage, paths);
  }

  void openings() {
    lacking("Widths of openings", "width", "the width", "reveals, bond and lintels",
            first({K::WallsBelowDampCourse, K::RaiseCorners}),
            [](const BuiltOpening& each) { return lengthText(each.s1 - each.s0); });
    lacking("Sills and thresholds", "sill", "the sill or threshold",
            "courses under openings, and what is ordered for them", wallsBegin(),
            [](const BuiltOpening& each) { return levelText(each.sill); });
    lacking("Heads of openings", "head", "the head", "lintels and the courses over them",
            wallsBegin(), [](const BuiltOpening& each) { return levelText(each.head); });
    const auto job = [&](const BuiltOpening& each) -> const Opening& {
      return job_.openings[each.jobIndex];
    };
    lacking("Lintels, height", "lintel_height", "the height of the lintels", "what is ordered",
            first({K::Lintels}),
            [&](const BuiltOpening& each) { return lengthText(job(each).lintelHeight); });
    lacking("Lintels, bearing", "lintel_bearing", "the bearing of the lintels at each end",
            "lengths of lintels", first({K::Lintels}),
            [&](const BuiltOpening& each) { return lengthText(job(each).lintelBearing); });
  }

  void roof() {
    const auto stage = first({K::WallPlate, K::Gables, K::Rafters});
    if (job_.roof.edges.empty())
      ask("Shape of the roof", "No gable is named. Is the roof hipped over every wall?",
          "a hip over every wall", "ridge, gables and all timbers", wallsBegin(),
          {"roof.edge[0].kind"});
    Matter slopes{"Slopes of the roof",
                  {{{"roof", "pitch"}, "pitch"}, {{"roof", "eaves"}, "overhang of the eaves"}},
                  "eaves, ridge, tops of walls",
                  wallsBegin()};
    if (std::any_of(job_.roof.edges.begin(), job_.roof.edges.end(),
                    [](const RoofEdge& edge) { return edge.kind == EavesKind::Gable; }))
      slopes.keys.push_back({{"roof", "verge"}, "overhang at gables"});
    ask(slopes);
    ask({"Roof timbers and covering",
         {{{"roof", "rafter_depth"}, "depth of rafters"},
          {{"roof", "rafter_width"}, "width of rafters"},
          {{"roof", "spacing"}, "centre to centre"},
          {{"roof", "covering"}, "covering with its battens"},
          {{"roof", "plate_width"}, "width of the plate"},
          {{"roof", "plate_depth"}, "depth of the plate"}},
         "birdsmouths, ridge, what is ordered",
         stage});
  }

  const SheetData& data_;
  const Job& job_;
  const Programme& programme_;
  std::vector<SheetQuestion> questions_;
};

}  // namespace

std::vector<SheetQuestion> leftOutQuestions(const SheetData& data) { return LeftOut(data).all(); }

}  // namespace model
