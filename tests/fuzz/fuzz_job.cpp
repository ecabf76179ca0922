// libFuzzer target: no bytes may crash the reader or the writer, and a file that reads must come
// back the same from the writer.
//
//   fuzz_job -dict=tests/fuzz/job.dict -max_total_time=30 CORPUS assets/jobs tests/data/bad_jobs
#include <cstdint>
#include <cstdlib>

#include "model/job/key_table.h"
#include "model/job/read_job.h"
#include "model/job/write_job.h"

namespace {

void require(bool holds) {
  if (!holds) std::abort();
}

// A few edits such as the viewer makes, so that the writer has something to do.
void edit(model::Job& job) {
  job.name += "!";
  job.walls.render = 0.015;
  job.outline.push_back({1, 2});
  if (!job.openings.empty()) job.openings.erase(job.openings.begin());
  job.roof.edges.push_back({"A-B", model::EavesKind::Hip});
  job.site.spots.push_back({{1, 1}, -0.25});
  job.walls.dampCourse.reset();
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  const model::ReadResult read = model::readJob(text, "job.toml");
  require(read.job.has_value() == !model::hasErrors(read.problems));
  for (const model::Problem& problem : read.problems) {
    require(!model::format(problem).empty() && problem.place.line >= 0);
  }
  if (!read.job) return 0;
  require(model::writeJob(text, *read.job) == text);
  model::Job job = *read.job;
  edit(job);
  const std::string written = model::writeJob(text, job);
  require(model::writeJob(written, job) == written);
  return 0;
}
