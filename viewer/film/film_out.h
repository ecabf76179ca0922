// Where a film goes: one MP4 file, or a folder of numbered pictures.
#pragma once

#include <memory>
#include <string>

#include "viewer/film/film_file.h"

namespace viewer {

// What a film is encoded with, first choice first: H.264 by two libraries, then MPEG-4 part 2,
// which FFmpeg always has.
inline constexpr const char* kFilmEncoders = "libx264,libopenh264,mpeg4";

struct FilmOut {
  std::unique_ptr<FilmFile> file;  // null: see below
  std::string wrong;               // why there is none
};

// Why no MP4 can be written here; empty when it can. A film's libraries are loaded now.
std::string noMp4();

// Both are written beside their place under a hidden name and put there when they are finished.
// An MP4 replaces a plain file of its name; a folder must be empty or not there yet.
FilmOut openMp4(const std::string& path, const FilmShape& shape,
                const std::string& encoders = kFilmEncoders);
// frame-00001.png and so on.
FilmOut openFrames(const std::string& folder, const FilmShape& shape);

}  // namespace viewer
