// What a permission or an agreement allows, against what the drawing comes to.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "model/job/job.h"
#include "model/settingout/setting_out.h"

namespace model {

enum class LimitVerdict {
  Told,  // no limit given: what it comes to, nothing more
  Clear,
  AtTheLimit,  // kept, with less to spare than ordinary setting-out can hold
  Over,
};

struct LimitTest {
  LimitKind kind = LimitKind::Boundary;
  std::optional<size_t> given;  // index into Job::limits
  std::string what;             // "wall A-B to boundary 2", "ridge"
  // A distance on plan of the finished face, or a level; negative distances are beyond the line.
  double found = 0;
  double allowed = 0;  // unused when Told
  double spare = 0;    // metres: what is left of it; negative when over
  LimitVerdict verdict = LimitVerdict::Told;
  std::string words;  // "clear by 260", "over by 40", "at the limit: 3 to spare"
  // Of distances: what reaches further than the face. "eaves 720, foundation 851".
  std::string further;
  std::string note;           // where the limit comes from
  Vec2 from{0, 0}, at{0, 0};  // of distances
};

// The job's limits in its order, then what it sets no limit to: the least distance to the boundary
// and to each building, ridge and eaves.
std::vector<LimitTest> deriveLimits(const Job& job, const SettingOut& settingOut);

// A mark that reads without colour: "○ clear", "◇ at the limit", "▲ over"; "" for Told.
const char* shapeOf(LimitVerdict verdict);

// Less than this to spare is at the limit. Common practice, no source: what setting out by tape
// holds over a small plan.
inline constexpr double kNothingToSpare = 0.010;

}  // namespace model
