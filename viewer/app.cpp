#include "viewer/app.h"

#include <filesystem>
#include <iostream>

#include "viewer/app_session.h"
#include "viewer/commands/example_job.h"
#include "viewer/commands/exit_code.h"
#include "viewer/commands/no_open_gl.h"
#include "viewer/window.h"

namespace viewer {
namespace {

bool isExample(const std::string& path) {
  const std::string example = exampleJob();
  if (example.empty()) return false;
  std::error_code error;
  const auto folder = std::filesystem::absolute(path, error).parent_path();
  return std::filesystem::equivalent(folder, std::filesystem::path(example).parent_path(), error);
}

}  // namespace

int runWindow(const std::string& jobPath) {
  std::string why;
  const auto window = Window::open("Stringcourse", why);
  if (!window) return noOpenGl(why);
  Session session(*window, jobPath);
  // A first look should move; it stops at the first touch.
  if (isExample(jobPath)) session.playWhenLoaded();
  session.run();
  return kWell;
}

}  // namespace viewer
