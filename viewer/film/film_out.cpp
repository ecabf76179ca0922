#include "viewer/film/film_out.h"

#include <dlfcn.h>
#include <unistd.h>

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <utility>

#include "viewer/film/beside.h"
#include "viewer/film/film_module.h"
#include "viewer/picture.h"

namespace viewer {
namespace {

namespace fs = std::filesystem;

struct Module {
  OpenFilm open = nullptr;
  std::string wrong;  // why it is not there
};

// Beside the program as it is built, or where it is installed.
Module load() {
  std::error_code error;
  const fs::path folder = fs::read_symlink("/proc/self/exe", error).parent_path();
  for (const char* place : {".", "../lib/stringcourse"}) {
    const fs::path path = (folder / place / kFilmModule).lexically_normal();
    if (!fs::exists(path, error)) continue;
    void* module = dlopen(path.c_str(), RTLD_NOW | RTLD_LOCAL);  // kept to the program's end
    if (module == nullptr) return {nullptr, dlerror()};
    void* entry = dlsym(module, kFilmModuleEntry);
    if (entry == nullptr) return {nullptr, dlerror()};
    return {reinterpret_cast<OpenFilm>(entry), ""};
  }
  return {nullptr, "this program was built without FFmpeg's libraries"};
}

const Module& module() {
  static const Module loaded = load();
  return loaded;
}

class Mp4File : public FilmFile {
 public:
  explicit Mp4File(const std::string& path) : beside_(path) {}

  std::string open(const FilmShape& shape, const std::string& encoders) {
    std::error_code ignored;
    const fs::file_status now = fs::status(beside_.place(), ignored);
    if (fs::is_directory(now)) return "there is a folder of that name";
    if (fs::exists(now) && !fs::is_regular_file(now)) return "it is no plain file";
    // A rename would not notice that the right to write was taken away on purpose.
    if (fs::exists(now) && ::access(beside_.place().c_str(), W_OK) != 0)
      return "it may not be written";
    std::string wrong;
    inner_.reset(module().open(beside_.making().c_str(), shape, encoders.c_str(), wrong));
    return wrong;
  }
  std::string add(const std::uint8_t* rgba) override { return inner_->add(rgba); }
  std::string finish() override {
    std::string wrong = inner_->finish();
    return wrong.empty() ? beside_.putInPlace() : wrong;
  }

 private:
  Beside beside_;  // outlives what writes into it
  std::unique_ptr<FilmFile> inner_;
};

class FrameFiles : public FilmFile {
 public:
  FrameFiles(const std::string& folder, const FilmShape& shape) : beside_(folder) {
    image_.width = shape.width;
    image_.height = shape.height;
  }

  std::string open() {
    std::error_code error;
    if (fs::exists(beside_.place(), error)) {
      if (!fs::is_directory(beside_.place(), error)) return "it is no folder";
      if (!fs::is_empty(beside_.place(), error) || error)
        return "frames go into a new folder or an empty one, and there is something in this one";
    }
    fs::create_directories(beside_.making(), error);
    return error ? "the folder cannot be made: " + error.message() : "";
  }
  std::string add(const std::uint8_t* rgba) override {
    const auto bytes =
        static_cast<size_t>(image_.width) * static_cast<size_t>(image_.height) * size_t{4};
    image_.rgba.assign(rgba, rgba + bytes);
    char name[32];
    std::snprintf(name, sizeof name, "frame-%05zu.png", ++written_);
    // The folder as a whole is put in place or taken away, so the file need not be either.
    std::ofstream file(beside_.making() / name, std::ios::binary);
    const std::string png = pngBytes(image_);
    file.write(png.data(), static_cast<std::streamsize>(png.size()));
    file.close();
    return file ? "" : std::string(name) + " cannot be written";
  }
  std::string finish() override { return beside_.putInPlace(); }

 private:
  Beside beside_;
  Image image_;
  size_t written_ = 0;
};

}  // namespace

std::string noMp4() { return module().open == nullptr ? module().wrong : ""; }

FilmOut openMp4(const std::string& path, const FilmShape& shape, const std::string& encoders) {
  if (std::string wrong = noMp4(); !wrong.empty()) return {nullptr, wrong};
  auto film = std::make_unique<Mp4File>(path);
  if (std::string wrong = film->open(shape, encoders); !wrong.empty()) return {nullptr, wrong};
  return {std::move(film), ""};
}

FilmOut openFrames(const std::string& folder, const FilmShape& shape) {
  auto film = std::make_unique<FrameFiles>(folder, shape);
  if (std::string wrong = film->open(); !wrong.empty()) return {nullptr, wrong};
  return {std::move(film), ""};
}

}  // namespace viewer
