// A film that is being written, frame by frame.
#pragma once

#include <cstdint>
#include <string>

namespace viewer {

struct FilmShape {
  int width = 1280, height = 720;  // pixels
  int framesPerSecond = 25;
  std::string title;  // what players show as the film's name
};

// One that goes before it is finished leaves nothing behind.
class FilmFile {
 public:
  FilmFile() = default;
  virtual ~FilmFile() = default;
  FilmFile(const FilmFile&) = delete;
  FilmFile& operator=(const FilmFile&) = delete;

  // The next frame: four bytes a pixel, the fourth unused, rows from the top. Says what went wrong;
  // empty when it went well.
  virtual std::string add(const std::uint8_t* rgba) = 0;
  // Writes what is still to be written and puts the film in its place; says what went wrong.
  virtual std::string finish() = 0;
};

}  // namespace viewer
