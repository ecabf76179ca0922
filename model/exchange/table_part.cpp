#include "model/exchange/table_part.h"

namespace model {

std::string writeForPeople(const std::vector<TablePart>& parts) {
  std::string text;
  for (const TablePart& part : parts) {
    if (!text.empty()) text += "\n";
    text +=
        part.table.rows.empty() ? part.table.title + "\n" : write(part.table, TableStyle::People);
    for (const Table& more : part.more) text += "\n" + write(more, TableStyle::People);
    if (!part.words.empty()) text += "\n";
    for (const std::string& words : part.words) text += words + ".\n";
  }
  return text;
}

std::string writeJson(const std::vector<TablePart>& parts) {
  std::string text = "{\n";
  for (size_t i = 0; i < parts.size(); ++i) {
    std::string rows = write(parts[i].table, TableStyle::Json);
    rows.erase(rows.find_last_not_of('\n') + 1);
    text += "\"" + parts[i].key + "\": " + rows + (i + 1 < parts.size() ? ",\n" : "\n");
  }
  return text + "}\n";
}

}  // namespace model
