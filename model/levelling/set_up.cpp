#include "model/levelling/set_up.h"

#include "model/levelling/level_book.h"

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

}  // namespace model
