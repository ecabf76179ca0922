#include "model/job/key_table.h"

namespace model {

namespace {

size_t always(const Job&) { return 1; }
void keep(Job&, size_t) {}

// Rows of a repeated table are equal when all their keys are. Slots are handed out for writing, so
// the comparison needs the constness taken off; nothing is written.
bool sameRow(const Job& a, size_t i, const Job& b, size_t j, std::string_view path) {
  for (const KeySpec& key : keyTable()) {
    if (path != key.table) continue;
    const Slot left = key.slot(const_cast<Job&>(a), i);
    const Slot right = key.slot(const_cast<Job&>(b), j);
    if (!sameValue(left, right)) return false;
  }
  return true;
}

// The functions of a repeated table whose rows are a list of Job's own.
template <const char* Path, auto List>
TableSpec listed(size_t limit, const char* labelKey, const char* noun, const char* jobPath,
                 const char* meaning) {
  return {Path,
          TableForm::Many,
          limit,
          labelKey,
          noun,
          jobPath,
          meaning,
          [](const Job& job) { return (job.*List).size(); },
          [](Job& job, size_t n) { (job.*List).resize(n); },
          [](Job& to, size_t i, const Job& from, size_t j) { (to.*List)[i] = (from.*List)[j]; },
          [](const Job& a, size_t i, const Job& b, size_t j) { return sameRow(a, i, b, j, Path); }};
}

// The same for a list of the programme's.
template <const char* Path, auto List>
TableSpec ofProgramme(size_t limit, const char* labelKey, const char* noun, const char* jobPath,
                      const char* meaning) {
  return {Path,
          TableForm::Many,
          limit,
          labelKey,
          noun,
          jobPath,
          meaning,
          [](const Job& job) { return (job.programme.*List).size(); },
          [](Job& job, size_t n) { (job.programme.*List).resize(n); },
          [](Job& to, size_t i, const Job& from, size_t j) {
            (to.programme.*List)[i] = (from.programme.*List)[j];
          },
          [](const Job& a, size_t i, const Job& b, size_t j) { return sameRow(a, i, b, j, Path); }};
}

constexpr char kLimit[] = "limit", kSetUp[] = "set_up", kReadings[] = "readings",
               kTolerance[] = "tolerance", kQuestion[] = "question",
               kMovementJoint[] = "movement_joint", kAirBrick[] = "air_brick",
               kGardenWall[] = "garden_wall", kCavityBarrier[] = "cavity_barrier",
               kDampCourseStep[] = "damp_course_step", kCorbel[] = "corbel",
               kJunction[] = "junction", kStair[] = "stair", kDates[] = "programme.dates",
               kMonth[] = "programme.month", kStage[] = "programme.stage",
               kSplit[] = "programme.split", kOwn[] = "programme.own", kLink[] = "programme.link",
               kDelivery[] = "programme.delivery", kView[] = "programme.view";

}  // namespace

const std::vector<TableSpec>& tableTable() {
  static const std::vector<TableSpec> table{
      {"job", TableForm::Always, 1, nullptr, "job", "job", "The job itself.", always, keep, nullptr,
       nullptr},
      {"site", TableForm::Always, 1, nullptr, "site", "site", "The plot and what is on it already.",
       always, keep, nullptr, nullptr},
      {"site.bench_mark", TableForm::Optional, 1, nullptr, "bench mark", "site.benchMark",
       "The mark that levels are taken from. Left out: none is shown.",
       [](const Job& job) -> size_t { return job.site.benchMark ? 1 : 0; },
       [](Job& job, size_t n) {
         if (n == 0)
           job.site.benchMark.reset();
         else if (!job.site.benchMark)
           job.site.benchMark.emplace();
       },
       nullptr, nullptr},
      {"site.mark", TableForm::Many, 50, "name", "mark", "site.marks",
       "A further bench mark; repeat the section for each.",
       [](const Job& job) { return job.site.marks.size(); },
       [](Job& job, size_t n) { job.site.marks.resize(n); },
       [](Job& to, size_t i, const Job& from, size_t j) { to.site.marks[i] = from.site.marks[j]; },
       [](const Job& a, size_t i, const Job& b, size_t j) {
         return sameRow(a, i, b, j, "site.mark");
       }},
      {"site.grid", TableForm::Optional, 1, nullptr, "grid", "site.grid",
       "The survey's grid, in which pegs are listed. Left out: coordinates are the drawing's own.",
       [](const Job& job) -> size_t { return job.site.grid ? 1 : 0; },
       [](Job& job, size_t n) {
         if (n == 0)
           job.site.grid.reset();
         else if (!job.site.grid)
           job.site.grid.emplace();
       },
       nullptr, nullptr},
      {"site.spots", TableForm::Many, 2000, nullptr, "spot level", "site.spots",
       "Levels of the ground before work starts. Left out: level ground at -0.150.",
       [](const Job& job) { return job.site.spots.size(); },
       [](Job& job, size_t n) { job.site.spots.resize(n); },
       [](Job& to, size_t i, const Job& from, size_t j) { to.site.spots[i] = from.site.spots[j]; },
       [](const Job& a, size_t i, const Job& b, size_t j) {
         return sameRow(a, i, b, j, "site.spots");
       }},
      {"site.building", TableForm::Many, 200, "name", "building", "site.buildings",
       "A building that is there already; repeat the section for each.",
       [](const Job& job) { return job.site.buildings.size(); },
       [](Job& job, size_t n) { job.site.buildings.resize(n); },
       [](Job& to, size_t i, const Job& from, size_t j) {
         to.site.buildings[i] = from.site.buildings[j];
       },
       [](const Job& a, size_t i, const Job& b, size_t j) {
         return sameRow(a, i, b, j, "site.building");
       }},
      {"ground", TableForm::Always, 1, nullptr, "ground", "ground", "The ground and how it is dug.",
       always, keep, nullptr, nullptr},
      {"outline", TableForm::Always, 1, nullptr, "outline", "outline",
       "The plan. The only section that a job cannot do without.", always, keep, nullptr, nullptr},
      {"storey", TableForm::Many, 12, "name", "storey", "storeys",
       "A storey, from the ground up; repeat the section for each. Left out: one ground floor at "
       "0.000.",
       [](const Job& job) { return job.storeys.size(); },
       [](Job& job, size_t n) { job.storeys.resize(n); },
       [](Job& to, size_t i, const Job& from, size_t j) { to.storeys[i] = from.storeys[j]; },
       [](const Job& a, size_t i, const Job& b, size_t j) {
         return sameRow(a, i, b, j, "storey");
       }},
      {"walls", TableForm::Always, 1, nullptr, "walls", "walls",
       "The wall from outside in, and its bricks and blocks.", always, keep, nullptr, nullptr},
      {"foundations", TableForm::Always, 1, nullptr, "foundations", "foundations",
       "The concrete under the walls.", always, keep, nullptr, nullptr},
      {"foundations.step", TableForm::Many, 100, "wall", "step", "foundations.steps",
       "A length of wall whose concrete is at another level; repeat the section for each.",
       [](const Job& job) { return job.foundations.steps.size(); },
       [](Job& job, size_t n) { job.foundations.steps.resize(n); },
       [](Job& to, size_t i, const Job& from, size_t j) {
         to.foundations.steps[i] = from.foundations.steps[j];
       },
       [](const Job& a, size_t i, const Job& b, size_t j) {
         return sameRow(a, i, b, j, "foundations.step");
       }},
      {"cellar", TableForm::Optional, 1, nullptr, "cellar", "cellar",
       "A cellar under all or part of the plan. Left out: there is none.",
       [](const Job& job) -> size_t { return job.cellar ? 1 : 0; },
       [](Job& job, size_t n) {
         if (n == 0)
           job.cellar.reset();
         else if (!job.cellar)
           job.cellar.emplace();
       },
       nullptr, nullptr},
      {"ground_floor", TableForm::Always, 1, nullptr, "ground floor", "groundFloor",
       "The ground floor, from the top down.", always, keep, nullptr, nullptr},
      {"upper_floor", TableForm::Always, 1, nullptr, "upper floor", "upperFloor",
       "Floors above the ground floor.", always, keep, nullptr, nullptr},
      {"opening", TableForm::Many, 500, "name", "opening", "openings",
       "A door, window or other hole in a wall; repeat the section for each.",
       [](const Job& job) { return job.openings.size(); },
       [](Job& job, size_t n) { job.openings.resize(n); },
       [](Job& to, size_t i, const Job& from, size_t j) { to.openings[i] = from.openings[j]; },
       [](const Job& a, size_t i, const Job& b, size_t j) {
         return sameRow(a, i, b, j, "opening");
       }},
      listed<kStair, &Job::stairs>(12, "name", "stair", "stairs",
                                   "A straight flight of timber from one floor to the next; repeat "
                                   "the section for each. The "
                                   "well over it is trimmed in the floor that it lands on."),
      listed<kGardenWall, &Job::gardenWalls>(50, "name", "garden wall", "gardenWalls",
                                             "A solid wall that stands by itself; repeat the "
                                             "section for each. How thick, how high and "
                                             "how deep is its designer's to say."),
      listed<kMovementJoint, &Job::movementJoints>(200, nullptr, "movement joint", "movementJoints",
                                                   "A straight joint through the outer leaf, from "
                                                   "its foot to its top; repeat the section for "
                                                   "each."),
      listed<kAirBrick, &Job::airBricks>(500, nullptr, "air brick", "airBricks",
                                         "A ventilator through the wall, in the place of a brick; "
                                         "repeat the section for each."),
      listed<kCavityBarrier, &Job::cavityBarriers>(
          200, nullptr, "cavity barrier", "cavityBarriers",
          "What closes the cavity to fire, where the drawing has it; repeat the section for each."),
      listed<kDampCourseStep, &Job::dampCourseSteps>(
          100, nullptr, "step of the damp course", "dampCourseSteps",
          "A length of wall along which the ground outside is higher, and with it the damp course "
          "of "
          "the outer leaf; repeat the section for each. A strip goes up either end of it, and a "
          "cavity tray rises from it to the inner leaf, whose damp course goes on below."),
      listed<kCorbel, &Job::corbels>(
          100, nullptr, "corbel", "corbels",
          "Courses of the outer leaf of a wall that each stand out past the one below, from end to "
          "end, over which the wall goes on in its own face; repeat the section for each. They "
          "turn "
          "a square corner where the next wall has the same, else they stop a brick short of it. "
          "How far bricks may stand out is for the designer to say."),
      listed<kJunction, &Job::junctions>(
          50, nullptr, "junction", "junctions",
          "How the end of a wall is joined to a building that stands there already; repeat the "
          "section for each."),
      {"roof", TableForm::Always, 1, nullptr, "roof", "roof", "The roof.", always, keep, nullptr,
       nullptr},
      {"roof.edge", TableForm::Many, 200, "wall", "roof edge", "roof.edges",
       "What the roof does at one wall; repeat the section for each.",
       [](const Job& job) { return job.roof.edges.size(); },
       [](Job& job, size_t n) { job.roof.edges.resize(n); },
       [](Job& to, size_t i, const Job& from, size_t j) { to.roof.edges[i] = from.roof.edges[j]; },
       [](const Job& a, size_t i, const Job& b, size_t j) {
         return sameRow(a, i, b, j, "roof.edge");
       }},
      {"laying", TableForm::Always, 1, nullptr, "laying", "laying",
       "How bricks and blocks are laid and loaded out.", always, keep, nullptr, nullptr},
      {"programme", TableForm::Always, 1, nullptr, "programme", "programme",
       "Dates and what is different about a stage.", always, keep, nullptr, nullptr},
      {"programme.week", TableForm::Always, 1, nullptr, "week", "programme",
       "The hours that are worked on each day of the week.", always, keep, nullptr, nullptr},
      ofProgramme<kDates, &ProgrammeInput::exceptions>(
          400, nullptr, "dates", "programme.exceptions",
          "Days on which the usual week does not count: holidays, short days, a Saturday worked; "
          "repeat the section for each."),
      ofProgramme<kMonth, &ProgrammeInput::months>(
          12, nullptr, "month", "programme.months",
          "What is usual in a month; repeat the section for each."),
      ofProgramme<kStage, &ProgrammeInput::stages>(
          200, "stage", "stage", "programme.stages",
          "What the job says otherwise about a stage; repeat the section for each."),
      ofProgramme<kSplit, &ProgrammeInput::splits>(100, "name", "split", "programme.splits",
                                                   "Walls whose share of a stage is done as a "
                                                   "stage by itself; repeat the section for each."),
      ofProgramme<kOwn, &ProgrammeInput::ownStages>(
          100, "name", "own stage", "programme.ownStages",
          "Work that nothing of the model is made in: drains, plaster; repeat the section for "
          "each."),
      ofProgramme<kLink, &ProgrammeInput::links>(
          500, nullptr, "link", "programme.links",
          "One more relation between two stages; repeat the section for each."),
      ofProgramme<kDelivery, &ProgrammeInput::deliveries>(
          500, nullptr, "delivery", "programme.deliveries",
          "What is brought to the site; repeat the section for each."),
      ofProgramme<kView, &ProgrammeInput::views>(
          200, "stage", "view", "programme.views",
          "From where a stage is looked at, instead of from where the program would; the window's "
          "View sheet writes it. Repeat the section for each."),
      {"setting_out", TableForm::Always, 1, nullptr, "setting out", "settingOut",
       "How the lines and levels are set out.", always, keep, nullptr, nullptr},
      listed<kLimit, &Job::limits>(
          200, nullptr, "limit", "limits",
          "What a permission or an agreement allows; repeat the section for each."),
      listed<kSetUp, &Job::setUps>(
          100, "name", "set-up", "setUps",
          "A standing of the levelling instrument or laser; repeat the section for each."),
      listed<kReadings, &Job::readings>(
          200, "name", "readings", "readings",
          "Readings of what was built, taken on one day, in a CSV file beside the job file; repeat "
          "the section for each."),
      listed<kTolerance, &Job::tolerances>(
          100, "of", "tolerance", "tolerances",
          "An allowed deviation in place of the published one; repeat the section for each."),
      listed<kQuestion, &Job::questions>(
          100, nullptr, "question", "questions",
          "What the designer is asked with the readings; repeat the section for each."),
  };
  return table;
}

}  // namespace model
