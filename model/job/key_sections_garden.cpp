#include "model/job/key_sections.h"

// Each row: table, key, kind, where it lives in Job, allowed low and high (metres or as given),
// example, meaning, then what holds when it is left out, choices, and whether it must be there.

namespace model {

std::vector<KeySpec> gardenWallKeys() {
  return {
      {"garden_wall", "name", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.gardenWalls[i].name; }, 0, 0, "\"Front wall\"",
       "What it is called", "no name"},
      {"garden_wall", "line", ValueKind::Corners,
       [](Job& job, size_t i) -> Slot { return &job.gardenWalls[i].line; }, 2, 200,
       "[[-4000, -3000], [2000, -3000]]",
       "One face from end to end, turning at right angles; the wall stands on the left of it, "
       "walked along from the first point. Two points or more",
       nullptr, nullptr, true},
      {"garden_wall", "bricks", ValueKind::Factor,
       [](Job& job, size_t i) -> Slot { return &job.gardenWalls[i].bricks; }, 0.5, 2, "1.5",
       "Thickness in bricks: 0.5, 1, 1.5 or 2"},
      {"garden_wall", "bond", ValueKind::Choice,
       [](Job& job, size_t i) -> Slot { return &job.gardenWalls[i].bond; }, 0, 0, "\"flemish\"",
       "How the bricks lie over one another: stretcher and stack for half a brick, english for "
       "any, "
       "the others up to one brick",
       "english", "stretcher|header|stack|english|flemish|english-garden-wall|flemish-garden-wall"},
      {"garden_wall", "base", ValueKind::Level,
       [](Job& job, size_t i) -> Slot { return &job.gardenWalls[i].base; }, -500, 9000, "-0.600",
       "Top of its concrete, from which courses are counted"},
      {"garden_wall", "top", ValueKind::Level,
       [](Job& job, size_t i) -> Slot { return &job.gardenWalls[i].top; }, -500, 9000, "1.200",
       "Top of its brickwork, under the coping; whole courses over `base`"},
      {"garden_wall", "coping", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.gardenWalls[i].coping; }, 0, 0.3, "50",
       "Thickness of the coping, which stands out 40 at each side; 0: none"},
      {"garden_wall", "pier_every", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.gardenWalls[i].pierEvery; }, 0, 100, "3000",
       "Most between the middles of piers; 0: at its ends only"},
      {"garden_wall", "pier_bricks", ValueKind::Factor,
       [](Job& job, size_t i) -> Slot { return &job.gardenWalls[i].pierBricks; }, 0, 2, "2",
       "Size of its square piers in bricks, half a brick or a brick more than the wall; 0: none"},
      {"garden_wall", "damp_course", ValueKind::Level,
       [](Job& job, size_t i) -> Slot { return &job.gardenWalls[i].dampCourse; }, -500, 9000,
       "0.000", "Level of a damp course through it; it lies in the bed joint at or under that",
       "none"},
      {"garden_wall", "corbel_courses", ValueKind::Count,
       [](Job& job, size_t i) -> Slot { return &job.gardenWalls[i].corbelCourses; }, 0, 6, "2",
       "Courses at its top that each stand out past the one below, at both sides"},
      {"garden_wall", "corbel_step", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.gardenWalls[i].corbelStep; }, 0.005, 0.075,
       "28", "How far each of them stands out past the one below"},
      {"garden_wall", "foundation_width", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.gardenWalls[i].foundationWidth; }, 0.1, 3,
       "600", "Width of its strip of concrete, central under the wall, as drawn"},
      {"garden_wall", "foundation_thickness", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.gardenWalls[i].foundationThickness; }, 0.05, 2,
       "225", "Thickness of that strip, as drawn"},
  };
}

}  // namespace model
