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

}  // namespace model
