#include "viewer/commands/rod_command.h"

#include <iostream>

#include "model/asbuilt/as_built_rod.h"
#include "model/drawing/rod_strips.h"
#include "model/exchange/cellar_bond_table.h"
#include "model/exchange/drawing_pdf.h"
#include "model/exchange/lettering.h"
#include "model/exchange/rod_table.h"
#include "viewer/commands/corner_asked.h"
#include "viewer/commands/load_job.h"
#include "viewer/commands/output.h"

namespace viewer {
namespace {

std::optional<std::string> wrongOptions(const RodCommand& command) {
  if (command.out.empty()) return std::nullopt;
  if (command.style != model::TableStyle::People)
    return "--csv and --json are of the table; with --out the rods are drawn as PDF";
  if (auto wrong = wouldReplaceJob(command.job, command.out)) return wrong;
  if (!model::paperNamed(command.paper))
    return "there is no paper \"" + command.paper + "\" here: A3 or A4";
  return otherEnding(command.out, ".pdf", "the rods at full size are");
}

int writeStrips(const RodCommand& command, const model::Model& model,
                const std::vector<model::GaugeRod>& rods) {
  const model::Drawing drawing = model::drawRodStrips(
      model.job, model.settingOut, rods, *model::paperNamed(command.paper), model::textWidth());
  const auto problem = model::writePdf(drawing, command.out);
  if (!problem) return kWell;
  std::cerr << model::format(*problem) << "\n";
  return kProblems;
}

int printTable(const RodCommand& command, const model::Model& model,
               const std::vector<model::GaugeRod>& rods) {
  model::Table table = model::rodsTable(model, rods);
  const bool cellar = command.corner.empty() && !command.asBuilt;
  if (cellar) model::addCellarGauge(model, table);
  std::string text = model::write(table, command.style);
  if (command.style == model::TableStyle::People) {
    text += "\n";
    for (const std::string& words : model::rodWords(model.settingOut, rods)) text += words + ".\n";
    const auto words = model::cellarGaugeWords(model);
    if (cellar && words) text += *words + ".\n";
  }
  return printOut(text);
}

std::vector<model::GaugeRod> rodsOf(const RodCommand& command, const model::Model& model) {
  if (!command.asBuilt) return model::deriveGaugeRods(model.job, model.settingOut);
  return model::deriveAsBuiltRods(model.job, model.settingOut,
                                  model::deriveAsBuilt(model.job, model.settingOut));
}

}  // namespace

int runRod(const RodCommand& command) {
  if (auto wrong = wrongOptions(command)) return wrongUsage(*wrong);
  const auto model = loadAndTell(command.job);
  if (!model) return kProblems;
  std::vector<model::GaugeRod> rods = rodsOf(command, *model);
  if (!command.corner.empty()) {
    const CornerAsked asked = cornerAsked(model->settingOut, command.corner);
    if (!asked.corner) return wrongUsage(asked.wrong);
    std::erase_if(rods, [&](const model::GaugeRod& rod) { return rod.corner != *asked.corner; });
  }
  if (rods.empty() && command.asBuilt)
    return wrongUsage("no top of concrete that a rod could stand on was read there");
  return command.out.empty() ? printTable(command, *model, rods)
                             : writeStrips(command, *model, rods);
}

}  // namespace viewer
