#include "viewer/commands/bond_command.h"

#include "model/exchange/bond_tables.h"
#include "model/exchange/height_table.h"
#include "viewer/commands/load_job.h"
#include "viewer/commands/output.h"
#include "viewer/commands/print_parts.h"

namespace viewer {

int runBond(const TableOptions& options) {
  const auto model = loadAndTell(options.job);
  if (!model) return kProblems;
  const model::DryBond bond = model::deriveDryBond(model->job, model->settingOut);
  std::vector<model::TablePart> parts = model::bondParts(*model, bond);
  parts.push_back(model::heightsPart(*model));
  return printParts(parts, options.part, options.style);
}

}  // namespace viewer
