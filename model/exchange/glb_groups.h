// Which things come and go together, and when, in the animation of a GLB file.
#pragma once

#include <string>
#include <vector>

#include "model/model.h"

namespace model {

// Index of a stage in Programme::stages; or one of these two.
inline constexpr int kBeforeWork = -1;  // there before the first stage
inline constexpr int kStays = 1 << 30;  // never removed

// Everything that is placed by the same stage and removed by the same stage. It becomes one node,
// whose scale is 1 while its things stand and 0 while they do not.
struct GlbGroup {
  int placed = kBeforeWork;
  int removed = kStays;
  std::vector<size_t> elements;  // into Works::elements
  std::vector<size_t> strings;   // into Works::strings

  bool staysToTheEnd() const { return removed == kStays; }
};

// In order of placing, then of removing. Every element and string is in exactly one group; inside a
// group they keep the order of Works. A stage is shown as it is at its end, so what is placed and
// removed by one and the same stage is never seen.
std::vector<GlbGroup> groupWorks(const Programme& programme, const Works& works);

// When the stages are shown. The site as it is comes first, for as long as a stage; the finished
// building is held for `hold` seconds, because viewers start again from the front.
struct GlbClock {
  double secondsPerStage = 1.5;
  size_t stages = 0;
  double hold = 3;

  double startOf(int stage) const { return secondsPerStage * (stage + 1); }
  double end() const { return startOf(int(stages)) + hold; }
};

struct GlbKey {
  double seconds;
  double scale;  // 0 or 1, exactly
};

// The keys of a group, stepping; empty when it stands from beginning to end. Each switch is
// preceded by a key that holds the old value until 1/1024 s before it, so that a reader that
// knows no stepping shows a switch too, not a growth over a whole stage.
std::vector<GlbKey> keysOf(const GlbGroup& group, const GlbClock& clock);

// "Stage 4 - Dig the trenches", "Before work starts (until stage 4)". Not yet unique.
std::string nameOf(const GlbGroup& group, const Programme& programme);

}  // namespace model
