#include "viewer/commands/picture_command.h"

#include "viewer/commands/course_asked.h"
#include "viewer/commands/load_job.h"
#include "viewer/commands/no_open_gl.h"
#include "viewer/commands/output.h"
#include "viewer/commands/picture_options.h"

namespace viewer {

int runPicture(const PictureCommand& command) {
  PictureOptions picture;
  SectionWish section;
  // What needs no job first, so that a slip of the keys is told at once.
  if (auto wrong = readSize(command.size, picture)) return wrongUsage(*wrong);
  if (auto wrong = readOverlays(command.show, picture.overlays)) return wrongUsage(*wrong);
  if (auto wrong = readView(command.view, picture)) return wrongUsage(*wrong);
  if (!command.section.empty()) {
    if (auto wrong = readSection(command.section, section)) return wrongUsage(*wrong);
  }
  if (auto wrong = wouldReplaceJob(command.job, command.out)) return wrongUsage(*wrong);
  if (auto wrong = otherEnding(command.out, ".png", "a picture")) return wrongUsage(*wrong);
  const auto model = loadAndTell(command.job);
  if (!model) return kProblems;
  if (auto wrong = readMoment(command.stage, command.at, model->programme, picture)) {
    return wrongUsage(*wrong);
  }
  if (command.course != 0) {
    if (auto wrong = readCourse(command.course, command.corner, *model, picture))
      return wrongUsage(*wrong);
  }
  if (!command.level.empty()) {
    if (auto wrong = readLevelPlane(command.level, model->settingOut, picture))
      return wrongUsage(*wrong);
  }
  if (!command.setUp.empty()) {
    if (auto wrong = readSetUp(command.setUp, model->job, picture)) return wrongUsage(*wrong);
  }
  std::string why;
  const auto offscreen = Offscreen::create(why);
  if (!offscreen) return noOpenGl(why);
  picture.frame.seeThroughGround = command.seeThrough;
  Picturer picturer(*model, *offscreen);
  if (!command.section.empty()) {
    if (auto wrong = applySection(section, *model, picturer.scene(), picture))
      return wrongUsage(*wrong);
  }
  const Image image = picturer.picture(picture);
  printAbout(command.job, picturer.lackingLetters());
  return saveOut(command.out, pngBytes(image));
}

}  // namespace viewer
