#include "model/drawing/stage_craft.h"

namespace model {

const StageCraft* craftOf(StageKind kind, const Job& job) {
  if (const StageCraft* craft = cellarCraft(kind, job)) return craft;
  if (const StageCraft* craft = groundCraft(kind, job)) return craft;
  if (const StageCraft* craft = wallCraft(kind, job)) return craft;
  return finishCraft(kind, job);
}

std::vector<const char*> linesOf(const std::array<const char*, kCraftLines>& lines) {
  std::vector<const char*> found;
  for (const char* line : lines) {
    if (!line) break;
    found.push_back(line);
  }
  return found;
}

}  // namespace model
