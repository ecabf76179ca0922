#include <algorithm>

#include "model/job/key_table.h"
#include "model/job/value_text.h"
#include "model/job/write_job.h"

namespace model {

namespace {

constexpr size_t kCommentColumn = 32;
constexpr size_t kWidth = 100;

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
at = 890                        # to the nearer jamb
width = 1022.5

[[opening]]
name = "Front window"
wall = "A-B"
from = "B"
at = 1340
width = 1810
# sill = 1.050                  # left out: the floor + 1.050 for a window
# head = 2.100                  # left out: the floor + 2.100
# storey = "Ground floor"       # left out: the first storey
# lintel_height = 150
# lintel_bearing = 150          # at each end
# padstone = 440                # left out: none
# sill_height = 140             # left out: no sill in the outer leaf
)";

// Words broken into comment lines.
std::string commentLines(const std::string& comment) {
  std::string text, line = "#";
  for (size_t at = 0; at < comment.size();) {
    const size_t end = std::min(comment.find(' ', at), comment.size());
    if (line.size() + 1 + end - at > kWidth) {
      text += line + "\n";
      line = "#";
    }
    line += " " + comment.substr(at, end - at);
    at = end + 1;
  }
  return text + line + "\n";
}

// The comment goes behind the line, or above it when that gets too long.
std::string withComment(std::string line, const std::string& comment) {
  const size_t column = std::max(kCommentColumn, line.size() + 1);
  if (column + 2 + comment.size() > kWidth) return commentLines(comment) + line + "\n";
  line.append(column - line.size(), ' ');
  return line + "# " + comment + "\n";
}

// A key that is at its default stands as itself; one that is worked out, or whose section is only
// an example, stands as a comment.
std::string keyLine(const KeySpec& key, Job& job, bool asComment) {
  const std::string held = valueText(key, key.slot(job, 0), job);
  const bool many = findTable(key.table)->form == TableForm::Many;
  const bool workedOut = key.whenAbsent && !many && !asComment;
  const bool showExample = key.required || held.empty() || (asComment && key.whenAbsent);
  std::string comment = key.meaning;
  if (workedOut) comment += std::string(". Left out: ") + key.whenAbsent;
  return withComment((asComment || workedOut ? "# " : "") + std::string(key.name) + " = " +
                         (workedOut || showExample ? key.example : held),
                     comment);
}

std::string sectionText(const TableSpec& table, Job& job) {
  const std::string path = table.path;
  if (path == "opening") return kOpenings;
  // Sections that a job has without being told stand as they are; the others are examples.
  const bool asComment = table.form != TableForm::Always && table.count(Job{}) == 0;
  const bool many = table.form == TableForm::Many;
  std::string text = "\n" + commentLines(table.meaning) + (asComment ? "# " : "") +
                     (many ? "[[" : "[") + path + (many ? "]]" : "]") + "\n";
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
