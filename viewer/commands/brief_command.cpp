#include "viewer/commands/brief_command.h"

#include <iostream>

#include "viewer/commands/booklet_pictures.h"
#include "viewer/commands/designer_command.h"
#include "viewer/commands/load_job.h"
#include "viewer/commands/output.h"
#include "viewer/commands/picture_options.h"
#include "viewer/commands/progress.h"

namespace viewer {
namespace {

// Nothing when it was stopped.
std::optional<model::StagePictures> picturesFor(const BriefCommand& command,
                                                const model::Model& model, BookletFor reader,
                                                std::optional<size_t> only) {
  std::string why;
  const auto offscreen = Offscreen::create(why);
  if (!offscreen) {
    std::cerr << command.job << ": warning: no OpenGL 3.3 to draw with (" << why
              << "): the sheets are written without pictures\n";
    return model::StagePictures{};
  }
  const auto& stages = model.programme.stages;
  Progress progress(only ? 1 : stages.size());
  Picturer picturer(model, *offscreen);
  auto pictures = bookletPictures(model, picturer, reader, only, [&](size_t stage) {
    if (StopOnRequest::asked()) return false;
    progress.step(stages[stage].name);
    return true;
  });
  printAbout(command.job, picturer.lackingLetters());
  return pictures;
}

}  // namespace

int runBrief(const BriefCommand& command) {
  if (command.reader == "designer") return runDesignerSheet(command);
  const auto reader = bookletNamed(command.reader);
  if (!reader)
    return wrongUsage("there is no brief for \"" + command.reader + "\": crew, client or designer");
  if (auto wrong = otherEnding(command.out, ".pdf", "a brief")) return wrongUsage(*wrong);
  if (auto wrong = wouldReplaceJob(command.job, command.out)) return wrongUsage(*wrong);
  const auto model = loadAndTell(command.job);
  if (!model) return kProblems;
  model::BookletOptions options;
  options.date = command.date;
  if (!command.stage.empty()) {
    PictureOptions moment;
    if (auto wrong = readMoment(command.stage, 1, model->programme, moment))
      return wrongUsage(*wrong);
    options.stage = model->programme.find(command.stage);
  }
  std::optional<model::StagePictures> pictures;
  {
    const StopOnRequest stop;
    pictures = picturesFor(command, *model, *reader, options.stage);
    if (StopOnRequest::asked()) pictures.reset();
  }
  if (!pictures) {
    std::cerr << "Stopped. Nothing was written.\n";
    return kStopped;
  }
  return saveOut(command.out, bookletPdf(*model, *reader, *pictures, options));
}

}  // namespace viewer
