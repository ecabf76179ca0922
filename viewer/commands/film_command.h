// `film`: the stages, or some of them, as an MP4 or as numbered frames.
#pragma once

#include <string>

namespace viewer {

struct FilmCommand {
  std::string job;
  std::string out;  // FILE.mp4, or a folder for frames
  std::string size = "1280x720";
  int framesPerSecond = 25;
  double day = 0.75;     // seconds of film for a working day
  double length = 0;     // seconds of the whole, in place of `day`; 0: not asked for
  std::string from, to;  // stages; empty: the first, the last
  std::string view;      // empty: each stage's own
  std::string show = "caption,tape";
};

// Ctrl-C stops it within a frame; then nothing is left of it.
int runFilm(const FilmCommand& command);

}  // namespace viewer
