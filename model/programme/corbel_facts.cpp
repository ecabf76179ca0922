// What is done, and minded, where courses of house walls stand out.
#include <tuple>

#include "model/level_text.h"
#include "model/programme/fact_text.h"
#include "model/walls/corbels.h"

namespace model {

namespace {

// Courses that stand out alike on several walls: the first, over the damp course, how many, and the
// step.
using Alike = std::tuple<int, int, double>;

std::string wordsOf(const Alike& alike, const std::vector<std::string>& walls) {
  const auto& [first, courses, step] = alike;
  const std::string number = std::to_string(first + 1);
  if (courses == 1)
    return " Course " + number + " on " + inSeries(walls) + " stands out " + lengthText(step) +
           " past the face.";
  return " Courses " + number + " to " + std::to_string(first + courses) + " on " +
         inSeries(walls) + " stand out, each " + lengthText(step) + " past the one below.";
}

}  // namespace

StageTexts corbelWork(const Job& job, const SettingOut& out) {
  std::map<Alike, std::vector<std::string>> found;
  for (size_t wall = 0; wall < out.walls.size(); ++wall)
    for (const CorbelPlan& plan : corbelsOn(job, out, wall))
      found[{plan.firstCourse, plan.courses, plan.step}].push_back(out.walls[wall].name);
  StageTexts texts;
  for (const auto& [alike, walls] : found) {
    const double low = out.levels.dampCourse + std::get<0>(alike) * job.walls.course();
    const double high = low + std::get<1>(alike) * job.walls.course();
    for (const Lift& lift : out.lifts)
      if (lift.bottom < high - 1e-6 && lift.top > low + 1e-6)
        for (const StageKind kind : {StageKind::RaiseCorners, StageKind::RunIn})
          texts[{kind, lift.storey, lift.number}] += wordsOf(alike, walls);
  }
  return texts;
}

StageTexts corbelCautions(const Job& job, const SettingOut& out) {
  StageTexts texts = corbelWork(job, out);
  for (auto& [stage, text] : texts)
    text =
        "Courses that stand out tip while they are green: each is firm before the next, and "
        "nothing leans on them or is fixed to them.";
  return texts;
}

}  // namespace model
