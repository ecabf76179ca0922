#include "model/job/read_job.h"

#include <exception>

#include "model/job/parse_toml.h"
#include "model/job/read_tables.h"
#include "model/job/text_file.h"
#include "model/job/text_index.h"
#include "model/job/validate.h"

namespace model {

namespace {

ReadResult refused(Problem problem) {
  ReadResult result;
  result.problems.push_back(std::move(problem));
  return result;
}

void addMissingOutline(const toml::table& root, ReadContext& context, BrokenParts& broken) {
  if (root.contains("outline") || broken.count("outline")) return;
  broken.insert("outline");
  context.error({}, "there is no [outline]",
                "add it: [outline], and below it corners = [[0, 0], [6740, 0], [6740, 4490], "
                "[0, 4490]]");
}

ReadResult read(std::string_view text, const std::string& file) {
  ReadContext context{file, {}, {}};
  const CleanedText cleaned = cleanedText(text, file, context.problems);
  if (!cleaned.isText()) return refused(std::move(context.problems.front()));
  const std::string& clean = cleaned.text;
  if (auto deep = nestingProblem(clean, file)) return refused(std::move(*deep));
  const ParsedToml parsed = parseToml(clean, file, context.problems);

  Job job;
  BrokenParts broken;
  readTables(parsed, job, context, broken);
  if (parsed.whole) {
    addMissingOutline(parsed.table, context, broken);
    const Problems meaning = validateReadable(job, file, context.places, broken);
    context.problems.insert(context.problems.end(), meaning.begin(), meaning.end());
  }
  sortByPlace(context.problems);

  ReadResult result;
  result.problems = std::move(context.problems);
  result.places = std::move(context.places);
  if (!hasErrors(result.problems)) result.job = std::move(job);
  return result;
}

}  // namespace

ReadResult readJob(std::string_view text, const std::string& file) {
  if (text.size() > kMostTextBytes) {
    return refused({file,
                    {},
                    Severity::Error,
                    "the file is over 1 MiB",
                    "a job file is a few pages of text; is this the right file?"});
  }
  try {
    return read(text, file);
  } catch (const std::exception& fault) {
    return refused({file,
                    {},
                    Severity::Error,
                    std::string("the file could not be read to its end: ") + fault.what(),
                    "please keep the file and report it"});
  }
}

ReadResult readJobFile(const std::string& path) {
  std::string fault;
  const auto bytes = readTextFile(path, fault);
  return bytes ? readJob(*bytes, path) : refused(unreadableFile(path, fault));
}

Problems validateJob(const Job& job, const std::string& file, const KeyPlaces& places) {
  Problems problems = validateReadable(job, file, places, {});
  sortByPlace(problems);
  return problems;
}

}  // namespace model
