#include "viewer/commands/no_open_gl.h"

#include <iostream>

#include "viewer/commands/exit_code.h"

namespace viewer {

int noOpenGl(const std::string& why) {
  std::cerr << "stringcourse: no OpenGL 3.3 to draw with: " << why
            << "\nInstall a graphics driver, or Mesa's software renderer (Debian: libgl1-mesa-dri, "
               "libegl1).\n`check`, `levels`, `takeoff`, `stages`, `share` and `new` draw nothing "
               "and work without it.\n`picture`, `film` and `walkthrough` need no display, but "
               "OpenGL all the same; without it `brief`\nhas no pictures and `walkthrough` writes "
               "the tables, the booklets without pictures and the GLB only.\n";
  return kNoOpenGl;
}

}  // namespace viewer
