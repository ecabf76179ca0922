#include "viewer/commands/drawing_command.h"

#include <iostream>

#include "model/drawing/setting_out_sheet.h"
#include "model/exchange/drawing_dxf.h"
#include "model/exchange/drawing_pdf.h"
#include "model/exchange/lettering.h"
#include "viewer/commands/load_job.h"
#include "viewer/commands/output.h"

namespace viewer {

int runDrawing(const DrawingCommand& command) {
  if (auto wrong = wouldReplaceJob(command.job, command.out)) return wrongUsage(*wrong);
  const bool dxf = !otherEnding(command.out, ".dxf", "");
  if (!dxf && otherEnding(command.out, ".pdf", ""))
    return wrongUsage("\"" + command.out +
                      "\" ends in neither .pdf nor .dxf: a drawing is written as one of these");
  model::SettingOutSheetOptions options;
  options.date = command.date;
  const auto paper = model::paperNamed(command.paper);
  if (!paper) return wrongUsage("there is no paper \"" + command.paper + "\" here: A3 or A4");
  options.paper = *paper;
  if (!command.scale.empty()) {
    options.scale = model::readScale(command.scale);
    if (!options.scale)
      return wrongUsage("\"" + command.scale + "\" is no scale: write it as 1:50 or 1:100");
  }
  const auto model = loadAndTell(command.job);
  if (!model) return kProblems;
  const model::SettingOutDrawing drawn =
      model::drawSettingOut(model->job, model->settingOut, options, model::textWidth());
  if (!drawn.drawing) {
    printAbout(command.job, drawn.problem);
    return kProblems;
  }
  if (drawn.siteIsCut)
    std::cerr << command.out << ": at 1:" << drawn.scale
              << " the building and its boards fit, but the site goes on beyond the plan\n";
  const auto problem = dxf ? model::writeDxf(*drawn.drawing, command.out)
                           : model::writePdf(*drawn.drawing, command.out);
  if (!problem) return kWell;
  std::cerr << model::format(*problem) << "\n";
  return kProblems;
}

}  // namespace viewer
