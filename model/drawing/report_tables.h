// The tables of the report to the designer. Private to this folder.
#pragma once

#include "model/asbuilt/as_built.h"
#include "model/drawing/sheet_table.h"

namespace model {

struct ReportData {
  const Job& job;
  const SettingOut& out;
  const AsBuilt& built;
};

// Every set with its date and how its readings came out.
SheetTable setsTable(const ReportData& data);
// Those that matter most, a few.
SheetTable mostOffTable(const ReportData& data);
// What asks for something, in the words of AsBuilt.
SheetTable changesTable(const ReportData& data);
SheetTable firstBedsTable(const ReportData& data);
SheetTable cavitiesTable(const ReportData& data);
// Each rafter's own length with the ridge held and with the pitch held.
SheetTable raftersTable(const ReportData& data);
// The set-ups that staff readings were taken from.
SheetTable setUpsTable(const ReportData& data);
// Every reading of one set, also those held against nothing. Columns that no row uses are left out.
SheetTable readingsTable(const ReportData& data, size_t set);
SheetTable photographsTable(const ReportData& data);

}  // namespace model
