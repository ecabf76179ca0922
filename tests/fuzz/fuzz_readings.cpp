// libFuzzer target: no bytes may crash the reader of readings, and those that read must come back
// from the writer.
//
//   fuzz_readings -max_total_time=30 CORPUS tests/data/bad_readings
#include <cstdint>
#include <cstdlib>

#include "model/job/readings_csv.h"

namespace {

void require(bool holds) {
  if (!holds) std::abort();
}

model::Job job() {
  model::Job job;
  job.ordnanceDatum = 61.35;
  job.outline = {{0, 0}, {6.74, 0}, {6.74, 4.49}, {0, 4.49}};
  job.storeys.push_back({"First floor", 2.7});
  job.setUps.push_back({"Site", "", {-2, 2}, "", 1.2, 5, ""});
  job.openings.emplace_back().name = "Front door";
  return job;
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  static const model::Job against = job();
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  const model::ReadingsResult read = model::readReadings(text, "readings.csv", against);
  for (const model::Problem& problem : read.problems) {
    require(!problem.what.empty() && !problem.instead.empty() && problem.place.line >= 0);
  }
  const std::string written = model::writeReadings(read.rows);
  const model::ReadingsResult again = model::readReadings(written, "readings.csv", against);
  require(again.rows.size() == read.rows.size());
  return 0;
}
