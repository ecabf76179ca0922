#include "model/job/key_sections.h"

// Each row: table, key, kind, where it lives in Job, allowed low and high (metres or as given),
// example, meaning, then what holds when it is left out, choices, and whether it must be there.

namespace model {

std::vector<KeySpec> builtInKeys() {
  return {
      {"walls", "tie_across", ValueKind::Length,
       [](Job& job, size_t) -> Slot { return &job.walls.builtIn.tieAcross; }, 0.225, 1.2, "750",
       "Wall ties along a bed joint, apart"},
      {"walls", "tie_up", ValueKind::Length,
       [](Job& job, size_t) -> Slot { return &job.walls.builtIn.tieUp; }, 0.075, 0.9, "450",
       "Rows of wall ties, at most so far apart in height"},
      {"walls", "tie_up_beside", ValueKind::Length,
       [](Job& job, size_t) -> Slot { return &job.walls.builtIn.tieUpBeside; }, 0.075, 0.6, "225",
       "The same beside openings, verges and movement joints"},
      {"walls", "tie_within", ValueKind::Length,
       [](Job& job, size_t) -> Slot { return &job.walls.builtIn.tieWithin; }, 0.125, 0.45, "200",
       "How near to such an edge those ties are, at most"},
      {"walls", "board_length", ValueKind::Length,
       [](Job& job, size_t) -> Slot { return &job.walls.builtIn.boardLength; }, 0.3, 3, "1200",
       "Length of a board of cavity insulation"},
      {"walls", "board_height", ValueKind::Length,
       [](Job& job, size_t) -> Slot { return &job.walls.builtIn.boardHeight; }, 0.2, 1.5, "455",
       "Its height as it stands in the cavity: what fits between the rows of ties"},
      {"walls", "weep_spacing", ValueKind::Length,
       [](Job& job, size_t) -> Slot { return &job.walls.builtIn.weepSpacing; }, 0.3, 1.5, "900",
       "Weep holes over trays and at the foot of the cavity, at most so far apart"},
  };
}

std::vector<KeySpec> airBrickKeys() {
  return {
      {"air_brick", "wall", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.airBricks[i].wall; }, 0, 0, "\"A-B\"",
       "The wall it is in", nullptr, nullptr, true},
      {"air_brick", "from", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.airBricks[i].from; }, 0, 0, "\"A\"",
       "The corner that it is measured from", nullptr, nullptr, true},
      {"air_brick", "at", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.airBricks[i].at; }, 0, 1000, "1800",
       "Along the outer face from that corner to its middle", nullptr, nullptr, true},
      {"air_brick", "level", ValueKind::Level,
       [](Job& job, size_t i) -> Slot { return &job.airBricks[i].level; }, -500, 9000, "-0.077",
       "Level of its underside; it lies in the course at or under that", nullptr, nullptr, true},
  };
}

std::vector<KeySpec> cavityBarrierKeys() {
  return {
      {"cavity_barrier", "wall", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.cavityBarriers[i].wall; }, 0, 0, "\"A-B\"",
       "The wall it is in", nullptr, nullptr, true},
      {"cavity_barrier", "from", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.cavityBarriers[i].from; }, 0, 0, "\"A\"",
       "The corner that `at` is measured from", "the first-named corner of the wall"},
      {"cavity_barrier", "at", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.cavityBarriers[i].at; }, 0, 1000, "3200",
       "An upright one: along the outer face from that corner to its middle", "it is level"},
      {"cavity_barrier", "level", ValueKind::Level,
       [](Job& job, size_t i) -> Slot { return &job.cavityBarriers[i].level; }, -500, 9000, "2.475",
       "A level one, along the whole wall but its openings: its underside; a cavity tray lies over "
       "it",
       "it is upright"},
      {"cavity_barrier", "width", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.cavityBarriers[i].width; }, 0.025, 0.5, "100",
       "Across when upright, in height when level", "100"},
  };
}

std::vector<KeySpec> dampCourseStepKeys() {
  return {
      {"damp_course_step", "wall", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.dampCourseSteps[i].wall; }, 0, 0, "\"A-B\"",
       "The wall it is in", nullptr, nullptr, true},
      {"damp_course_step", "from", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.dampCourseSteps[i].from; }, 0, 0, "\"A\"",
       "The corner that `at` and `to` are measured from", nullptr, nullptr, true},
      {"damp_course_step", "at", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.dampCourseSteps[i].at; }, 0, 1000, "1800",
       "Along the outer face from that corner to where it steps up", nullptr, nullptr, true},
      {"damp_course_step", "to", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.dampCourseSteps[i].to; }, 0, 1000, "4500",
       "Along the outer face from that corner to where it is down again", nullptr, nullptr, true},
      {"damp_course_step", "courses", ValueKind::Count,
       [](Job& job, size_t i) -> Slot { return &job.dampCourseSteps[i].courses; }, 1, 8, "3",
       "How many courses of bricks it lies higher there", nullptr, nullptr, true},
  };
}

std::vector<KeySpec> corbelKeys() {
  return {
      {"corbel", "wall", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.corbels[i].wall; }, 0, 0, "\"A-B\"",
       "The wall it is on", nullptr, nullptr, true},
      {"corbel", "level", ValueKind::Level,
       [](Job& job, size_t i) -> Slot { return &job.corbels[i].level; }, -500, 9000, "2.250",
       "Level of the underside of the first course that stands out; it is the course at or under "
       "that",
       nullptr, nullptr, true},
      {"corbel", "courses", ValueKind::Count,
       [](Job& job, size_t i) -> Slot { return &job.corbels[i].courses; }, 1, 6, "2",
       "How many courses stand out", "1"},
      {"corbel", "step", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.corbels[i].step; }, 0.005, 0.075, "15",
       "How far each of them stands out past the one below", "20"},
  };
}

std::vector<KeySpec> junctionKeys() {
  return {
      {"junction", "wall", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.junctions[i].wall; }, 0, 0, "\"A-B\"",
       "The new wall", nullptr, nullptr, true},
      {"junction", "corner", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.junctions[i].corner; }, 0, 0, "\"B\"",
       "The end of it that stands against the building", nullptr, nullptr, true},
      {"junction", "building", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.junctions[i].building; }, 0, 0, "\"House\"",
       "The building it is joined to, by name", nullptr, nullptr, true},
      {"junction", "kind", ValueKind::Choice,
       [](Job& job, size_t i) -> Slot { return &job.junctions[i].kind; }, 0, 0, "\"toothed\"",
       "starter-ties: ties from a strip fixed to the old wall, in the beds of the outer leaf; "
       "toothed: every other course of it goes into a pocket of the old wall; block-bonded: three "
       "courses go in, then three do not; all from the damp course up",
       "starter-ties", "starter-ties|toothed|block-bonded"},
      {"junction", "pocket", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.junctions[i].pocket; }, 0.025, 0.25, "102.5",
       "How deep bricks go into the old wall", "102.5"},
      {"junction", "tie_up", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.junctions[i].tieUp; }, 0.075, 0.9, "225",
       "starter-ties: apart in height, at most, as their maker has it", "225"},
  };
}

}  // namespace model
