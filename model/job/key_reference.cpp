#include "model/job/key_table.h"
#include "model/job/readings_csv.h"
#include "model/job/value_text.h"
#include "model/job/value_words.h"
#include "model/job/write_job.h"

namespace model {

namespace {

constexpr const char* kIntroduction =
    R"(# The job file

<!-- Made from the reader's own table of keys; regenerate as the test JobFileReference says. -->

A job file holds the numbers on the drawing, in [TOML](https://toml.io). Every section but
`[outline]` may be left out, and so may every key that is not marked as needed.

- **Lengths** are in millimetres when bare (`910`). In quotes they carry their unit: `"910 mm"`,
  `"91 cm"`, `"0.91 m"`, `"3 ft"`, `"2'-11 7/8\""`.
- **Levels** are in metres when bare (`-0.975`), above the job's 0.000. In quotes they carry their
  unit too. `"0"` needs none. So are staff readings and the coordinates of a survey.
- **Points** are `[x, y]`, lengths to the east and to the north.
- Corners carry letters in the order of the outline: the first is A. The wall between two corners is
  named by them, `A-B`.
- Text stands in quotes, at most 200 characters. The file is UTF-8 and at most 1 MiB.
)";

std::string unitOf(const KeySpec& key) {
  switch (key.kind) {
    case ValueKind::Length:
      return "mm";
    case ValueKind::Level:
    case ValueKind::Metres:
      return "m";
    case ValueKind::Degrees:
    case ValueKind::Pitch:
      return "degrees";
    case ValueKind::Days:
      return "days";
    case ValueKind::Factor:
      return "number";
    case ValueKind::Date:
      return "date";
    case ValueKind::Point:
      return "point, mm";
    case ValueKind::Corners:
      return "points, mm";
    case ValueKind::Text:
    case ValueKind::Choice:
    case ValueKind::StoreyRef:
      return "text";
  }
  return {};
}

// A Job in which every table is there once, so that every key has a place to look its default up.
Job oneOfEverything() {
  Job job;
  for (const TableSpec& table : tableTable()) table.resize(job, 1);
  return job;
}

std::string defaultOf(const KeySpec& key, Job& job) {
  if (key.required) return "**needed**";
  if (key.whenAbsent) return key.whenAbsent;
  return "`" + valueText(key, key.slot(job, 0), job) + "`";
}

std::string rangeOf(const KeySpec& key) {
  if (key.kind == ValueKind::Choice) {
    std::string words;
    for (const std::string& choice : choicesOf(key)) {
      words += (words.empty() ? "`\"" : ", `\"") + choice + "\"`";
    }
    return words;
  }
  if (key.kind == ValueKind::Corners)
    return (key.low > 0 ? std::to_string(static_cast<int>(key.low)) : std::string("3")) +
           " to 200 points";
  return key.high > key.low ? limitsWords(key) : std::string{};
}

std::string heading(const TableSpec& table) {
  const std::string path = table.path;
  return table.form == TableForm::Many ? "`[[" + path + "]]`" : "`[" + path + "]`";
}

}  // namespace

std::string keyReference() {
  Job job = oneOfEverything();
  std::string text = kIntroduction;
  for (const TableSpec& table : tableTable()) {
    text += "\n## " + heading(table) + "\n\n" + table.meaning;
    if (table.form == TableForm::Many) {
      text += " At most " + std::to_string(table.limit) + ".";
    }
    text +=
        "\n\n| key | unit | left out | allowed | meaning | example |\n|---|---|---|---|---|---|\n";
    for (const KeySpec& key : keyTable()) {
      if (std::string_view(key.table) != table.path) continue;
      text += std::string("| `") + key.name + "` | " + unitOf(key) + " | " + defaultOf(key, job) +
              " | " + rangeOf(key) + " | " + key.meaning + " | `" + key.example + "` |\n";
    }
  }
  return text + readingsReference();
}

}  // namespace model
