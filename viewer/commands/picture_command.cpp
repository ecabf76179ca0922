#include "viewer/commands/picture_command.h"

#include <filesystem>
#include <iostream>

#include "viewer/commands/course_asked.h"
#include "viewer/commands/load_job.h"
#include "viewer/commands/no_open_gl.h"
#include "viewer/commands/output.h"
#include "viewer/commands/picture_options.h"
#include "viewer/commands/progress.h"
#include "viewer/commands/stages_asked.h"

namespace viewer {
namespace {

// One file to write.
struct Shot {
  std::string path;
  std::string what;  // it shows
  double time = 0;
};

bool endsAsPicture(const std::string& out) { return !otherEnding(out, ".png", ""); }

bool isFolder(const std::string& out) {
  std::error_code ignored;
  return out.ends_with('/') || std::filesystem::is_directory(out, ignored);
}

// What needs no job, so that a slip of the keys is told at once.
std::optional<std::string> wrongOptions(const PictureCommand& command, PictureOptions& picture,
                                        SectionWish& section) {
  if (auto wrong = readSize(command.size, picture)) return wrong;
  if (auto wrong = readOverlays(command.show, picture.overlays)) return wrong;
  if (auto wrong = readView(command.view, picture)) return wrong;
  if (!command.section.empty()) {
    if (auto wrong = readSection(command.section, section)) return wrong;
  }
  return wouldReplaceJob(command.job, command.out);
}

std::optional<std::string> readShots(const PictureCommand& command, const model::Model& model,
                                     PictureOptions& picture, std::vector<Shot>& shots) {
  const model::Programme& programme = model.programme;
  std::vector<size_t> stages;
  if (auto wrong = readStages(command.stage, programme, stages)) return wrong;
  // Checks how far into them, too.
  if (auto wrong = readMoment("", command.at, programme, picture)) return wrong;
  const bool folder = command.course == 0 && (stages.size() > 1 || isFolder(command.out));
  if (!folder || stages.empty()) {
    if (auto wrong = otherEnding(command.out, ".png", "a picture")) return wrong;
    if (!stages.empty()) picture.time = static_cast<double>(stages.front()) + command.at;
    if (command.course != 0) {
      if (auto wrong = readCourse(command.course, command.corner, model, picture)) return wrong;
    }
    shots = {{command.out, "", picture.time}};
    return std::nullopt;
  }
  if (!isFolder(command.out) && endsAsPicture(command.out))
    return "\"" + command.out + "\" is one file for " + std::to_string(stages.size()) +
           " stages; name a folder, with / at its end";
  for (const size_t stage : stages)
    shots.push_back(
        {(std::filesystem::path(command.out) / stagePictureName(programme, stage)).string(),
         programme.stages[stage].name, static_cast<double>(stage) + command.at});
  return std::nullopt;
}

std::optional<std::string> readPlanes(const PictureCommand& command, const model::Model& model,
                                      PictureOptions& picture) {
  picture.frame.ghosts = command.outlines;
  if (command.seeThrough == "ground")
    picture.frame.seeThrough = SeeThrough::Ground;
  else if (command.seeThrough == "others")
    picture.frame.seeThrough = SeeThrough::Others;
  else if (!command.seeThrough.empty())
    return "--see-through=" + command.seeThrough + " is neither \"ground\" nor \"others\"";
  if (!command.level.empty()) {
    if (auto wrong = readLevelPlane(command.level, model.settingOut, picture)) return wrong;
  }
  if (!command.setUp.empty()) return readSetUp(command.setUp, model.job, picture);
  return std::nullopt;
}

// The view of the stage that the picture's moment is in.
void takeOwnView(Picturer& picturer, const model::Model& model, PictureOptions& picture) {
  if (picture.view != kStageView || model.programme.stages.empty()) return;
  picture.own = picturer.viewOf(size_t(frameOf(model, picturer.scene(), picture).stage));
}

int saveAll(const std::vector<Shot>& shots, const model::Model& model, Picturer& picturer,
            PictureOptions picture) {
  std::string written;
  int result = kWell;
  {
    Progress progress(shots.size());
    const StopOnRequest stop;
    for (const Shot& shot : shots) {
      progress.step(shot.what);
      picture.time = shot.time;
      takeOwnView(picturer, model, picture);
      result = saveOut(shot.path, pngBytes(picturer.picture(picture)));
      if (result == kWell) written += shot.path + "  " + shot.what + "\n";
      if (result == kWell && stop.asked()) result = kStopped;
      if (result != kWell) break;
    }
  }
  if (result == kStopped) std::cerr << "Stopped. What was written until then is whole.\n";
  const int printed = printOut(written);
  return result == kWell ? printed : result;
}

}  // namespace

int runPicture(const PictureCommand& command) {
  PictureOptions picture;
  SectionWish section;
  if (auto wrong = wrongOptions(command, picture, section)) return wrongUsage(*wrong);
  const auto model = loadAndTell(command.job);
  if (!model) return kProblems;
  std::vector<Shot> shots;
  if (auto wrong = readShots(command, *model, picture, shots)) return wrongUsage(*wrong);
  if (auto wrong = readPlanes(command, *model, picture)) return wrongUsage(*wrong);
  std::string why;
  const auto offscreen = Offscreen::create(why);
  if (!offscreen) return noOpenGl(why);
  Picturer picturer(*model, *offscreen);
  picture.time = shots.front().time;
  takeOwnView(picturer, *model, picture);
  if (!command.section.empty()) {
    if (auto wrong = applySection(section, *model, picturer.scene(), picture))
      return wrongUsage(*wrong);
  }
  const bool one = shots.size() == 1 && shots.front().what.empty();
  int result = kWell;
  if (one) {
    result = saveOut(command.out, pngBytes(picturer.picture(picture)));
  } else {
    std::error_code error;
    std::filesystem::create_directories(command.out, error);
    if (error) {
      std::cerr << command.out << ": the folder cannot be made: " << error.message() << "\n";
      return kProblems;
    }
    result = saveAll(shots, *model, picturer, picture);
  }
  printAbout(command.job, picturer.lackingLetters());
  return result;
}

}  // namespace viewer
