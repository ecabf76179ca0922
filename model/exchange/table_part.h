// What a command tells in several tables, of which one may be asked for alone.
#pragma once

#include <string>
#include <vector>

#include "model/exchange/tables.h"

namespace model {

struct TablePart {
  std::string key;  // "boards", "deviations"
  Table table;
  // For people besides, below the table: what it leaves out for them as too wide, and sentences
  // without their full stops.
  std::vector<Table> more;
  std::vector<std::string> words;
};

// One below the other; of a table without rows its title alone.
std::string writeForPeople(const std::vector<TablePart>& parts);

// An object with the parts' tables by their keys.
std::string writeJson(const std::vector<TablePart>& parts);

}  // namespace model
