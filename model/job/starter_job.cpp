#include <algorithm>

#include "model/job/key_table.h"
#include "model/job/value_text.h"
#include "model/job/write_job.h"

namespace model {

namespace {

constexpr size_t kCommentColumn = 32;

constexpr const char* kIntroduction =
    R"(# A job: the numbers on the drawing, section by section.
#
# Bare lengths are millimetres (910), bare levels are metres above 0.000 (-0.975). In quotes a value
# carries its unit: "1.2 m", "3 ft 6 in". Lines that begin with # are not read; take the # away to
# use them. Everything but [outline] may be left out: what you see is then what holds anyway.
)";

// The openings that the starter job has; the reader's examples would all land in one place.
constexpr const char* kOpenings = R"(
[[opening]]
name = "Front door"
kind = "door"                   # door, window, garage, opening
wall = "A-B"
from = "A"                      # measured from this corner
at = 900                        # to the nearer jamb
width = 1010

[[opening]]
name = "Front window"
wall = "A-B"
from = "B"
at = 1340
width = 1810
# sill = 1.050                  # left out: the floor + 1.050 for a window
# head = 2.100                  # left out: the floor + 2.100
# storey = "Ground floor"       # left out: the first storey
)";

std::string withComment(std::string line, const std::string& comment) {
  if (comment.empty()) return line + "\n";
  line.append(line.size() < kCommentColumn ? kCommentColumn - line.size() : 1, ' ');
  return line + "# " + comment + "\n";
}

// A key that is at its default stands as itself; one that is worked out, or whose section is only
// an example, stands as a comment.
std::string keyLine(const KeySpec& key, Job& job, bool asComment) {
  const std::string held = valueText(key, key.slot(job, 0), job);
  const bool workedOut = !key.required && key.whenAbsent && !asComment;
  const std::string value = key.whenAbsent || key.required || held.empty() ? key.example : held;
  std::string comment = key.meaning;
  if (workedOut) comment += std::string(" (left out: ") + key.whenAbsent + ")";
  return withComment((asComment || workedOut ? "# " : "") + std::string(key.name) + " = " + value,
                     comment);
}

std::string sectionText(const TableSpec& table, Job& job) {
  if (std::string_view(table.path) == "opening") return kOpenings;
  const bool asComment = table.form != TableForm::Always;
  const std::string path = table.path;
  const std::string open = table.form == TableForm::Many ? "[[" : "[";
  const std::string close = table.form == TableForm::Many ? "]]" : "]";
  std::string text = "\n# " + std::string(table.meaning) + "\n" + (asComment ? "# " : "") + open +
                     path + close + "\n";
  for (const KeySpec& key : keyTable()) {
    if (key.table == path) text += keyLine(key, job, asComment);
  }
  return text;
}

}  // namespace

std::string starterJob() {
  Job job;
  for (const TableSpec& table : tableTable()) table.resize(job, 1);
  std::string text = kIntroduction;
  for (const TableSpec& table : tableTable()) text += sectionText(table, job);
  return text;
}

}  // namespace model
