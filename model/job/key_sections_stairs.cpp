#include "model/job/key_sections.h"

// Each row: table, key, kind, where it lives in Job, allowed low and high (metres or as given),
// example, meaning, then what holds when it is left out, choices, and whether it must be there.

namespace model {

std::vector<KeySpec> stairKeys() {
  return {
      {"stair", "name", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.stairs[i].name; }, 0, 0, "\"Main stair\"",
       "What the stair is called"},
      {"stair", "from", ValueKind::Text,
       [](Job& job, size_t i) -> Slot { return &job.stairs[i].from; }, 0, 0, "\"Ground floor\"",
       "The floor that it starts from: a storey's name, or cellar. It lands on the next one up",
       "the ground floor"},
      {"stair", "foot", ValueKind::Point,
       [](Job& job, size_t i) -> Slot { return &job.stairs[i].foot; }, 0, 0, "[4560, 4650]",
       "On plan, the middle of the first riser", nullptr, nullptr, true},
      {"stair", "up", ValueKind::Text, [](Job& job, size_t i) -> Slot { return &job.stairs[i].up; },
       0, 0, "\"C-B\"",
       "The way it climbs: as one walks along that wall from the first corner to the second",
       nullptr, nullptr, true},
      {"stair", "width", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.stairs[i].width; }, 0.5, 2, "860",
       "Clear width between the strings, each of which is 32 more", nullptr, nullptr, true},
      {"stair", "risers", ValueKind::Count,
       [](Job& job, size_t i) -> Slot { return &job.stairs[i].risers; }, 2, 30, "14",
       "Number of risers, the one up to the floor at the top included", nullptr, nullptr, true},
      {"stair", "going", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.stairs[i].going; }, 0.15, 0.5, "235",
       "Going of one step: from the face of one riser to that of the next", nullptr, nullptr, true},
      {"stair", "treads", ValueKind::Choice,
       [](Job& job, size_t i) -> Slot { return &job.stairs[i].riserKind; }, 0, 0, "\"open\"",
       "closed: with risers; open: with bars that leave gaps of 95 under the treads", nullptr,
       "closed|open"},
      {"stair", "well", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.stairs[i].well; }, 0.5, 20, "2600",
       "Length of the well on plan, back from the edge of the floor at the top. It is as wide as "
       "the stair",
       "headroom of 2000 over the pitch line"},
      {"stair", "guard", ValueKind::Length,
       [](Job& job, size_t i) -> Slot { return &job.stairs[i].guard; }, 0.6, 1.5, "900",
       "Height of the guarding, over the pitch line and over the floor round the well"},
      {"stair", "trimming", ValueKind::Choice,
       [](Job& job, size_t i) -> Slot { return &job.stairs[i].trimming; }, 0, 0, "\"double\"",
       "Trimmers and trimming joists round the well, of the joists' section: one, or two side by "
       "side",
       nullptr, "single|double"},
  };
}

}  // namespace model
