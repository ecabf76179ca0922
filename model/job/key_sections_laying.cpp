// How far walls go up in a day, who lays them and what is brought to them. Rows as in
// key_sections_site.cpp.
#include "model/job/key_sections.h"

namespace model {

std::vector<KeySpec> layingKeys() {
  return {
      // No higher than LABC Warranty has it; lower in the cold and with heavy units.
      {"laying", "day_rise", ValueKind::Length,
       [](Job& job, size_t) -> Slot { return &job.laying.dayRise; }, 0.6, 1.5, "1200",
       "The most that a wall is raised in a day; no lift is higher"},
      {"laying", "layers", ValueKind::Count,
       [](Job& job, size_t) -> Slot { return &job.laying.layers; }, 1, 50, "3",
       "Bricklayers on the job"},
      {"laying", "bricks_in_day", ValueKind::Count,
       [](Job& job, size_t) -> Slot { return &job.laying.bricksInDay; }, 20, 2000, "450",
       "Bricks that one of them lays in a day"},
      {"laying", "blocks_in_day", ValueKind::Count,
       [](Job& job, size_t) -> Slot { return &job.laying.blocksInDay; }, 5, 500, "80",
       "Blocks that one of them lays in a day"},
      {"laying", "bricks_in_pack", ValueKind::Count,
       [](Job& job, size_t) -> Slot { return &job.laying.bricksInPack; }, 1, 2000, "500",
       "Bricks in a pack as it is delivered"},
      {"laying", "blocks_in_pack", ValueKind::Count,
       [](Job& job, size_t) -> Slot { return &job.laying.blocksInPack; }, 1, 1000, "60",
       "Blocks in a pack as it is delivered"},
      {"laying", "mix_sand", ValueKind::Factor,
       [](Job& job, size_t) -> Slot { return &job.laying.mixSand; }, 2, 10, "4.5",
       "Mortar: parts of sand to one of cement, by volume"},
  };
}

}  // namespace model
