// What the film module offers. FFmpeg's libraries bring a hundred others: they are loaded with this
// module when a film is made, so that every other command starts without them.
#pragma once

#include <string>

#include "viewer/film/film_file.h"

namespace viewer {

inline constexpr const char* kFilmModule = "stringcourse-film.so";
inline constexpr const char* kFilmModuleEntry = "stringcourseFilm";

// An MP4 file at `path`, which is made or emptied, with the first of the encoders (names with
// commas between) that FFmpeg has. Null, with the reason in `wrong`, when there is none. The caller
// owns it.
using OpenFilm = FilmFile* (*)(const char* path, const FilmShape& shape, const char* encoders,
                               std::string& wrong);

}  // namespace viewer
