#include "model/job/read_plain.h"

#include "model/job/parse_toml.h"
#include "model/job/read_tables.h"
#include "model/job/text_index.h"

namespace model {

std::optional<Job> readPlain(const std::string& text) {
  ReadContext context{"", {}, {}};
  if (text.size() > kMostTextBytes || nestingProblem(text, "")) return std::nullopt;
  const ParsedToml parsed = parseToml(text, "", context.problems);
  Job job;
  BrokenParts broken;
  readTables(parsed, job, context, broken);
  if (!parsed.whole || hasErrors(context.problems)) return std::nullopt;
  return job;
}

}  // namespace model
