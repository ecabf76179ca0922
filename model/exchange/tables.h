// Levels, takeoff and stages as tables: for people, as CSV (RFC 4180) and as JSON.
#pragma once

#include <string>
#include <vector>

#include "model/level_text.h"  // levelText, lengthText
#include "model/model.h"

namespace model {

enum class TableStyle { People, Csv, Json };

struct Table {
  std::string title;
  std::vector<std::string> columns;  // headings with units: "level m", "length mm"
  std::vector<bool> numeric;         // per column: right-aligned, bare in JSON
  std::vector<bool> detail;          // per column: left out for people; empty: none is
  std::vector<std::vector<std::string>> rows;
};

// Relative to the datum, over the job's bench marks (the further ones not for people), and above
// ordnance datum when it is given.
Table levelsTable(const Model& model);
// With what is read on the staff from a set-up of the job, and what to do where nothing is.
Table levelsTable(const Model& model, const SetUp& setUp);
Table takeoffTable(const Model& model, bool byStage);
// Opening by opening: lintels of both leaves with their bearings, padstones, sill.
Table lintelsTable(const Model& model);
Table stagesTable(const Model& model);

// UTF-8; ends with a newline. People: columns aligned by what is seen, not by bytes. Json: an array
// of objects keyed by column.
std::string write(const Table& table, TableStyle style);

}  // namespace model
