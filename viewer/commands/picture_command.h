// `picture`: one moment of the job from one place as a PNG, or the same of several stages.
#pragma once

#include <optional>
#include <string>

namespace viewer {

struct PictureCommand {
  std::string job, out;  // out: FILE.png, or a folder
  std::string stage;     // or several, see stages_asked.h; empty: the last
  double at = 1;         // how far into each
  int course = 0;        // in place of stage and at: as gauge rods number them; 0: none
  std::string corner;    // where that course is looked for; empty: all round
  std::string view = "south-west";
  std::string size = "1280x720";
  std::string show = "none";
  std::string section;     // empty: none
  std::string level;       // empty: no level plane
  std::string setUp;       // empty: none
  std::string seeThrough;  // "ground", "others" or empty
  bool outlines = false;
};

// Ctrl-C stops it between two pictures: what is there then is whole.
int runPicture(const PictureCommand& command);

}  // namespace viewer
