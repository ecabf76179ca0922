#include "model/job/section_text.h"

#include "model/job/unit_formats.h"
#include "model/job/value_text.h"

namespace model {

std::string keysText(const TableSpec& table, const Job& job, size_t index,
                     const std::string& separator) {
  Job blank;
  table.resize(blank, 0);
  table.resize(blank, 1);
  Job named = blank;  // what sizes are when they are left out
  takeBrickSizes(named.walls, job.walls.bricks);
  takeBlockSizes(named.walls, job.walls.blocks);
  named.walls.bricks = blank.walls.bricks;
  named.walls.blocks = blank.walls.blocks;
  // Slots are handed out for writing; nothing is written here.
  Job& source = const_cast<Job&>(job);
  std::string text;
  for (const KeySpec& key : keyTable()) {
    if (std::string_view(key.table) != table.path) continue;
    const Slot slot = key.slot(source, index);
    const std::string value = valueText(key, slot, job);
    if (value.empty() || (!key.required && sameValue(slot, key.slot(named, 0)))) continue;
    text += (text.empty() ? "" : separator) + key.name + " = " + value;
  }
  return text;
}

std::string sectionText(const TableSpec& table, const Job& job, size_t index,
                        const std::string& newLine) {
  const bool many = table.form == TableForm::Many;
  std::string text = (many ? "[[" : "[") + std::string(table.path) + (many ? "]]" : "]") + newLine;
  const std::string keys = keysText(table, job, index, newLine);
  return keys.empty() ? text : text + keys + newLine;
}

std::string freshText(const Job& job) {
  std::string text;
  const Job blank;
  for (const TableSpec& table : tableTable()) {
    const bool many = table.form == TableForm::Many;
    // The default storey need not be written.
    bool atDefault = many && table.count(job) == table.count(blank);
    for (size_t i = 0; atDefault && i < table.count(job); ++i) {
      atDefault = table.equal(job, i, blank, i);
    }
    if (atDefault) continue;
    for (size_t i = 0; i < table.count(job); ++i) {
      if (table.form == TableForm::Always && keysText(table, job, i, "\n").empty()) continue;
      text += (text.empty() ? "" : "\n") + sectionText(table, job, i, "\n");
    }
  }
  return text;
}

}  // namespace model
