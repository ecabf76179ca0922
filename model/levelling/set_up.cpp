#include "model/levelling/set_up.h"

namespace model {

const BenchMark* markOf(const Job& job, const SetUp& setUp) {
  const auto meant = [&](const BenchMark& mark) {
    return setUp.mark.empty() || sameName(mark.name, setUp.mark);
  };
  if (job.site.benchMark && meant(*job.site.benchMark)) return &*job.site.benchMark;
  for (const BenchMark& mark : job.site.marks)
    if (meant(mark)) return &mark;
  return nullptr;
}

std::optional<Instrument> instrumentOf(const Job& job, const SetUp& setUp) {
  const BenchMark* mark = markOf(job, setUp);
  if (!mark) return std::nullopt;
  return setUpInstrument(mark->level, setUp.backsight, setUp.staff);
}

std::vector<Mark> marksOf(const Job& job) {
  std::vector<Mark> marks;
  if (job.site.benchMark) marks.push_back({job.site.benchMark->name, job.site.benchMark->level});
  for (const BenchMark& mark : job.site.marks) marks.push_back({mark.name, mark.level});
  return marks;
}

}  // namespace model
