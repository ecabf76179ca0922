#include "model/works/stretches.h"

namespace model {

void leaveOut(double from, double to, std::vector<Stretch>& stretches) {
  std::vector<Stretch> left;
  for (const Stretch& s : stretches) {
    if (to <= s.from || from >= s.to) {
      left.push_back(s);
      continue;
    }
    if (from > s.from) left.push_back({s.from, from});
    if (to < s.to) left.push_back({to, s.to});
  }
  stretches = left;
}

}  // namespace model
