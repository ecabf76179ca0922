// The report to the designer as one table: a row for each reading, then one for each question.
#pragma once

#include "model/asbuilt/as_built.h"
#include "model/exchange/tables.h"

namespace model {

// Columns as in assets/report-csv.md; those that a row has no use for are empty. Numbered as the
// PDF is. `built` is deriveAsBuilt() of this job.
Table reportTable(const Job& job, const AsBuilt& built);

}  // namespace model
