// What the crew needs for a kind of stage, in what order it is done, and what practice has taught.
// All of it is common practice, no source; nothing in it sizes anything or says that work may go
// ahead.
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "model/job/job.h"
#include "model/settingout/stage_key.h"

namespace model {

inline constexpr size_t kCraftLines = 6;

struct StageCraft {
  StageKind kind;
  const char* tools;  // by hand
  const char* plant;  // and what is hired; empty: none
  std::array<const char*, kCraftLines> order;
  std::array<const char*, kCraftLines> watch;  // both end at the first that is null
};

// Null for the job's own stages: their crew knows. Of this job's kind of floor and ground.
const StageCraft* craftOf(StageKind kind, const Job& job);

// Up to the first null.
std::vector<const char*> linesOf(const std::array<const char*, kCraftLines>& lines);

// The tables, each in a file of its own. Private to this folder; null for other stages.
const StageCraft* cellarCraft(StageKind kind,
                              const Job& job);  // of blocks; goes before the ground's
const StageCraft* groundCraft(StageKind kind, const Job& job);
const StageCraft* wallCraft(StageKind kind, const Job& job);
const StageCraft* finishCraft(StageKind kind, const Job& job);

// The one of its kind; null when there is none.
template <typename Table>
const StageCraft* craftIn(const Table& table, StageKind kind) {
  for (const StageCraft& craft : table)
    if (craft.kind == kind) return &craft;
  return nullptr;
}

}  // namespace model
